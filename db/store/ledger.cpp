// SPDX-License-Identifier: MIT
#include "db/store/ledger.h"

#include <algorithm>
#include <map>
#include <set>

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
    line.tax_in_shop_currency = line.tax;
    return;
  }
  std::optional<ExchangeRate> rate;
  if (stated)
    if (const auto read = parse_exchange_rate(*stated, foreign, own, "rate")) rate = *read;
  if (!rate) rate = rate_on(shop, foreign, own, line.day);
  if (!rate) return;
  line.rate = to_text(*rate);
  line.in_shop_currency = exchanged(line.amount, *rate);
  if (line.tax) line.tax_in_shop_currency = exchanged(*line.tax, *rate);
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
    convert(shop, year, query.maybe_text("shop_rate"), line);
    if (const auto paid = query.maybe_money("paid_minor", "paid_currency")) {
      line.text += ", came as " + to_text(*paid) + " at " + query.text("rate");
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
  // What was invoiced at one rate is taken back at the same.
  convert(shop, year, query.maybe_text("shop_rate"), line);
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
    if (body.credit) continue;  // taking the other back is all it does
    LedgerLine line = paper(query, body, 1);
    line.day = year.settings.zone.date_of(query.instant("issued_at"));
    line.kind = LedgerKind::invoice;
    line.text = query.text("kind") + (body.why ? ": " + *body.why : "");
    convert(shop, year, query.maybe_text("shop_rate"), line);
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
       "tax", "tax_rate_percent", "exchange_rate", "amount_" + own.code(), "tax_" + own.code()}};
  for (const LedgerLine& line : lines)
    records.push_back(
        {to_stored(line.day), std::string(to_word(line.kind)), line.number, line.commission,
         line.party, line.text, line.amount.currency().code(), plain(line.amount),
         plain(line.without_tax), plain(line.tax),
         line.tax ? quantity_text(Share::millionths(line.tax_rate.millionths() * 100)) : "",
         line.rate, plain(line.in_shop_currency), plain(line.tax_in_shop_currency)});
  return to_table_text(records);
}

namespace {

// Sums by what they are of and by currency; those in the shop's own stand apart when money in
// another currency is among them.
class Sums {
 public:
  explicit Sums(Currency own) : own_(own) {}

  void add(const std::string& what, Money amount, const std::optional<Money>& at_home) {
    sum(what, amount.currency()) += amount;
    if (amount.currency() != own_) foreign_.insert(what);
    if (at_home) home_.try_emplace(what, Money(0, own_)).first->second += *at_home;
  }

  std::vector<YearTotal> totals() const {
    std::vector<YearTotal> all;
    for (auto one = sums_.begin(); one != sums_.end(); ++one) {
      const std::string& what = one->first.first;
      all.push_back({what.substr(2), one->second});
      const auto next = std::next(one);
      const bool last = next == sums_.end() || next->first.first != what;
      if (last && foreign_.contains(what) && home_.contains(what))
        all.push_back({what.substr(2) + ", all at the recorded rates", home_.at(what)});
    }
    return all;
  }

 private:
  Money& sum(const std::string& what, Currency currency) {
    return sums_.try_emplace({what, currency.code()}, Money(0, currency)).first->second;
  }

  Currency own_;
  std::map<std::pair<std::string, std::string>, Money> sums_;
  std::map<std::string, Money> home_;
  std::set<std::string> foreign_;
};

std::optional<Money> without_tax_at_home(const LedgerLine& line) {
  if (!line.in_shop_currency || !line.tax_in_shop_currency) return std::nullopt;
  return *line.in_shop_currency - *line.tax_in_shop_currency;
}

std::string heading(const LedgerLine& line) {
  switch (line.kind) {
    case LedgerKind::invoice:
    case LedgerKind::credit:
      return "1 invoiced, with tax";
    case LedgerKind::received:
      return "4 received from buyers";
    case LedgerKind::given_back:
      return "5 given back to buyers";
    case LedgerKind::correction:
      return "6 payments corrected";
    case LedgerKind::purchase:
      return "7 bought, " + line.text.substr(0, line.text.find(':'));
    case LedgerKind::outside_work:
      return "8 outside work";
  }
  return "";
}

}  // namespace

std::vector<YearTotal> year_totals(const std::vector<LedgerLine>& lines, Currency shop_currency) {
  Sums sums(shop_currency);
  for (const LedgerLine& line : lines) {
    sums.add(heading(line), line.amount, line.in_shop_currency);
    if (!line.tax) continue;
    sums.add("2 invoiced, without tax", *line.without_tax, without_tax_at_home(line));
    sums.add("3 tax in it at " + to_text(line.tax_rate), *line.tax, line.tax_in_shop_currency);
  }
  return sums.totals();
}

}  // namespace tangmark::db
