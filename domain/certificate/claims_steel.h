// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "domain/certificate/blade_case.h"

namespace tangmark::certificate {

/// Grade: the blade is traced to at least one lot with a grade, and somebody answers for that grade
/// (a document, a label, the supplier's word, or a laboratory). An analysis outside the limits of
/// the grade takes the claim away. Steels that stay unknown are said under `unidentified`.
/// **Source** of the document types: EN 10204:2004; a heat number that is not on the metal ties no
/// bar to a cast (common practice).
Judgement judge_grade(const BladeCase& blade);
/// Analysis: figures from an inspection document with melt number, a test report, or a laboratory.
Judgement judge_analysis(const BladeCase& blade);
/// What is true when a steel of the blade has no grade that anybody answers for.
Judgement judge_unidentified(const BladeCase& blade);

/// Whether somebody answers for this source being the grade it is called.
bool identified(const Source& source);
/// What a source is called inside other sentences: "1084 (lot 17)", "a steel that is not identified
/// (lot 22)", "steel melted here (melt 3)".
std::string source_name(const Source& source);
/// What the lot was bought as: its grade, or the steels stated by the supplier; empty for neither.
std::string sold_name(const Lot& lot);

}  // namespace tangmark::certificate
