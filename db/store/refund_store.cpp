// SPDX-License-Identifier: MIT
#include "db/store/refund_store.h"

#include "db/row.h"
#include "db/store/blade_actuals.h"
#include "db/store/blade_store.h"
#include "db/store/item_store.h"
#include "db/store/money_store.h"
#include "db/store/rate_store.h"

namespace tangmark::db {
namespace {

using namespace commission;

Money material_used(const ShopFile& shop, CommissionId commission, const ShopSettings& settings) {
  Money sum(0, settings.currency);
  for (const KeptItem& item : items_of(shop, commission))
    for (const auto& blade : blades_of_item(shop, item.id)) {
      const BladeActuals used = actuals_of(shop, blade.id, settings);
      sum += used.steel + used.used_up + used.outside;
    }
  return sum;
}

bool has_begun(const ShopFile& shop, CommissionId commission) {
  for (const KeptItem& item : items_of(shop, commission))
    if (!blades_of_item(shop, item.id).empty()) return true;
  return false;
}

}  // namespace

std::optional<RefundTerms> refund_terms_of(const ShopFile& shop, CommissionId commission) {
  Query query(shop, "SELECT refund_terms FROM commission WHERE id = ?");
  query.bind(commission);
  if (!query.next()) return std::nullopt;
  return query.maybe_word<RefundTerms>("refund_terms");
}

void freeze_refund_terms(const ShopFile& shop, CommissionId commission, RefundTerms terms) {
  if (refund_terms_of(shop, commission)) return;
  Row("commission").set_word("refund_terms", terms).update(shop, commission.row());
}

std::optional<RefundDue> refund_due(const ShopFile& shop, const KeptCommission& commission,
                                    const ShopSettings& settings, Instant now) {
  const auto terms = refund_terms_of(shop, commission.id);
  const auto rate =
      rate_on(shop, commission.currency, settings.currency, settings.zone.date_of(now));
  if (!terms || !rate) return std::nullopt;
  RefundDue due{*terms, has_begun(shop, commission.id), account(shop, commission).received,
                exchanged_back(material_used(shop, commission.id, settings), *rate),
                Money(0, commission.currency)};
  due.due = refund_by(due.terms, due.received, due.work_has_begun, due.material);
  return due;
}

}  // namespace tangmark::db
