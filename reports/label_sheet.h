// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "domain/measure/outcome.h"
#include "reports/look.h"

namespace tangmark::reports {

class FontBook;

/// A lot: one purchase of one material.
struct LotLabel {
  std::string number;
  std::string grade;    ///< grade or material
  std::string section;  ///< as bought, already in the maker's units
  std::string supplier;
  std::string melt_number;
  std::string document;  ///< "inspection document 3.1", "supplier's word"
  CalendarDate received{};
  std::string owner;  ///< for a customer's own material: whose, by job number; else empty
  std::string qr;
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

/// A sheet of labels, three across, to cut along the grey lines or print on label stock of 63.5 mm
/// by 38.1 mm (A4, 21 a sheet) or 2 5/8 in by 1 in (Letter, 30 a sheet).
/// Source of the two sizes: common practice, from memory.
Outcome<Document> lot_labels(const std::vector<LotLabel>& lots, Instant printed, const Look& look,
                             const FontBook& fonts);
Outcome<Document> piece_labels(const std::vector<PieceLabel>& pieces, Instant printed,
                               const Look& look, const FontBook& fonts);
Outcome<Document> blade_labels(const std::vector<BladeLabel>& blades, Instant printed,
                               const Look& look, const FontBook& fonts);

}  // namespace tangmark::reports
