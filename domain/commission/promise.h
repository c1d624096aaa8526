// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "domain/commission/commission_id.h"
#include "domain/measure/kept.h"
#include "domain/measure/trade_word.h"
#include "domain/measure/when.h"

namespace tangmark::commission {

/// A date given, to whom, on what day. Never overwritten: a new date is a new promise, and the
/// latest one holds.
struct Promise {
  CommissionId commission;
  CalendarDate day{};
  Instant made_at{};
  std::optional<std::string> words{};
  std::optional<std::string> told{};  ///< who was told, and how
  friend bool operator==(const Promise&, const Promise&) = default;
};
using KeptPromise = Kept<Promise, PromiseId>;

/// A buyer's answer to a later date. Silence is not consent.
enum class Consent { asked, given, refused };

struct DelayNotice {
  CommissionId commission;
  Instant at{};
  CalendarDate new_day{};
  std::string words{};
  Consent consent = Consent::asked;
  std::optional<Instant> consent_at{};
  friend bool operator==(const DelayNotice&, const DelayNotice&) = default;
};
using KeptDelayNotice = Kept<DelayNotice, DelayNoticeId>;

}  // namespace tangmark::commission

namespace tangmark {
template <>
inline constexpr auto trade_words<commission::Consent> =
    std::array{std::pair{commission::Consent::asked, std::string_view{"asked"}},
               std::pair{commission::Consent::given, std::string_view{"given"}},
               std::pair{commission::Consent::refused, std::string_view{"refused"}}};
}  // namespace tangmark
