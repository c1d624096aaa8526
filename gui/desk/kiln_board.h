// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "domain/measure/when.h"

namespace tangmark::desk {

/// A point of a temperature curve. Degrees C as a bare number: it is only drawn.
struct CurvePoint {
  Instant at;
  double celsius = 0;
};
using BoardCurve = std::vector<CurvePoint>;

/// One firing in its lane: heat-up, soak, quench or slow cooling, and the natural cooling after it.
struct BoardFiring {
  std::string id;
  std::string caption;               ///< "805 °C harden"
  Instant busy_from;                 ///< heating begins
  Instant start;                     ///< the kiln is at its temperature, loading begins
  Instant busy_to;                   ///< the kiln is free again
  BoardCurve planned;                ///< thin
  BoardCurve recorded;               ///< thick; empty until measured
  BoardCurve old_place;              ///< dashed; only for a firing that a proposal moves
  std::vector<std::string> blades;
  bool proposed = false;             ///< drawn in the accent
  bool may_move = true;              ///< false: running, done or kept in place by the maker
  bool kept = false;                 ///< kept in place by the maker
};

/// Where what is booked breaks a rule.
struct BoardConflict {
  std::string firing;
  Instant from, to;
  std::string sentence;
};

struct BoardLane {
  std::string id;
  std::string name;
  std::string now;    ///< "now 683 °C"
  std::string state;  ///< "off since 10:47"
  double top_celsius = 1000;  ///< the height of the lane is its own scale
  std::vector<BoardFiring> firings;
  std::vector<BoardConflict> conflicts;  ///< hatched, with their words
};

struct BoardSpan {
  Instant from, to;
};

struct BoardTick {
  Instant at;
  std::string text;
  bool day = false;  ///< a new day: written strong
};

/// One colour of the steel with its figure, in the shop's own degrees.
struct BoardKey {
  double celsius = 0;
  std::string figure;
};

/// Kilns along real time.
struct KilnBoard {
  Instant from, to, now;
  std::string now_text;              ///< "now 11:42"
  std::vector<BoardLane> lanes;
  std::vector<BoardSpan> attended;   ///< white; all other hours are grey
  std::vector<BoardTick> ticks;
  std::string key_title;             ///< "Colour of the steel, °C:"
  std::vector<BoardKey> key;         ///< from the coldest to the hottest
  std::string selected;              ///< id of a firing
  std::string range;                 ///< "Wed 25 Nov 06:00 to Fri 27 Nov 02:00"
};

/// What happens when a firing is put at another place: whether it may stand there, and if not, why.
struct MoveTrial {
  bool may = false;
  bool may_set_aside = false;  ///< not allowed, but the maker may do it all the same and say why
  std::string sentence;               ///< "Starts Thu 26 Nov, 16:40 in the long kiln."
  std::vector<std::string> reasons;   ///< why it may not go there
  BoardFiring there;                  ///< the firing as it would be
};

/// The whole board in words, for readers of the screen.
std::string in_words(const KilnBoard& board);

}  // namespace tangmark::desk
