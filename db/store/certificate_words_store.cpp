// SPDX-License-Identifier: MIT
#include "db/store/certificate_words_store.h"

#include <algorithm>

#include "db/digest.h"
#include "db/row.h"

namespace tangmark::db {

CertificateWords certificate_words(const ShopFile& shop, blade::BladeId blade) {
  Query q(shop, "SELECT * FROM certificate_words WHERE blade_id = ?");
  q.bind(blade);
  if (!q.next()) return {};
  return {q.maybe_text("name"),     q.maybe_text("notes"),
          q.maybe_text("care"),     q.maybe_text("made_for"),
          q.maybe_text("finish"),   q.maybe_text("health"),
          q.maybe_text("differs"),  q.maybe_text("claims"),
          q.maybe_mass("knife_ug"), q.maybe_length("behind_edge_nm")};
}

void store_certificate_words(const ShopFile& shop, blade::BladeId blade,
                             const CertificateWords& words) {
  Row row("certificate_words");
  row.set("blade_id", blade).set("name", words.name).set("notes", words.notes);
  row.set("care", words.care).set("finish", words.finish).set("health", words.health);
  // A person's name: history keeps it hashed with this salt.
  row.set("made_for", words.made_for);
  if (words.made_for)
    row.set_bytes("salt", random_salt());
  else
    row.set_null("salt");
  row.set("differs", words.differs).set("claims", words.claims).set("knife_ug", words.knife);
  row.set("behind_edge_nm", words.behind_edge);
  Query q(shop, "SELECT id FROM certificate_words WHERE blade_id = ?");
  q.bind(blade);
  if (q.next())
    row.update(shop, q.integer("id"));
  else
    row.insert(shop);
}

void erase_made_for(const ShopFile& shop, const ErasedPerson& person) {
  Query q(shop, R"(
SELECT w.id FROM certificate_words w WHERE w.made_for IS NOT NULL AND (w.made_for = ?1 COLLATE NOCASE
  OR w.blade_id IN (SELECT b.id FROM blade b JOIN item i ON i.id = b.item_id
    JOIN commission c ON c.id = i.commission_id WHERE c.customer_id = ?2)))");
  q.bind(person.name.value_or("")).bind(person.id);
  std::vector<std::int64_t> rows;
  while (q.next()) rows.push_back(q.integer("id"));
  for (const std::int64_t row : rows)
    Row("certificate_words").set_null("made_for").set_null("salt").update(shop, row);
}

std::vector<std::string> issued_with_name(const ShopFile& shop, const ErasedPerson& person) {
  Query q(shop, R"(
SELECT c.number, c.issue FROM certificate c WHERE json_valid(c.record)
  AND json_extract(c.record, '$.buyer') <> ''
  AND (json_extract(c.record, '$.buyer') = ?1 COLLATE NOCASE
    OR c.blade_id IN (SELECT b.id FROM blade b JOIN item i ON i.id = b.item_id
      JOIN commission o ON o.id = i.commission_id WHERE o.customer_id = ?2))
ORDER BY c.number, c.issue)");
  q.bind(person.name.value_or("")).bind(person.id);
  std::vector<std::string> issues;
  while (q.next())
    issues.push_back("certificate " + std::to_string(q.integer("number")) + ", issue " +
                     std::to_string(q.integer("issue")));
  return issues;
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
