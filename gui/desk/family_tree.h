// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "gui/desk/offer.h"

namespace tangmark::desk {

/// One lot, piece, billet or blade in the family of a piece.
struct FamilyMember {
  std::string title;   ///< "Bar 17-2"
  std::string under;   ///< "0.92 kg, tagged"
  int column = 0;      ///< from lots at the left to blades at the right
  int row = 0;
  bool selected = false;
  bool gone = false;   ///< cut up, used or scrapped
  Deed go;
};

struct FamilyLink {
  std::size_t from = 0, to = 0;
};

/// Where a piece came from and what came of it, both directions.
struct FamilyTree {
  std::vector<FamilyMember> members;
  std::vector<FamilyLink> links;
};

std::string in_words(const FamilyTree& tree);

}  // namespace tangmark::desk
