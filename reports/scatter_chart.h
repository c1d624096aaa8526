// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "reports/block.h"
#include "reports/curve_chart.h"
#include "reports/font_book.h"

namespace tangmark::reports {

/// One blade in a plot of two measures.
struct ScatterPoint {
  double x = 0;
  double y = 0;
  std::string name;  ///< set beside the point where it finds room
};

/// Two measures of several blades against each other.
struct Scatter {
  std::string x_title;  ///< with its unit: "soak, min"
  std::string y_title;
  std::vector<ScatterPoint> points;
};

/// Points with their names over two axes with round figures. Without points it says so.
Block scatter_chart(const FontBook& fonts, const Scatter& scatter, const ChartSize& size);

}  // namespace tangmark::reports
