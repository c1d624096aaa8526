// SPDX-License-Identifier: MIT
#include "gui/desk/paper/certificate_check.h"

#include <algorithm>

#include "db/digest.h"
#include "db/store/certificate_store.h"
#include "db/store/signing_key_store.h"
#include "domain/certificate/certificate_record.h"
#include "gui/desk/paper/certificate_page.h"
#include "gui/desk/paper/certificate_printer.h"
#include "reports/pdf.h"
#include "reports/seal/pdf_content.h"

namespace tangmark::desk {
namespace {

namespace cert = certificate;

void check_signature(CertificateCheck& check, const std::string& pdf) {
  auto facts = reports::check_seal(pdf);
  check.signature = facts.ok();
  if (facts) check.signer = *facts;
  else check.problems.push_back(facts.problem().sentence);
}

std::string words_of(const reports::PdfContent& content) {
  std::string words;
  for (const std::string& page : content.pages) words += page;
  return reports::without_blanks(words);
}

// The record, if it is whole; what is wrong goes to the problems.
void check_record(CertificateCheck& check, const reports::PdfContent& content) {
  const auto attached = content.attachments.find("record.json");
  if (attached == content.attachments.end()) {
    check.problems.push_back("The file holds no record.");
    return;
  }
  const auto sheet = cert::read_record(attached->second);
  if (sheet)
    check.sheet = *sheet;
  else
    check.problems.push_back(sheet.problem().field == "format"
                                 ? sheet.problem().sentence + " " + sheet.problem().remedy
                                 : "The record inside the file was changed: " +
                                       sheet.problem().sentence);
  if (!sheet && sheet.problem().field != "format") return;
  check.record = words_of(content).find(db::sha256_hex(attached->second)) != std::string::npos;
  if (!check.record)
    check.problems.push_back(
        "The digest printed on the page is not that of the record inside the file.");
}

// The picture of the record among those that the pages show.
std::string photo_in(CertificateCheck& check, const reports::PdfContent& content) {
  if (content.photographs.empty()) return {};
  for (const std::string& jpeg : content.photographs)
    if (!check.sheet->pictures.empty() &&
        db::sha256_hex(jpeg) == check.sheet->pictures.back().sha256)
      return jpeg;
  check.record = false;
  check.problems.push_back("The photograph on the page is not the one of the record.");
  return {};
}

// The words that the record produces, in the order in which the page draws them.
std::string drawn_words(const reports::Document& document) {
  std::string words;
  const auto add = [&](const std::vector<reports::Element>& elements) {
    for (const reports::Element& element : elements)
      if (const auto* run = std::get_if<reports::TextRun>(&element)) words += run->text;
  };
  for (const reports::Page& page : document.pages) {
    add(page.underlay);
    add(page.elements);
  }
  return reports::without_blanks(words);
}

// Twenty letters around the first difference, so that the reader can look at the place.
std::string first_difference(const std::string& seen, const std::string& meant) {
  const auto at = static_cast<std::size_t>(
      std::mismatch(seen.begin(),
                    seen.begin() + static_cast<std::ptrdiff_t>(std::min(seen.size(), meant.size())),
                    meant.begin())
          .first -
      seen.begin());
  auto from = at > 20 ? at - 20 : 0;
  while (from > 0 && (static_cast<unsigned char>(seen[from]) & 0xC0) == 0x80) --from;
  auto to = std::min(seen.size(), at + 20);
  while (to < seen.size() && (static_cast<unsigned char>(seen[to]) & 0xC0) == 0x80) ++to;
  return seen.substr(from, to - from);
}

// The file that the record gives here, ready for the same signature.
std::string set_anew_file(const CertificateCheck& check, const reports::Document& document,
                          const reports::FontBook& fonts) {
  std::string bytes = reports::pdf_bytes(document, fonts);
  if (!check.signer) return bytes;
  return reports::SealedPdf::around(
             bytes, {certificate_words(*check.sheet), check.signer->key.owner, check.sheet->issued})
      .unsigned_bytes();
}

// The same words may still be covered, or stand beside a drawing that says more. With the fonts
// that the record names the page must come out alike; without them it can only be looked at.
void compare_drawing(CertificateCheck& check, const std::string& pdf,
                     const reports::PdfContent& content, const std::string& set_anew,
                     const reports::FontBook& fonts) {
  check.same_page = check.signer ? reports::same_unsigned(pdf, set_anew) : set_anew == pdf;
  if (check.same_page) return;
  const auto meant = reports::pdf_content(set_anew);
  const bool drawn_alike = meant && meant->drawings == content.drawings;
  if (drawn_alike) {
    check.remarks.push_back(
        "The page is drawn as its record gives it, but the file was written by another version of "
        "the program.");
  } else if (check.sheet->fonts == fonts.digest()) {
    check.visible = false;
    check.problems.push_back(
        "The page is drawn otherwise than its record gives it: something was put on it or covered "
        "before it was signed.");
  } else {
    check.remarks.push_back(
        "The page was set with other fonts than this machine has: its words are those of the "
        "record, but what is drawn "
        "could not be compared. Look whether anything covers a word or stands beside the text.");
  }
}

void check_words(CertificateCheck& check, const std::string& pdf,
                 const reports::PdfContent& content, const reports::FontBook& fonts) {
  const std::string photo = photo_in(check, content);
  const std::string key = check.signer ? check.signer->key.fingerprint : "";
  const auto document = certificate_page(*check.sheet, {PageState::issued, key, photo}, fonts);
  if (!document) {
    check.problems.push_back("No page can be set from the record: " + document.problem().sentence);
    return;
  }
  const std::string seen = words_of(content), meant = drawn_words(*document);
  check.visible = seen == meant;
  if (!check.visible) {
    check.problems.push_back("The words on the page are not those of the record, first near “" +
                             first_difference(seen, meant) + "”.");
    return;
  }
  compare_drawing(check, pdf, content, set_anew_file(check, *document, fonts), fonts);
}

void check_signer(CertificateCheck& check) {
  if (check.signer && check.sheet && check.signer->at != check.sheet->issued)
    check.problems.push_back("The day of the signature is not the day of issue.");
  if (check.signer)
    check.remarks.push_back(
        "Signed by " + check.signer->key.owner + ", key " + check.signer->key.fingerprint +
        ". The key speaks for itself alone: compare it with the one that the maker publishes.");
}

}  // namespace

CertificateCheck check_certificate(const std::string& pdf, const reports::FontBook& fonts) {
  CertificateCheck check;
  check_signature(check, pdf);
  if (!pdf.starts_with("%PDF-")) return check;
  const auto content = reports::pdf_content(pdf);
  if (!content) {
    check.problems.push_back(content.problem().sentence);
    return check;
  }
  check_record(check, *content);
  if (check.sheet) check_words(check, pdf, *content, fonts);
  check_signer(check);
  return check;
}

void compare_with_shop(CertificateCheck& check, const std::string& pdf, const db::ShopFile& shop) {
  bool found = false;
  for (const db::IssuedCertificate& issued : db::all_certificates(shop)) {
    if (db::certificate_pdf(shop, issued.id) != pdf) continue;
    found = true;
    const std::string name = "Certificate " + std::to_string(issued.number) + ", issue " +
                             std::to_string(issued.issue) + ",";
    if (db::sha256_hex(db::certificate_record(shop, issued.id)) != issued.digest)
      check.problems.push_back("The record kept in the shop is not the one that was issued.");
    if (issued.revoked_at)
      check.problems.push_back(name + " was revoked: " + issued.revoked_why.value_or("") + ".");
    const auto newest = db::find_certificate(shop, std::to_string(issued.number), "certificate");
    if (newest && newest->issue > issued.issue)
      check.problems.push_back(name + " was replaced by issue " + std::to_string(newest->issue) +
                               ": " + newest->why.value_or("") + ".");
  }
  if (!found) check.problems.push_back("No certificate that this shop issued has these bytes.");
  if (!check.signer) return;
  for (const db::KeptSigningKey& key : db::signing_keys(shop)) {
    if (key.fingerprint != check.signer->key.fingerprint) continue;
    if (key.retired_at)
      check.remarks.push_back("The key was retired later: " + key.retired_why.value_or("") + ".");
    return;
  }
  if (!found) check.problems.push_back("The key that signed it is none of this shop's.");
}

}  // namespace tangmark::desk
