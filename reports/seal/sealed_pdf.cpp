// SPDX-License-Identifier: MIT
#include "reports/seal/sealed_pdf.h"

#include <charconv>

#include "reports/page_failure.h"
#include "reports/seal/openssl_values.h"
#include "reports/seal/pdf_libraries.h"

namespace tangmark::reports {

namespace {

constexpr std::string_view range_head = "/ByteRange [ 0 ";
constexpr std::size_t range_tail = 3 * 11 + 1;  // three numbers of ten digits, blanks, a bracket

std::string range_words(std::size_t from, std::size_t to, std::size_t size) {
  std::string words = std::to_string(from) + " " + std::to_string(to) + " " +
                      std::to_string(size - to) + " ]";
  words.resize(std::max(words.size(), range_tail), ' ');
  return words;
}

Covered outside(std::string_view pdf, SignaturePlace place) {
  return {pdf.substr(0, place.from), pdf.substr(place.to)};
}

std::size_t number_at(std::string_view& text) {
  std::size_t value = 0;
  const auto [end, failed] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (failed != std::errc()) return std::string_view::npos;
  text.remove_prefix(static_cast<std::size_t>(end - text.data()));
  if (text.starts_with(' ')) text.remove_prefix(1);
  return value;
}

Problem no_seal(std::string why) {
  return {"signature", std::move(why), "Ask the maker for the certificate as it was issued."};
}

}  // namespace

SealedPdf SealedPdf::around(const std::string& pdf, const SealWords& words) {
  SealedPdf sealed;
  sealed.at_ = words.at;
  try {
    sealed.bytes_ = pdf_libraries().with_empty_signature(pdf, words);
  } catch (const std::exception& failed) {
    throw PageFailure(std::string("The page could not be made ready for its seal: ") +
                      failed.what());
  }
  const std::size_t range = sealed.bytes_.find(range_head);
  const std::string empty = "<" + std::string(2 * signature_room, '0') + ">";
  const std::size_t from = sealed.bytes_.find(empty);
  if (range == std::string::npos || from == std::string::npos)
    throw PageFailure("The page has no place for its seal.");
  const std::string words_of_range =
      range_words(from, from + empty.size(), sealed.bytes_.size());
  sealed.bytes_.replace(range + range_head.size(), range_tail, words_of_range);
  return sealed;
}

std::string SealedPdf::signed_with(const SigningKey& key) && {
  const auto place = signature_place(bytes_);
  if (!place) throw PageFailure(place.problem().sentence);
  const std::string digits = openssl::hex_of(signature_of(outside(bytes_, *place), key, at_));
  if (digits.size() > 2 * signature_room)
    throw PageFailure("The signature is too long for its place; use a key of 3072 bits.");
  bytes_.replace(place->from + 1, digits.size(), digits);
  return std::move(bytes_);
}

Outcome<SignaturePlace> signature_place(std::string_view pdf) {
  if (!pdf.starts_with("%PDF-")) return no_seal("The file is not a PDF.");
  const std::size_t range = pdf.find(range_head);
  if (range == std::string_view::npos) return no_seal("The paper carries no signature.");
  std::string_view rest = pdf.substr(range + range_head.size(), 64);
  const SignaturePlace place{number_at(rest), number_at(rest)};
  const std::size_t tail = number_at(rest);
  const bool fits = place.from < place.to && place.to < pdf.size() &&
                    place.to - place.from == 2 * signature_room + 2 && tail == pdf.size() - place.to &&
                    rest.starts_with(']') && pdf[place.from] == '<' && pdf[place.to - 1] == '>';
  if (!fits) return no_seal("The signature does not cover the whole file.");
  return place;
}

Outcome<SignatureFacts> check_seal(std::string_view pdf) {
  const auto place = signature_place(pdf);
  if (!place) return place.problems();
  const std::string_view digits = pdf.substr(place->from + 1, 2 * signature_room);
  const auto value = [](char c) {
    return c >= '0' && c <= '9' ? c - '0' : c >= 'a' && c <= 'f' ? c - 'a' + 10 : -1;
  };
  std::string bytes;
  bytes.reserve(signature_room);
  for (std::size_t i = 0; i < digits.size(); i += 2) {
    const int high = value(digits[i]);
    const int low = value(digits[i + 1]);
    if (high < 0 || low < 0) return no_seal("The place of the signature was changed.");
    bytes += static_cast<char>(high * 16 + low);
  }
  // A sequence of two length octets: 30 82 hh ll. What follows it must be zeros.
  const auto octet = [&](std::size_t at) {
    return static_cast<std::size_t>(static_cast<unsigned char>(bytes[at]));
  };
  const std::size_t size = 4 + octet(2) * 256 + octet(3);
  if (octet(0) != 0x30 || octet(1) != 0x82 || size > bytes.size())
    return no_seal("The place of the signature was changed.");
  if (bytes.find_first_not_of('\0', size) != std::string::npos)
    return no_seal("The padding behind the signature was changed.");
  return check_signature(std::string_view(bytes).substr(0, size), outside(pdf, *place));
}

bool same_unsigned(std::string_view sealed, std::string_view before_signing) {
  const auto place = signature_place(sealed);
  return place && sealed.size() == before_signing.size() &&
         sealed.substr(0, place->from) == before_signing.substr(0, place->from) &&
         sealed.substr(place->to) == before_signing.substr(place->to);
}

}  // namespace tangmark::reports
