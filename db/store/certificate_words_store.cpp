// SPDX-License-Identifier: MIT
#include "db/store/certificate_words_store.h"

#include <algorithm>

#include "db/row.h"

namespace tangmark::db {

CertificateWords certificate_words(const ShopFile& shop, blade::BladeId blade) {
  Query q(shop, "SELECT * FROM certificate_words WHERE blade_id = ?");
  q.bind(blade);
  if (!q.next()) return {};
  return {q.maybe_text("name"),   q.maybe_text("notes"),   q.maybe_text("care"),
          q.maybe_text("made_for"), q.maybe_text("finish"), q.maybe_text("health"),
          q.maybe_text("differs"), q.maybe_text("claims"),  q.maybe_mass("knife_ug"),
          q.maybe_length("behind_edge_nm")};
}

void store_certificate_words(const ShopFile& shop, blade::BladeId blade,
                             const CertificateWords& words) {
  Row row("certificate_words");
  row.set("blade_id", blade).set("name", words.name).set("notes", words.notes).set("care", words.care);
  row.set("made_for", words.made_for).set("finish", words.finish).set("health", words.health);
  row.set("differs", words.differs).set("claims", words.claims).set("knife_ug", words.knife);
  row.set("behind_edge_nm", words.behind_edge);
  Query q(shop, "SELECT id FROM certificate_words WHERE blade_id = ?");
  q.bind(blade);
  if (q.next())
    row.update(shop, q.integer("id"));
  else
    row.insert(shop);
}

std::vector<std::string> lines_of(const std::optional<std::string>& text) {
  std::vector<std::string> lines;
  std::string_view rest = text ? std::string_view(*text) : std::string_view();
  while (!rest.empty()) {
    const std::size_t end = std::min(rest.find('\n'), rest.size());
    std::string_view line = rest.substr(0, end);
    while (line.ends_with('\r') || line.ends_with(' ')) line.remove_suffix(1);
    if (!line.empty()) lines.emplace_back(line);
    rest.remove_prefix(std::min(end + 1, rest.size()));
  }
  return lines;
}

}  // namespace tangmark::db
