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
#include "domain/measure/money.h"
#include "domain/measure/trade_word.h"
#include "domain/measure/when.h"

namespace tangmark::commission {

/// An enquiry is not an order. Work begins from accepted on.
enum class CommissionState {
  enquiry,
  quoted,
  accepted,
  in_work,
  ready,
  delivered,
  declined,
  cancelled
};

/// An order, or the asking for one, of one or more items.
struct Commission {
  std::int64_t number = 0;  ///< never repeats
  CustomerId customer;
  CommissionState state = CommissionState::enquiry;
  Instant opened_at{};
  std::optional<std::string> channel{};       ///< "e-mail", "market stall"
  std::optional<std::string> buyers_words{};  ///< "a damascus knife, about so long"
  std::optional<Money> budget{};
  Currency currency{};
  std::optional<CalendarDate> wanted_by{};
  std::optional<std::string> wanted_why{};   ///< "wedding"
  std::optional<std::string> destination{};  ///< country the knife goes to
  std::optional<CalendarDate> reply_by{};
  std::optional<std::string> refund_rule{};  ///< as agreed; frozen when the deposit is taken
  std::optional<CalendarDate> specification_confirmed_on{};
  std::optional<CalendarDate> accepted_on{}, delivered_on{};
  std::optional<std::string> cancelled_why{};
  std::optional<CalendarDate> law_checked_on{};  ///< by the maker; the program gives no verdict
  friend bool operator==(const Commission&, const Commission&) = default;
};
using KeptCommission = Kept<Commission, CommissionId>;

/// Whether the shop owes work or delivery on it.
constexpr bool is_under_way(CommissionState state) {
  return state == CommissionState::accepted || state == CommissionState::in_work ||
         state == CommissionState::ready;
}
/// Whether nothing more can happen but aftercare.
constexpr bool is_over(CommissionState state) {
  return state == CommissionState::delivered || state == CommissionState::declined ||
         state == CommissionState::cancelled;
}

}  // namespace tangmark::commission

namespace tangmark {
template <>
inline constexpr auto trade_words<commission::CommissionState> =
    std::array{std::pair{commission::CommissionState::enquiry, std::string_view{"enquiry"}},
               std::pair{commission::CommissionState::quoted, std::string_view{"quoted"}},
               std::pair{commission::CommissionState::accepted, std::string_view{"accepted"}},
               std::pair{commission::CommissionState::in_work, std::string_view{"in work"}},
               std::pair{commission::CommissionState::ready, std::string_view{"ready"}},
               std::pair{commission::CommissionState::delivered, std::string_view{"delivered"}},
               std::pair{commission::CommissionState::declined, std::string_view{"declined"}},
               std::pair{commission::CommissionState::cancelled, std::string_view{"cancelled"}}};
}  // namespace tangmark
