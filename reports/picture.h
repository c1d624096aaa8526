// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "domain/measure/outcome.h"
#include "reports/page.h"

namespace tangmark::reports {

/// The most a picture may hold before it is refused unread: 100 million pixels, 30,000 on a side.
inline constexpr std::int64_t most_picture_pixels = 100'000'000;
inline constexpr int most_picture_side_px = 30'000;

/// Reads a JPEG or PNG. A photograph taken with the camera turned comes out upright (Exif
/// orientation). With `wanted_side_px` a larger JPEG is read at a half, a quarter or an eighth, as
/// long as its longer side stays at or above the wanted one; this is much faster.
/// Refuses, with a sentence for that field: other kinds of file, a damaged or cut-off file, a
/// picture above the limits, a JPEG in printing colours (CMYK).
/// **Source** ITU-T T.81 (JPEG), ISO/IEC 15948 (PNG), JEITA CP-3451 (Exif, tag 0x0112).
Outcome<Picture> decode_picture(std::string_view bytes, std::string_view field,
                                int wanted_side_px = 0);

/// The picture with its longer side at most this long, each new pixel the mean of those it covers.
/// A smaller picture comes back as it is.
Picture scaled_down(const Picture& picture, int most_side_px);

/// The picture as a baseline JPEG, clear parts on white. `quality` 1 to 100. Holds no date, place
/// or camera. Throws PageFailure when memory runs out.
std::string jpeg_bytes(const Picture& picture, int quality);

/// A photograph made ready for the shop file.
struct StoredPhoto {
  std::string jpeg;
  int width_px = 0;
  int height_px = 0;
};

/// Reads a photograph, reduces its longer side to `most_side_px` and encodes it anew, which also
/// drops where and with what it was taken. Refuses what decode_picture refuses.
Outcome<StoredPhoto> photo_for_storing(std::string_view bytes, std::string_view field,
                                       int most_side_px = 1600, int quality = 85);

}  // namespace tangmark::reports
