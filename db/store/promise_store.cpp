// SPDX-License-Identifier: MIT
#include "db/store/promise_store.h"

#include "db/row.h"

namespace tangmark::db {
namespace {

using namespace commission;

std::vector<KeptPromise> promises_from(Query query) {
  std::vector<KeptPromise> promises;
  while (query.next())
    promises.push_back(
        {query.id<PromiseId>("id"), Promise{.commission = query.id<CommissionId>("commission_id"),
                                            .day = query.date("day"),
                                            .made_at = query.instant("made_at"),
                                            .words = query.maybe_text("words"),
                                            .told = query.maybe_text("told")}});
  return promises;
}

std::vector<KeptDelayNotice> notices_from(Query query) {
  std::vector<KeptDelayNotice> notices;
  while (query.next())
    notices.push_back({query.id<DelayNoticeId>("id"),
                       DelayNotice{.commission = query.id<CommissionId>("commission_id"),
                                   .at = query.instant("at"),
                                   .new_day = query.date("new_day"),
                                   .words = query.text("words"),
                                   .consent = query.word<Consent>("consent"),
                                   .consent_at = query.maybe_instant("consent_at")}});
  return notices;
}

}  // namespace

std::vector<KeptPromise> promises_of(const ShopFile& shop, CommissionId commission) {
  Query query(shop, "SELECT * FROM promise WHERE commission_id = ? ORDER BY made_at, id");
  query.bind(commission);
  return promises_from(std::move(query));
}

std::optional<KeptPromise> standing_promise(const ShopFile& shop, CommissionId commission) {
  const auto promises = promises_of(shop, commission);
  if (promises.empty()) return std::nullopt;
  return promises.back();
}

PromiseId insert_promise(const ShopFile& shop, const Promise& promise) {
  Row row("promise");
  row.set("commission_id", promise.commission)
      .set("day", promise.day)
      .set("made_at", promise.made_at);
  row.set("words", promise.words).set("told", promise.told);
  return PromiseId{row.insert(shop)};
}

std::vector<KeptDelayNotice> delay_notices_of(const ShopFile& shop, CommissionId commission) {
  Query query(shop, "SELECT * FROM delay_notice WHERE commission_id = ? ORDER BY at, id");
  query.bind(commission);
  return notices_from(std::move(query));
}

std::optional<KeptDelayNotice> unanswered_notice(const ShopFile& shop, CommissionId commission) {
  Query query(shop,
              "SELECT * FROM delay_notice WHERE commission_id = ? AND consent = 'asked' "
              "ORDER BY at DESC, id DESC LIMIT 1");
  query.bind(commission);
  const auto notices = notices_from(std::move(query));
  if (notices.empty()) return std::nullopt;
  return notices.front();
}

DelayNoticeId insert_delay_notice(const ShopFile& shop, const DelayNotice& notice) {
  Row row("delay_notice");
  row.set("commission_id", notice.commission).set("at", notice.at).set("new_day", notice.new_day);
  row.set("words", notice.words)
      .set_word("consent", notice.consent)
      .set("consent_at", notice.consent_at);
  return DelayNoticeId{row.insert(shop)};
}

void store_consent(const ShopFile& shop, DelayNoticeId id, Consent consent, Instant at) {
  Row("delay_notice").set_word("consent", consent).set("consent_at", at).update(shop, id.row());
}

}  // namespace tangmark::db
