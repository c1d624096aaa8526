// SPDX-License-Identifier: MIT
#include "gui/desk/seal_sheet.h"

#include "db/store/signing_key_store.h"

namespace tangmark::desk {
namespace {

std::string state_of(const db::KeptSigningKey& key, const Sight& sight) {
  if (key.retired_at) return "retired: " + key.retired_why.value_or("");
  return sight.now > key.valid_to ? "its days are over: renew it" : "in use";
}

}  // namespace

Sheet seal_sheet(const Sight& sight) {
  Sheet sheet{"Seal", "A key of your own signs each certificate, so that anybody can check it.", {}};
  Section keys;
  keys.table.columns = {{"Fingerprint"}, {"Good until"}, {"Kept"}, {"State"}};
  for (const db::KeptSigningKey& key : db::signing_keys(sight.shop)) {
    keys.table.rows.push_back({{key.fingerprint.substr(0, 16), when(sight, key.valid_to),
                                key.key_file ? "locked, in the shop file" : key.kept_at.value_or(""), state_of(key, sight)},
                               false,
                               {}});
    if (!key.retired_at)
      keys.table.rows.back().offers = {{"Retire", OpenForm{"retire_key", {{"key", key.fingerprint.substr(0, 16)}}}, "", ""}};
  }
  if (keys.table.rows.empty()) keys.paragraphs = {"There is no key yet. Certificates are issued without a seal."};
  keys.offers = {{"Make a key", OpenForm{"make_key", {}}, "", ""},
                 {"Renew the key", OpenForm{"renew_key", {}}, "", ""},
                 {"Retire a key", OpenForm{"retire_key", {}}, "", ""}};
  Section told;
  told.title = "What to know";
  told.paragraphs = {
      "Publish the fingerprint on your site or card: a buyer compares it with the one on the page.",
      "The passphrase is kept nowhere. If it is lost, retire the key and make a new one; what was sealed before stays good.",
      "If somebody else may have the key, retire it at once and say so beside the fingerprint.",
      "Renewing gives the same key further years; its fingerprint stays."};
  sheet.sections = {keys, told};
  return sheet;
}

}  // namespace tangmark::desk
