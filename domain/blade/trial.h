// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "domain/blade/blade_id.h"
#include "domain/blade/rank_test.h"
#include "domain/measure/temperature.h"
#include "domain/measure/trade_word.h"

namespace tangmark::blade {

/// What a maker may vary from blade to blade. Each is read off the blade's log, in the unit named
/// by unit_of(); temperatures in the unit the shop reads.
enum class TrialVariable {
  hardening_temperature,
  soak,
  bath_temperature,
  seconds_to_bath,
  temper_temperature,
  temper_parameter,
  thermal_cycles,
  thickness,
  etch_strength,
  etch_passes,
};

/// What may come out of it.
enum class TrialOutcome { hardness, warp, contrast };

/// "C" or "F", "min", "HRC"; empty for a count.
std::string_view unit_of(TrialVariable variable, TemperatureUnit degrees);
bool is_temperature(TrialVariable variable);
std::string_view unit_of(TrialOutcome outcome);

/// What the record of one blade says for a trial. A measure that was not logged is not there.
struct TrialBlade {
  std::int64_t number = 0;
  std::map<TrialVariable, double> variables;
  std::optional<double> outcome;
};

/// One variable against the outcome, over the blades that have both.
struct TrialFinding {
  TrialVariable variable;
  std::size_t blades = 0;        ///< that have both
  std::optional<RankTest> test;  ///< none when there is nothing to order by
  std::string words;             ///< what may be said of it, in plain words
};

/// What to do with the next blade: one thing changed, all else as usual.
struct TrialSuggestion {
  TrialVariable change;
  double value = 0;
  std::vector<std::pair<TrialVariable, double>> keep;  ///< as most blades had it
  std::string words;
};

/// Each variable of the trial against its outcome. Below 5 blades the words say that no order of so
/// few can mean anything; from there on p up to 0.05 (a common convention) counts as a sign. Words
/// never claim a cause, and name variables that moved together, which no trial of this kind can
/// part.
/// **Source**: rank_test.
std::vector<TrialFinding> findings_of(const std::vector<TrialBlade>& blades,
                                      const std::vector<TrialVariable>& variables,
                                      TrialOutcome outcome);

/// The next blade: the first variable moved, the others left as most blades had them. It is moved
/// to the end of its range that fewer blades have, so that both ends are told apart from chance;
/// while all blades had one value, by a tenth of it (of a temperature, by 15 C, or
/// 25 F). **Source**: common practice, no source. None while no blade has the first variable.
std::optional<TrialSuggestion> next_blade(const std::vector<TrialBlade>& blades,
                                          const std::vector<TrialVariable>& variables,
                                          TemperatureUnit degrees);

}  // namespace tangmark::blade

namespace tangmark {
template <>
inline constexpr auto trade_words<blade::TrialVariable> = std::array{
    std::pair{blade::TrialVariable::hardening_temperature,
              std::string_view{"hardening temperature"}},
    std::pair{blade::TrialVariable::soak, std::string_view{"soak"}},
    std::pair{blade::TrialVariable::bath_temperature, std::string_view{"bath temperature"}},
    std::pair{blade::TrialVariable::seconds_to_bath, std::string_view{"seconds to bath"}},
    std::pair{blade::TrialVariable::temper_temperature, std::string_view{"temper temperature"}},
    std::pair{blade::TrialVariable::temper_parameter, std::string_view{"temper parameter"}},
    std::pair{blade::TrialVariable::thermal_cycles, std::string_view{"thermal cycles"}},
    std::pair{blade::TrialVariable::thickness, std::string_view{"thickness"}},
    std::pair{blade::TrialVariable::etch_strength, std::string_view{"etch strength"}},
    std::pair{blade::TrialVariable::etch_passes, std::string_view{"etch passes"}}};
template <>
inline constexpr auto trade_words<blade::TrialOutcome> =
    std::array{std::pair{blade::TrialOutcome::hardness, std::string_view{"hardness"}},
               std::pair{blade::TrialOutcome::warp, std::string_view{"warp"}},
               std::pair{blade::TrialOutcome::contrast, std::string_view{"contrast"}}};
}  // namespace tangmark
