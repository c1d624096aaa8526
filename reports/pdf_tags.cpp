// SPDX-License-Identifier: MIT
#include "reports/pdf_tags.h"

#include <hpdf_catalog.h>
#include <hpdf_doc.h>
#include <hpdf_objects.h>
#include <hpdf_pages.h>

#include <string>

namespace tangmark::reports {

namespace {

const char* type_of(Role role) {
  switch (role) {
    case Role::title:
      return "H1";
    case Role::heading:
      return "H2";
    case Role::head_cell:
      return "TH";
    case Role::cell:
      return "TD";
    case Role::figure:
      return "Figure";
    case Role::paragraph:
    case Role::decoration:
      break;
  }
  return "P";
}

bool in_table(Role role) {
  return role == Role::cell || role == Role::head_cell;
}

bool is_text(const Element& element) {
  return std::holds_alternative<TextRun>(element);
}

// UTF-16 with its mark, as a text string of a PDF wants what is not ASCII: libharu's encoder does
// so.
HPDF_String text_string(HPDF_Doc doc, const std::string& words) {
  return HPDF_String_New(doc->mmgr, words.c_str(), HPDF_GetEncoder(doc, "UTF-8"));
}

}  // namespace

PdfTags::PdfTags(HPDF_Doc doc) : doc_(doc) {}

HPDF_Dict PdfTags::element(const char* type, HPDF_Dict parent) {
  HPDF_Dict made = HPDF_Dict_New(doc_->mmgr);
  HPDF_Xref_Add(doc_->xref, made);
  HPDF_Dict_AddName(made, "Type", "StructElem");
  HPDF_Dict_AddName(made, "S", type);
  HPDF_Dict_Add(made, "P", parent);
  HPDF_Dict_Add(made, "K", HPDF_Array_New(doc_->mmgr));
  auto* kids = static_cast<HPDF_Array>(HPDF_Dict_GetItem(parent, "K", HPDF_OCLASS_ARRAY));
  HPDF_Array_Add(kids, made);
  return made;
}

void PdfTags::start_page(HPDF_Page page) {
  if (root_ == nullptr) {
    root_ = HPDF_Dict_New(doc_->mmgr);
    HPDF_Xref_Add(doc_->xref, root_);
    HPDF_Dict_AddName(root_, "Type", "StructTreeRoot");
    HPDF_Dict_Add(root_, "K", HPDF_Array_New(doc_->mmgr));
    document_ = element("Document", root_);
  }
  page_ = page;
  HPDF_Dict_AddNumber(page, "StructParents", static_cast<HPDF_INT32>(by_page_.size()));
  HPDF_Dict_AddName(page, "Tabs", "S");
  by_page_.push_back(HPDF_Array_New(doc_->mmgr));
  next_in_page_ = 0;
  paragraph_ = nullptr;
}

void PdfTags::write(const std::string& operators) {
  HPDF_Stream_WriteStr(static_cast<HPDF_PageAttr>(page_->attr)->stream, operators.c_str());
}

HPDF_Dict PdfTags::cell_of(const Mark& mark) {
  if (mark.opens_table || table_ == nullptr) {
    table_ = element("Table", document_);
    row_ = nullptr;
  }
  if (mark.opens_row || row_ == nullptr) row_ = element("TR", table_);
  return element(type_of(mark.role), row_);
}

HPDF_Dict PdfTags::owner_of(const Mark& mark) {
  if (in_table(mark.role)) return cell_of(mark);
  table_ = nullptr;
  if (mark.role == Role::paragraph && mark.continues && paragraph_ != nullptr) return paragraph_;
  HPDF_Dict made = element(type_of(mark.role), document_);
  if (mark.role == Role::figure) HPDF_Dict_Add(made, "Alt", text_string(doc_, mark.words));
  paragraph_ = mark.role == Role::paragraph ? made : nullptr;
  return made;
}

void PdfTags::open(const Mark& mark) {
  if (mark.role == Role::decoration) {
    write("/Artifact BMC\n");
    return;
  }
  HPDF_Dict owner = owner_of(mark);
  const int number = next_in_page_++;
  HPDF_Dict kid = HPDF_Dict_New(doc_->mmgr);
  HPDF_Dict_AddName(kid, "Type", "MCR");
  HPDF_Dict_Add(kid, "Pg", page_);
  HPDF_Dict_AddNumber(kid, "MCID", number);
  HPDF_Array_Add(static_cast<HPDF_Array>(HPDF_Dict_GetItem(owner, "K", HPDF_OCLASS_ARRAY)), kid);
  HPDF_Array_Add(by_page_.back(), owner);
  write("/" + std::string(type_of(mark.role)) + " <</MCID " + std::to_string(number) + ">> BDC\n");
}

void PdfTags::close() {
  write("EMC\n");
}

void PdfTags::empty_cell(const Mark& mark) {
  if (in_table(mark.role)) cell_of(mark);
}

void PdfTags::finish() {
  if (root_ == nullptr) return;
  HPDF_Array numbers = HPDF_Array_New(doc_->mmgr);
  for (std::size_t i = 0; i < by_page_.size(); ++i) {
    HPDF_Array_AddNumber(numbers, static_cast<HPDF_INT32>(i));
    HPDF_Array_Add(numbers, by_page_[i]);
  }
  HPDF_Dict parents = HPDF_Dict_New(doc_->mmgr);
  HPDF_Xref_Add(doc_->xref, parents);
  HPDF_Dict_Add(parents, "Nums", numbers);
  HPDF_Dict_Add(root_, "ParentTree", parents);
  HPDF_Dict_AddNumber(root_, "ParentTreeNextKey", static_cast<HPDF_INT32>(by_page_.size()));
  HPDF_Dict_Add(doc_->catalog, "StructTreeRoot", root_);
  HPDF_Dict marked = HPDF_Dict_New(doc_->mmgr);
  HPDF_Dict_Add(marked, "Marked", HPDF_Boolean_New(doc_->mmgr, HPDF_TRUE));
  HPDF_Dict_Add(doc_->catalog, "MarkInfo", marked);
}

std::vector<Mark> whole_marks(const Page& page) {
  std::vector<Mark> whole;
  std::size_t at = 0;
  const auto fill = [&](std::size_t end) {
    while (at < end) {
      const bool text = is_text(page.elements[at]);
      Mark mark{text ? Role::paragraph : Role::decoration, at, 0};
      while (at < end && is_text(page.elements[at]) == text) ++at;
      mark.count = at - mark.first;
      whole.push_back(std::move(mark));
    }
  };
  for (const Mark& mark : page.marks) {
    fill(mark.first);
    whole.push_back(mark);
    at = mark.first + mark.count;
  }
  fill(page.elements.size());
  return whole;
}

}  // namespace tangmark::reports
