// SPDX-License-Identifier: MIT
#include "gui/desk/family_tree.h"

namespace tangmark::desk {

std::string in_words(const FamilyTree& tree) {
  std::string text = "Family tree.";
  for (const FamilyLink& link : tree.links) {
    text += " " + tree.members[link.from].title + " became " + tree.members[link.to].title + ".";
  }
  return text;
}

}  // namespace tangmark::desk
