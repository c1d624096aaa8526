// SPDX-License-Identifier: MIT
#include "reports/letter.h"

#include <algorithm>
#include <cmath>

#include "reports/table.h"
#include "reports/text_check.h"

namespace tangmark::reports {

namespace {

constexpr Points side_margin = 56;
constexpr Points mark_side = 39;
constexpr Points sums_width = 230;

Block line_block(const FontBook& fonts, const std::string& words, const Font& font, Grey grey,
                 Points height, Points x, Points width, Align align) {
  Block block = blank(height);
  const Points at = align == Align::right ? x + width : x;
  block.elements.push_back(run_at(fonts, {at, baseline_in(height)}, words, font, grey, align));
  return block;
}

}  // namespace

Letter::Letter(const Letterhead& shop, const Look& look, const FontBook& fonts, Instant created)
    : shop_(shop),
      fonts_(fonts),
      document_{look.paper, "", shop.shop, "", created, {}, {}, {}},
      pour_(full_sheet(look.paper, side_margin, 45, 58), document_, nullptr) {}

// The mark and the names at the left, how to reach the shop at the right, a rule under both.
Flow Letter::head(Points width) const {
  const Points beside = mark_side + 13;
  const Points left_width = width * 0.56 - beside;
  Flow names = paragraph(fonts_, {{shop_.shop, type_.title, ink}}, left_width, 26);
  if (!shop_.maker.empty()) {
    append(names, paragraph(fonts_, {{shop_.maker, type_.text, ink}}, left_width, 13));
  }
  std::vector<std::string> reach = shop_.address;
  if (!shop_.contact.empty()) reach.push_back(shop_.contact);
  if (!shop_.tax_number.empty()) reach.push_back(shop_.tax_number);
  Flow lines;
  for (const std::string& line : reach) {
    append(lines,
           paragraph(fonts_, {{line, type_.note, second_ink}}, width * 0.4, 10.4, Align::right));
  }
  Block block = blank(std::max({height_of(names), height_of(lines), mark_side}));
  block.height = type_.half() * std::ceil(block.height / type_.half()) + type_.half();
  for (const Element& e : mark_in(fonts_, shop_, {0, 0}, mark_side)) block.elements.push_back(e);
  put_into(block, glued(names), beside, 0);
  put_into(block, glued(lines), width * 0.6, 0);
  block.elements.push_back(Line{{0, block.height}, {width, block.height}, 0.8, ink, 0});
  return {block};
}

void Letter::open(const Addressee& buyer, const std::string& title,
                  const std::vector<std::pair<std::string, std::string>>& facts) {
  const Points width = pour_.sheet().text_width();
  pour_.add(head(width));
  pour_.space(2 * type_.leading);
  const Points left = width * 0.5;
  Flow to = paragraph(fonts_, {{buyer.name, type_.table_bold, ink}}, left, type_.leading);
  for (const std::string& line : buyer.address) {
    append(to, paragraph(fonts_, {{line, type_.table, ink}}, left, type_.leading));
  }
  Table table;
  table.columns = {{"", ColumnAlign::left, 0, false}, {"", ColumnAlign::left, 0, true}};
  table.leading = type_.leading;
  table.row_space = 0;
  table.gap = 13;
  for (const auto& [name, says] : facts) {
    table.rows.push_back(
        {{cell(name, type_.table, second_ink), cell(says, type_.table)}, false, 0, rule_grey, 0});
  }
  const Points facts_at = width * 0.56;
  pour_.add_side_by_side(
      {{to, 0, left}, {table_flow(fonts_, table, width - facts_at), facts_at, width - facts_at}});
  pour_.space(1.5 * type_.leading);
  Flow head = paragraph(fonts_, {{title, type_.title, ink}}, width, 2 * type_.leading);
  head = {marked(glued(head), Role::title)};
  head.front().outline = title;
  pour_.add(head);
  pour_.space(type_.half());
}

void Letter::put_last_section() {
  if (last_section_.empty()) return;
  pour_.add(last_section_);
  pour_.space(type_.half());
  last_section_.clear();
}

void Letter::text(const std::string& words) {
  put_last_section();
  if (words.empty()) return;
  pour_.add(
      paragraph(fonts_, {{words, type_.text, ink}}, pour_.sheet().text_width(), type_.leading));
  pour_.space(type_.leading);
}

Flow Letter::heading(const std::string& words) const {
  Block block = line_block(fonts_, words, type_.head, ink, 1.5 * type_.leading, 0, 0, Align::left);
  block = marked(std::move(block), Role::heading);
  block.keep_with_next = true;
  return {block};
}

void Letter::section(const std::string& head, const std::string& words) {
  if (!words.empty()) section(head, std::vector<std::string>{words});
}

void Letter::section(const std::string& head, const std::vector<std::string>& points) {
  if (points.empty()) return;
  Flow flow = heading(head);
  for (const std::string& point : points) {
    append(flow, paragraph(fonts_, {{point, type_.text, ink}}, pour_.sheet().text_width(),
                           type_.leading));
  }
  flow.front().outline = head;
  put_last_section();
  last_section_ = std::move(flow);
}

void Letter::prices(const std::vector<PriceLine>& lines) {
  put_last_section();
  const bool counted = std::any_of(lines.begin(), lines.end(),
                                   [](const PriceLine& line) { return line.count != 1; });
  Table table;
  table.head_font = type_.note;
  table.leading = type_.leading;
  table.row_space = type_.half();
  table.columns.push_back({"What", ColumnAlign::left, 0, true});
  if (counted) table.columns.push_back({"Number", ColumnAlign::right, 0, false});
  const std::string code = lines.empty() ? "" : lines.front().amount.currency().code();
  table.columns.push_back({code, ColumnAlign::right, 76, false});
  for (const PriceLine& line : lines) {
    Row row;
    Cell what = cell(line.text, type_.table);
    if (!line.detail.empty()) what.spans.push_back({"\n" + line.detail, type_.note, second_ink});
    row.cells.push_back(what);
    if (counted) row.cells.push_back(cell(std::to_string(line.count), type_.table));
    row.cells.push_back(cell(amount_text(line.amount), type_.table));
    table.rows.push_back(row);
  }
  if (!table.rows.empty()) table.rows.back().keep_with_next = true;
  pour_.add(table_flow(fonts_, table, pour_.sheet().text_width()));
}

void Letter::sums(const std::vector<SumLine>& lines) {
  put_last_section();
  Table table;
  table.leading = type_.leading;
  table.row_space = type_.half();
  table.columns = {{"", ColumnAlign::left, 0, true}, {"", ColumnAlign::right, 0, false}};
  for (const SumLine& line : lines) {
    const Font& font = line.strong ? type_.table_bold : type_.table;
    Row row;
    const std::string name =
        line.strong ? line.name + ", " + line.amount.currency().code() : line.name;
    row.cells = {cell(name, font, line.grey), cell(amount_text(line.amount), font, line.grey)};
    row.keep_with_next = true;
    row.rule_below = line.strong ? 1.2 : 0.5;
    row.rule = line.strong ? ink : rule_grey;
    table.rows.push_back(row);
  }
  const Points at = pour_.sheet().text_width() - sums_width;
  pour_.add_side_by_side({{table_flow(fonts_, table, sums_width), at, sums_width}});
  pour_.space(1.5 * type_.leading);
}

void Letter::signatures(const std::vector<std::string>& under) {
  const Points width = pour_.sheet().text_width();
  const Points gap = 26;
  const Points each = (width - gap) / 2;
  Block block = blank(4 * type_.leading);
  const Points line_y = 2.5 * type_.leading;
  for (std::size_t i = 0; i < under.size(); ++i) {
    const Points x = static_cast<double>(i) * (each + gap);
    block.elements.push_back(Line{{x, line_y}, {x + each, line_y}, 0.6, ink, 0});
    block.elements.push_back(
        fitted_run(fonts_, {x, line_y + type_.leading}, under[i], type_.note, each, 6));
  }
  const Points most_along = (pour_.sheet().floor() - pour_.sheet().top) / 4;
  const Points section = height_of(last_section_);
  const bool along = !last_section_.empty() && section < most_along &&
                     pour_.room() < section + type_.half() + block.height;
  for (Block& line : last_section_) line.keep_with_next = line.keep_with_next || along;
  block.space_before = last_section_.empty() ? 0 : type_.half();
  last_section_.push_back(std::move(block));
  pour_.add(last_section_);
  last_section_.clear();
}

Document Letter::close(std::string title, std::string subject) {
  put_last_section();
  document_.title = title;
  document_.subject = std::move(subject);
  add_feet(document_, fonts_, pour_.sheet(), type_.note, shop_.shop + ". " + title + ".");
  return std::move(document_);
}

}  // namespace tangmark::reports
