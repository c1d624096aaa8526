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

enum class PaymentKind { deposit, balance, refund, correction };

/// Money received (positive) or given back (negative). Never edited: a mistake is reversed by a
/// row.
struct Payment {
  std::int64_t number = 0;  ///< never repeats
  CommissionId commission;
  PaymentKind kind = PaymentKind::deposit;
  Money amount{};
  std::optional<std::string> rate{};  ///< of exchange, as the bank stated it
  std::optional<std::string> shop_rate{};  ///< of its day, when it is not in the shop's currency
  Instant at{};
  std::optional<std::string> method{};  ///< "bank", "cash"
  std::optional<PaymentId> corrects{};
  std::optional<std::string> note{};
  friend bool operator==(const Payment&, const Payment&) = default;
};
using KeptPayment = Kept<Payment, PaymentId>;

}  // namespace tangmark::commission

namespace tangmark {
template <>
inline constexpr auto trade_words<commission::PaymentKind> =
    std::array{std::pair{commission::PaymentKind::deposit, std::string_view{"deposit"}},
               std::pair{commission::PaymentKind::balance, std::string_view{"balance"}},
               std::pair{commission::PaymentKind::refund, std::string_view{"refund"}},
               std::pair{commission::PaymentKind::correction, std::string_view{"correction"}}};
}  // namespace tangmark
