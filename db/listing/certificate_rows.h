// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "db/shop_file.h"
#include "domain/measure/when.h"

namespace tangmark::db {

/// One issue of a certificate.
struct CertificateRow {
  std::int64_t number = 0, issue = 1, blade = 0;
  Instant issued_at;
  std::string why;          ///< of a further issue
  std::string revoked_why;  ///< empty while it stands
};
/// Newest first.
std::vector<CertificateRow> certificate_rows(const ShopFile& shop);

}  // namespace tangmark::db
