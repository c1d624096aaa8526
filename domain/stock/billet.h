// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "domain/measure/kept.h"
#include "domain/measure/length.h"
#include "domain/measure/mass.h"
#include "domain/measure/temperature.h"
#include "domain/measure/trade_word.h"
#include "domain/measure/when.h"
#include "domain/stock/stock_id.h"

namespace tangmark::stock {

enum class BilletKind { pattern_welded, laminated, ingot, smelted };

/// Made in a shop from pieces, or melted as an ingot.
struct Billet {
  std::int64_t number = 0;  ///< never repeats
  BilletKind kind = BilletKind::pattern_welded;
  std::optional<std::string> name{};
  std::string made_by{};
  Instant started_at{};
  std::optional<Instant> finished_at{};
  std::optional<std::int64_t> layers{};  ///< by the arithmetic of the logged stages
  std::optional<std::string> pattern{};
  std::optional<Instant> scrapped_at{};
  std::optional<std::string> note{};
  friend bool operator==(const Billet&, const Billet&) = default;
};
using KeptBillet = Kept<Billet, BilletId>;

enum class BilletRole { layer, core, cladding, charge };

/// A piece that went into a billet, as so many layers of the first stack.
struct BilletPart {
  BilletId billet;
  std::int64_t position = 0;
  PieceId piece;
  BilletRole role = BilletRole::layer;
  std::int64_t layers = 1;
  Mass mass{};
  friend bool operator==(const BilletPart&, const BilletPart&) = default;
};
using KeptBilletPart = Kept<BilletPart, BilletPartId>;

enum class StageWork { stack, weld, draw, fold, cut, twist, crop };

/// One stage of making a billet. in = out + crop + scale + swarf + gap.
struct WeldStage {
  BilletId billet;
  std::int64_t number = 0;  ///< within the billet
  Instant at{}, entered_at{};
  StageWork operation = StageWork::weld;
  std::int64_t pieces = 1;  ///< a cut stacks this many pieces again
  Mass mass_in{}, mass_out{}, crop{}, scale{}, swarf{};
  Mass gap{};  ///< unexplained; negative when more came out than went in
  std::optional<Length> thickness{};
  std::optional<Temperature> temperature{};
  std::optional<std::string> flux{};
  std::optional<std::string> who{};
  Duration hands_on{};
  std::optional<std::string> note{};
  friend bool operator==(const WeldStage&, const WeldStage&) = default;
};
using KeptWeldStage = Kept<WeldStage, WeldStageId>;

}  // namespace tangmark::stock

namespace tangmark {
template <>
inline constexpr auto trade_words<stock::BilletKind> =
    std::array{std::pair{stock::BilletKind::pattern_welded, std::string_view{"pattern-welded"}},
               std::pair{stock::BilletKind::laminated, std::string_view{"laminated"}},
               std::pair{stock::BilletKind::ingot, std::string_view{"ingot"}},
               std::pair{stock::BilletKind::smelted, std::string_view{"smelted"}}};
template <>
inline constexpr auto trade_words<stock::BilletRole> =
    std::array{std::pair{stock::BilletRole::layer, std::string_view{"layer"}},
               std::pair{stock::BilletRole::core, std::string_view{"core"}},
               std::pair{stock::BilletRole::cladding, std::string_view{"cladding"}},
               std::pair{stock::BilletRole::charge, std::string_view{"charge"}}};
template <>
inline constexpr auto trade_words<stock::StageWork> =
    std::array{std::pair{stock::StageWork::stack, std::string_view{"stack"}},
               std::pair{stock::StageWork::weld, std::string_view{"weld"}},
               std::pair{stock::StageWork::draw, std::string_view{"draw"}},
               std::pair{stock::StageWork::fold, std::string_view{"fold"}},
               std::pair{stock::StageWork::cut, std::string_view{"cut"}},
               std::pair{stock::StageWork::twist, std::string_view{"twist"}},
               std::pair{stock::StageWork::crop, std::string_view{"crop"}}};
}  // namespace tangmark
