// SPDX-License-Identifier: MIT
#include "reports/label_sheet.h"

#include <algorithm>
#include <utility>

#include "reports/layout.h"
#include "reports/paragraph.h"
#include "reports/qr.h"
#include "reports/text_check.h"
#include "reports/type.h"

namespace tangmark::reports {

namespace {

// What every kind of label comes down to: the number large, lines small, and a warning in a black
// strip where the material is not the shop's own.
struct LabelFace {
  std::string kind;
  std::string number;
  std::vector<std::string> lines;
  std::string strip;
  std::string qr;
};

void check_face(TextCheck& check, const LabelFace& face) {
  check.needed(face.number, "number of a label");
  check.texts(face.lines, "line of a label");
  check.text(face.strip, "owner on a label");
  check.code(face.qr, "code of a label");
}

// Wrapped lines; what finds no room is set into the last line, smaller and cut if it must be.
void put_lines(const FontBook& fonts, Page& page, const std::vector<std::string>& lines,
               const Box& box) {
  constexpr Points leading = 9.2;
  std::vector<SetLine> all;
  for (const std::string& line : lines) {
    for (SetLine& set : broken_lines(fonts, {{line, sans(7.5), ink}}, box.width)) {
      all.push_back(std::move(set));
    }
  }
  const auto room = static_cast<std::size_t>(box.height / leading);
  for (std::size_t i = 0; i < std::min(room, all.size()); ++i) {
    const Points y = box.y + leading * static_cast<double>(i + 1) - 1.5;
    if (i + 1 == room && all.size() > room) {
      std::string rest;
      for (std::size_t k = i; k < all.size(); ++k) {
        for (const TextRun& run : all[k].runs) rest += (rest.empty() ? "" : " ") + run.text;
      }
      page.elements.push_back(fitted_run(fonts, {box.x, y}, rest, sans(7.5), box.width, 6));
      return;
    }
    Block block;
    put_line(block, all[i], box.x, y, box.width, Align::left);
    for (Element& e : block.elements) page.elements.push_back(std::move(e));
  }
}

void put_face(const FontBook& fonts, Page& page, const LabelFace& face, const Box& box) {
  const bool low = box.height < 66;  // number and lines stand closer on a small label
  const Points inside = low ? 5 : 7;
  const auto add = [&](Element e) { page.elements.push_back(std::move(e)); };
  add(Rectangle{box, {true, 0.3, Grey{215}, false, paper_white}});
  Points right = box.right() - inside;
  if (!face.qr.empty()) {
    const auto code = qr_modules(face.qr, "code");
    const Points side = std::min(box.height - 4, 76.0);
    add(placed_qr(*code, {box.right() - side - 1, box.y + (box.height - side) / 2}, side));
    right = box.right() - side;
  }
  const Points x = box.x + inside;
  const Points width = right - x;
  Points y = box.y + 9;
  if (face.strip.empty()) {
    add(run_at(fonts, {x, y}, face.kind, sans(6.5), second_ink));
  } else {
    add(Rectangle{{x - 3, box.y + 2, width, 9.4}, {false, 0, ink, true, ink}});
    TextRun strip = fitted_run(fonts, {x, y}, face.kind + ". " + face.strip,
                               sans(6.5, Weight::bold), width - 6, 4.5);
    strip.grey = paper_white;
    add(strip);
  }
  y += low ? 14 : 18;
  add(fitted_run(fonts, {x, y}, face.number, sans(low ? 13 : 16, Weight::bold), width, 7));
  y += low ? 2 : 3.5;
  put_lines(fonts, page, face.lines, {x, y, width, box.bottom() - 4 - y});
}

Points points(Length length) {
  return static_cast<double>(length.nanometres()) * 72.0 / 25'400'000.0;
}

// The place of a label, counted from the top left along the rows.
Box label_box(const LabelStock& stock, std::size_t index) {
  const auto column = static_cast<std::int64_t>(index % stock.across);
  const auto row = static_cast<std::int64_t>(index / stock.across);
  return {points(stock.left + stock.pitch_across * column),
          points(stock.top + stock.pitch_down * row), points(stock.width), points(stock.height)};
}

// What all labels of a sheet share.
struct SheetOf {
  std::string title;
  Instant printed;
  const Look& look;
  const LabelStock& stock;
};

Outcome<Document> sheet_of(const std::vector<LabelFace>& faces, const SheetOf& sheet,
                           const FontBook& fonts) {
  if (Problems problems = stock::label_stock_problems(sheet.stock); !problems.empty())
    return problems;
  TextCheck check(fonts);
  if (faces.empty()) {
    check.add({"labels", "There is nothing to print a label for.", "Choose at least one."});
  }
  for (const LabelFace& face : faces) check_face(check, face);
  if (check.refused()) return check.problems();
  Document document{sheet.look.paper, sheet.title, "", "", sheet.printed, {}, {}, {}};
  const std::size_t per_page = sheet.stock.across * sheet.stock.down;
  for (std::size_t i = 0; i < faces.size(); ++i) {
    if (i % per_page == 0) {
      document.pages.push_back(
          {points(sheet.stock.sheet_width), points(sheet.stock.sheet_height), {}, {}});
    }
    put_face(fonts, document.pages.back(), faces[i], label_box(sheet.stock, i % per_page));
  }
  return document;
}

const LabelStock& stock_for(const std::optional<LabelStock>& chosen, const Look& look) {
  if (chosen) return *chosen;
  return look.paper == Paper::letter ? stock::usual_letter_labels()
                                     : stock::usual_label_stock().front();
}

// The parts that are there, joined.
std::string joined(std::initializer_list<std::string> parts, const std::string& between) {
  std::string all;
  for (const std::string& part : parts) {
    if (!part.empty()) all += (all.empty() ? "" : between) + part;
  }
  return all;
}

std::string owner_strip(const std::string& owner) {
  return owner.empty() ? "" : "Customer’s own, job " + owner;
}

std::vector<std::string> without_empty(std::vector<std::string> lines) {
  std::erase(lines, "");
  return lines;
}

std::string size_text(const PieceLabel& piece, const Look& look) {
  const auto text = [&](const std::optional<Length>& l) {
    return l ? to_text(*l, look.length) : std::string();
  };
  return joined({text(piece.width), text(piece.thickness), text(piece.length)}, " × ");
}

}  // namespace

Outcome<Document> lot_labels(const std::vector<LotLabel>& lots, Instant printed, const Look& look,
                             const FontBook& fonts, const std::optional<LabelStock>& stock) {
  std::vector<LabelFace> faces;
  for (const LotLabel& lot : lots) {
    std::string melt = lot.melt_number.empty() ? "" : "melt " + lot.melt_number;
    if (lot.steel && melt.empty()) melt = "no melt number";
    faces.push_back({"Lot", lot.number,
                     without_empty({joined({lot.grade, lot.section}, ", "), melt,
                                    lot.steel ? lot.document : "",
                                    joined({lot.supplier, to_text(lot.received).substr(4)}, ", ")}),
                     owner_strip(lot.owner), lot.qr});
  }
  return sheet_of(faces, {"Lot labels", printed, look, stock_for(stock, look)}, fonts);
}

Outcome<Document> piece_labels(const std::vector<PieceLabel>& pieces, Instant printed,
                               const Look& look, const FontBook& fonts,
                               const std::optional<LabelStock>& stock) {
  std::vector<LabelFace> faces;
  for (const PieceLabel& piece : pieces) {
    const std::string mass = piece.mass ? to_text(*piece.mass, look.mass) : "";
    const std::string melt = piece.melt_number.empty() ? "" : "melt " + piece.melt_number;
    const std::string parent = piece.parent.empty() ? "" : "from " + piece.parent;
    faces.push_back(
        {"Piece", piece.tag,
         without_empty(
             {piece.grade, size_text(piece, look), joined({mass, melt}, ", "),
              joined({parent, piece.carries_mark ? "carries the mark" : "no mark"}, ", ")}),
         owner_strip(piece.owner), piece.qr});
  }
  return sheet_of(faces, {"Piece labels", printed, look, stock_for(stock, look)}, fonts);
}

Outcome<Document> blade_labels(const std::vector<BladeLabel>& blades, Instant printed,
                               const Look& look, const FontBook& fonts,
                               const std::optional<LabelStock>& stock) {
  std::vector<LabelFace> faces;
  for (const BladeLabel& blade : blades) {
    faces.push_back({"Blade", blade.number, without_empty({blade.model, blade.steel, blade.job}),
                     "", blade.qr});
  }
  return sheet_of(faces, {"Blade labels", printed, look, stock_for(stock, look)}, fonts);
}

}  // namespace tangmark::reports
