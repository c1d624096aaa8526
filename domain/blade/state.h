// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "domain/blade/blade.h"
#include "domain/blade/finding.h"
#include "domain/blade/log_entry.h"
#include "domain/measure/trade_word.h"
#include "domain/measure/when.h"

namespace tangmark::blade {

/// Where a blade stands in its heat treatment, as its log says.
enum class HeatStage { not_quenched, quenched, tempered_in_part, tempered };

/// What stands in for a temper while a quenched blade waits for one.
enum class HeldBy { nothing, snap_temper, held_warm };

/// A finding that nobody has decided.
struct OpenFinding {
  std::int64_t number;
  std::string kind;
  friend bool operator==(const OpenFinding&, const OpenFinding&) = default;
};

/// What a blade's log, route and findings say of it at this moment.
struct BladeState {
  std::int64_t number = 0;
  HeatStage stage = HeatStage::not_quenched;
  std::int64_t hardenings = 0;
  std::optional<Instant> quenched_at;  ///< of the last hardening
  std::optional<std::string> quench_medium;
  HeldBy held_by = HeldBy::nothing;  ///< since the last quench
  /// End of holding warm; none: still warm, or tempered lightly.
  std::optional<Instant> held_until;
  std::int64_t tempers_planned = 0;
  std::int64_t tempers_done = 0;        ///< since the last quench, each after cooling to room
  std::int64_t tempers_not_cooled = 0;  ///< begun while the blade was still warm: do not count
  std::optional<Instant> last_temper_at, last_heat_at;
  std::optional<Instant> handle_fitted_at;
  bool hardening_open = false;  ///< the route plans it and nobody logged it
  bool scrapped = false;
  std::optional<std::int64_t> condemned_by;  ///< a finding decided as scrap
  std::vector<OpenFinding> open_findings;
};

/// Reads the state out of the log. `log` holds the entries that count, corrections applied, in the
/// order of the work. A harden entry that follows another within an hour with no temper between
/// belongs to the same hardening: soak and quench may stand in two entries.
///
/// A forge heat, anneal, normalizing or thermal cycle after a quench makes it a soft blade again.
///
/// Tempers planned are those on the route that were not skipped; without any on the route two are
/// taken, as is usual; a quenched blade needs at least one.
/// Source: common practice, no source.
BladeState state_of(const Blade& blade, std::span<const KeptLogEntry> log,
                    std::span<const KeptRouteStep> route, std::span<const KeptFinding> findings);

/// Whether an operation heats the blade enough to change its hardness: forge, kiln and oven.
bool changes_hardness(std::string_view operation);

/// "quenched 2 h 05 min ago, not tempered", "tempered once of two", "tempered"; one line for lists.
std::string state_text(const BladeState& state, Instant now);

}  // namespace tangmark::blade

namespace tangmark {
template <>
inline constexpr auto trade_words<blade::HeatStage> =
    std::array{std::pair{blade::HeatStage::not_quenched, std::string_view{"not quenched"}},
               std::pair{blade::HeatStage::quenched, std::string_view{"quenched, not tempered"}},
               std::pair{blade::HeatStage::tempered_in_part, std::string_view{"tempered in part"}},
               std::pair{blade::HeatStage::tempered, std::string_view{"tempered"}}};
}  // namespace tangmark
