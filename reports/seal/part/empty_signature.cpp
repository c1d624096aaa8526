// SPDX-License-Identifier: MIT
#include "reports/seal/part/part.h"

#include <array>
#include <cstdio>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFObjectHandle.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>
#include <qpdf/QPDFWriter.hh>

namespace tangmark::reports {

namespace {

std::string pdf_time(Instant at) {
  const auto day = date::floor<date::days>(at);
  const date::year_month_day ymd(day);
  const date::hh_mm_ss time(at - day);
  std::array<char, 40> text{};
  std::snprintf(text.data(), text.size(), "D:%04d%02u%02u%02d%02d%02dZ",
                static_cast<int>(ymd.year()), static_cast<unsigned>(ymd.month()),
                static_cast<unsigned>(ymd.day()), static_cast<int>(time.hours().count()),
                static_cast<int>(time.minutes().count()), static_cast<int>(time.seconds().count()));
  return text.data();
}

QPDFObjectHandle name(const char* word) {
  return QPDFObjectHandle::newName(word);
}

QPDFObjectHandle number(long long value) {
  return QPDFObjectHandle::newInteger(value);
}

// No change at all is allowed after the signature: ISO 32000-1, 12.8.2.2.
QPDFObjectHandle no_change_allowed() {
  auto parameters = QPDFObjectHandle::newDictionary();
  parameters.replaceKey("/Type", name("/TransformParams"));
  parameters.replaceKey("/P", number(1));
  parameters.replaceKey("/V", name("/1.2"));
  auto reference = QPDFObjectHandle::newDictionary();
  reference.replaceKey("/Type", name("/SigRef"));
  reference.replaceKey("/TransformMethod", name("/DocMDP"));
  reference.replaceKey("/TransformParams", parameters);
  auto list = QPDFObjectHandle::newArray();
  list.appendItem(reference);
  return list;
}

QPDFObjectHandle signature_dictionary(const SealWords& words) {
  auto range = QPDFObjectHandle::newArray();
  range.appendItem(number(0));
  for (const long long at : range_places) range.appendItem(number(at));
  auto signature = QPDFObjectHandle::newDictionary();
  signature.replaceKey("/Type", name("/Sig"));
  signature.replaceKey("/Filter", name("/Adobe.PPKLite"));  // the handler ISO 32000-1 names
  signature.replaceKey("/SubFilter", name("/adbe.pkcs7.detached"));
  signature.replaceKey("/ByteRange", range);
  signature.replaceKey("/Contents", QPDFObjectHandle::newString(std::string(signature_room, '\0')));
  signature.replaceKey("/M", QPDFObjectHandle::newString(pdf_time(words.at)));
  signature.replaceKey("/Name", QPDFObjectHandle::newUnicodeString(words.owner));
  signature.replaceKey("/Reason", QPDFObjectHandle::newUnicodeString(words.reason));
  signature.replaceKey("/Reference", no_change_allowed());
  return signature;
}

// The field that holds the signature. It draws nothing: the seal is printed by the page itself.
void add_field(QPDF& pdf, const SealWords& words) {
  auto signature = pdf.makeIndirectObject(signature_dictionary(words));
  auto page = QPDFPageDocumentHelper(pdf).getAllPages().back().getObjectHandle();
  auto field = QPDFObjectHandle::newDictionary();
  field.replaceKey("/Type", name("/Annot"));
  field.replaceKey("/Subtype", name("/Widget"));
  field.replaceKey("/FT", name("/Sig"));
  field.replaceKey("/T", QPDFObjectHandle::newString("Seal"));
  field.replaceKey("/F", number(132));  // printed, locked
  field.replaceKey("/Rect", QPDFObjectHandle::parse("[0 0 0 0]"));
  field.replaceKey("/P", page);
  field.replaceKey("/V", signature);
  auto held = pdf.makeIndirectObject(field);
  auto list = QPDFObjectHandle::newArray();
  list.appendItem(held);
  page.replaceKey("/Annots", list);
  auto form = QPDFObjectHandle::newDictionary();
  form.replaceKey("/Fields", list);
  form.replaceKey("/SigFlags", number(3));
  auto permissions = QPDFObjectHandle::newDictionary();
  permissions.replaceKey("/DocMDP", signature);
  auto root = pdf.getRoot();
  root.replaceKey("/AcroForm", pdf.makeIndirectObject(form));
  root.replaceKey("/Perms", permissions);
}

// qpdf writes each object in one fixed way; streams are kept as they are.
std::string written(QPDF& pdf) {
  QPDFWriter writer(pdf);
  writer.setOutputMemory();
  writer.setStreamDataMode(qpdf_s_preserve);
  writer.setObjectStreamMode(qpdf_o_disable);
  writer.setDeterministicID(true);
  writer.setMinimumPDFVersion("1.7");
  writer.write();
  const auto buffer = writer.getBufferSharedPointer();
  return {reinterpret_cast<const char*>(buffer->getBuffer()), buffer->getSize()};
}

}  // namespace

std::string with_empty_signature(const std::string& pdf, const SealWords& words) {
  QPDF read;
  read.setSuppressWarnings(true);
  read.processMemoryFile("page", pdf.data(), pdf.size());
  add_field(read, words);
  return written(read);
}

}  // namespace tangmark::reports
