// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "domain/measure/outcome.h"
#include "domain/stock/label_stock.h"
#include "reports/look.h"

namespace tangmark::reports {

class FontBook;
using stock::LabelStock;

/// A lot: one purchase of one material.
struct LotLabel {
  std::string number;
  std::string grade;    ///< grade or material
  std::string section;  ///< as bought, already in the maker's units
  std::string supplier;
  std::string melt_number;
  std::string document;  ///< "inspection certificate 3.1", "supplier's word"
  CalendarDate received{};
  std::string owner;  ///< for a customer's own material: whose, by job number; else empty
  std::string qr;
  bool steel = true;  ///< only of steel is it said that a melt number or a document is missing
};

/// A piece of a bar or billet.
struct PieceLabel {
  std::string tag;
  std::string grade;  ///< "steel not identified" where it is so
  std::optional<Length> length;
  std::optional<Length> width;
  std::optional<Length> thickness;
  std::optional<Mass> mass;
  std::string melt_number;
  std::string parent;  ///< tag it was cut from
  std::string owner;   ///< for a customer's own material: whose, by job number; else empty
  bool carries_mark = false;
  std::string qr;
};

/// A blade, by its short number.
struct BladeLabel {
  std::string number;
  std::string job;  ///< job number or first name only
  std::string model;
  std::string steel;
  std::string qr;
};

/// A sheet of labels, to print on label stock or to cut along the grey lines. Without a stock the
/// usual one of the paper is taken. Refuses a stock that cannot be, as label_stock_problems says.
Outcome<Document> lot_labels(const std::vector<LotLabel>& lots, Instant printed, const Look& look,
                             const FontBook& fonts, const std::optional<LabelStock>& stock = {});
Outcome<Document> piece_labels(const std::vector<PieceLabel>& pieces, Instant printed,
                               const Look& look, const FontBook& fonts,
                               const std::optional<LabelStock>& stock = {});
Outcome<Document> blade_labels(const std::vector<BladeLabel>& blades, Instant printed,
                               const Look& look, const FontBook& fonts,
                               const std::optional<LabelStock>& stock = {});

}  // namespace tangmark::reports
