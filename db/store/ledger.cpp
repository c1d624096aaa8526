// SPDX-License-Identifier: MIT
#include "db/store/ledger.h"

#include <algorithm>
#include <map>

#include "db/actions/invoice_body.h"
#include "db/row.h"
#include "db/store/money_store.h"
#include "db/store/rate_store.h"
#include "domain/measure/exchange_rate.h"
#include "domain/measure/table_text.h"

namespace tangmark::db {
namespace {

using namespace commission;

struct Year {
  Instant from, to;
  const ShopSettings& settings;
};

void convert(const ShopFile& shop, const Year& year, const std::optional<std::string>& stated,
             LedgerLine& line) {
  const Currency own = year.settings.currency;
  const Currency foreign = line.amount.currency();
  if (foreign == own) {
    line.in_shop_currency = line.amount;
    return;
  }
  std::optional<ExchangeRate> rate;
  if (stated)
    if (const auto read = parse_exchange_rate(*stated, foreign, own, "rate")) rate = *read;
  if (!rate) rate = rate_on(shop, foreign, own, line.day);
  if (!rate) return;
  line.rate = to_text(*rate);
  line.in_shop_currency = exchanged(line.amount, *rate);
}

std::string buyer(const Query& row) {
  return row.text("customer_id") + (row.is_null("name") ? "" : " " + row.text("name"));
}

void add_payments(const ShopFile& shop, const Year& year, std::vector<LedgerLine>& lines) {
  Query query(shop, R"(
SELECT payment.*, commission.number AS commission_number, commission.customer_id, customer.name
FROM payment JOIN commission ON commission.id = payment.commission_id
JOIN customer ON customer.id = commission.customer_id WHERE at >= ? AND at < ? ORDER BY at, payment.id)");
  query.bind(year.from).bind(year.to);
  while (query.next()) {
    LedgerLine line;
    line.day = year.settings.zone.date_of(query.instant("at"));
    const auto kind = query.word<PaymentKind>("kind");
    line.kind = kind == PaymentKind::refund       ? LedgerKind::given_back
                : kind == PaymentKind::correction ? LedgerKind::correction
                                                  : LedgerKind::received;
    line.number = query.text("number");
    line.commission = query.text("commission_number");
    line.party = buyer(query);
    line.text = query.text("kind") + (query.is_null("method") ? "" : " by " + query.text("method"));
    line.amount = query.money("amount_minor", "currency");
    convert(shop, year, query.maybe_text("rate"), line);
    if (const auto paid = query.maybe_money("paid_minor", "paid_currency")) {
      line.text += ", came as " + to_text(*paid);
      line.rate = query.text("rate");
    }
    lines.push_back(std::move(line));
  }
}

LedgerLine paper(const Query& row, const InvoiceBody& body, std::int64_t sign) {
  LedgerLine line;
  line.number = row.text("number");
  line.commission = row.text("commission_number");
  line.party = buyer(row);
  line.amount = body.total * sign;
  line.without_tax = body.without_tax * sign;
  line.tax = body.tax * sign;
  line.tax_rate = body.tax_rate;
  return line;
}

// The corrected paper is taken back in full by the one that corrects it.
void add_credit(const ShopFile& shop, const Year& year, const Query& row,
                std::vector<LedgerLine>& lines) {
  Query query(shop, R"(
SELECT invoice.*, commission.number AS commission_number, commission.customer_id, customer.name
FROM invoice JOIN commission ON commission.id = invoice.commission_id
JOIN customer ON customer.id = commission.customer_id WHERE invoice.id = ?)");
  query.bind(row.integer("corrects_id"));
  if (!query.next()) return;
  Invoice old{.commission = query.id<CommissionId>("commission_id"), .body = query.text("body")};
  old.number = query.integer("number");
  old.total = query.money("total_minor", "currency");
  LedgerLine line = paper(query, read_invoice_body(old), -1);
  line.day = year.settings.zone.date_of(row.instant("issued_at"));
  line.kind = LedgerKind::credit;
  line.text = "invoice " + line.number + " taken back by " + row.text("number");
  line.number = row.text("number");
  convert(shop, year, std::nullopt, line);
  lines.push_back(std::move(line));
}

void add_invoices(const ShopFile& shop, const Year& year, std::vector<LedgerLine>& lines) {
  Query query(shop, R"(
SELECT invoice.*, commission.number AS commission_number, commission.customer_id, customer.name
FROM invoice JOIN commission ON commission.id = invoice.commission_id
JOIN customer ON customer.id = commission.customer_id
WHERE invoice.kind <> 'deposit receipt' AND issued_at >= ? AND issued_at < ? ORDER BY invoice.number)");
  query.bind(year.from).bind(year.to);
  while (query.next()) {
    if (!query.is_null("corrects_id")) add_credit(shop, year, query, lines);
    Invoice invoice{.commission = query.id<CommissionId>("commission_id"),
                    .body = query.text("body")};
    invoice.number = query.integer("number");
    invoice.total = query.money("total_minor", "currency");
    const InvoiceBody body = read_invoice_body(invoice);
    LedgerLine line = paper(query, body, 1);
    line.day = year.settings.zone.date_of(query.instant("issued_at"));
    line.kind = LedgerKind::invoice;
    line.text = query.text("kind") + (body.why ? ": " + *body.why : "");
    convert(shop, year, std::nullopt, line);
    lines.push_back(std::move(line));
  }
}

void add_purchases(const ShopFile& shop, const Year& year, std::vector<LedgerLine>& lines) {
  Query query(shop, R"(
SELECT number, kind, name, supplier, invoice, received_at AS at, price_minor, currency FROM lot
WHERE owner_id IS NULL AND price_minor > 0 AND received_at >= ? AND received_at < ? ORDER BY number)");
  query.bind(year.from).bind(year.to);
  while (query.next()) {
    LedgerLine line;
    line.day = year.settings.zone.date_of(query.instant("at"));
    line.kind = LedgerKind::purchase;
    line.number = query.text("number");
    line.party = query.text("supplier");
    line.text = query.text("kind") + ": " + query.text("name") +
                (query.is_null("invoice") ? "" : ", invoice " + query.text("invoice"));
    line.amount = -query.money("price_minor", "currency");
    convert(shop, year, std::nullopt, line);
    lines.push_back(std::move(line));
  }
}

void add_outside(const ShopFile& shop, const Year& year, std::vector<LedgerLine>& lines) {
  Query query(shop,
              "SELECT id, who, operation, back_at, cost_minor, currency FROM outside_work "
              "WHERE cost_minor > 0 AND back_at >= ? AND back_at < ? ORDER BY back_at, id");
  query.bind(year.from).bind(year.to);
  while (query.next()) {
    LedgerLine line;
    line.day = year.settings.zone.date_of(query.instant("back_at"));
    line.kind = LedgerKind::outside_work;
    line.number = query.text("id");
    line.party = query.text("who");
    line.text = query.text("operation");
    line.amount = -query.money("cost_minor", "currency");
    convert(shop, year, std::nullopt, line);
    lines.push_back(std::move(line));
  }
}

// "1290.00": no group marks, so that every program reads it as a number.
std::string plain(Money money) {
  const std::int64_t per = money.currency().minor_per_major();
  const std::int64_t size = std::llabs(money.minor());
  std::string text = (money.minor() < 0 ? "-" : "") + std::to_string(size / per);
  if (per > 1) text += "." + std::to_string(per + size % per).substr(1);
  return text;
}

std::string plain(const std::optional<Money>& money) {
  return money ? plain(*money) : "";
}

}  // namespace

std::string_view to_word(LedgerKind kind) {
  switch (kind) {
    case LedgerKind::invoice:
      return "invoice";
    case LedgerKind::credit:
      return "credit";
    case LedgerKind::received:
      return "money received";
    case LedgerKind::given_back:
      return "money given back";
    case LedgerKind::correction:
      return "payment corrected";
    case LedgerKind::purchase:
      return "purchase";
    case LedgerKind::outside_work:
      return "outside work";
  }
  return "";
}

std::vector<LedgerLine> ledger(const ShopFile& shop, int year, const ShopSettings& settings) {
  const auto first = [&](int y) { return settings.zone.at(date::year{y} / 1 / 1, Duration{}); };
  const Year span{first(year), first(year + 1), settings};
  std::vector<LedgerLine> lines;
  add_invoices(shop, span, lines);
  add_payments(shop, span, lines);
  add_purchases(shop, span, lines);
  add_outside(shop, span, lines);
  std::stable_sort(lines.begin(), lines.end(),
                   [](const LedgerLine& a, const LedgerLine& b) { return a.day < b.day; });
  return lines;
}

std::string ledger_csv(const std::vector<LedgerLine>& lines, Currency own) {
  std::vector<std::vector<std::string>> records{
      {"day", "kind", "number", "commission", "party", "text", "currency", "amount", "without_tax",
       "tax", "tax_rate_percent", "exchange_rate", "amount_" + own.code()}};
  for (const LedgerLine& line : lines)
    records.push_back(
        {to_stored(line.day), std::string(to_word(line.kind)), line.number, line.commission,
         line.party, line.text, line.amount.currency().code(), plain(line.amount),
         plain(line.without_tax), plain(line.tax),
         line.tax ? quantity_text(Share::millionths(line.tax_rate.millionths() * 100)) : "",
         line.rate, plain(line.in_shop_currency)});
  return to_table_text(records);
}

std::vector<YearTotal> year_totals(const std::vector<LedgerLine>& lines) {
  std::map<std::pair<std::string, std::string>, Money> sums;
  const auto add = [&](const std::string& what, Money amount) {
    auto& sum = sums.try_emplace({what, amount.currency().code()}, Money(0, amount.currency()))
                    .first->second;
    sum += amount;
  };
  for (const LedgerLine& line : lines) {
    switch (line.kind) {
      case LedgerKind::invoice:
      case LedgerKind::credit:
        add("1 invoiced, with tax", line.amount);
        add("2 invoiced, without tax", *line.without_tax);
        add("3 tax in it at " + to_text(line.tax_rate), *line.tax);
        break;
      case LedgerKind::received:
        add("4 received from buyers", line.amount);
        break;
      case LedgerKind::given_back:
        add("5 given back to buyers", line.amount);
        break;
      case LedgerKind::correction:
        add("6 payments corrected", line.amount);
        break;
      case LedgerKind::purchase:
        add("7 bought, " + line.text.substr(0, line.text.find(':')), line.amount);
        break;
      case LedgerKind::outside_work:
        add("8 outside work", line.amount);
        break;
    }
  }
  std::vector<YearTotal> totals;
  for (const auto& [key, sum] : sums) totals.push_back({key.first.substr(2), sum});
  return totals;
}

}  // namespace tangmark::db
