// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

namespace tangmark::steel::built_in {

// The readable tables of domain/steel/data, compiled in. Each is CSV with a head and a source
// column.
extern const std::string_view a255_factors;
extern const std::string_view a255_scope;
extern const std::string_view ferric_chloride;
extern const std::string_view grades;
extern const std::string_view hardness_e140;
extern const std::string_view quench_severity;
extern const std::string_view temper_tables;
extern const std::string_view windows;

}  // namespace tangmark::steel::built_in
