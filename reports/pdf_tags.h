// SPDX-License-Identifier: MIT
#pragma once

#include <hpdf.h>

#include <cstddef>
#include <vector>

#include "reports/page.h"

namespace tangmark::reports {

/// The structure of a PDF: what each stretch of a page is, for readers that speak it. Headings,
/// paragraphs, tables with their cells, figures with words; all else is an artifact.
/// **Source** ISO 32000-1, 14.6 (marked content), 14.7 (logical structure), 14.8 (standard types).
class PdfTags {
 public:
  explicit PdfTags(HPDF_Doc doc);

  void start_page(HPDF_Page page);
  /// What is drawn until close() has this role.
  void open(const Mark& mark);
  void close();
  /// A cell in which nothing stands.
  void empty_cell(const Mark& mark);
  /// Writes the tree into the catalog; comes after the last page.
  void finish();

 private:
  HPDF_Dict element(const char* type, HPDF_Dict parent);
  HPDF_Dict cell_of(const Mark& mark);
  HPDF_Dict owner_of(const Mark& mark);
  void write(const std::string& operators);

  HPDF_Doc doc_;
  HPDF_Page page_ = nullptr;
  HPDF_Dict root_ = nullptr;
  HPDF_Dict document_ = nullptr;
  HPDF_Dict table_ = nullptr;
  HPDF_Dict row_ = nullptr;
  HPDF_Dict paragraph_ = nullptr;  ///< the one that a further line may still belong to
  int next_in_page_ = 0;
  std::vector<HPDF_Array> by_page_;  ///< the owner of each stretch of a page, in their order
};

/// The page as stretches that cover all its elements in their order: the marks, and between them
/// text as paragraphs and drawings as decoration.
std::vector<Mark> whole_marks(const Page& page);

}  // namespace tangmark::reports
