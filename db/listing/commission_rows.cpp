// SPDX-License-Identifier: MIT
#include "db/listing/commission_rows.h"

#include "db/row.h"

namespace tangmark::db {

std::vector<CommissionRow> commission_rows(const ShopFile& shop) {
  std::vector<CommissionRow> rows;
  Query query(shop, R"sql(
SELECT c.number, c.state, c.opened_at, c.wanted_by, c.reply_by, c.currency, cu.name AS buyer,
  (SELECT group_concat(i.title, ', ') FROM item i WHERE i.commission_id = c.id) AS items,
  (SELECT p.day FROM promise p WHERE p.commission_id = c.id ORDER BY p.made_at DESC, p.id DESC LIMIT 1)
    AS promised,
  (SELECT max(t.at) FROM contact t WHERE t.commission_id = c.id) AS last_contact,
  q.version, q.sent_at, q.valid_until, q.total_minor, q.deposit_minor, q.currency AS quote_currency,
  (SELECT coalesce(sum(p.amount_minor), 0) FROM payment p WHERE p.commission_id = c.id) AS paid_minor,
  (SELECT coalesce(sum(p.amount_minor), 0) FROM payment p WHERE p.commission_id = c.id
     AND p.kind = 'deposit') AS deposits_minor
FROM commission c
JOIN customer cu ON cu.id = c.customer_id
LEFT JOIN quote q ON q.id = (SELECT id FROM quote WHERE commission_id = c.id ORDER BY version DESC LIMIT 1)
ORDER BY c.state IN ('delivered', 'declined', 'cancelled'), c.number DESC)sql");
  while (query.next()) {
    CommissionRow row;
    row.number = query.integer("number");
    row.state = query.text("state");
    row.buyer = query.text("buyer");
    row.items = query.text("items");
    row.opened_at = query.instant("opened_at");
    row.wanted_by = query.maybe_date("wanted_by");
    row.reply_by = query.maybe_date("reply_by");
    row.promised = query.maybe_date("promised");
    row.last_contact = query.maybe_instant("last_contact");
    row.quote_version = query.maybe_integer("version");
    row.quote_sent_at = query.maybe_instant("sent_at");
    row.quote_until = query.maybe_date("valid_until");
    row.currency = query.currency("currency");
    row.total = query.maybe_money("total_minor", "quote_currency");
    row.deposit_asked = query.maybe_money("deposit_minor", "quote_currency");
    row.paid = query.money("paid_minor", "currency");
    row.deposits = query.money("deposits_minor", "currency");
    rows.push_back(std::move(row));
  }
  return rows;
}

std::vector<Money> money_held(const ShopFile& shop) {
  std::vector<Money> held;
  Query query(shop, R"sql(
SELECT p.currency, sum(p.amount_minor) AS amount_minor FROM payment p
JOIN commission c ON c.id = p.commission_id WHERE c.state <> 'delivered'
GROUP BY p.currency HAVING sum(p.amount_minor) <> 0 ORDER BY p.currency)sql");
  while (query.next()) held.push_back(query.money("amount_minor", "currency"));
  return held;
}

std::vector<ItemRow> item_rows(const ShopFile& shop, std::int64_t commission_number) {
  std::vector<ItemRow> rows;
  Query query(shop, R"sql(
SELECT i.id, i.position, i.title, i.construction, i.grade, m.name AS model, i.handle, i.sheath,
  i.hardness_aim, i.cancelled_on,
  (SELECT group_concat(b.number, ', ') FROM blade b WHERE b.item_id = i.id AND b.scrapped_at IS NULL) AS blade
FROM item i JOIN commission c ON c.id = i.commission_id LEFT JOIN model m ON m.id = i.model_id
WHERE c.number = ? ORDER BY i.position)sql");
  query.bind(commission_number);
  while (query.next()) {
    ItemRow row;
    row.id = query.integer("id");
    row.position = query.integer("position");
    row.title = query.text("title");
    row.construction = query.text("construction");
    row.grade = query.text("grade");
    row.model = query.text("model");
    row.handle = query.text("handle");
    row.sheath = query.text("sheath");
    row.hardness_aim = query.text("hardness_aim");
    row.blade = query.text("blade");
    row.cancelled = !query.is_null("cancelled_on");
    rows.push_back(std::move(row));
  }
  return rows;
}

std::vector<QuoteRow> quote_rows(const ShopFile& shop, std::int64_t commission_number) {
  std::vector<QuoteRow> rows;
  Query query(shop, R"sql(
SELECT q.version, q.made_at, q.valid_until, q.price_minor, q.total_minor, q.deposit_minor, q.currency,
  q.sent_at, q.answer
FROM quote q JOIN commission c ON c.id = q.commission_id WHERE c.number = ? ORDER BY q.version)sql");
  query.bind(commission_number);
  while (query.next()) {
    rows.push_back({query.integer("version"), query.instant("made_at"), query.date("valid_until"),
                    query.money("price_minor", "currency"), query.money("total_minor", "currency"),
                    query.money("deposit_minor", "currency"), query.maybe_instant("sent_at"),
                    query.text("answer")});
  }
  return rows;
}

std::vector<PaymentRow> payment_rows(const ShopFile& shop, std::int64_t commission_number) {
  std::vector<PaymentRow> rows;
  Query query(shop, R"sql(
SELECT p.number, p.kind, p.method, p.note, p.amount_minor, p.currency, p.at
FROM payment p JOIN commission c ON c.id = p.commission_id WHERE c.number = ? ORDER BY p.at, p.id)sql");
  query.bind(commission_number);
  while (query.next()) {
    rows.push_back({query.integer("number"), query.text("kind"), query.text("method"),
                    query.text("note"), query.money("amount_minor", "currency"),
                    query.instant("at")});
  }
  return rows;
}

std::vector<PromiseRow> promise_rows(const ShopFile& shop, std::int64_t commission_number) {
  std::vector<PromiseRow> rows;
  Query query(shop, R"sql(
SELECT p.day, p.made_at, p.words, p.told
FROM promise p JOIN commission c ON c.id = p.commission_id WHERE c.number = ? ORDER BY p.made_at, p.id)sql");
  query.bind(commission_number);
  while (query.next()) {
    rows.push_back(
        {query.date("day"), query.instant("made_at"), query.text("words"), query.text("told")});
  }
  return rows;
}

std::vector<ContactRow> contact_rows(const ShopFile& shop, std::int64_t commission_number) {
  std::vector<ContactRow> rows;
  Query query(shop, R"sql(
SELECT t.at, t.channel, t.words
FROM contact t JOIN commission c ON c.id = t.commission_id WHERE c.number = ? ORDER BY t.at DESC, t.id DESC)sql");
  query.bind(commission_number);
  while (query.next())
    rows.push_back({query.instant("at"), query.text("channel"), query.text("words")});
  return rows;
}

}  // namespace tangmark::db
