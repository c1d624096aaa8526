// SPDX-License-Identifier: MIT
#include "reports/public_list.h"

#include <map>

#include "db/store/certificate_store.h"
#include "db/store/settings_store.h"
#include "db/store/signing_key_store.h"
#include "gui/desk/paper/paper.h"

namespace tangmark::desk {
namespace {

std::string state_of(const db::IssuedCertificate& issued, const db::IssuedCertificate& newest) {
  if (issued.revoked_at) return "revoked: " + issued.revoked_why.value_or("");
  if (newest.issue == issued.issue) return "stands";
  return "replaced by issue " + std::to_string(newest.issue) + ": " + newest.why.value_or("");
}

}  // namespace

reports::PublicList public_list(const Press& press) {
  const auto settings = db::load_settings(press.shop);
  reports::PublicList list{settings.shop_name, settings.zone.date_of(press.now), {}, {}};
  const auto issues = db::all_certificates(press.shop);
  std::map<std::int64_t, const db::IssuedCertificate*> newest;
  for (const auto& issued : issues) {
    const db::IssuedCertificate*& held = newest[issued.number];
    if (held == nullptr || held->issue < issued.issue) held = &issued;
  }
  for (const auto& issued : issues)
    list.issues.push_back({std::to_string(issued.number), static_cast<int>(issued.issue),
                           static_cast<int>(issued.blade_number), issued.title,
                           settings.zone.date_of(issued.issued_at),
                           state_of(issued, *newest.at(issued.number)), issued.digest,
                           issued.signed_by.value_or("")});
  for (const db::KeptSigningKey& key : db::signing_keys(press.shop)) {
    const std::string retired = key.retired_at ? to_stored(settings.zone.date_of(*key.retired_at)) +
                                                     ": " + key.retired_why.value_or("")
                                               : "";
    list.keys.push_back({key.fingerprint, key.owner, settings.zone.date_of(key.valid_from),
                         settings.zone.date_of(key.valid_to), retired});
  }
  return list;
}

}  // namespace tangmark::desk
