// SPDX-License-Identifier: MIT
#include "gui/desk/paper/certificate_printer.h"

#include "db/actions/certificate_seal.h"
#include "gui/desk/paper/certificate_page.h"
#include "reports/pdf.h"
#include "reports/seal/sealed_pdf.h"
#include "reports/seal/signing_key.h"

namespace tangmark::desk {
namespace {

const reports::FontBook& the_fonts() {
  static const reports::FontBook fonts = reports::FontBook::load();
  return fonts;
}

db::MadeKey made(const reports::SigningKey& key, const std::string& passphrase) {
  const reports::KeyCertificate& facts = key.certificate();
  return {key.locked(passphrase), facts.fingerprint, facts.owner, facts.from, facts.to};
}

db::KeySmith smith() {
  db::KeySmith smith;
  smith.make = [](const std::string& maker, const std::string& shop, const std::string& passphrase,
                  Instant from, Instant to) {
    return made(reports::SigningKey::make({maker, shop}, from, to), passphrase);
  };
  smith.renew = [](const db::SealWith& old, Instant from, Instant to) -> Outcome<db::MadeKey> {
    const auto key = reports::SigningKey::unlock(old.key_file, old.passphrase);
    if (!key) return key.problems();
    return made(key->renewed(from, to), old.passphrase);
  };
  smith.fingerprint = [](const std::string& key_file) -> Outcome<std::string> {
    const auto facts = reports::certificate_in(key_file);
    if (!facts) return facts.problems();
    return facts->fingerprint;
  };
  return smith;
}

Outcome<db::PrintedCertificate> print(const db::CertificateToPrint& asked) {
  if (!asked.seal) {
    auto pdf = unsealed_certificate(asked.sheet, asked.photo, "", the_fonts());
    if (!pdf) return pdf.problems();
    return db::PrintedCertificate{std::move(pdf).value(), ""};
  }
  const auto key = reports::SigningKey::unlock(asked.seal->key_file, asked.seal->passphrase);
  if (!key) return key.problems();
  auto pdf = sealed_certificate(asked.sheet, asked.photo, *key, the_fonts());
  if (!pdf) return pdf.problems();
  return db::PrintedCertificate{std::move(pdf).value(), key->certificate().fingerprint};
}

}  // namespace

Outcome<std::string> unsealed_certificate(const certificate::CertificateSheet& sheet,
                                          const std::string& photo, const std::string& key,
                                          const reports::FontBook& fonts) {
  const auto document = certificate_page(sheet, {PageState::issued, key, photo}, fonts);
  if (!document) return document.problems();
  return reports::pdf_bytes(*document, fonts);
}

Outcome<reports::SealedPdf> prepared_certificate(const certificate::CertificateSheet& sheet,
                                                 const std::string& photo,
                                                 const reports::KeyCertificate& key,
                                                 const reports::FontBook& fonts) {
  const auto pdf = unsealed_certificate(sheet, photo, key.fingerprint, fonts);
  if (!pdf) return pdf.problems();
  return reports::SealedPdf::around(*pdf, {certificate_words(sheet), key.owner, sheet.issued});
}

Outcome<std::string> sealed_certificate(const certificate::CertificateSheet& sheet,
                                        const std::string& photo, const reports::SigningKey& key,
                                        const reports::FontBook& fonts) {
  const reports::KeyCertificate& facts = key.certificate();
  if (sheet.issued < facts.from || sheet.issued > facts.to)
    return Problem{"key_file", "The key is not good for this day.", "Renew it with renew_key."};
  auto prepared = prepared_certificate(sheet, photo, facts, fonts);
  if (!prepared) return prepared.problems();
  return std::move(prepared).value().signed_with(key);
}

void lend_certificate_printer() {
  db::set_certificate_printer({print, [] { return the_fonts().digest(); }});
  db::set_key_smith(smith());
}

}  // namespace tangmark::desk
