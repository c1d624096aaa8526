// SPDX-License-Identifier: MIT
#include "reports/quote_paper.h"

#include "reports/letter.h"
#include "reports/text_check.h"

namespace tangmark::reports {

namespace {

Problems problems_of(const QuotePaper& quote, const FontBook& fonts) {
  TextCheck check(fonts);
  check.letterhead(quote.shop);
  check.addressee(quote.buyer);
  check.needed(quote.number, "quote number");
  check.text(quote.commission, "commission number");
  check.text(quote.work, "description of the work");
  check.text(quote.promise_words, "words to the promise");
  check.text(quote.terms, "terms");
  check.text(quote.refund_rule, "refund rule");
  check.text(quote.tolerance, "tolerance");
  check.texts(quote.cautions, "cautions");
  check_sums(check, quote.lines, quote.tax_in, quote.taxes, quote.total);
  if (quote.deposit && quote.deposit->currency() != quote.total.currency()) {
    check.add({"deposit", "The deposit is in another currency than the total.",
               "Enter the deposit in " + quote.total.currency().code() + "."});
  }
  return check.problems();
}

std::string ready_words(const QuotePaper& quote) {
  if (!quote.promise) return quote.promise_words;
  std::string words = "By " + to_text(*quote.promise) + ".";
  if (!quote.promise_words.empty()) words += " " + quote.promise_words;
  return words;
}

}  // namespace

Outcome<Document> quote_document(const QuotePaper& quote, const Look& look, const FontBook& fonts) {
  Problems problems = problems_of(quote, fonts);
  if (!problems.empty()) return problems;
  std::vector<std::pair<std::string, std::string>> facts = {
      {"Version", std::to_string(quote.version)},
      {"Date", to_text(look.zone.date_of(quote.made))},
      {"Valid until", to_text(quote.valid_until)}};
  if (!quote.commission.empty()) facts.emplace_back("Commission", quote.commission);

  Letter letter(quote.shop, look, fonts, quote.made);
  letter.open(quote.buyer, "Quote " + quote.number, facts);
  letter.text(quote.work);
  letter.prices(quote.lines);
  std::vector<Letter::SumLine> sums =
      sum_lines(quote.lines, quote.tax_in, quote.taxes, quote.total);
  if (quote.deposit && !quote.deposit->is_zero()) {
    sums.push_back({"Deposit to start", *quote.deposit, false, ink});
    sums.push_back({"Balance when ready", quote.total - *quote.deposit, false, ink});
  }
  letter.sums(sums);
  letter.section("When it can be ready", ready_words(quote));
  letter.section("Terms", quote.terms);
  letter.section("If you step back", quote.refund_rule);
  letter.section("What may differ", quote.tolerance);
  letter.section("Cautions", quote.cautions);
  letter.signatures(
      {"Accepted: name and date", quote.shop.maker.empty() ? quote.shop.shop : quote.shop.maker});
  return letter.close("Quote " + quote.number + ", version " + std::to_string(quote.version),
                      quote.work);
}

}  // namespace tangmark::reports
