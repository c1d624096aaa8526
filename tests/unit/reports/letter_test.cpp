// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "reports/page_text.h"
#include "samples.h"

namespace tangmark::reports::samples {

namespace {

using Catch::Contains;

std::string words(const Outcome<Document>& document) {
  REQUIRE(document.ok());
  return words_of(*document);
}

std::string quote_words(const QuotePaper& paper) {
  return words(quote_document(paper, metric(), fonts()));
}

std::string first_sentence(const Outcome<Document>& document) {
  REQUIRE(!document.ok());
  return document.problem().sentence;
}

Money eur(std::int64_t minor) {
  return {minor, Currency()};
}

}  // namespace

TEST_CASE("places to sign never stand alone on a page: the section before comes along") {
  for (std::size_t more = 0; more < 8; ++more) {
    QuotePaper paper = quote(Strain::ordinary);
    paper.cautions.insert(paper.cautions.end(), more, "Dry it.");
    const Document document = *quote_document(paper, customary(), fonts());
    INFO(more);
    REQUIRE(document.pages.size() == 2);
    Document last;
    last.pages.push_back(document.pages.back());
    CHECK_THAT(words_of(last), Contains("Cautions") && Contains("Accepted"));
  }
}

TEST_CASE("a quote says what the buyer must know before accepting") {
  const std::string said = quote_words(quote(Strain::ordinary));
  for (const char* each :
       {"Quote 118", "Thu 24 Dec 2026", "H. Osterby", "Sheath, outside saddler", "VAT 20 %",
        "Deposit to start", "564.00", "Balance when ready", "846.00", "Fri 12 Feb 2027",
        "If you step back", "What may differ", "Not for bones, frozen food or prying."}) {
    CHECK_THAT(said, Contains(each));
  }
}

TEST_CASE("a quote whose lines do not sum to its total is refused with both figures") {
  QuotePaper paper = quote(Strain::ordinary);
  paper.total = eur(141001);
  const std::string sentence = first_sentence(quote_document(paper, metric(), fonts()));
  CHECK_THAT(sentence, Contains(to_text(eur(141000))) && Contains(to_text(eur(141001))));
}

TEST_CASE("prices that hold the tax are summed without it and say what is tax") {
  QuotePaper paper = quote(Strain::ordinary);
  paper.tax_in = TaxIn::price_inclusive;
  paper.total = eur(117500);
  paper.taxes = {{"VAT 20 %", eur(19583)}};
  CHECK_THAT(quote_words(paper), Contains("of which VAT 20 %") && Contains("195.83"));
}

TEST_CASE("a quote without lines, in two currencies or with a foreign deposit is refused") {
  QuotePaper empty = quote(Strain::ordinary);
  empty.lines.clear();
  CHECK(!quote_document(empty, metric(), fonts()));
  QuotePaper mixed = quote(Strain::ordinary);
  mixed.lines[1].amount = Money(6200, *Currency::of("USD"));
  CHECK_THAT(first_sentence(quote_document(mixed, metric(), fonts())), Contains("one currency"));
  QuotePaper foreign = quote(Strain::ordinary);
  foreign.deposit = Money(100, *Currency::of("USD"));
  CHECK(quote_document(foreign, metric(), fonts()).problem().field == "deposit");
}

TEST_CASE("all problems of a paper are told at once") {
  QuotePaper paper = quote(Strain::ordinary);
  paper.number = "";
  paper.buyer.name = "田中";
  paper.total = eur(1);
  CHECK(quote_document(paper, metric(), fonts()).problems().size() == 3);
}

TEST_CASE("a receipt says what stays to pay") {
  ReceiptPaper paper = receipt(Strain::ordinary);
  paper.paid_before = eur(10000);
  const std::string said = words(receipt_document(paper, metric(), fonts()));
  CHECK_THAT(said, Contains("Paid before") && Contains("100.00"));
  CHECK_THAT(said, Contains("Stays to pay") && Contains("746.00"));
}

TEST_CASE("a receipt for nothing or for more than the whole is refused") {
  ReceiptPaper nothing = receipt(Strain::ordinary);
  nothing.amount = eur(0);
  nothing.taxes.clear();
  CHECK(!receipt_document(nothing, metric(), fonts()));
  ReceiptPaper too_much = receipt(Strain::ordinary);
  too_much.amount = eur(141001);
  CHECK(!receipt_document(too_much, metric(), fonts()));
}

TEST_CASE("an invoice takes off the deposit and asks for the balance") {
  const std::string said = words(invoice_document(invoice(Strain::ordinary), metric(), fonts()));
  CHECK_THAT(said, Contains("Deposit, receipt R-31, 23 Nov"));
  CHECK_THAT(said, Contains("Balance to pay, EUR") && Contains("846.00"));
}

TEST_CASE("an invoice paid over says what is given back") {
  InvoicePaper paper = invoice(Strain::ordinary);
  paper.paid.push_back({"R-32", paper.due, eur(100000)});
  CHECK_THAT(words(invoice_document(paper, metric(), fonts())),
             Contains("To give back, EUR") && Contains("154.00"));
}

TEST_CASE("a corrected invoice names the one it replaces and why") {
  InvoicePaper paper = invoice(Strain::ordinary);
  paper.corrects = {{"2027-003", paper.due, "The address of the buyer was wrong."}};
  CHECK_THAT(
      words(invoice_document(paper, metric(), fonts())),
      Contains("This invoice replaces invoice 2027-003") && Contains("address of the buyer"));
}

TEST_CASE("a long quote repeats the head of its table on each page it reaches") {
  const Document document = *quote_document(quote(Strain::hard), metric(), fonts());
  REQUIRE(document.pages.size() > 2);
  for (std::size_t i = 0; i < 2; ++i) {
    Document one;
    one.pages.push_back(document.pages[i]);
    CHECK_THAT(words_of(one), Contains("What\n") && Contains("Number\n") && Contains("EUR\n"));
  }
}

}  // namespace tangmark::reports::samples
