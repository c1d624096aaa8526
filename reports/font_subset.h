// SPDX-License-Identifier: MIT
#pragma once

#include <set>
#include <string>

namespace tangmark::reports {

/// The font of a file cut down to these characters, as a font file of its own, without hinting and
/// without the tables that only matter while typing. A paper uses some eighty of three thousand
/// characters: the cut is ten times quicker to embed and a tenth of the size.
/// Throws PageFailure when the file is not a font.
std::string font_subset(const std::string& path, const std::set<char32_t>& characters);

}  // namespace tangmark::reports
