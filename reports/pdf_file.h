// SPDX-License-Identifier: MIT
#pragma once

#include <hpdf.h>

#include <array>
#include <memory>
#include <set>
#include <string>
#include <vector>

#include "reports/font_book.h"
#include "reports/page.h"
#include "reports/pdf_tags.h"

namespace tangmark::reports {

/// One PDF being written with libharu; only pdf.cpp uses it. Every call checks libharu's sticky
/// error and throws PageFailure.
class PdfFile {
 public:
  explicit PdfFile(const FontBook& fonts);

  /// Metadata, and what characters each font must hold. Comes before the first page.
  void describe(const Document& document);
  void start_page(Points width, Points height);
  /// Everything on the page, each stretch with its role.
  void draw_page(const Page& page);
  /// Comes after the last page.
  void close_tags();
  void add_outline(const OutlineEntry& entry);
  void attach(const Attachment& attachment);
  std::string bytes();

  void operator()(const TextRun& run);
  void operator()(const Line& line);
  void operator()(const Rectangle& rectangle);
  void operator()(const Circle& circle);
  void operator()(const Polyline& polyline);
  void operator()(const Polygon& polygon);
  void operator()(const PlacedPicture& placed);
  void operator()(const PlacedQr& placed);

 private:
  void draw(const Element& element);
  void add_metadata(const Document& document);
  struct Close {
    void operator()(HPDF_Doc doc) const { HPDF_Free(doc); }
  };
  void check() const;
  void gather_characters(const Element& element);
  HPDF_Font font(std::size_t file);
  HPDF_Image image(const Picture& picture);
  void pen(Points width, Grey grey, Points dash);
  void close_path(const Paint& paint);
  void trace(const std::vector<Place>& places);
  float x(Points at) const { return static_cast<float>(at); }
  float y(Points at) const { return static_cast<float>(height_ - at); }

  const FontBook& fonts_;
  std::unique_ptr<std::remove_pointer_t<HPDF_Doc>, Close> doc_;
  PdfTags tags_;
  std::array<std::set<char32_t>, FontBook::file_count> characters_;
  std::array<HPDF_Font, FontBook::file_count> loaded_{};
  std::vector<HPDF_Page> pages_;
  std::vector<Points> heights_;
  HPDF_Page page_ = nullptr;
  HPDF_NameTree files_ = nullptr;
  Points height_ = 0;
};

}  // namespace tangmark::reports
