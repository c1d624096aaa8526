// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

namespace tangmark::command {

/// What `tangmark plan --help` says of cases: the fields that may be left away, and what the answer
/// holds. Source: domain/kiln/plan_json.h, plan_bath.h and plan_check.h, which stand for the rules.
extern const std::string_view about_plan_cases;

}  // namespace tangmark::command
