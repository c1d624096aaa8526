// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "db/listing/kiln_rows.h"
#include "gui/desk/going.h"
#include "gui/desk/kiln_memory.h"
#include "gui/desk/place_view.h"
#include "gui/desk/sheet.h"
#include "gui/desk/sight.h"

namespace tangmark::desk {

/// One firing that a proposal would book, move or drop.
struct ProposedFiring {
  std::optional<std::int64_t> number;  ///< of the booked firing it moves or drops; none: a new one
  bool dropped = false;
  bool stays = false;                  ///< where it is, with another load
  db::FiringRow firing;                ///< as it would be; for a dropped one as it is
  std::string why;
};

/// A change of the kiln plan, kept until the maker takes it or leaves it.
struct KilnProposal {
  std::string title;
  std::vector<std::string> sentences;  ///< why, what it asks, who becomes late, what finds no place
  std::vector<Fact> figures;           ///< value: as booked; note: as proposed
  std::vector<ProposedFiring> firings;
  DoNow take;                          ///< the action that books it
};

/// Kiln: the blades that wait and the firings ahead at the left, the kilns along real time, and
/// under them the proposal or the selected firing. Ids: a firing's number, or "blade 61".
PlaceList kiln_list(const Sight& sight);
PlaceView kiln_view(const Sight& sight, const std::string& id,
                    const std::optional<KilnProposal>& proposal, KilnMemory& memory);

/// A place on the board where a firing is held or put.
struct FiringPlace {
  std::int64_t number = 0;
  std::string kiln;
  Instant start;
};
/// Whether a booked firing may stand there, and if not, why, judged by all rules of the plan; and
/// whether the maker may put it there all the same.
MoveTrial try_firing(const Sight& sight, const FiringPlace& place, KilnMemory& memory);
/// The same as a proposal; refused with the reasons when it may not.
Outcome<KilnProposal> propose(const Sight& sight, const FiringPlace& place, KilnMemory& memory);

/// Plans all kilns anew around what is running or kept, as a difference to what is booked. Runs
/// until `seconds` are over, it is stopped, or nothing better can be found; tells how far it has
/// come.
KilnProposal plan_kilns(const Sight& sight, double seconds, const Going& going);

}  // namespace tangmark::desk
