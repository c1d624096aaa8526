// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "db/actions/action.h"
#include "db/shop_file.h"
#include "domain/commission/shop_settings.h"
#include "domain/measure/caught.h"

namespace tangmark::db {

/// Ends the remedy of what may be set aside.
inline constexpr std::string_view may_override =
    " Or give override with the reason, which is kept.";

/// What a running action works with: the shop file inside its transaction, the times, and the place
/// where slips are caught.
class Work {
 public:
  Work(ShopFile& shop, const Action& action, Instant now, Instant at, std::string override_reason);

  ShopFile& shop() const { return shop_; }
  /// The clock on the wall when this is typed in.
  Instant now() const { return now_; }
  /// When it really happened: the common field `at`, else now.
  Instant at() const { return at_; }
  CalendarDate today() const;
  /// True when `at` lies further back than the shop calls live (15 minutes; common practice, no
  /// source).
  bool entered_later() const;
  const commission::ShopSettings& settings() const { return settings_; }

  /// The next number of a kind ("commission", "blade", "lot", "piece", "billet", "firing",
  /// "certificate", "payment", "invoice", "finding"); never given twice, even after a scrap.
  std::int64_t next_number(std::string_view kind);

  /// Looks at what was caught. A stop is refused; an ask is refused unless the maker gave
  /// `override`, whose reason is then kept; a remark becomes a warning. True when the work may go
  /// on.
  bool passes(const Catch& caught);
  bool passes(const Catches& caught);
  bool set_aside_anything() const { return !set_aside_.empty(); }
  /// What was set aside so far was for this row: "firing", its id. True when anything was.
  bool set_aside_for(std::string_view subject, std::int64_t id);
  /// Problems gathered from catches so far.
  const Problems& problems() const { return problems_; }
  void warn(std::string sentence) { warnings_.push_back(std::move(sentence)); }

  /// Hands on what the steel desk says; what is to be heeded becomes a warning, too. A sentence
  /// said already (of another blade of the batch) is not said again.
  void advise(const std::vector<steel::Advice>& advice);

  /// The result, carrying all warnings and advice.
  ActionResult done(std::string number = {}) const {
    return {std::move(number), warnings_, advice_};
  }

 private:
  ShopFile& shop_;
  const Action& action_;
  Instant now_, at_;
  std::string override_reason_;
  commission::ShopSettings settings_;
  Problems problems_;
  std::vector<std::int64_t> set_aside_;  ///< rows of the kept reasons
  std::vector<std::string> warnings_;
  std::vector<steel::Advice> advice_;
};

}  // namespace tangmark::db
