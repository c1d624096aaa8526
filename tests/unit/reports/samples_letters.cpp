// SPDX-License-Identifier: MIT
#include "samples.h"

namespace tangmark::reports::samples {

using namespace date::literals;

namespace {

Money eur(std::int64_t minor) {
  return {minor, Currency()};
}

std::string many_times(const std::string& words, int n) {
  std::string all;
  for (int i = 0; i < n; ++i) all += words;
  return all;
}

Addressee buyer(Strain strain) {
  if (strain == Strain::ordinary) return {"H. Osterby", {"Ferry Lane 3", "9990 Vaelt", "Denmark"}};
  return {"Ελευθερία Παπαδοπούλου-Κωνσταντινοπούλου und Александра Вишневская-Зарубежнова",
          {"Οδός Μεγάλου Αλεξάνδρου 114, τρίτος όροφος, διαμέρισμα 27",
           "Санкт-Петербургское шоссе, дом 130, корпус 7", "Přístavní čtvrť Šťěžery"}};
}

}  // namespace

const FontBook& fonts() {
  static const FontBook book = FontBook::load();
  return book;
}

Instant noon() {
  return date::sys_days(2026_y / 11 / 24) + std::chrono::hours(11);
}

Look metric() {
  Look look;
  look.zone = *Zone::of("Europe/Vienna");
  return look;
}

Look customary() {
  return {Paper::letter, TemperatureUnit::fahrenheit, LengthUnit::inch, MassUnit::pound,
          *Zone::of("America/Chicago")};
}

Letterhead letterhead(Strain strain) {
  if (strain == Strain::ordinary) {
    return {"Quillfen Bench",
            "O. Renwick, knife maker",
            {"Reed Row 8", "4871 Quillfen"},
            "bench@quillfen.example, 555 0142",
            "VAT no. XQ 000 000",
            {}};
  }
  return {
      "Мастерская ножей «Заречная кузница» и Σιδηρουργείο Βουνού",
      "Çağlar Öztürkoğlu-Székesfehérvári and Ólafur Þórðarson, knife makers",
      {"Långströmsgatan 1114, Gårdshus B, källarvåning", "Żółć-Gęślą-Jaźń 00-950", "Ísafjörður"},
      "a-very-long-mailbox-name-of-the-workshop@zarechnaya-kuznitsa.example",
      "Steuernummer 000/000/00000",
      drawn_picture(240, 160)};
}

namespace {

void strain_it(QuotePaper& q) {
  q.lines.clear();
  for (int i = 0; i < 40; ++i) {
    q.lines.push_back(
        {"Knife " + std::to_string(i + 1) + ", нож кухонный с очень длинным описанием",
         many_times("Σκληρό ξύλο, ένα μακρύ κείμενο για το χερούλι. ", 3), i + 1,
         eur(10'000'000'00 + i)});
  }
  Money sum = eur(0);
  for (const PriceLine& line : q.lines) sum += line.amount;
  q.tax_in = TaxIn::price_inclusive;
  q.total = sum;
  q.terms = many_times("Оплата в течение тридцати дней после получения счёта. ", 60);
  q.cautions.assign(30, "Не для костей и замороженных продуктов; καθαρίζεται με το χέρι.");
}

}  // namespace

QuotePaper quote(Strain strain) {
  QuotePaper q;
  q.shop = letterhead(strain);
  q.buyer = buyer(strain);
  q.number = "118";
  q.version = 2;
  q.commission = "C-72";
  q.made = noon();
  q.valid_until = 2026_y / 12 / 24;
  q.work =
      "Chef’s knife, 240 mm, pattern-welded from 1084 and 15N20, bog oak handle with a bronze "
      "spacer, edge guard. As on the drawing of 20 November.";
  q.lines = {{"Chef’s knife, 240 mm", "Pattern-welded, bog oak, bronze spacer", 1, eur(107500)},
             {"Sheath, outside saddler", "", 1, eur(6200)},
             {"Insured post to Denmark", "", 1, eur(3800)}};
  q.taxes = {{"VAT 20 %", eur(23500)}};
  q.total = eur(141000);
  q.deposit = eur(56400);
  q.promise = 2027_y / 2 / 12;
  q.promise_words = "It hangs on the saddler and on two firings; you hear at once if it slips.";
  q.terms = "The deposit holds a place in the order of work. The balance is due before posting.";
  q.refund_rule =
      "Until the billet is stacked the deposit is given back less 10 %. After that it pays for the "
      "steel and is kept.";
  q.tolerance =
      "Length within 3 mm, height within 2 mm. A welded pattern never repeats and will differ from "
      "any picture.";
  q.cautions = {"This steel rusts: dry it at once and oil it before storing.",
                "Contains nickel. Not for bones, frozen food or prying."};
  if (strain == Strain::hard) strain_it(q);
  return q;
}

ReceiptPaper receipt(Strain strain) {
  const QuotePaper q = quote(strain);
  ReceiptPaper r;
  r.shop = q.shop;
  r.buyer = q.buyer;
  r.number = "R-31";
  r.commission = q.commission;
  r.issued = noon();
  r.received = 2026_y / 11 / 23;
  r.work = q.work;
  r.amount = eur(56400);
  r.method = "bank transfer";
  r.taxes = {{"VAT 20 %", eur(9400)}};
  r.total = q.total;
  r.paid_before = strain == Strain::hard ? eur(1000) : eur(0);
  r.buys = "A place in the order of work and the steel of the billet.";
  r.refund_rule = q.refund_rule;
  return r;
}

InvoicePaper invoice(Strain strain) {
  const QuotePaper q = quote(strain);
  InvoicePaper i;
  i.shop = q.shop;
  i.buyer = q.buyer;
  i.number = "2027-004";
  i.commission = q.commission;
  i.issued = noon();
  i.delivered = 2026_y / 11 / 24;
  i.due = 2026_y / 12 / 8;
  i.work = q.work;
  i.lines = q.lines;
  i.tax_in = q.tax_in;
  i.taxes = q.taxes;
  i.total = q.total;
  i.paid = {{"R-31", 2026_y / 11 / 23, eur(56400)}};
  i.how_to_pay = "By transfer to the account named in our mail, with the invoice number.";
  i.terms = q.terms;
  if (strain == Strain::hard) {
    i.corrects = {{"2027-003", 2026_y / 11 / 22, "The address of the buyer was wrong."}};
  }
  return i;
}

}  // namespace tangmark::reports::samples
