// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "db/shop_file.h"
#include "domain/blade/blade_id.h"
#include "domain/measure/id.h"
#include "domain/measure/when.h"

namespace tangmark::db {

using CertificateId = Id<struct CertificateTag>;

/// An issued certificate as the list shows it. Record and paper are frozen from the day of issue.
struct IssuedCertificate {
  CertificateId id;
  std::int64_t number = 0, issue = 0;
  std::int64_t blade_number = 0;
  std::string title;
  Instant issued_at;
  std::string digest;              ///< SHA-256 of the record
  std::optional<std::string> why;  ///< of a reissue
  std::optional<std::int64_t> replaces_issue;
  std::optional<Instant> revoked_at;
  std::optional<std::string> revoked_why;
  std::optional<std::string> signed_by;  ///< fingerprint of the key
};

/// All issues, newest first.
std::vector<IssuedCertificate> all_certificates(const ShopFile& shop);
/// The issues of one blade, newest first.
std::vector<IssuedCertificate> certificates_of(const ShopFile& shop, blade::BladeId blade);
/// By "12" (its newest issue) or "12/1". Refuses an unknown one.
Outcome<IssuedCertificate> find_certificate(const ShopFile& shop, std::string_view number,
                                            std::string_view field);
/// The frozen paper, byte for byte, and the frozen record.
std::string certificate_pdf(const ShopFile& shop, CertificateId id);
std::string certificate_record(const ShopFile& shop, CertificateId id);

}  // namespace tangmark::db
