// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

namespace tangmark::certificate {

/// The text of data/lexicon.csv, compiled in.
extern const std::string_view lexicon_csv;

}  // namespace tangmark::certificate
