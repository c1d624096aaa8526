// SPDX-License-Identifier: MIT
#pragma once

namespace tangmark::steel {

/// Who stands behind the figures of a grade, a window or a temper table.
enum class GradeOrigin { published, entered_by_shop };

}  // namespace tangmark::steel
