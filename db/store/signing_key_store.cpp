// SPDX-License-Identifier: MIT
#include "db/store/signing_key_store.h"

#include <algorithm>

#include "db/row.h"

namespace tangmark::db {

std::vector<KeptSigningKey> signing_keys(const ShopFile& shop) {
  Query q(shop,
          "SELECT id, fingerprint, owner, made_at, valid_from, valid_to, key_file, kept_at, "
          "retired_at, retired_why "
          "FROM signing_key ORDER BY id DESC");
  std::vector<KeptSigningKey> keys;
  while (q.next())
    keys.push_back({q.id<SigningKeyId>("id"), q.text("fingerprint"), q.text("owner"),
                    q.instant("made_at"), q.instant("valid_from"), q.instant("valid_to"),
                    q.maybe_text("key_file"), q.maybe_text("kept_at"),
                    q.maybe_instant("retired_at"), q.maybe_text("retired_why")});
  return keys;
}

std::optional<KeptSigningKey> present_key(const ShopFile& shop) {
  for (KeptSigningKey& key : signing_keys(shop))
    if (!key.retired_at) return std::move(key);
  return std::nullopt;
}

Outcome<KeptSigningKey> find_key(const ShopFile& shop, std::string_view fingerprint,
                                 std::string_view field) {
  for (KeptSigningKey& key : signing_keys(shop))
    if (fingerprint.size() >= 8 && key.fingerprint.starts_with(fingerprint)) return std::move(key);
  return Problem{std::string(field), "This shop has no key " + std::string(fingerprint) + ".",
                 "Give the first eight digits or more of its fingerprint."};
}

}  // namespace tangmark::db
