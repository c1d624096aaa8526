// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include "domain/measure/outcome.h"
#include "reports/page.h"

namespace tangmark::reports {

/// Whether the bytes begin as a JPEG does.
bool is_jpeg(std::string_view bytes);
/// Reads a JPEG as decode_picture describes, before it is turned upright.
Outcome<Picture> decode_jpeg(std::string_view bytes, std::string_view field, int wanted_side_px);
/// The Exif orientation of a JPEG, 1 to 8; 1 when it says none.
int exif_orientation(std::string_view bytes);
/// Turns or mirrors a picture so that one with this Exif orientation stands upright.
Picture upright(const Picture& picture, int orientation);

}  // namespace tangmark::reports
