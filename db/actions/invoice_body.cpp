// SPDX-License-Identifier: MIT
#include "db/actions/invoice_body.h"

#include <nlohmann/json.hpp>

#include "db/failure.h"
#include "db/store/item_store.h"
#include "db/store/money_store.h"
#include "db/store/quote_store.h"

namespace tangmark::db {
namespace {

using namespace commission;
using nlohmann::json;

void add_lines(const ShopFile& shop, const KeptCommission& commission,
               const std::optional<KeptQuote>& quote, InvoiceBody& body) {
  if (quote)
    for (const QuoteLine& line : quote->lines)
      if (line.side == QuoteSide::price) body.lines.push_back({line.text, line.amount});
  for (const ItemChange& change : changes_of_commission(shop, commission.id))
    if (change.price && !change.price->is_zero())
      body.lines.push_back({change.words, *change.price});
}

// Inclusive prices hold their tax: total / (1 + rate) is what is left without it.
Money without_tax_of(Money total, TaxMode mode, Share rate) {
  if (mode == TaxMode::none) return total;
  return scaled_half_even(total, Share::whole().millionths(), (Share::whole() + rate).millionths());
}

// Prices told without tax are what is left without it, so that the lines sum to what is printed.
Money sum_of(const std::vector<InvoiceLine>& lines, Currency currency) {
  Money sum(0, currency);
  for (const InvoiceLine& line : lines) sum += line.amount;
  return sum;
}

json to_json_lines(const std::vector<InvoiceLine>& lines) {
  json all = json::array();
  for (const InvoiceLine& line : lines)
    all.push_back({{"text", line.text}, {"amount_minor", line.amount.minor()}});
  return all;
}

json to_json_payments(const std::vector<InvoicePayment>& payments) {
  json all = json::array();
  for (const InvoicePayment& payment : payments)
    all.push_back({{"number", payment.number},
                   {"day", to_stored(payment.day)},
                   {"kind", payment.kind},
                   {"amount_minor", payment.amount.minor()}});
  return all;
}

InvoiceBody read(const json& from, const Invoice& invoice) {
  const Currency currency = invoice.total.currency();
  const auto amount = [&](const json& holder, const char* key) {
    return Money(holder.at(key).get<std::int64_t>(), currency);
  };
  InvoiceBody body;
  body.commission = from.at("commission").get<std::int64_t>();
  body.customer = from.at("customer").get<std::int64_t>();
  body.shop_name = from.at("shop_name").get<std::string>();
  body.maker_name = from.at("maker_name").get<std::string>();
  body.address = from.at("address").get<std::string>();
  for (const json& line : from.at("lines"))
    body.lines.push_back({line.at("text").get<std::string>(), amount(line, "amount_minor")});
  body.without_tax = amount(from, "without_tax_minor");
  body.tax = amount(from, "tax_minor");
  body.total = amount(from, "total_minor");
  body.tax_mode =
      of_word<TaxMode>(from.at("tax_mode").get<std::string>(), "tax_mode").value_or(TaxMode::none);
  body.tax_rate = Share::millionths(from.at("tax_ppm").get<std::int64_t>());
  for (const json& payment : from.at("received"))
    body.received.push_back(
        {payment.at("number").get<std::int64_t>(),
         parse_date(payment.at("day").get<std::string>(), "day").value_or(CalendarDate()),
         payment.at("kind").get<std::string>(), amount(payment, "amount_minor")});
  body.paid = amount(from, "paid_minor");
  body.owed = amount(from, "owed_minor");
  body.refund_rule = from.at("refund_rule").get<std::string>();
  body.tolerance = from.at("tolerance").get<std::string>();
  if (from.contains("payment")) body.payment = from.at("payment").get<std::int64_t>();
  if (from.contains("corrects")) body.corrects = from.at("corrects").get<std::int64_t>();
  body.credit = from.value("credit", false);
  body.work = from.value("work", std::string());
  if (from.contains("why")) body.why = from.at("why").get<std::string>();
  return body;
}

}  // namespace

std::string work_words(const ShopFile& shop, CommissionId commission) {
  std::string text;
  for (const KeptItem& item : items_of(shop, commission)) {
    if (item.cancelled_on) continue;
    text += (text.empty() ? "" : " ") + item.title;
    if (item.grade) text += ", " + *item.grade;
    if (item.handle) text += ", " + *item.handle;
    text += ".";
  }
  return text;
}

InvoiceBody invoice_body(const ShopFile& shop, const KeptCommission& commission,
                         const ShopSettings& settings) {
  const Account standing = account(shop, commission);
  const auto quote = accepted_quote(shop, commission.id);
  InvoiceBody body;
  body.commission = commission.number;
  body.customer = commission.customer.row();
  body.shop_name = settings.shop_name;
  body.maker_name = settings.maker_name;
  body.address = settings.address;
  body.work = work_words(shop, commission.id);
  add_lines(shop, commission, quote, body);
  if (quote) {
    body.tax_mode = quote->tax_mode;
    body.tax_rate = quote->tax_rate;
  }
  body.total = standing.total();
  body.without_tax = body.tax_mode == TaxMode::exclusive
                         ? sum_of(body.lines, body.total.currency())
                         : without_tax_of(body.total, body.tax_mode, body.tax_rate);
  body.tax = body.total - body.without_tax;
  for (const KeptPayment& payment : payments_of(shop, commission.id))
    body.received.push_back({payment.number, settings.zone.date_of(payment.at),
                             std::string(word_of(payment.kind)), payment.amount});
  body.paid = standing.received;
  body.owed = standing.owed();
  body.refund_rule = commission.refund_rule.value_or("");
  body.tolerance = settings.tolerance_words;
  return body;
}

std::string to_json(const InvoiceBody& body) {
  json out{{"commission", body.commission},
           {"customer", body.customer},
           {"shop_name", body.shop_name},
           {"maker_name", body.maker_name},
           {"address", body.address},
           {"work", body.work},
           {"lines", to_json_lines(body.lines)},
           {"without_tax_minor", body.without_tax.minor()},
           {"tax_minor", body.tax.minor()},
           {"total_minor", body.total.minor()},
           {"tax_mode", word_of(body.tax_mode)},
           {"tax_ppm", body.tax_rate.millionths()},
           {"received", to_json_payments(body.received)},
           {"paid_minor", body.paid.minor()},
           {"owed_minor", body.owed.minor()},
           {"refund_rule", body.refund_rule},
           {"tolerance", body.tolerance}};
  if (body.payment) out["payment"] = *body.payment;
  if (body.corrects) out["corrects"] = *body.corrects;
  if (body.why) out["why"] = *body.why;
  if (body.credit) out["credit"] = true;
  return out.dump();
}

InvoiceBody read_invoice_body(const Invoice& invoice) {
  try {
    return read(json::parse(invoice.body), invoice);
  } catch (const json::exception&) {
    throw Failure("The file is damaged: invoice " + std::to_string(invoice.number) +
                  " cannot be read. Check the file.");
  }
}

}  // namespace tangmark::db
