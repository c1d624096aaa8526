// SPDX-License-Identifier: MIT
#include "reports/seal/pdf_content.h"

#include <poppler/cpp/poppler-document.h>
#include <poppler/cpp/poppler-global.h>
#include <poppler/cpp/poppler-page.h>

#include <memory>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFEmbeddedFileDocumentHelper.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>

namespace tangmark::reports {

namespace {

std::string text_of(const std::shared_ptr<Buffer>& buffer) {
  return {reinterpret_cast<const char*>(buffer->getBuffer()), buffer->getSize()};
}

void take_attachments(QPDF& pdf, PdfContent& content) {
  for (auto& [name, file] : QPDFEmbeddedFileDocumentHelper(pdf).getEmbeddedFiles()) {
    content.attachments[name] =
        text_of(file->getEmbeddedFileStream().getStreamData(qpdf_dl_generalized));
  }
}

void take_photographs(QPDF& pdf, PdfContent& content) {
  for (QPDFPageObjectHelper& page : QPDFPageDocumentHelper(pdf).getAllPages()) {
    for (auto& [name, image] : page.getImages()) {
      if (image.getDict().getKey("/Filter").unparse() == "/DCTDecode" ||
          image.getDict().getKey("/Filter").unparse() == "[ /DCTDecode ]")
        content.photographs.push_back(text_of(image.getRawStreamData()));
    }
  }
}

bool take_words(const std::string& pdf, PdfContent& content) {
  const std::unique_ptr<poppler::document> document(poppler::document::load_from_raw_data(
      pdf.data(), static_cast<int>(pdf.size())));
  if (!document || document->is_locked()) return false;
  for (int i = 0; i < document->pages(); ++i) {
    const std::unique_ptr<poppler::page> page(document->create_page(i));
    if (!page) return false;
    const poppler::byte_array words =
        page->text(poppler::rectf(), poppler::page::raw_order_layout).to_utf8();
    content.pages.emplace_back(words.begin(), words.end());
  }
  return true;
}

}  // namespace

Outcome<PdfContent> pdf_content(const std::string& pdf) {
  const Problem damaged{"file", "The PDF is damaged and cannot be read.",
                        "Ask the maker for the certificate as it was issued."};
  // What these libraries have to say goes into our sentence, not onto the maker's terminal.
  poppler::set_debug_error_function([](const std::string&, void*) {}, nullptr);
  PdfContent content;
  try {
    QPDF read;
    read.setSuppressWarnings(true);
    read.processMemoryFile("certificate", pdf.data(), pdf.size());
    take_attachments(read, content);
    take_photographs(read, content);
  } catch (const std::exception&) {
    return damaged;
  }
  if (!take_words(pdf, content)) return damaged;
  return content;
}

std::string without_blanks(std::string_view text) {
  std::string out;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const char c = text[i];
    if (c == ' ' || c == '\n' || c == '\r' || c == '\t' || c == '\f') continue;
    // The blank that does not break, U+00A0.
    if (c == '\xC2' && i + 1 < text.size() && text[i + 1] == '\xA0') {
      ++i;
      continue;
    }
    out += c;
  }
  return out;
}

}  // namespace tangmark::reports
