// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "domain/commission/commission_id.h"
#include "domain/measure/kept.h"
#include "domain/measure/length.h"
#include "domain/measure/mass.h"
#include "domain/measure/money.h"
#include "domain/measure/share.h"
#include "domain/measure/trade_word.h"
#include "domain/measure/when.h"
#include "domain/stock/stock_id.h"

namespace tangmark::stock {

enum class LotKind { steel, handle, belt, gas, oil, etchant, adhesive, other };
enum class Section { flat, round };

/// The paper behind a lot, strongest first. Source of the numbered types: EN 10204:2004 (3.2 with
/// an outside witness, 3.1 tests on the delivered batch, 2.2 non-specific tests, 2.1 declaration
/// only).
enum class SupplyDocument { type_3_2, type_3_1, type_2_2, type_2_1, label, word, none };

/// How the shop knows what a lot is made of, when not by its paper alone. A hand-held X-ray does
/// not give carbon.
enum class IdentifiedBy { document, laboratory, x_ray, spark, coupon, told };

/// What a lot was sold as.
enum class BoughtAs { one_steel, pattern_welded, laminated };

/// One purchase of one material from one supplier, or a customer's own material (`owner` set): that
/// is kept apart, and returned or accounted for.
struct Lot {
  std::int64_t number = 0;  ///< never repeats
  LotKind kind = LotKind::steel;
  std::string name{};  ///< "80CrV2 flat 30 x 4", "ceramic belt 36 grit"
  std::optional<std::string> supplier{}, invoice{};
  Instant received_at{};
  std::optional<commission::CustomerId> owner{};
  std::optional<Instant> returned_at{};
  std::optional<std::string> return_note{};

  // Steel.
  std::optional<std::string> grade{};  ///< none: nobody said what it is
  std::optional<Section> section{};
  std::optional<Length> thickness{}, width{}, diameter{}, length{};  ///< of one bar as received
  std::int64_t count = 1;                                            ///< bars received
  std::optional<Mass> mass{};                                        ///< of the whole lot, weighed
  std::optional<Density> density{};
  std::optional<std::string> condition{};  ///< "annealed", "hot rolled", "spheroidised"
  std::optional<std::string> melt_number{};
  SupplyDocument document = SupplyDocument::none;
  bool mark_matched = false;  ///< the melt number of the document was found on the bar
  std::optional<std::string> mark_words{};  ///< what the mark on the bar says
  std::optional<std::string> analysis{};    ///< "C:0.95,Mn:0.3", weight per cent
  std::optional<IdentifiedBy> identified_by{};
  std::optional<BoughtAs> bought_as{};
  std::optional<std::int64_t> stated_layers{};  ///< as stated by the supplier
  std::optional<std::string> stated_maker{};    ///< likewise

  // Handle material.
  std::optional<std::string> species{}, species_latin{}, source{}, papers{};
  bool stabilised = false;

  // Consumables and handle stock: how much was bought, in `unit`, and the least to keep.
  std::optional<Share> quantity{};  ///< whole units in millionths: 2.5 l is 2,500,000
  std::optional<std::string> unit{};
  std::optional<CalendarDate> expires_on{};
  std::optional<Share> floor{};

  Money price{};  ///< of the whole lot
  friend bool operator==(const Lot&, const Lot&) = default;
};
using KeptLot = Kept<Lot, LotId>;

}  // namespace tangmark::stock

namespace tangmark {
template <>
inline constexpr auto trade_words<stock::LotKind> =
    std::array{std::pair{stock::LotKind::steel, std::string_view{"steel"}},
               std::pair{stock::LotKind::handle, std::string_view{"handle"}},
               std::pair{stock::LotKind::belt, std::string_view{"belt"}},
               std::pair{stock::LotKind::gas, std::string_view{"gas"}},
               std::pair{stock::LotKind::oil, std::string_view{"oil"}},
               std::pair{stock::LotKind::etchant, std::string_view{"etchant"}},
               std::pair{stock::LotKind::adhesive, std::string_view{"adhesive"}},
               std::pair{stock::LotKind::other, std::string_view{"other"}}};
template <>
inline constexpr auto trade_words<stock::Section> =
    std::array{std::pair{stock::Section::flat, std::string_view{"flat"}},
               std::pair{stock::Section::round, std::string_view{"round"}}};
template <>
inline constexpr auto trade_words<stock::SupplyDocument> =
    std::array{std::pair{stock::SupplyDocument::type_3_2, std::string_view{"3.2"}},
               std::pair{stock::SupplyDocument::type_3_1, std::string_view{"3.1"}},
               std::pair{stock::SupplyDocument::type_2_2, std::string_view{"2.2"}},
               std::pair{stock::SupplyDocument::type_2_1, std::string_view{"2.1"}},
               std::pair{stock::SupplyDocument::label, std::string_view{"label"}},
               std::pair{stock::SupplyDocument::word, std::string_view{"word"}},
               std::pair{stock::SupplyDocument::none, std::string_view{"none"}}};
template <>
inline constexpr auto trade_words<stock::IdentifiedBy> =
    std::array{std::pair{stock::IdentifiedBy::document, std::string_view{"document"}},
               std::pair{stock::IdentifiedBy::laboratory, std::string_view{"laboratory"}},
               std::pair{stock::IdentifiedBy::x_ray, std::string_view{"hand-held x-ray"}},
               std::pair{stock::IdentifiedBy::spark, std::string_view{"spark test"}},
               std::pair{stock::IdentifiedBy::coupon, std::string_view{"hardened coupon"}},
               std::pair{stock::IdentifiedBy::told, std::string_view{"told by someone"}}};
template <>
inline constexpr auto trade_words<stock::BoughtAs> =
    std::array{std::pair{stock::BoughtAs::one_steel, std::string_view{"one steel"}},
               std::pair{stock::BoughtAs::pattern_welded, std::string_view{"pattern-welded"}},
               std::pair{stock::BoughtAs::laminated, std::string_view{"laminated"}}};
}  // namespace tangmark
