// SPDX-License-Identifier: MIT
#include "gui/desk/kiln_board.h"

#include <utility>

namespace tangmark::desk {

std::string in_words(const KilnBoard& board) {
  std::string text = "Kilns along time, " + board.now_text + ".";
  for (const BoardLane& lane : board.lanes) {
    text += " " + lane.name + ": ";
    if (lane.firings.empty()) text += "no firing";
    bool first = true;
    for (const BoardFiring& firing : lane.firings) {
      if (!std::exchange(first, false)) text += "; ";
      text += firing.caption;
      if (!firing.blades.empty()) {
        text += " with";
        for (const std::string& blade : firing.blades) text += " " + blade;
      }
      if (firing.kept) text += " (kept in place)";
      if (firing.id == board.selected) text += " (selected)";
    }
    text += ".";
    for (const BoardConflict& conflict : lane.conflicts)
      text += " Firing " + conflict.firing + " does not fit: " + conflict.sentence;
  }
  return text;
}

}  // namespace tangmark::desk
