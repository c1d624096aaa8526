// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "db/actions/action.h"
#include "domain/commission/shop_settings.h"
#include "domain/measure/energy.h"
#include "domain/measure/length.h"
#include "domain/measure/mass.h"
#include "domain/measure/money.h"
#include "domain/measure/share.h"
#include "domain/measure/temperature.h"
#include "domain/measure/trade_word.h"
#include "domain/measure/when.h"

namespace tangmark::db {

/// The filled form of an action. Reading a field that was not given takes the Field's fallback; a
/// required one that is missing, or one that does not parse, is a problem. All problems of the form
/// are gathered, so read every field before asking refused().
///
///     const auto grade = form.text("grade");
///     const auto thickness = form.maybe_length("thickness");   // optional: nothing when not given
///     if (form.refused()) return form.problems();
class Form {
 public:
  Form(const Action& action, const Given& given, const commission::ShopSettings& settings,
       Instant now);

  bool has(std::string_view field) const;  ///< given, or has a fallback
  std::string text(std::string_view field);
  std::optional<std::string> maybe_text(std::string_view field);
  bool yes(std::string_view field);  ///< "yes"/"no"; no when not given
  std::optional<bool> maybe_yes(std::string_view field);
  std::int64_t whole(std::string_view field, std::int64_t low, std::int64_t high);
  std::optional<std::int64_t> maybe_whole(std::string_view field, std::int64_t low,
                                          std::int64_t high);
  Length length(std::string_view field);
  std::optional<Length> maybe_length(std::string_view field);
  Mass mass(std::string_view field);
  std::optional<Mass> maybe_mass(std::string_view field);
  std::optional<Volume> maybe_volume(std::string_view field);
  Temperature temperature(std::string_view field);
  std::optional<Temperature> maybe_temperature(std::string_view field);
  std::optional<TemperatureDifference> maybe_temperature_step(std::string_view field);
  Money money(std::string_view field);  ///< a bare amount is in the shop's currency
  std::optional<Money> maybe_money(std::string_view field);
  Share share(std::string_view field);
  std::optional<Share> maybe_share(std::string_view field);
  /// A plain decimal quantity such as "0.5" as millionths.
  std::optional<Share> maybe_quantity(std::string_view field);
  CalendarDate date(std::string_view field);
  std::optional<CalendarDate> maybe_date(std::string_view field);
  Instant instant(std::string_view field);
  std::optional<Instant> maybe_instant(std::string_view field);
  Duration duration(std::string_view field);
  std::optional<Duration> maybe_duration(std::string_view field);
  template <class E>
  E word(std::string_view field, E otherwise) {
    const auto given = maybe_text(field);
    return given ? gather_.take(of_word<E>(*given, field), otherwise) : otherwise;
  }
  template <class E>
  std::optional<E> maybe_word(std::string_view field) {
    const auto given = maybe_text(field);
    if (!given) return std::nullopt;
    auto value = of_word<E>(*given, field);
    if (value) return *value;
    gather_.add(value.problem());
    return std::nullopt;
  }
  /// A file's bytes; refuses a path that cannot be read or is above 64 MiB.
  struct File {
    std::string name, bytes;
  };
  std::optional<File> maybe_file(std::string_view field);
  /// "a,b,c" as a list, blanks trimmed.
  std::vector<std::string> list(std::string_view field);

  template <class T>
  T take(Outcome<T> outcome, T otherwise = T{}) {
    return gather_.take(std::move(outcome), std::move(otherwise));
  }
  void add(Problem problem) { gather_.add(std::move(problem)); }
  bool refused() const { return gather_.refused(); }
  const Problems& problems() const { return gather_.problems(); }

 private:
  const Field& spec(std::string_view field) const;
  std::optional<std::string> raw(std::string_view field) const;
  std::string needed(std::string_view field);
  template <class T, class Parse>
  T read(std::string_view field, Parse parse);
  template <class T, class Parse>
  std::optional<T> maybe_read(std::string_view field, Parse parse);

  const Action& action_;
  const Given& given_;
  const commission::ShopSettings& settings_;
  Instant now_;
  Zone zone_;
  Gather gather_;
};

}  // namespace tangmark::db
