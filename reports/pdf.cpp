// SPDX-License-Identifier: MIT
#include "reports/pdf.h"

#include <algorithm>
#include <cmath>
#include <fstream>
#include <system_error>

#include "reports/page_failure.h"
#include "reports/pdf_file.h"

namespace tangmark::reports {

std::string pdf_bytes(const Document& document, const FontBook& fonts) {
  PdfFile file(fonts);
  file.describe(document);
  for (const Page& page : document.pages) {
    file.start_page(page.width, page.height);
    file.draw_page(page);
  }
  file.close_tags();
  for (const OutlineEntry& entry : document.outline) file.add_outline(entry);
  for (const Attachment& attachment : document.attachments) file.attach(attachment);
  return file.bytes();
}

void write_pdf(const Document& document, const FontBook& fonts, const std::filesystem::path& path) {
  write_whole(pdf_bytes(document, fonts), path);
}

void write_whole(const std::string& bytes, const std::filesystem::path& path) {
  std::filesystem::path beside = path;
  beside += ".part";
  std::ofstream out(beside, std::ios::binary | std::ios::trunc);
  out.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
  out.close();
  std::error_code failed;
  if (out) {
    std::filesystem::rename(beside, path, failed);
    if (!failed) return;
  }
  std::error_code ignored;
  std::filesystem::remove(beside, ignored);
  throw PageFailure(
      "The file " + path.string() +
      " cannot be written; check that its folder exists, may be written and has room.");
}

}  // namespace tangmark::reports
