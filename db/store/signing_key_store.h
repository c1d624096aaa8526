// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "db/shop_file.h"
#include "domain/measure/id.h"
#include "domain/measure/outcome.h"
#include "domain/measure/when.h"

namespace tangmark::db {

using SigningKeyId = Id<struct SigningKeyTag>;

/// A key of the shop's as it is kept.
struct KeptSigningKey {
  SigningKeyId id;
  std::string fingerprint;  ///< 64 hex digits
  std::string owner;
  Instant made_at, valid_from, valid_to;
  std::optional<std::string> key_file;  ///< PEM, locked; none when the maker keeps it elsewhere
  std::optional<std::string> kept_at;   ///< where the maker's own file was written
  std::optional<Instant> retired_at;
  std::optional<std::string> retired_why;
};

/// All keys, newest first; a renewal is a row of its own.
std::vector<KeptSigningKey> signing_keys(const ShopFile& shop);
/// The key that seals today: the newest that is not retired.
std::optional<KeptSigningKey> present_key(const ShopFile& shop);
/// Newest row of a fingerprint, or of its beginning. Refuses an unknown one.
Outcome<KeptSigningKey> find_key(const ShopFile& shop, std::string_view fingerprint,
                                 std::string_view field);

}  // namespace tangmark::db
