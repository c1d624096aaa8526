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

enum class InvoiceKind { deposit_receipt, balance_invoice, correction };

/// An issued paper about money: frozen, and corrected by another paper that names it.
struct Invoice {
  std::int64_t number = 0;  ///< never repeats
  CommissionId commission;
  InvoiceKind kind = InvoiceKind::balance_invoice;
  Instant issued_at{};
  Money total{};
  std::optional<InvoiceId> corrects{};
  std::optional<std::string> shop_rate{};  ///< of its day, when it is not in the shop's currency
  std::string body{};  ///< everything the paper says, as JSON, so that a reprint says the same
  friend bool operator==(const Invoice&, const Invoice&) = default;
};
using KeptInvoice = Kept<Invoice, InvoiceId>;

}  // namespace tangmark::commission

namespace tangmark {
template <>
inline constexpr auto trade_words<commission::InvoiceKind> = std::array{
    std::pair{commission::InvoiceKind::deposit_receipt, std::string_view{"deposit receipt"}},
    std::pair{commission::InvoiceKind::balance_invoice, std::string_view{"balance invoice"}},
    std::pair{commission::InvoiceKind::correction, std::string_view{"correction"}}};
}  // namespace tangmark
