// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "reports/block.h"
#include "reports/curve.h"
#include "reports/font_book.h"
#include "reports/look.h"

namespace tangmark::reports {

/// What was measured never looks like what was meant: a recorded curve is a thick line, a planned
/// one a thin line.
enum class CurveKind { recorded, planned };

struct ChartSize {
  Points width = 0;
  Points height = 0;  ///< with title and axis, without notes below
  Points text = 7.5;  ///< size of the figures
};

/// A curve over the clock with its window as a grey band, and what was fitted to it as a dashed
/// line over it, told below. With something fitted the whole course is shown; else, where the
/// window is a sliver of the whole range, the chart of a record begins a few windows below it and
/// says so. Marks that find no room on the chart are written below it.
Block curve_chart(const FontBook& fonts, const Curve& curve, CurveKind kind, const Look& look,
                  const ChartSize& size);

/// At most about `buckets` times four points, in order, with the lowest and highest of each stretch
/// kept.
std::vector<CurvePoint> thinned(const std::vector<CurvePoint>& points, std::size_t buckets);

}  // namespace tangmark::reports
