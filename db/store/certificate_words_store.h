// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "db/shop_file.h"
#include "domain/blade/blade_id.h"
#include "domain/measure/length.h"
#include "domain/measure/mass.h"

namespace tangmark::db {

/// What the maker says himself on the certificate of one blade; see step_007.
struct CertificateWords {
  std::optional<std::string> name;
  std::optional<std::string> notes;  ///< paragraphs, one to a line
  std::optional<std::string> care;   ///< the same
  std::optional<std::string> made_for;
  std::optional<std::string> finish;   ///< one to a line: oil, patina, coating
  std::optional<std::string> health;   ///< metals and fillers of the handle, one to a line
  std::optional<std::string> differs;  ///< from what was ordered, one to a line
  std::optional<std::string> claims;   ///< asked for beyond what the record gives, with commas
  std::optional<Mass> knife;
  std::optional<Length> behind_edge;
};

CertificateWords certificate_words(const ShopFile& shop, blade::BladeId blade);
void store_certificate_words(const ShopFile& shop, blade::BladeId blade,
                             const CertificateWords& words);

/// The lines of a text, without empty ones.
std::vector<std::string> lines_of(const std::optional<std::string>& text);

}  // namespace tangmark::db
