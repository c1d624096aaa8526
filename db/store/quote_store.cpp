// SPDX-License-Identifier: MIT
#include "db/store/quote_store.h"

#include "db/row.h"
#include "domain/measure/exchange_rate.h"

namespace tangmark::db {
namespace {

using namespace commission;

std::vector<QuoteLine> lines_of(const ShopFile& shop, QuoteId quote) {
  Query query(shop,
              "SELECT quote_line.*, quote.currency AS currency FROM quote_line JOIN quote "
              "ON quote.id = quote_line.quote_id WHERE quote_id = ? ORDER BY side, position");
  query.bind(quote);
  std::vector<QuoteLine> lines;
  while (query.next())
    lines.push_back({.side = query.word<QuoteSide>("side"),
                     .position = query.integer("position"),
                     .kind = query.text("kind"),
                     .text = query.text("text"),
                     .quantity = query.maybe_text("quantity"),
                     .unit = query.maybe_text("unit"),
                     .each = query.maybe_money("each_minor", "currency"),
                     .amount = query.money("amount_minor", "currency")});
  return lines;
}

KeptQuote quote_from(const ShopFile& shop, const Query& row) {
  const auto amount = [&](const char* column) { return row.money(column, "currency"); };
  Quote quote{.commission = row.id<CommissionId>("commission_id"),
              .version = row.integer("version"),
              .made_at = row.instant("made_at"),
              .valid_until = row.date("valid_until"),
              .cost = amount("cost_minor"),
              .price = amount("price_minor"),
              .tax = amount("tax_minor"),
              .total = amount("total_minor"),
              .deposit = amount("deposit_minor"),
              .floor = amount("floor_minor"),
              .earned_per_hour = amount("earned_per_hour_minor"),
              .tax_mode = row.word<TaxMode>("tax_mode"),
              .tax_rate = row.share("tax_ppm"),
              .price_how = row.text("price_how"),
              .hands_on = row.duration("hands_on_s"),
              .attended = row.duration("attended_s"),
              .unattended = row.duration("unattended_s"),
              .assumptions = row.maybe_text("assumptions"),
              .changes = row.maybe_text("changes"),
              .rate = row.maybe_text("rate"),
              .sent_at = row.maybe_instant("sent_at"),
              .answered_at = row.maybe_instant("answered_at"),
              .answer = row.maybe_word<QuoteAnswer>("answer"),
              .lines = lines_of(shop, row.id<QuoteId>("id"))};
  return {row.id<QuoteId>("id"), std::move(quote)};
}

std::optional<KeptQuote> one_of(const ShopFile& shop, Query query) {
  if (!query.next()) return std::nullopt;
  return quote_from(shop, query);
}

}  // namespace

std::optional<KeptQuote> load_quote(const ShopFile& shop, QuoteId id) {
  Query query(shop, "SELECT * FROM quote WHERE id = ?");
  query.bind(id);
  return one_of(shop, std::move(query));
}

std::vector<KeptQuote> quotes_of(const ShopFile& shop, CommissionId commission) {
  Query query(shop, "SELECT * FROM quote WHERE commission_id = ? ORDER BY version DESC");
  query.bind(commission);
  std::vector<KeptQuote> quotes;
  while (query.next()) quotes.push_back(quote_from(shop, query));
  return quotes;
}

std::optional<KeptQuote> latest_quote(const ShopFile& shop, CommissionId commission) {
  Query query(shop, "SELECT * FROM quote WHERE commission_id = ? ORDER BY version DESC LIMIT 1");
  query.bind(commission);
  return one_of(shop, std::move(query));
}

std::optional<KeptQuote> accepted_quote(const ShopFile& shop, CommissionId commission) {
  Query query(shop,
              "SELECT * FROM quote WHERE commission_id = ? AND answer = 'accepted' "
              "ORDER BY version DESC LIMIT 1");
  query.bind(commission);
  return one_of(shop, std::move(query));
}

QuoteId insert_quote(const ShopFile& shop, const Quote& quote) {
  Row row("quote");
  row.set("commission_id", quote.commission)
      .set("version", quote.version)
      .set("made_at", quote.made_at);
  row.set("valid_until", quote.valid_until).set("currency", quote.price.currency().code());
  row.set("cost_minor", quote.cost).set("price_minor", quote.price).set("tax_minor", quote.tax);
  row.set("total_minor", quote.total)
      .set("deposit_minor", quote.deposit)
      .set("floor_minor", quote.floor);
  row.set("earned_per_hour_minor", quote.earned_per_hour).set_word("tax_mode", quote.tax_mode);
  row.set("tax_ppm", quote.tax_rate).set("price_how", quote.price_how);
  row.set("hands_on_s", quote.hands_on).set("attended_s", quote.attended);
  row.set("unattended_s", quote.unattended).set("assumptions", quote.assumptions);
  row.set("changes", quote.changes).set("rate", quote.rate);
  row.set("sent_at", quote.sent_at).set("answered_at", quote.answered_at);
  if (quote.answer) row.set_word("answer", *quote.answer);
  const QuoteId id{row.insert(shop)};
  for (const QuoteLine& line : quote.lines) {
    Row one("quote_line");
    one.set("quote_id", id).set_word("side", line.side).set("position", line.position);
    one.set("kind", line.kind).set("text", line.text).set("quantity", line.quantity);
    one.set("unit", line.unit).set("each_minor", line.each).set("amount_minor", line.amount);
    one.insert(shop);
  }
  return id;
}

std::optional<Money> at_home(const Quote& quote, Money sum, Currency shop_currency) {
  if (sum.currency() == shop_currency) return sum;
  if (!quote.rate) return std::nullopt;
  const auto rate = parse_exchange_rate(*quote.rate, sum.currency(), shop_currency, "rate");
  if (!rate) return std::nullopt;
  return exchanged(sum, *rate);
}

void store_quote_sent(const ShopFile& shop, QuoteId id, Instant at) {
  Row("quote").set("sent_at", at).update(shop, id.row());
}

void store_quote_answer(const ShopFile& shop, QuoteId id, QuoteAnswer answer, Instant at) {
  Row("quote").set_word("answer", answer).set("answered_at", at).update(shop, id.row());
}

}  // namespace tangmark::db
