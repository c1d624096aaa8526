// SPDX-License-Identifier: MIT
#include "db/store/finding_store.h"

#include <fmt/format.h>

#include <charconv>

#include "db/row.h"

namespace tangmark::db {
namespace {

using namespace blade;

KeptFinding finding_from(const Query& row) {
  Finding finding{.number = row.integer("number"), .blade = row.id<BladeId>("blade_id")};
  finding.at = row.instant("at");
  finding.kind = row.text("kind");
  finding.words = row.text("words");
  finding.place = row.maybe_text("place");
  finding.side = row.maybe_text("side");
  finding.size = row.maybe_length("size_nm");
  finding.affects = row.yes("affects");
  finding.decision = row.word<Decision>("decision");
  finding.decided_at = row.maybe_instant("decided_at");
  finding.decided_words = row.maybe_text("decided_words");
  return {row.id<FindingId>("id"), std::move(finding)};
}

Row row_of(const Finding& finding) {
  Row row("finding");
  row.set("number", finding.number).set("blade_id", finding.blade).set("at", finding.at);
  row.set("kind", finding.kind).set("words", finding.words).set("place", finding.place);
  row.set("side", finding.side).set("size_nm", finding.size).set("affects", finding.affects);
  row.set_word("decision", finding.decision).set("decided_at", finding.decided_at);
  row.set("decided_words", finding.decided_words);
  return row;
}

}  // namespace

std::vector<KeptFinding> findings_of(const ShopFile& shop, BladeId blade) {
  Query query(shop, "SELECT * FROM finding WHERE blade_id = ? ORDER BY at, id");
  query.bind(blade);
  std::vector<KeptFinding> findings;
  while (query.next()) findings.push_back(finding_from(query));
  return findings;
}

std::optional<KeptFinding> find_finding(const ShopFile& shop, std::int64_t number) {
  Query query(shop, "SELECT * FROM finding WHERE number = ?");
  query.bind(number);
  if (!query.next()) return std::nullopt;
  return finding_from(query);
}

Outcome<KeptFinding> finding_named(const ShopFile& shop, std::string_view text,
                                   std::string_view field) {
  std::int64_t number = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
  if (error == std::errc() && end == text.data() + text.size())
    if (auto found = find_finding(shop, number)) return std::move(*found);
  return Problem{std::string(field), fmt::format("There is no finding \"{}\".", text),
                 "Give the number of a finding that was logged."};
}

FindingId insert_finding(const ShopFile& shop, const Finding& finding) {
  return FindingId{row_of(finding).insert(shop)};
}

void store_finding(const ShopFile& shop, const KeptFinding& finding) {
  row_of(finding).update(shop, finding.id.row());
}

}  // namespace tangmark::db
