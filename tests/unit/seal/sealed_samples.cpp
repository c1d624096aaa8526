// SPDX-License-Identifier: MIT
#include "sealed_samples.h"

#include "db/digest.h"
#include "gui/desk/paper/certificate_printer.h"
#include "reports/picture.h"
#include "tests/unit/certificate/sample_blades.h"

namespace tangmark::test {

using namespace certificate;

const reports::FontBook& fonts() {
  static const reports::FontBook book = reports::FontBook::load();
  return book;
}

const reports::SigningKey& key() {
  static const reports::SigningKey made = reports::SigningKey::make(
      {"I. Marlow", "Alder Bench"}, sample::clock(0), sample::clock(0) + std::chrono::hours(90000));
  return made;
}

CertificateSheet sheet_of(std::string_view blade) {
  const Dossier d = sample::blade_called(blade);
  IssueFacts issue;
  issue.number = "7";
  issue.issued = sample::clock(23);
  issue.contact = "4 Sluice Lane, Alderbeck";
  issue.fonts = fonts().digest();
  return certificate_sheet(d, compose(d), issue);
}

std::string photo() {
  reports::Picture picture;
  picture.width_px = 64;
  picture.height_px = 24;
  for (int i = 0; i < 64 * 24; ++i)
    picture.rgb.insert(picture.rgb.end(), 3, static_cast<std::uint8_t>(i % 251));
  return reports::jpeg_bytes(picture, 80);
}

CertificateSheet sheet_with_photo(std::string_view blade) {
  CertificateSheet sheet = sheet_of(blade);
  sheet.pictures.push_back({1, "left side", db::sha256_hex(photo())});
  return sheet;
}

std::string sealed(const CertificateSheet& sheet, const std::string& photo) {
  return desk::sealed_certificate(sheet, photo, key(), fonts()).value();
}

}  // namespace tangmark::test
