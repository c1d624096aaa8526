// SPDX-License-Identifier: MIT
#include "db/store/certificate_sheet_reader.h"

#include "db/store/attachment_store.h"
#include "db/store/settings_store.h"

namespace tangmark::db {

certificate::IssueFacts issue_facts(const ShopFile& shop) {
  const commission::ShopSettings settings = load_settings(shop);
  certificate::IssueFacts facts;
  facts.paper = settings.paper == commission::Paper::letter ? "letter" : "a4";
  // An address is typed in lines; the page has room for one.
  for (const char c : settings.address) {
    if (c == '\n' || c == ';') {
      facts.contact += ", ";
    } else {
      facts.contact += c;
    }
  }
  return facts;
}

std::string shown_photo(const ShopFile& shop, const certificate::Dossier& dossier) {
  if (dossier.photos.empty()) return {};
  return bytes_of(shop, AttachmentId{dossier.photos.back().number});
}

}  // namespace tangmark::db
