// SPDX-License-Identifier: MIT
#pragma once

#include <atomic>
#include <optional>
#include <string>
#include <vector>

#include "db/listing/kiln_rows.h"
#include "gui/desk/place_view.h"
#include "gui/desk/sheet.h"
#include "gui/desk/sight.h"

namespace tangmark::desk {

/// One firing that a proposal would book, move or drop.
struct ProposedFiring {
  std::optional<std::int64_t> number;  ///< of the booked firing it moves or drops; none: a new one
  bool dropped = false;
  db::FiringRow firing;                ///< as it would be; for a dropped one as it is
};

/// A change of the kiln plan, kept until the maker takes it or leaves it.
struct KilnProposal {
  std::string title;
  std::vector<std::string> sentences;  ///< why, what it asks, who becomes late, what finds no place
  std::vector<Fact> figures;           ///< value: as booked; note: as proposed
  std::vector<ProposedFiring> firings;
  DoNow take;                          ///< the action that books it
};

/// Kiln: the blades that wait and the firings ahead at the left, the kilns along real time, and under
/// them the proposal or the selected firing. Ids: a firing's number, or "blade 61".
PlaceList kiln_list(const Sight& sight);
PlaceView kiln_view(const Sight& sight, const std::string& id, const std::optional<KilnProposal>& proposal);

/// Whether a booked firing may stand elsewhere, and if not, why, judged by all rules of the plan.
MoveTrial try_firing(const Sight& sight, std::int64_t number, const std::string& kiln, Instant start);
/// The same as a proposal; refused with the reasons when it may not.
Outcome<KilnProposal> propose(const Sight& sight, std::int64_t number, const std::string& kiln, Instant start);

/// Plans all kilns anew around what is running or kept, as a difference to what is booked. Runs until
/// `seconds` are over or `stop` is set.
KilnProposal plan_kilns(const Sight& sight, double seconds, const std::atomic<bool>& stop);

}  // namespace tangmark::desk
