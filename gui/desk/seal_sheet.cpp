// SPDX-License-Identifier: MIT
#include "gui/desk/seal_sheet.h"

#include "db/store/signing_key_store.h"

namespace tangmark::desk {
namespace {

std::string state_of(const db::KeptSigningKey& key, const Sight& sight) {
  if (key.retired_at) return "retired: " + key.retired_why.value_or("");
  return sight.now > key.valid_to ? "its days are over: renew it" : "in use";
}

Section what_to_know() {
  Section told;
  told.title = "What to know";
  told.paragraphs = {
      "Publish the fingerprint on your site or card: a buyer compares it with the one on the page.",
      "Lost passphrase or key file: nobody can open or find it. Retire the key, make a new one and "
      "publish its fingerprint beside the old one. What was sealed before stays good, since each "
      "certificate carries what checks it.",
      "Somebody else may have the key: retire it at once, say so with the day beside the "
      "fingerprint, and issue anew what matters. A seal made after that day is not yours.",
      "Change of key: make the new one only after the old one is retired, so that one key at a "
      "time is yours. Certificates name the key that sealed them.",
      "Its days are over: renew it. The same key gets further years, its fingerprint stays, and "
      "nothing needs to be published anew.",
      "Keep a copy of the shop file, or of the key file, apart from this machine; the passphrase "
      "where you keep papers of value."};
  return told;
}

}  // namespace

Sheet seal_sheet(const Sight& sight) {
  Sheet sheet{
      "Seal", "A key of your own signs each certificate, so that anybody can check it.", {}};
  Section keys;
  keys.table.columns = {{"Fingerprint"}, {"Good until"}, {"Kept"}, {"State"}};
  for (const db::KeptSigningKey& key : db::signing_keys(sight.shop)) {
    keys.table.rows.push_back(
        {{key.fingerprint.substr(0, 16), when(sight, key.valid_to),
          key.key_file ? "locked, in the shop file" : key.kept_at.value_or(""),
          state_of(key, sight)},
         false,
         {}});
    if (!key.retired_at)
      keys.table.rows.back().offers = {
          {"Retire", OpenForm{"retire_key", {{"key", key.fingerprint.substr(0, 16)}}}, "", ""}};
  }
  if (keys.table.rows.empty())
    keys.paragraphs = {"There is no key yet. Certificates are issued without a seal."};
  keys.offers = {{"Make a key", OpenForm{"make_key", {}}, "", ""},
                 {"Renew the key", OpenForm{"renew_key", {}}, "", ""},
                 {"Retire a key", OpenForm{"retire_key", {}}, "", ""}};
  Section papers;
  papers.title = "Certificates in other hands";
  papers.paragraphs = {
      "Anybody can check a certificate with this program, without the shop file. With it, its "
      "standing here is told as well."};
  papers.offers = {{"Check a certificate", OpenForm{"desk.verify", {}}, "", ""},
                   {"Write the public list", OpenForm{"desk.public_list", {}}, "", ""}};
  sheet.sections = {keys, papers, what_to_know()};
  return sheet;
}

}  // namespace tangmark::desk
