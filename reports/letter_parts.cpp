// SPDX-License-Identifier: MIT
#include <algorithm>
#include <string>

#include "reports/letter.h"
#include "reports/settable.h"
#include "reports/text_check.h"

namespace tangmark::reports {

namespace {

std::string initials(const std::string& name) {
  std::string letters;
  bool starts = true;
  int found = 0;
  for (std::string_view rest = name; !rest.empty() && found < 2;) {
    const Sign c = first_sign(rest);
    if (c.code == ' ') {
      starts = true;
    } else if (starts) {
      letters += rest.substr(0, c.bytes);
      starts = false;
      ++found;
    }
    rest.remove_prefix(c.bytes);
  }
  return letters;
}

Element picture_within(const Picture& picture, Place corner, Points side) {
  const double longer = std::max(picture.width_px, picture.height_px);
  const Points width = side * picture.width_px / longer;
  const Points height = side * picture.height_px / longer;
  return PlacedPicture{
      {corner.x + (side - width) / 2, corner.y + (side - height) / 2, width, height}, picture};
}

Problem mixed_money(const std::string& field) {
  return {field, "The " + field + " are in more than one currency.",
          "Enter all amounts of a paper in one currency."};
}

}  // namespace

std::vector<Element> mark_in(const FontBook& fonts, const Letterhead& shop, Place corner,
                             Points side) {
  if (shop.mark) return {picture_within(*shop.mark, corner, side)};
  const Place centre{corner.x + side / 2, corner.y + side / 2};
  const Font font{Face::serif, Weight::bold, Slant::upright, side * 0.38};
  const Place baseline{centre.x, centre.y + 0.36 * font.size};
  return {Circle{centre, side / 2 - 0.6, {true, 1.2, ink, false, paper_white}},
          fitted_run(fonts, baseline, initials(shop.shop), font, side * 0.78, 5, Align::centre)};
}

void add_feet(Document& document, const FontBook& fonts, const Sheet& sheet, const Font& font,
              const std::string& words) {
  const Points y = sheet.height - sheet.bottom + 26;
  const std::size_t count = document.pages.size();
  for (std::size_t i = 0; i < count; ++i) {
    const std::string number = "Page " + std::to_string(i + 1) + " of " + std::to_string(count);
    TextRun right =
        run_at(fonts, {sheet.width - sheet.right, y}, number, font, second_ink, Align::right);
    TextRun left =
        fitted_run(fonts, {sheet.left, y}, words, font, sheet.text_width() - right.width - 16, 5);
    left.grey = second_ink;
    Page& page = document.pages[i];
    page.marks.push_back({Role::decoration, page.elements.size(), 2});
    page.elements.push_back(left);
    page.elements.push_back(right);
  }
}

void check_sums(TextCheck& check, const std::vector<PriceLine>& lines, TaxIn tax_in,
                const std::vector<TaxLine>& taxes, const Money& total) {
  if (lines.empty()) {
    check.add({"price lines", "The paper has no price line.", "Enter what is to be paid for."});
    return;
  }
  const Currency currency = total.currency();
  Money lines_sum(0, currency);
  Money taxes_sum(0, currency);
  for (const PriceLine& line : lines) {
    check.needed(line.text, "price line");
    check.text(line.detail, "detail of a price line");
    if (line.amount.currency() != currency) return check.add(mixed_money("price lines"));
    lines_sum += line.amount;
  }
  for (const TaxLine& tax : taxes) {
    check.needed(tax.name, "tax line");
    if (tax.amount.currency() != currency) return check.add(mixed_money("taxes"));
    taxes_sum += tax.amount;
  }
  const Money sum = tax_in == TaxIn::price_exclusive ? lines_sum + taxes_sum : lines_sum;
  if (sum != total) {
    check.add({"total",
               "The lines sum to " + to_text(sum) + " but the total says " + to_text(total) + ".",
               "Correct the lines or the total."});
  }
}

std::vector<Letter::SumLine> sum_lines(const std::vector<PriceLine>& lines, TaxIn tax_in,
                                       const std::vector<TaxLine>& taxes, const Money& total) {
  std::vector<Letter::SumLine> out;
  if (tax_in == TaxIn::price_exclusive && !taxes.empty()) {
    Money sum(0, total.currency());
    for (const PriceLine& line : lines) sum += line.amount;
    out.push_back({"Sum", sum, false, ink});
    for (const TaxLine& tax : taxes) out.push_back({tax.name, tax.amount, false, ink});
  }
  out.push_back({"Total", total, true, ink});
  if (tax_in == TaxIn::price_inclusive) {
    for (const TaxLine& tax : taxes) {
      out.push_back({"of which " + tax.name, tax.amount, false, second_ink});
    }
  }
  return out;
}

}  // namespace tangmark::reports
