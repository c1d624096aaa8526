// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <string>
#include <string_view>

#include "domain/measure/outcome.h"

namespace tangmark::db {

/// Reads the bytes of a picture file and gives them back as a JPEG of the size the shop keeps, or
/// says in the field's name why they are no picture.
using PhotoReader =
    std::function<Outcome<std::string>(std::string_view bytes, std::string_view field)>;

/// Pictures are read by the layer that sets pages, which this one does not know. A program that
/// attaches photos says once, at its start, who reads them; until then attach_photo is refused.
void set_photo_reader(PhotoReader reader);
/// What the reader makes of a picture; a problem when nobody reads pictures in this program.
Outcome<std::string> read_photo(std::string_view bytes, std::string_view field);

}  // namespace tangmark::db
