// SPDX-License-Identifier: MIT
#include "reports/cutting_sheet.h"

#include <algorithm>

#include "reports/bench_marks.h"
#include "reports/layout.h"
#include "reports/letter.h"
#include "reports/paragraph.h"
#include "reports/text_check.h"

namespace tangmark::reports {
namespace {

constexpr Points bar_high = 26;
constexpr Points tick_side = 12;
constexpr Points column = 150;  // of the list of cuts under a bar

Problems problems_of(const CuttingSheet& sheet, const FontBook& fonts) {
  TextCheck check(fonts);
  check.needed(sheet.title, "title");
  check.text(sheet.under, "what it comes to");
  check.texts(sheet.notes, "note");
  for (const BarToCut& bar : sheet.bars) {
    check.needed(bar.tag, "tag of a bar");
    check.text(bar.left, "what is left");
    for (const BlankInBar& blank : bar.blanks) check.needed(blank.name, "name of a blank");
  }
  if (sheet.bars.empty())
    check.add({"bars", "There is nothing to cut.", "Plan cuts for a lot that the queue wants."});
  return check.problems();
}

class CuttingSetter {
 public:
  CuttingSetter(const CuttingSheet& sheet, const Look& look, const FontBook& fonts)
      : sheet_(sheet),
        fonts_(fonts),
        document_{look.paper, "", sheet.title, "", sheet.printed, {}, {}, {}},
        pour_(full_sheet(look.paper, 45, 40, 52), document_, nullptr),
        width_(pour_.sheet().text_width()) {
    for (const BarToCut& bar : sheet.bars) longest_ = std::max(longest_, bar.size);
  }

  Document set() {
    pour_.add(paragraph(fonts_, {{sheet_.title, type_.title, ink}}, width_, 28));
    add_words(sheet_.under, second_ink);
    add_words("All bars are drawn to one scale. The kerf is " + sheet_.kerf +
                  "; what is left keeps the bar's mark. Write each tag on its blank at once.",
              second_ink);
    pour_.rule(1.2, ink);
    for (const BarToCut& bar : sheet_.bars) {
      pour_.space(type_.leading);
      pour_.add({block_of(bar)});
    }
    pour_.space(type_.leading);
    for (const std::string& note : sheet_.notes) add_words(note, ink);
    document_.title = sheet_.title;
    document_.subject = "Cutting sheet";
    add_feet(document_, fonts_, pour_.sheet(), type_.note, sheet_.title);
    return std::move(document_);
  }

 private:
  void add_words(const std::string& words, Grey grey) {
    if (words.empty()) return;
    pour_.add(paragraph(fonts_, {{words, type_.text, grey}}, width_, type_.leading));
    pour_.space(type_.half());
  }

  Points across(Length length) const {
    return width_ * static_cast<double>(length.nanometres()) /
           static_cast<double>(std::max<std::int64_t>(1, longest_.nanometres()));
  }

  Block block_of(const BarToCut& bar) const {
    const auto per_row = std::max<std::size_t>(1, static_cast<std::size_t>(width_ / column));
    const std::size_t rows = (bar.blanks.size() + per_row - 1) / per_row;
    const Points row_high = 1.5 * type_.leading;
    const Points list_at = type_.leading + bar_high + 6;
    Block block = blank(list_at + static_cast<double>(rows) * row_high);
    const Points base = baseline_in(type_.leading);
    block.elements.push_back(
        run_at(fonts_, {0, base}, "Bar " + bar.tag, type_.text_bold, ink, Align::left));
    block.elements.push_back(
        run_at(fonts_, {width_, base}, bar.length, type_.text, second_ink, Align::right));
    draw_bar(bar, type_.leading, block);
    for (std::size_t i = 0; i < bar.blanks.size(); ++i)
      list_blank(bar.blanks[i],
                 {column * static_cast<double>(i % per_row),
                  list_at + row_high * static_cast<double>(i / per_row)},
                 block);
    return block;
  }

  void draw_bar(const BarToCut& bar, Points top, Block& block) const {
    block.elements.push_back(Rectangle{{0, top, across(bar.size), bar_high},
                                       {true, 0.5, second_ink, false, paper_white}});
    for (const BlankInBar& one : bar.blanks) {
      const Box box{across(one.from), top, across(one.size), bar_high};
      block.elements.push_back(Rectangle{box, {true, 0.8, ink, true, paper_white}});
      label(one.length, box, block);
    }
    if (bar.left.empty()) return;
    const Box box{across(bar.left_from), top, across(bar.left_size), bar_high};
    const Grey ground = bar.kept ? Grey{235} : band_grey;
    block.elements.push_back(Rectangle{box, {true, 0.5, second_ink, true, ground}});
    label(bar.left, box, block);
  }

  // Only what fits its place; every length stands in the list as well.
  void label(const std::string& words, const Box& box, Block& block) const {
    const TextRun run = run_at(fonts_, {box.x + box.width / 2, box.y + bar_high / 2 + 3.4}, words,
                               type_.note, ink, Align::centre);
    if (run.width + 4 <= box.width) block.elements.push_back(run);
  }

  void list_blank(const BlankInBar& one, Place at, Block& block) const {
    for (const Element& element : tick_box({at.x, at.y + 2}, tick_side, Tick::open))
      block.elements.push_back(element);
    block.elements.push_back(run_at(fonts_, {at.x + tick_side + 6, at.y + tick_side},
                                    one.name + ", " + one.length, type_.text, ink, Align::left));
  }

  const CuttingSheet& sheet_;
  const FontBook& fonts_;
  TypeScale type_ = bench_type();
  Document document_;
  Pour pour_;
  Points width_;
  Length longest_;
};

}  // namespace

Outcome<Document> cutting_sheet_document(const CuttingSheet& sheet, const Look& look,
                                         const FontBook& fonts) {
  Problems problems = problems_of(sheet, fonts);
  if (!problems.empty()) return problems;
  return CuttingSetter(sheet, look, fonts).set();
}

}  // namespace tangmark::reports
