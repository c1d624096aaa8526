// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "gui/desk/offer.h"
#include "gui/desk/sight.h"

namespace tangmark::desk {

/// One figure of the bench, to be read at two metres.
struct BenchTile {
  std::string label, value, unit, note;
};

/// A blade in the order of the quench.
struct BenchBlade {
  std::string number;
  std::string state;                 ///< "out 9:40", "next", "then", "last"
  std::vector<std::string> lines;
  bool here = false, done = false;
};

/// The bench while blades are quenched one by one: one sentence, one number, one target.
struct BenchView {
  std::string heading, clock, progress;
  std::string number;                ///< of the blade to take out; empty when none is left
  std::optional<double> celsius;     ///< of its steel, by the programme; only for the tint
  std::string tint_words;            ///< "815 °C, as set"
  std::string sentence, advice;
  std::vector<BenchTile> tiles;
  std::string target;                ///< "42 is in the oil"
  std::optional<DoNow> record;       ///< what the target does
  std::optional<OpenForm> trouble;   ///< "Something is wrong"
  std::string put_off;               ///< "Not yet, 43 first"; empty when no other blade waits
  std::string undo_words;            ///< "Undo: quench of 41"
  std::optional<DoNow> undo;         ///< strikes out the quench logged last; the log keeps it
  std::vector<BenchBlade> order;
  std::string wait_label, wait;      ///< time left to temper the blade quenched first
  std::vector<std::string> wait_notes;
};

/// The hardening that is at hand: running, or the next one within half a day. Blades whose numbers
/// are in `put_off` come after the others, the one put off last at the very end.
BenchView bench_view(const Sight& sight, const std::vector<std::string>& put_off = {});
std::string in_words(const BenchView& bench);

}  // namespace tangmark::desk
