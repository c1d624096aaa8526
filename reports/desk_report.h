// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "domain/measure/outcome.h"
#include "reports/curve.h"
#include "reports/look.h"
#include "reports/scatter_chart.h"

namespace tangmark::reports {

/// What the steel desk found out, on paper: curves of a record or plots of a trial, what they show
/// in sentences, and the figures behind them. For the shop itself, not for a buyer.
struct DeskReport {
  std::string shop;
  std::string title;
  std::string under;
  std::vector<Curve> curves;  ///< as recorded
  std::vector<Scatter> plots;
  std::vector<std::string> sentences;
  std::vector<std::string> heads;
  std::vector<std::vector<std::string>> rows;  ///< each as long as the heads
  Instant printed{};
};

/// Sets it. Refuses text that the fonts cannot print, naming where it stands.
Outcome<Document> desk_report_document(const DeskReport& report, const Look& look,
                                       const FontBook& fonts);

}  // namespace tangmark::reports
