// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "domain/certificate/certificate_sheet.h"
#include "reports/font_book.h"
#include "reports/seal/sealed_pdf.h"
#include "reports/seal/signing_key.h"

namespace tangmark::desk {

/// Lends the actions what prints and seals certificates and makes keys. Called once at the start.
void lend_certificate_printer();

/// The PDF of a certificate without a signature; `key` is the fingerprint it prints, or empty. The
/// same record, picture and fingerprint give the same bytes.
Outcome<std::string> unsealed_certificate(const certificate::CertificateSheet& sheet,
                                          const std::string& photo, const std::string& key,
                                          const reports::FontBook& fonts);
/// The same with an empty place for the signature of this key.
Outcome<reports::SealedPdf> prepared_certificate(const certificate::CertificateSheet& sheet,
                                                 const std::string& photo,
                                                 const reports::KeyCertificate& key,
                                                 const reports::FontBook& fonts);
/// The sealed PDF. Refuses a key that is not good on the day of issue.
Outcome<std::string> sealed_certificate(const certificate::CertificateSheet& sheet,
                                        const std::string& photo, const reports::SigningKey& key,
                                        const reports::FontBook& fonts);

}  // namespace tangmark::desk
