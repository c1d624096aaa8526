// SPDX-License-Identifier: MIT
#include "db/store/blade_store.h"

#include <fmt/format.h>

#include <charconv>

#include "db/row.h"

namespace tangmark::db {
namespace {

using namespace blade;

KeptBlade blade_from(const Query& row) {
  Blade blade;
  blade.number = row.integer("number");
  blade.item = row.maybe_id<commission::ItemId>("item_id");
  blade.model = row.maybe_id<commission::ModelId>("model_id");
  blade.piece = row.maybe_id<stock::PieceId>("piece_id");
  blade.title = row.text("title");
  blade.construction = row.word<commission::Construction>("construction");
  blade.grade = row.maybe_text("grade");
  blade.length = row.length("length_nm");
  blade.width = row.maybe_length("width_nm");
  blade.thickness = row.maybe_length("thickness_nm");
  blade.hardness_aim = row.maybe_text("hardness_aim");
  blade.started_at = row.instant("started_at");
  blade.due = row.maybe_date("due");
  blade.finished_at = row.maybe_instant("finished_at");
  blade.scrapped_at = row.maybe_instant("scrapped_at");
  blade.scrap_why = row.maybe_text("scrap_why");
  blade.scrap_cost_to = row.maybe_word<CostGoesTo>("scrap_cost_to");
  blade.delivered_at = row.maybe_instant("delivered_at");
  return {row.id<BladeId>("id"), std::move(blade)};
}

Row row_of(const Blade& blade) {
  Row row("blade");
  row.set("number", blade.number).set("item_id", blade.item).set("model_id", blade.model);
  row.set("piece_id", blade.piece)
      .set("title", blade.title)
      .set_word("construction", blade.construction);
  row.set("grade", blade.grade).set("length_nm", blade.length).set("width_nm", blade.width);
  row.set("thickness_nm", blade.thickness).set("hardness_aim", blade.hardness_aim);
  row.set("started_at", blade.started_at)
      .set("due", blade.due)
      .set("finished_at", blade.finished_at);
  row.set("scrapped_at", blade.scrapped_at).set("scrap_why", blade.scrap_why);
  row.set("delivered_at", blade.delivered_at);
  if (blade.scrap_cost_to)
    row.set_word("scrap_cost_to", *blade.scrap_cost_to);
  else
    row.set_null("scrap_cost_to");
  return row;
}

// "%" and "_" in the text stand for themselves.
std::string pattern_of(std::string_view text) {
  std::string pattern = "%";
  for (const char c : text) {
    if (c == '%' || c == '_' || c == '\\') pattern += '\\';
    pattern += c;
  }
  return pattern + "%";
}

BladeLine line_from(const Query& row) {
  return {row.id<BladeId>("id"),       row.integer("number"),           row.text("title"),
          row.maybe_text("grade"),     row.maybe_integer("commission"), row.maybe_text("tag"),
          row.maybe_date("due"),       !row.is_null("finished_at"),     !row.is_null("scrapped_at"),
          !row.is_null("delivered_at")};
}

}  // namespace

std::optional<KeptBlade> load_blade(const ShopFile& shop, BladeId id) {
  Query query(shop, "SELECT * FROM blade WHERE id = ?");
  query.bind(id);
  return first_row(std::move(query), blade_from);
}

std::optional<KeptBlade> find_blade(const ShopFile& shop, std::int64_t number) {
  Query query(shop, "SELECT * FROM blade WHERE number = ?");
  query.bind(number);
  return first_row(std::move(query), blade_from);
}

Outcome<KeptBlade> blade_named(const ShopFile& shop, std::string_view text,
                               std::string_view field) {
  std::int64_t number = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
  if (error != std::errc() || end != text.data() + text.size())
    return Problem{std::string(field), fmt::format("\"{}\" is not a blade number.", text),
                   "Write the number that is on the tang, such as 23."};
  if (auto found = find_blade(shop, number)) return std::move(*found);
  return Problem{std::string(field), fmt::format("There is no blade {}.", number),
                 "Give the number of a blade that is in the shop."};
}

BladeId insert_blade(const ShopFile& shop, const Blade& blade) {
  return BladeId{row_of(blade).insert(shop)};
}

void store_blade(const ShopFile& shop, const KeptBlade& blade) {
  row_of(blade).update(shop, blade.id.row());
}

std::vector<KeptBlade> blades_in_work(const ShopFile& shop) {
  return all_rows(Query(shop,
                        "SELECT * FROM blade WHERE finished_at IS NULL AND scrapped_at IS NULL "
                        "AND delivered_at IS NULL ORDER BY number"),
                  blade_from);
}

std::vector<KeptBlade> blades_of_item(const ShopFile& shop, commission::ItemId item) {
  Query query(shop, "SELECT * FROM blade WHERE item_id = ? ORDER BY number");
  query.bind(item);
  return all_rows(std::move(query), blade_from);
}

std::vector<BladeLine> list_blades(const ShopFile& shop, std::string_view text, Which which,
                                   int most) {
  std::string sql =
      "SELECT b.id, b.number, b.title, b.grade, c.number AS commission, p.tag, b.due, "
      "b.finished_at, "
      "b.scrapped_at, b.delivered_at FROM blade b "
      "LEFT JOIN item i ON i.id = b.item_id LEFT JOIN commission c ON c.id = i.commission_id "
      "LEFT JOIN piece p ON p.id = b.piece_id WHERE 1";
  if (which == Which::in_work)
    sql += " AND b.finished_at IS NULL AND b.scrapped_at IS NULL AND b.delivered_at IS NULL";
  if (!text.empty())
    sql +=
        " AND (b.number || ' ' || b.title || ' ' || coalesce(b.grade, '') || ' ' || "
        "coalesce(p.tag, '') || ' ' || coalesce(c.number, '')) LIKE ? ESCAPE '\\'";
  Query query(shop, sql + " ORDER BY b.number DESC LIMIT ?");
  if (!text.empty()) query.bind(pattern_of(text));
  query.bind(most);
  std::vector<BladeLine> lines;
  while (query.next()) lines.push_back(line_from(query));
  return lines;
}

}  // namespace tangmark::db
