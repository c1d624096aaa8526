// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <string>

#include "domain/measure/outcome.h"
#include "domain/measure/when.h"
#include "gui/desk/bench.h"
#include "gui/desk/form.h"
#include "gui/desk/going.h"
#include "gui/desk/place_view.h"

namespace tangmark::desk {

class Desk;

/// What was done, in one sentence, and where to look next.
struct Said {
  std::string sentence;
  std::optional<GoTo> go = {};
  std::optional<PlaceWork> then = {};  ///< what follows by itself
};

/// Work that takes longer than a hand's wait. `work` runs on a thread of its own with a shop file
/// of its own, looks at `stop` often and tells how far it has come; what it returns is then called
/// where the desk is.
struct Job {
  std::string doing;  ///< "Planning the kilns"
  std::function<std::function<Said(Desk&)>(const Going& going)> work;
};

/// The clock on the wall, or the one that stands in for it.
using Clock = std::function<Instant()>;

/// One open shop as the window shows it. Every place is a list and, for one selection, a view; what
/// the maker does goes through the same actions as the terminal. Not for two threads at once.
class Desk {
 public:
  static Outcome<Desk> open(const std::filesystem::path& path, Clock clock);
  Desk(Desk&&) noexcept;
  Desk& operator=(Desk&&) noexcept;
  ~Desk();

  std::string shop_name() const;
  /// Why the file is for reading only; empty when it is not.
  std::string notice() const;
  /// True once after another window has changed the file.
  bool changed_elsewhere();

  PlaceList list(Place place) const;
  PlaceView view(Place place, const std::string& id) const;

  /// The form of an action, with sensible defaults and what is filled already.
  Form form(const std::string& action, const Typed& filled) const;
  Outcome<Said> act(const std::string& action, const Typed& typed);
  Outcome<Paper> document(const std::string& kind, const std::string& id) const;
  /// A document on the stage: what it is, and printing it.
  PlaceView document_view(const ShowDocument& wanted, const Paper& paper) const;
  /// Begins what only a place can do. A job for what takes long, else what was done at once.
  Outcome<std::variant<Said, Job>> begin(const PlaceWork& work);

  /// The quote desk's live answer to what is typed there, which is remembered until the desk is
  /// left.
  Outcome<QuoteLive> quote(const QuoteTyped& typed);
  BenchView bench(const std::vector<std::string>& put_off = {}) const;
  MoveTrial try_move(const std::string& firing, const std::string& kiln, Instant start) const;
  /// Keeps a move as a proposal, which the kiln place then shows with Accept and Keep.
  Outcome<Said> propose_move(const std::string& firing, const std::string& kiln, Instant start);
  /// Moves a firing against a rule, for a reason that is kept; it then stays in place.
  Outcome<Said> move_all_the_same(const std::string& firing, const std::string& kiln, Instant start,
                                  const std::string& reason);

  Instant now() const;
  db::ShopFile& shop() const;

 private:
  struct Inside;
  explicit Desk(std::unique_ptr<Inside> inside);
  Outcome<Said> ask(const std::string& number, const Typed& typed);
  Outcome<std::variant<Said, Job>> at_quote_desk(const PlaceWork& work);
  Outcome<Said> add_quote_line(const Typed& typed);
  Outcome<std::variant<Said, Job>> accept_plan();
  Job plan_job() const;
  Job check_job() const;
  Job cut_job(const std::string& lot) const;
  Job promise_job(const std::string& commission) const;
  std::unique_ptr<Inside> inside_;
};

}  // namespace tangmark::desk
