// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "domain/measure/caught.h"
#include "domain/steel/grade.h"

namespace tangmark::stock {

/// The grades a job asks for: "1095/15N20", "52100 + 410" and "80CrV2" name two, two and one.
std::vector<std::string> grades_named(std::string_view job_grade);

/// Whether two names mean one grade: other names of it count, case, blanks and dashes do not.
bool same_grade(std::string_view one, std::string_view other, const steel::GradeBook& book);

/// Catch 4: the steel on the job differs from the steel of the piece. A job without a grade leaves
/// the choice open. `piece_grades` are those of the piece's lot, or of all lots in its billet; one
/// that nobody identified is nothing to compare and is asked about.
Catch steel_differs(const std::optional<std::string>& job_grade,
                    const std::vector<std::optional<std::string>>& piece_grades,
                    std::string_view piece_tag, const steel::GradeBook& book);

}  // namespace tangmark::stock
