// SPDX-License-Identifier: MIT
#include "gui/desk/desk.h"

#include "db/actions/action.h"
#include "db/backup.h"
#include "db/check.h"
#include "db/shop_file.h"
#include "db/store/settings_store.h"
#include "gui/desk/bench_advice.h"
#include "gui/desk/blades_desk.h"
#include "gui/desk/calc_desk.h"
#include "gui/desk/certificates_desk.h"
#include "gui/desk/commissions_desk.h"
#include "gui/desk/cut_search.h"
#include "gui/desk/delay_letter_draft.h"
#include "gui/desk/desk_forms.h"
#include "gui/desk/forms.h"
#include "gui/desk/kiln_desk.h"
#include "gui/desk/papers.h"
#include "gui/desk/questions_desk.h"
#include "gui/desk/quote_desk.h"
#include "gui/desk/record_desk.h"
#include "gui/desk/shop_desk.h"
#include "gui/desk/sight.h"
#include "gui/desk/steel_desk.h"
#include "gui/desk/today_desk.h"
#include "gui/desk/window_words.h"

namespace tangmark::desk {
namespace {

constexpr double planning_seconds = 6;
constexpr std::chrono::minutes nudge{15};

}  // namespace

struct Desk::Inside {
  db::ShopFile shop;
  Clock clock;
  commission::ShopSettings settings;
  std::int64_t changes_seen;
  std::optional<KilnProposal> proposal{};
  KilnMemory kiln_memory{};
  std::optional<Sheet> answer{};  // of the question asked last, until it is put away
  std::optional<Sheet>
      worked_out{};     // on the steel desk last, until something else is looked at there
  std::optional<LookedAtRecord> previewed{};  // until it is attached or another is looked at
  std::string quoting{};  // commission on the quote desk; empty when it is left
  std::optional<QuoteTyped> quote_typed{};  // there, since it was opened
  std::optional<SearchedCuts> cuts{};  // found by a longer search
  std::string beside{};  // "versions" or "pieces" while they are looked at
  std::map<std::string, PromiseView> promises{};  // as counted last, by commission

  std::optional<PromiseView> promise_of(const std::string& commission) const {
    const auto counted = promises.find(commission);
    if (counted == promises.end()) return std::nullopt;
    return counted->second;
  }
  Sight sight() const { return {shop, settings, clock()}; }
  // What the quote being priced is made from, by commission, until anything changes.
  std::optional<std::pair<std::string, db::QuoteInputs>> priced{};
  void look_again() {
    settings = db::load_settings(shop);
    priced.reset();
    kiln_memory.shop_changed();
  }
};

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

Instant Desk::now() const { return inside_->clock(); }
db::ShopFile& Desk::shop() const { return inside_->shop; }
std::string Desk::shop_name() const { return inside_->settings.shop_name; }
std::string Desk::notice() const { return inside_->shop.notice(); }

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
    case Place::today: return today_list(sight);
    case Place::commissions: return commissions_list(sight);
    case Place::steel: return steel_list(sight);
    case Place::blades: return blades_list(sight);
    case Place::kiln: return kiln_list(sight);
    case Place::certificates: return certificates_list(sight);
    case Place::shop: return shop_list(sight);
  }
  return {};
}

PlaceView Desk::view(Place place, const std::string& id) const {
  const Sight sight = inside_->sight();
  switch (place) {
    case Place::today: {
      PlaceView view = today_view(sight, id);
      if (inside_->answer) {
        view.sheet = *inside_->answer;
        Section back;
        back.offers = {{"Put the answer away", PlaceWork{"put answer away", {}}, "", ""}};
        view.sheet.sections.push_back(std::move(back));
      }
      return view;
    }
    case Place::commissions:
      if (!inside_->quoting.empty() && inside_->quoting == id) {
        const QuoteTyped typed = inside_->quote_typed.value_or(QuoteTyped{});
        if (inside_->beside == "versions") return quote_versions_view(sight, id, typed);
        if (inside_->beside == "pieces") return quote_pieces_view(sight, id);
        PlaceView view = quote_view(sight, id, inside_->quote_typed, inside_->promise_of(id));
        if (const auto* quote = std::get_if<QuoteView>(&view.picture))
          inside_->quote_typed = quote->typed;
        return view;
      }
      return commission_view(sight, id);
    case Place::steel: {
      PlaceView view = steel_view(sight, id, inside_->cuts);
      if (id == "desk" && inside_->worked_out) {
        std::vector<Section> below = std::move(view.sheet.sections);
        view.sheet = *inside_->worked_out;
        view.sheet.sections.insert(view.sheet.sections.end(), below.begin(), below.end());
      }
      return view;
    }
    case Place::blades: return blade_view(sight, id);
    case Place::kiln: {
      PlaceView view = kiln_view(sight, id, inside_->proposal, inside_->kiln_memory);
      if (inside_->previewed && inside_->previewed->firing == id) {
        const std::vector<Section>& shown = inside_->previewed->sections;
        view.picture = {};  // the first rows want the room
        view.sheet.sections.insert(view.sheet.sections.begin(), shown.begin(), shown.end());
      }
      return view;
    }
    case Place::certificates: return certificate_view(sight, id);
    case Place::shop: return shop_view(sight, id);
  }
  return {};
}

Form Desk::form(const std::string& action, const Typed& filled) const {
  if (action == "desk.ask") {
    const auto question = filled.find("question");
    return question_form(inside_->sight(), question == filled.end() ? "" : question->second, filled);
  }
  if (action == "desk.calc") return calculation_form(filled);
  if (action == "desk.record") return record_form(inside_->sight(), filled);
  if (is_desk_form(action)) return desk_form(action, filled);
  if (action == "tell_delay") return form_of(action, inside_->sight(), with_letter(inside_->sight(), filled));
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
  const auto done = db::perform(inside_->shop, action, db::Given(typed.begin(), typed.end()), now());
  if (!done) return in_window_words(done.problems());
  inside_->look_again();
  if (action == "attach_record") inside_->previewed.reset();
  Said said;
  said.sentence = done_words(action, done->number);
  // What a quote was worked from stands on the quote desk, where there is room for it.
  if (action != "make_quote") {
    for (const std::string& warning : done->warnings) said.sentence += " " + in_window_words(warning);
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
  view.next = {"This is the page as it prints", "Escape goes back.",
               {{"Print it", OpenForm{"desk.print", {{"kind", wanted.kind}, {"id", wanted.id}}}, "Enter", ""}}};
  return view;
}

Outcome<std::variant<Said, Job>> Desk::begin(const PlaceWork& work) {
  Inside& in = *inside_;
  if (work.name.find("quote") != std::string::npos) return at_quote_desk(work);
  if (work.name == "ask") {
    auto said = ask(work.id, {});
    if (!said) return said.problems();
    return std::variant<Said, Job>(*said);
  }
  if (work.name == "put answer away") {
    in.answer.reset();
    return std::variant<Said, Job>(Said{});
  }
  if (work.name == "check") return std::variant<Said, Job>(check_job());
  if (work.name == "search cuts") return std::variant<Said, Job>(cut_job(work.id));
  if (work.name == "plan") return std::variant<Said, Job>(plan_job());
  if (work.name == "promise odds") return std::variant<Said, Job>(promise_job(work.id));
  if (work.name == "keep plan") {
    in.proposal.reset();
    return std::variant<Said, Job>(Said{"Kept as it is.", std::nullopt});
  }
  if (work.name == "accept plan" && in.proposal) {
    const DoNow take = in.proposal->take;
    const auto done = db::perform(in.shop, take.action, db::Given(take.fields.begin(), take.fields.end()), now());
    if (!done) return in_window_words(done.problems());
    in.proposal.reset();
    in.look_again();
    std::string sentence = "The change is booked.";
    for (const std::string& warning : done->warnings) sentence += " " + warning;
    return std::variant<Said, Job>(Said{std::move(sentence), std::nullopt});
  }
  if (work.name == "board earlier" || work.name == "board later" || work.name == "board now") {
    constexpr std::chrono::hours page{24};
    Duration& shift = in.kiln_memory.shift;
    shift = work.name == "board now" ? Duration{} : work.name == "board later" ? shift + page : shift - page;
    return std::variant<Said, Job>(Said{});
  }
  if (work.name == "earlier" || work.name == "later") {
    const auto number = number_of(work.id);
    const auto firing = number ? db::firing_row(in.shop, *number) : std::nullopt;
    if (!firing) return Problem{"firing", "The firing is no longer booked.", ""};
    auto said = propose_move(work.id, firing->kiln,
                             work.name == "earlier" ? firing->starts_at - nudge : firing->starts_at + nudge);
    if (!said) return said.problems();
    return std::variant<Said, Job>(*said);
  }
  return Problem{"", "Nothing is to be done there now.", ""};
}

Outcome<Said> Desk::ask(const std::string& number, const Typed& typed) {
  auto sheet = answer_sheet(inside_->sight(), number, typed);
  if (!sheet) return in_window_words(sheet.problems());
  inside_->answer = std::move(sheet).value();
  Said said;
  said.go = GoTo{Place::today, ""};
  return said;
}

Job Desk::plan_job() const {
  return {"Planning the kilns", [path = inside_->shop.path(), settings = inside_->settings, now = now()](
                                    const Going& going) -> std::function<Said(Desk&)> {
            auto shop = db::ShopFile::open(path, now);
            if (!shop) return [problem = shop.problem()](Desk&) { return Said{problem.sentence, std::nullopt}; };
            const Sight sight{*shop, settings, now};
            const KilnProposal proposal = plan_kilns(sight, planning_seconds, going);
            return [proposal](Desk& desk) {
              desk.inside_->proposal = proposal;
              return Said{proposal.title + ".", std::nullopt};
            };
          }};
}

Job Desk::cut_job(const std::string& lot) const {
  return {"Looking for better cuts", [path = inside_->shop.path(), settings = inside_->settings,
                                      now = now(), lot](const Going& going)
                                         -> std::function<Said(Desk&)> {
            auto shop = db::ShopFile::open(path, now);
            if (!shop) return [problem = shop.problem()](Desk&) { return Said{problem.sentence, std::nullopt}; };
            const auto found = searched_cuts({*shop, settings, now}, lot, [&going] { return going.stop.load(); });
            if (!found) return [problem = found.problem()](Desk&) { return Said{problem.sentence, std::nullopt}; };
            return [found = *found](Desk& desk) {
              desk.inside_->cuts = found;
              return Said{found.plan.proven ? "No better plan exists." : "This is the best plan found.", std::nullopt};
            };
          }};
}

Job Desk::check_job() const {
  return {"Checking the file", [path = inside_->shop.path(), now = now()](
                                   const Going&) -> std::function<Said(Desk&)> {
            auto shop = db::ShopFile::open(path, now);
            if (!shop) return [problem = shop.problem()](Desk&) { return Said{problem.sentence, std::nullopt}; };
            const db::CheckReport report = db::check_shop(*shop);
            std::string sentence = "The file is sound.";
            if (!report.wrong.empty()) {
              sentence = report.wrong.front();
              if (report.wrong.size() > 1) sentence += " And " + std::to_string(report.wrong.size() - 1) + " more.";
            }
            for (const std::string& looked : report.looked_at) sentence += " " + looked;
            return [sentence](Desk&) { return Said{sentence, std::nullopt}; };
          }};
}

Job Desk::promise_job(const std::string& commission) const {
  return {"Counting how often each day is met",
          [path = inside_->shop.path(), settings = inside_->settings, now = now(), commission](
              const Going&) -> std::function<Said(Desk&)> {
            auto shop = db::ShopFile::open(path, now);
            if (!shop) return [problem = shop.problem()](Desk&) { return Said{problem.sentence, std::nullopt}; };
            const Sight sight{*shop, settings, now};
            const PromiseView promise = promise_of(sight, commission);
            return [promise, commission](Desk& desk) {
              desk.inside_->promises[commission] = promise;
              return Said{promise.day.empty() ? promise.sentence
                                              : promise.day + ". " + promise.sentence + " " + promise.from,
                          std::nullopt};
            };
          }};
}

Outcome<std::variant<Said, Job>> Desk::at_quote_desk(const PlaceWork& work) {
  Inside& in = *inside_;
  Said said;
  said.go = GoTo{Place::commissions, work.id};
  if (work.name == "quote desk") {
    in.quoting = work.id;
    in.quote_typed.reset();
    in.beside.clear();
    said.sentence = "Change a figure or the price; everything follows.";
    said.then = PlaceWork{"promise odds", work.id};
  } else if (work.name == "leave quote") {
    in.quoting.clear();
    in.quote_typed.reset();
    said.go.reset();
  } else if (work.name == "quote versions" || work.name == "quote pieces") {
    in.beside = work.name.substr(6);
  } else if (work.name == "quote again") {
    in.beside.clear();
  } else if (work.name == "quote by models") {
    if (in.quote_typed) in.quote_typed->changes.clear();
    said.sentence = "Every line is again what the models and the shop say.";
  } else if (work.name == "keep quote") {
    const QuoteTyped typed = in.quote_typed.value_or(QuoteTyped{});
    auto kept = act("make_quote", make_quote_fields(in.quoting, typed));
    if (!kept) return kept.problems();
    return std::variant<Said, Job>(*kept);
  }
  return std::variant<Said, Job>(std::move(said));
}

Outcome<QuoteLive> Desk::quote(const QuoteTyped& typed) {
  Inside& in = *inside_;
  in.quote_typed = typed;
  if (!in.priced || in.priced->first != in.quoting) {
    auto inputs = read_quote_inputs(in.sight(), in.quoting);
    if (!inputs) return inputs.problems();
    in.priced.emplace(in.quoting, std::move(inputs).value());
  }
  return answer_quote(in.sight(), in.priced->second, typed);
}

Outcome<Said> Desk::add_quote_line(const Typed& typed) {
  const auto given = [&](const char* field) {
    const auto found = typed.find(field);
    return found == typed.end() ? std::string() : found->second;
  };
  if (given("name").empty())
    return Problem{"name", "The line needs a name.", "Say what it is, such as Mosaic pin."};
  if (given("each").empty())
    return Problem{"each", "The line needs a price.", "Say what one of it costs."};
  QuoteTyped more = inside_->quote_typed.value_or(QuoteTyped{});
  more.changes.push_back({"+ " + given("name"), (given("much").empty() ? "1" : given("much")) +
                                                    " at " + given("each")});
  const QuoteTyped before = inside_->quote_typed.value_or(QuoteTyped{});
  if (const auto live = quote(more); !live) {
    inside_->quote_typed = before;
    return Problem{"each", live.problem().sentence, live.problem().remedy};
  }
  return Said{given("name") + " is on the quote.", GoTo{Place::commissions, inside_->quoting}};
}

BenchView Desk::bench(const std::vector<std::string>& put_off) const {
  return bench_view(inside_->sight(), put_off);
}

MoveTrial Desk::try_move(const std::string& firing, const std::string& kiln, Instant start) const {
  return try_firing(inside_->sight(), {number_of(firing).value_or(0), kiln, start}, inside_->kiln_memory);
}

Outcome<Said> Desk::propose_move(const std::string& firing, const std::string& kiln, Instant start) {
  const auto proposal = propose(inside_->sight(), {number_of(firing).value_or(0), kiln, start}, inside_->kiln_memory);
  if (!proposal) return proposal.problems();
  inside_->proposal = *proposal;
  return Said{proposal->title + ".", std::nullopt};
}

Outcome<Said> Desk::move_all_the_same(const std::string& firing, const std::string& kiln, Instant start,
                                      const std::string& reason) {
  if (reason.find_first_not_of(' ') == std::string::npos)
    return Problem{"override", "No reason is given.", "Say why it is put there all the same; the reason is kept."};
  return act("move_firing", {{"firing", firing}, {"kiln", kiln}, {"start", to_stored(start)}, {"override", reason}});
}

}  // namespace tangmark::desk
