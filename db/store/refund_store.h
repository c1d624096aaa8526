// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "db/shop_file.h"
#include "domain/commission/commission.h"
#include "domain/commission/refund_terms.h"
#include "domain/commission/shop_settings.h"

namespace tangmark::db {

/// The terms as frozen with the commission; none before it was accepted or a deposit came.
std::optional<commission::RefundTerms> refund_terms_of(const ShopFile& shop,
                                                       commission::CommissionId commission);
/// Freezes them; once frozen they stay as they are.
void freeze_refund_terms(const ShopFile& shop, commission::CommissionId commission,
                         commission::RefundTerms terms);

/// What the frozen terms give back of what came in, and what of it is material used: steel, belts
/// and outside work of all blades made for it, as far as it is on record. Material was bought in
/// the shop's currency and is counted at today's rate in a foreign commission; without a rate
/// nothing is worked out.
struct RefundDue {
  commission::RefundTerms terms = commission::RefundTerms::less_material;
  bool work_has_begun = false;
  Money received, material, due;
};
std::optional<RefundDue> refund_due(const ShopFile& shop,
                                    const commission::KeptCommission& commission,
                                    const commission::ShopSettings& settings, Instant now);

}  // namespace tangmark::db
