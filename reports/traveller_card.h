// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "domain/measure/outcome.h"
#include "reports/look.h"

namespace tangmark::reports {

class FontBook;

/// One operation on the card, in the order in which the bench log takes it.
struct TravellerStep {
  std::string operation;             ///< "Harden", "Temper 2"
  std::vector<Temperature> set;      ///< planned set points; none for cold work
  std::optional<Duration> hold;      ///< soak or duration
  std::string note;                  ///< medium, grit, allowance; may be empty
  std::vector<std::string> to_fill;  ///< fields for the pencil: "in", "out", "oil °C"
  std::optional<Instant> done;       ///< set when the log already has it
  bool gate = false;                 ///< nothing after it may be done before it is answered
};

/// The paper card that goes with the blade. There is no place for the buyer's name: a card lies
/// about the shop.
struct TravellerCard {
  std::string blade;  ///< the short number
  std::string job;    ///< job number or first name only
  std::string model;
  std::string steel;
  std::string piece;  ///< tag of the bar, piece or billet it is cut from
  std::optional<Length> blade_length;
  std::optional<Length> height_at_heel;
  std::optional<Length> spine_thickness;
  std::string hardness_aim;
  std::vector<std::string> cautions;
  std::vector<TravellerStep> steps;
  std::string qr;  ///< what the code says; ASCII
  Instant printed{};
};

/// Sets the card on A5 (half Letter on Letter paper); a long route goes on over further cards, each
/// with the big number.
Outcome<Document> traveller_document(const TravellerCard& card, const Look& look,
                                     const FontBook& fonts);

}  // namespace tangmark::reports
