// SPDX-License-Identifier: MIT
#include "db/store/certificate_store.h"

#include <fmt/format.h>

#include "db/row.h"

namespace tangmark::db {
namespace {

constexpr const char* certificate_columns =
    "SELECT c.id, c.number, c.issue, b.number AS blade, b.title, c.issued_at, c.digest, c.why, "
    "(SELECT r.issue FROM certificate r WHERE r.id = c.replaces_id) AS replaces, c.revoked_at, "
    "c.revoked_why, c.signed_by "
    "FROM certificate c JOIN blade b ON b.id = c.blade_id ";

std::string selected(const char* which) {
  return fmt::format("{}{}", certificate_columns, which);
}

IssuedCertificate read(const Query& q) {
  return {q.id<CertificateId>("id"),
          q.integer("number"),
          q.integer("issue"),
          q.integer("blade"),
          q.text("title"),
          q.instant("issued_at"),
          q.text("digest"),
          q.maybe_text("why"),
          q.maybe_integer("replaces"),
          q.maybe_instant("revoked_at"),
          q.maybe_text("revoked_why"),
          q.maybe_text("signed_by")};
}

std::string column_of(const ShopFile& shop, CertificateId id, const char* column) {
  Query q(shop, std::string("SELECT ") + column + " AS held FROM certificate WHERE id = ?");
  q.bind(id);
  return q.next() ? q.text("held") : std::string();
}

}  // namespace

std::vector<IssuedCertificate> all_certificates(const ShopFile& shop) {
  Query q(shop, selected("ORDER BY c.id DESC"));
  std::vector<IssuedCertificate> all;
  while (q.next()) all.push_back(read(q));
  return all;
}

std::vector<IssuedCertificate> certificates_of(const ShopFile& shop, blade::BladeId blade) {
  Query q(shop, selected("WHERE c.blade_id = ? ORDER BY c.issue DESC"));
  q.bind(blade);
  std::vector<IssuedCertificate> all;
  while (q.next()) all.push_back(read(q));
  return all;
}

Outcome<IssuedCertificate> find_certificate(const ShopFile& shop, std::string_view number,
                                            std::string_view field) {
  Query q(shop, selected("WHERE CAST(c.number AS TEXT) = ?1 OR c.number || '/' || c.issue = ?1 "
                         "ORDER BY c.issue DESC LIMIT 1"));
  q.bind(number);
  if (q.next()) return read(q);
  return Problem{std::string(field), "There is no certificate " + std::string(number) + ".",
                 "Look its number up in the certificates place."};
}

std::string certificate_pdf(const ShopFile& shop, CertificateId id) {
  return column_of(shop, id, "pdf");
}
std::string certificate_record(const ShopFile& shop, CertificateId id) {
  return column_of(shop, id, "record");
}

}  // namespace tangmark::db
