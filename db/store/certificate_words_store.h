// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "db/shop_file.h"
#include "domain/blade/blade_id.h"
#include "domain/commission/customer.h"
#include "domain/measure/length.h"
#include "domain/measure/mass.h"

namespace tangmark::db {

/// What the maker says himself on the certificate of one blade; see step_009.
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

/// A person whose data are erased, with the name of before.
struct ErasedPerson {
  commission::CustomerId id;
  std::optional<std::string> name;
};
/// Takes whom a certificate is made for from the words for every blade of that person's
/// commissions, and for any other blade where it is that name.
void erase_made_for(const ShopFile& shop, const ErasedPerson& person);
/// The issued certificates that carry a buyer's name and are that person's, by commission or by
/// that name: "certificate 3, issue 1". They are frozen, and no erasing reaches them.
std::vector<std::string> issued_with_name(const ShopFile& shop, const ErasedPerson& person);

/// The lines of a text, without empty ones.
std::vector<std::string> lines_of(const std::optional<std::string>& text);

}  // namespace tangmark::db
