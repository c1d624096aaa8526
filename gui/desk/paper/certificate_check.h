// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include "db/shop_file.h"
#include "domain/certificate/certificate_sheet.h"
#include "reports/font_book.h"
#include "reports/seal/signature.h"

namespace tangmark::desk {

/// What a certificate in somebody's hand is worth. Each answer is of its own.
struct CertificateCheck {
  bool signature = false;  ///< signed, over the whole file, unchanged since to the last byte
  bool record = false;     ///< the record inside is whole, and its digest is the one printed
  /// The words that a reader sees are those that the record produces, and with the fonts that the
  /// record names, so is all that is drawn: nothing covers a word or stands beside them.
  bool visible = false;
  /// Set anew from its record, the file has the very same bytes. When not, `remarks` or `problems`
  /// say what differs.
  bool same_page = false;
  std::optional<reports::SignatureFacts> signer;
  std::optional<certificate::CertificateSheet> sheet;
  std::vector<std::string> problems;  ///< sentences; any of them makes it invalid
  std::vector<std::string> remarks;   ///< what a reader should know besides
  bool valid() const { return signature && record && visible && problems.empty(); }
};

/// Checks the bytes of a certificate by themselves.
CertificateCheck check_certificate(const std::string& pdf, const reports::FontBook& fonts);
/// Checks them against the shop that issued it as well: the frozen file, whether it was revoked or
/// replaced, and whether its key was retired.
void compare_with_shop(CertificateCheck& check, const std::string& pdf, const db::ShopFile& shop);

}  // namespace tangmark::desk
