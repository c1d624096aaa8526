// SPDX-License-Identifier: MIT
#include "gui/desk/delay_letter_draft.h"

#include "db/store/delay_letter_of.h"
#include "db/store/named.h"

namespace tangmark::desk {

Typed with_letter(const Sight& sight, const Typed& filled) {
  const auto number = filled.find("commission");
  if (number == filled.end()) return filled;
  const auto commission = db::commission_named(sight.shop, number->second, "commission");
  if (!commission) return filled;
  const auto letter = db::delay_letter_of(sight.shop, *commission, sight.now);
  if (!letter) return filled;
  Typed more = filled;
  more.emplace("new_day", to_stored(letter->new_day));
  more.emplace("words", commission::delay_letter(*letter));
  return more;
}

}  // namespace tangmark::desk
