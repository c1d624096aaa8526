// SPDX-License-Identifier: MIT
#include "reports/seal/part/part.h"

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

// A value as text, whatever number its object has: references are followed, streams give their
// dictionary and bytes. Fonts give their name: their glyphs follow from the font files.
void add_value(QPDFObjectHandle value, std::string& text, int deep = 0) {
  if (deep > 12) return;
  if (value.isStream()) {
    add_value(value.getDict(), text, deep + 1);
    text += text_of(value.getRawStreamData());
  } else if (value.isDictionary()) {
    const bool font = value.getKey("/Type").isName() && value.getKey("/Type").getName() == "/Font";
    if (font) {
      text += value.getKey("/BaseFont").unparseResolved() + "\n";
      return;
    }
    for (const std::string& key : value.getKeys()) {
      if (key == "/Parent" || key == "/P" || key == "/V" || key == "/Length") continue;
      text += key + " ";
      add_value(value.getKey(key), text, deep + 1);
    }
  } else if (value.isArray()) {
    text += "[";
    for (QPDFObjectHandle& one : value.getArrayAsVector()) add_value(one, text, deep + 1);
    text += "]";
  } else {
    text += value.unparseResolved() + "\n";
  }
}

void take_drawings(QPDF& pdf, PdfContent& content) {
  for (QPDFPageObjectHelper& page : QPDFPageDocumentHelper(pdf).getAllPages()) {
    QPDFObjectHandle held = page.getObjectHandle();
    std::string text;
    for (QPDFObjectHandle& stream : held.getPageContents())
      text += text_of(stream.getStreamData(qpdf_dl_specialized));
    for (const std::string& key : held.getKeys()) {
      if (key == "/Contents" || key == "/Parent" || key == "/StructParents") continue;
      text += key + " ";
      add_value(held.getKey(key), text);
    }
    content.drawings.push_back(std::move(text));
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

bool read_content(const std::string& pdf, PdfContent& content) {
  // What these libraries have to say goes into our sentence, not onto the maker's terminal.
  poppler::set_debug_error_function([](const std::string&, void*) {}, nullptr);
  try {
    QPDF read;
    read.setSuppressWarnings(true);
    read.processMemoryFile("certificate", pdf.data(), pdf.size());
    take_attachments(read, content);
    take_photographs(read, content);
    take_drawings(read, content);
  } catch (const std::exception&) {
    return false;
  }
  return take_words(pdf, content);
}

}  // namespace tangmark::reports
