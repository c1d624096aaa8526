// SPDX-License-Identifier: MIT
#include "gui/desk/life_line.h"

namespace tangmark::desk {

std::string in_words(const LifeLine& life) {
  std::string text = "From bar to buyer.";
  for (const LifeEvent& event : life.events) {
    text += " " + event.title + ", " + event.when;
    if (!event.note.empty()) text += ", " + event.note;
    text += ".";
  }
  return text;
}

}  // namespace tangmark::desk
