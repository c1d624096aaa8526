// SPDX-License-Identifier: MIT
#include "gui/desk/desk.h"

#include "db/actions/action.h"
#include "db/backup.h"
#include "gui/desk/bench_advice.h"
#include "gui/desk/blades_desk.h"
#include "gui/desk/calc_desk.h"
#include "gui/desk/certificates_desk.h"
#include "gui/desk/commissions_desk.h"
#include "gui/desk/delay_letter_draft.h"
#include "gui/desk/desk_forms.h"
#include "gui/desk/desk_inside.h"
#include "gui/desk/forms.h"
#include "gui/desk/papers.h"
#include "gui/desk/questions_desk.h"
#include "gui/desk/record_desk.h"
#include "gui/desk/shop_desk.h"
#include "gui/desk/steel_desk.h"
#include "gui/desk/today_desk.h"
#include "gui/desk/window_words.h"

namespace tangmark::desk {

Desk::Desk(std::unique_ptr<Inside> inside) : inside_(std::move(inside)) {}
Desk::Desk(Desk&&) noexcept = default;
Desk& Desk::operator=(Desk&&) noexcept = default;
Desk::~Desk() = default;

Outcome<Desk> Desk::open(const std::filesystem::path& path, Clock clock) {
  auto opened = db::ShopFile::open(path, clock());
  if (!opened) return opened.problems();
  db::ShopFile shop = std::move(opened).value();
  auto settings = db::load_settings(shop);
  const auto changes = shop.changes_by_others();
  return Desk(std::unique_ptr<Inside>(
      new Inside{std::move(shop), std::move(clock), std::move(settings), changes}));
}

Instant Desk::now() const {
  return inside_->clock();
}
db::ShopFile& Desk::shop() const {
  return inside_->shop;
}
std::string Desk::shop_name() const {
  return inside_->settings.shop_name;
}
std::string Desk::notice() const {
  return inside_->shop.notice();
}

bool Desk::changed_elsewhere() {
  const auto changes = inside_->shop.changes_by_others();
  if (changes == inside_->changes_seen) return false;
  inside_->changes_seen = changes;
  inside_->look_again();
  return true;
}

PlaceList Desk::list(Place place) const {
  const Sight sight = inside_->sight();
  switch (place) {
    case Place::today:
      return today_list(sight);
    case Place::commissions:
      return commissions_list(sight);
    case Place::steel:
      return steel_list(sight);
    case Place::blades:
      return blades_list(sight);
    case Place::kiln:
      return kiln_list(sight);
    case Place::certificates:
      return certificates_list(sight);
    case Place::shop:
      return shop_list(sight);
  }
  return {};
}

Form Desk::form(const std::string& action, const Typed& filled) const {
  if (action == "desk.ask") {
    const auto question = filled.find("question");
    return question_form(inside_->sight(), question == filled.end() ? "" : question->second,
                         filled);
  }
  if (action == "desk.calc") return calculation_form(filled);
  if (action == "desk.record") return record_form(inside_->sight(), filled);
  if (is_desk_form(action)) return desk_form(action, filled);
  if (action == "tell_delay")
    return form_of(action, inside_->sight(), with_letter(inside_->sight(), filled));
  Form form = form_of(action, inside_->sight(), filled);
  form.under = advice_before(inside_->sight(), action, filled);
  return form;
}

Outcome<Said> Desk::act(const std::string& action, const Typed& typed) {
  if (action == "desk.ask") {
    const auto question = typed.find("question");
    return ask(question == typed.end() ? "" : question->second, typed);
  }
  if (action == "desk.calc") {
    auto sheet = calculation_sheet(inside_->sight(), typed);
    if (!sheet) return sheet.problems();
    inside_->worked_out = std::move(sheet).value();
    return Said{"", GoTo{Place::steel, "desk"}};
  }
  if (action == "desk.record") {
    auto preview = record_sheet(inside_->sight(), typed);
    if (!preview) return preview.problems();
    inside_->previewed = std::move(preview).value();
    return Said{"", GoTo{Place::kiln, inside_->previewed->firing}};
  }
  if (action == "desk.quote_line") return add_quote_line(typed);
  if (is_desk_form(action)) return desk_act(action, inside_->sight(), typed);
  const auto done =
      db::perform(inside_->shop, action, db::Given(typed.begin(), typed.end()), now());
  if (!done) return in_window_words(done.problems());
  inside_->look_again();
  if (action == "attach_record") inside_->previewed.reset();
  Said said;
  said.sentence = done_words(action, done->number);
  // What a quote was worked from stands on the quote desk, where there is room for it.
  if (action != "make_quote") {
    for (const std::string& warning : done->warnings)
      said.sentence += " " + in_window_words(warning);
  }
  said.go = place_after(action, done->number, typed);
  if (action == "make_quote") {
    inside_->quoting.clear();
    inside_->quote_typed.reset();
  }
  return said;
}

Outcome<Paper> Desk::document(const std::string& kind, const std::string& id) const {
  return paper_of(inside_->sight(), kind, id);
}

PlaceView Desk::document_view(const ShowDocument& wanted, const Paper& paper) const {
  PlaceView view;
  view.picture = paper;
  view.next = {"This is the page as it prints",
               "Escape goes back.",
               {{"Print it", OpenForm{"desk.print", {{"kind", wanted.kind}, {"id", wanted.id}}},
                 "Enter", ""}}};
  return view;
}

Outcome<Said> Desk::ask(const std::string& number, const Typed& typed) {
  auto sheet = answer_sheet(inside_->sight(), number, typed);
  if (!sheet) return in_window_words(sheet.problems());
  inside_->answer = std::move(sheet).value();
  Said said;
  said.go = GoTo{Place::today, ""};
  return said;
}

BenchView Desk::bench(const std::vector<std::string>& put_off) const {
  return bench_view(inside_->sight(), put_off);
}

}  // namespace tangmark::desk
