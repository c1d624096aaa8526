// SPDX-License-Identifier: MIT
// What each place shows.
#include "gui/desk/blades_desk.h"
#include "gui/desk/certificates_desk.h"
#include "gui/desk/commissions_desk.h"
#include "gui/desk/desk_inside.h"
#include "gui/desk/shop_desk.h"
#include "gui/desk/steel_desk.h"
#include "gui/desk/today_desk.h"

namespace tangmark::desk {

PlaceView Desk::Inside::today(const std::string& id) const {
  PlaceView view = today_view(sight(), id);
  if (!answer) return view;
  view.sheet = *answer;
  Section back;
  back.offers = {{"Put the answer away", PlaceWork{"put answer away", {}}, "", ""}};
  view.sheet.sections.push_back(std::move(back));
  return view;
}

PlaceView Desk::Inside::commissions(const std::string& id) {
  if (quoting.empty() || quoting != id) return commission_view(sight(), id);
  const QuoteTyped typed = quote_typed.value_or(QuoteTyped{});
  if (beside == "versions") return quote_versions_view(sight(), id, typed);
  if (beside == "pieces") return quote_pieces_view(sight(), id);
  PlaceView view = quote_view(sight(), id, quote_typed, promise_of(id));
  if (const auto* quote = std::get_if<QuoteView>(&view.picture)) quote_typed = quote->typed;
  return view;
}

PlaceView Desk::Inside::steel(const std::string& id) const {
  PlaceView view = steel_view(sight(), id, cuts);
  if (id != "desk" || !worked_out) return view;
  std::vector<Section> below = std::move(view.sheet.sections);
  view.sheet = *worked_out;
  view.sheet.sections.insert(view.sheet.sections.end(), below.begin(), below.end());
  return view;
}

PlaceView Desk::Inside::kiln(const std::string& id) {
  PlaceView view = kiln_view(sight(), id, proposal, kiln_memory);
  if (!previewed || previewed->firing != id) return view;
  const std::vector<Section>& shown = previewed->sections;
  view.picture = {};  // the first rows want the room
  view.sheet.sections.insert(view.sheet.sections.begin(), shown.begin(), shown.end());
  return view;
}

PlaceView Desk::view(Place place, const std::string& id) const {
  switch (place) {
    case Place::today: return inside_->today(id);
    case Place::commissions: return inside_->commissions(id);
    case Place::steel: return inside_->steel(id);
    case Place::blades: return blade_view(inside_->sight(), id);
    case Place::kiln: return inside_->kiln(id);
    case Place::certificates: return certificate_view(inside_->sight(), id);
    case Place::shop: return shop_view(inside_->sight(), id);
  }
  return {};
}

}  // namespace tangmark::desk
