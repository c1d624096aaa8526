// SPDX-License-Identifier: MIT
#pragma once

#include <cassert>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace tangmark {

/// Why something the maker asked for was refused, in words the maker can act on.
struct Problem {
  std::string field;     ///< the field, column or line at fault ("length", "line 14, column Temp")
  std::string sentence;  ///< what is wrong: one plain sentence with a full stop
  std::string remedy;    ///< what to do about it: one plain sentence, may be empty
  friend bool operator==(const Problem&, const Problem&) = default;
};

using Problems = std::vector<Problem>;

/// A value, or every reason why there is none. Expected failures travel as values that the caller
/// must look at; exceptions are for the broken machine.
///
///     Outcome<Length> l = parse_length("1/8 in", "thickness");
///     if (!l) return l.problems();
template <class T>
class [[nodiscard]] Outcome {
 public:
  Outcome(T value) : held_(std::in_place_index<0>, std::move(value)) {}
  Outcome(Problem problem) : held_(std::in_place_index<1>, Problems{std::move(problem)}) {}
  Outcome(Problems problems) : held_(std::in_place_index<1>, std::move(problems)) {
    assert(!std::get<1>(held_).empty() && "a refusal must name at least one problem");
  }

  explicit operator bool() const { return held_.index() == 0; }
  bool ok() const { return held_.index() == 0; }

  /// The value. Asking a refusal for its value is a mistake in the program.
  const T& value() const& { assert(ok()); return std::get<0>(held_); }
  T&& value() && { assert(ok()); return std::get<0>(std::move(held_)); }
  T& value() & { assert(ok()); return std::get<0>(held_); }
  const T& operator*() const& { return value(); }
  T& operator*() & { return value(); }
  T&& operator*() && { return std::move(*this).value(); }
  const T* operator->() const { return &value(); }
  T* operator->() { return &value(); }
  T value_or(T other) const { return ok() ? value() : std::move(other); }

  /// All problems; empty for a success.
  Problems problems() const { return ok() ? Problems{} : std::get<1>(held_); }
  /// The first problem. Asking a success for its problem is a mistake in the program.
  const Problem& problem() const { assert(!ok()); return std::get<1>(held_).front(); }

 private:
  std::variant<T, Problems> held_;
};

/// For work that has no result but can be refused.
struct Done {
  friend bool operator==(const Done&, const Done&) = default;
};

/// Gathers the problems of a whole form, so that the maker sees all of them at once.
///
///     Gather form;
///     auto width = form.take(parse_length(w, "width"));   // default value when refused
///     if (form.refused()) return form.problems();
class Gather {
 public:
  template <class T>
  T take(Outcome<T> outcome, T otherwise = T{}) {
    if (outcome) return std::move(outcome).value();
    for (Problem& p : outcome.problems()) problems_.push_back(std::move(p));
    return otherwise;
  }
  void add(Problem problem) { problems_.push_back(std::move(problem)); }
  bool refused() const { return !problems_.empty(); }
  const Problems& problems() const { return problems_; }

 private:
  Problems problems_;
};

}  // namespace tangmark
