// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "db/shop_file.h"
#include "domain/commission/promise.h"

namespace tangmark::db {

/// Every promise made, oldest first; the last one holds.
std::vector<commission::KeptPromise> promises_of(const ShopFile& shop,
                                                 commission::CommissionId commission);
std::optional<commission::KeptPromise> standing_promise(const ShopFile& shop,
                                                        commission::CommissionId commission);
commission::PromiseId insert_promise(const ShopFile& shop, const commission::Promise& promise);

/// Every delay notice, oldest first.
std::vector<commission::KeptDelayNotice> delay_notices_of(const ShopFile& shop,
                                                          commission::CommissionId commission);
/// The newest notice still waiting for an answer.
std::optional<commission::KeptDelayNotice> unanswered_notice(const ShopFile& shop,
                                                             commission::CommissionId commission);
commission::DelayNoticeId insert_delay_notice(const ShopFile& shop,
                                              const commission::DelayNotice& notice);
void store_consent(const ShopFile& shop, commission::DelayNoticeId id, commission::Consent consent,
                   Instant at);

}  // namespace tangmark::db
