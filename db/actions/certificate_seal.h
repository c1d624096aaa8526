// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <optional>
#include <string>

#include "db/actions/form.h"
#include "db/actions/work.h"
#include "db/shop_file.h"
#include "domain/certificate/certificate_sheet.h"
#include "domain/measure/outcome.h"

namespace tangmark::db {

/// A locked key and what opens it.
struct SealWith {
  std::string key_file;  ///< PEM
  std::string passphrase;
};

/// What a printer is given: everything the page says, and the key to seal it with.
struct CertificateToPrint {
  const certificate::CertificateSheet& sheet;
  std::string photo;  ///< JPEG; empty for none
  std::optional<SealWith> seal;
};
struct PrintedCertificate {
  std::string pdf;
  std::string signed_by;  ///< fingerprint of the key; empty when not sealed
};

/// Sets the page and gives its bytes. This layer knows no pages, so the program hands one in at its
/// start; without one nothing can be issued.
struct CertificatePrinter {
  std::function<Outcome<PrintedCertificate>(const CertificateToPrint&)> print;
  std::function<std::string()> fonts;  ///< digest of the measures of what it sets pages with
};
void set_certificate_printer(CertificatePrinter printer);
const CertificatePrinter& certificate_printer();

/// A key as it was made, its private half locked.
struct MadeKey {
  std::string key_file;
  std::string fingerprint;
  std::string owner;
  Instant from{}, to{};
};

/// Makes keys. This layer knows no cryptography beyond digests, so the program hands one in.
struct KeySmith {
  std::function<MadeKey(const std::string& maker, const std::string& shop,
                        const std::string& passphrase, Instant from, Instant to)>
      make;
  /// The same key with a certificate for further years; refuses a wrong passphrase.
  std::function<Outcome<MadeKey>(const SealWith& old, Instant from, Instant to)> renew;
  /// The fingerprint in a key file, which needs no passphrase.
  std::function<Outcome<std::string>(const std::string& key_file)> fingerprint;
};
void set_key_smith(KeySmith smith);
const KeySmith& key_smith();

/// The passphrase that a form gives, typed or in a file (whose last line end does not count).
std::optional<std::string> passphrase_in(Form& form);

/// The key that the form asks to seal with: the named file, else the shop's own. Adds problems to
/// the form: no passphrase, a retired key, a key that is out of its days.
std::optional<SealWith> seal_asked(Work& work, Form& form);

}  // namespace tangmark::db
