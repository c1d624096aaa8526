// SPDX-License-Identifier: MIT
// What only a place can do: long work, the proposal of a plan, firings moved by hand.
#include "db/actions/action.h"
#include "db/check.h"
#include "gui/desk/desk_inside.h"
#include "gui/desk/window_words.h"

namespace tangmark::desk {
namespace {

constexpr double planning_seconds = 6;
constexpr std::chrono::minutes nudge{15};

}  // namespace

void Desk::Inside::turn_board(const std::string& way) {
  constexpr std::chrono::hours page{24};
  Duration& shift = kiln_memory.shift;
  shift = way == "board now" ? Duration{} : way == "board later" ? shift + page : shift - page;
}

Outcome<std::variant<Said, Job>> Desk::accept_plan() {
  Inside& in = *inside_;
  const DoNow take = in.proposal->take;
  const auto done =
      db::perform(in.shop, take.action, db::Given(take.fields.begin(), take.fields.end()), now());
  if (!done) return in_window_words(done.problems());
  in.proposal.reset();
  in.look_again();
  std::string sentence = "The change is booked.";
  for (const std::string& warning : done->warnings) sentence += " " + warning;
  return std::variant<Said, Job>(Said{std::move(sentence), std::nullopt});
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
  if (work.name == "accept plan" && in.proposal) return accept_plan();
  if (work.name.starts_with("board ")) {
    in.turn_board(work.name);
    return std::variant<Said, Job>(Said{});
  }
  if (work.name == "earlier" || work.name == "later") {
    const auto number = number_of(work.id);
    const auto firing = number ? db::firing_row(in.shop, *number) : std::nullopt;
    if (!firing) return Problem{"firing", "The firing is no longer booked.", ""};
    auto said = propose_move(
        work.id, firing->kiln,
        work.name == "earlier" ? firing->starts_at - nudge : firing->starts_at + nudge);
    if (!said) return said.problems();
    return std::variant<Said, Job>(*said);
  }
  return Problem{"", "Nothing is to be done there now.", ""};
}

Job Desk::plan_job() const {
  return {"Planning the kilns",
          [path = inside_->shop.path(), settings = inside_->settings,
           now = now()](const Going& going) -> std::function<Said(Desk&)> {
            auto shop = db::ShopFile::open(path, now);
            if (!shop)
              return [problem = shop.problem()](Desk&) {
                return Said{problem.sentence, std::nullopt};
              };
            const Sight sight{*shop, settings, now};
            const KilnProposal proposal = plan_kilns(sight, planning_seconds, going);
            return [proposal](Desk& desk) {
              desk.inside_->proposal = proposal;
              return Said{proposal.title + ".", std::nullopt};
            };
          }};
}

Job Desk::cut_job(const std::string& lot) const {
  return {
      "Looking for better cuts",
      [path = inside_->shop.path(), settings = inside_->settings, now = now(),
       lot](const Going& going) -> std::function<Said(Desk&)> {
        auto shop = db::ShopFile::open(path, now);
        if (!shop)
          return [problem = shop.problem()](Desk&) { return Said{problem.sentence, std::nullopt}; };
        const auto found =
            searched_cuts({*shop, settings, now}, lot, [&going] { return going.stop.load(); });
        if (!found)
          return [problem = found.problem()](Desk&) {
            return Said{problem.sentence, std::nullopt};
          };
        return [found = *found](Desk& desk) {
          desk.inside_->cuts = found;
          return Said{found.plan.proven ? "No better plan exists." : "This is the best plan found.",
                      std::nullopt};
        };
      }};
}

Job Desk::check_job() const {
  return {"Checking the file",
          [path = inside_->shop.path(), now = now()](const Going&) -> std::function<Said(Desk&)> {
            auto shop = db::ShopFile::open(path, now);
            if (!shop)
              return [problem = shop.problem()](Desk&) {
                return Said{problem.sentence, std::nullopt};
              };
            const db::CheckReport report = db::check_shop(*shop);
            std::string sentence = "The file is sound.";
            if (!report.wrong.empty()) {
              sentence = report.wrong.front();
              if (report.wrong.size() > 1)
                sentence += " And " + std::to_string(report.wrong.size() - 1) + " more.";
            }
            for (const std::string& looked : report.looked_at) sentence += " " + looked;
            return [sentence](Desk&) { return Said{sentence, std::nullopt}; };
          }};
}

Job Desk::promise_job(const std::string& commission) const {
  return {"Counting how often each day is met",
          [path = inside_->shop.path(), settings = inside_->settings, now = now(),
           commission](const Going&) -> std::function<Said(Desk&)> {
            auto shop = db::ShopFile::open(path, now);
            if (!shop)
              return [problem = shop.problem()](Desk&) {
                return Said{problem.sentence, std::nullopt};
              };
            const Sight sight{*shop, settings, now};
            const PromiseView promise = promise_of(sight, commission);
            return [promise, commission](Desk& desk) {
              desk.inside_->promises[commission] = promise;
              return Said{promise.day.empty()
                              ? promise.sentence
                              : promise.day + ". " + promise.sentence + " " + promise.from,
                          std::nullopt};
            };
          }};
}

MoveTrial Desk::try_move(const std::string& firing, const std::string& kiln, Instant start) const {
  return try_firing(inside_->sight(), {number_of(firing).value_or(0), kiln, start},
                    inside_->kiln_memory);
}

Outcome<Said> Desk::propose_move(const std::string& firing, const std::string& kiln,
                                 Instant start) {
  const auto proposal =
      propose(inside_->sight(), {number_of(firing).value_or(0), kiln, start}, inside_->kiln_memory);
  if (!proposal) return proposal.problems();
  inside_->proposal = *proposal;
  return Said{proposal->title + ".", std::nullopt};
}

Outcome<Said> Desk::move_all_the_same(const std::string& firing, const std::string& kiln,
                                      Instant start, const std::string& reason) {
  if (reason.find_first_not_of(' ') == std::string::npos)
    return Problem{"override", "No reason is given.",
                   "Say why it is put there all the same; the reason is kept."};
  return act(
      "move_firing",
      {{"firing", firing}, {"kiln", kiln}, {"start", to_stored(start)}, {"override", reason}});
}

}  // namespace tangmark::desk
