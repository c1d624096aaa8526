// SPDX-License-Identifier: MIT
#include "reports/day_list.h"

#include <algorithm>

#include "reports/bench_marks.h"
#include "reports/layout.h"
#include "reports/letter.h"
#include "reports/paragraph.h"
#include "reports/text_check.h"

namespace tangmark::reports {

namespace {

constexpr Points time_width = 92;
constexpr Points box_side = 13;

Problems problems_of(const DayList& list, const FontBook& fonts) {
  TextCheck check(fonts);
  check.text(list.shop, "name of the shop");
  check.texts(list.notes, "note");
  for (const DayEntry& entry : list.entries) {
    check.needed(entry.what, "what is to be done");
    check.text(entry.where, "where");
    check.text(entry.why, "why");
  }
  return check.problems();
}

std::vector<DayEntry> in_order(std::vector<DayEntry> entries) {
  std::stable_sort(entries.begin(), entries.end(), [](const DayEntry& a, const DayEntry& b) {
    if (a.at.has_value() != b.at.has_value()) return a.at.has_value();
    return a.at && *a.at < *b.at;
  });
  return entries;
}

class ListSetter {
 public:
  ListSetter(const DayList& list, const Look& look, const FontBook& fonts)
      : list_(list),
        look_(look),
        fonts_(fonts),
        document_{look.paper, "", list.shop, "", list.printed, {}, {}, {}},
        pour_(full_sheet(look.paper, 45, 40, 52), document_, nullptr),
        width_(pour_.sheet().text_width()) {}

  Document set() {
    const std::string day = to_text(list_.day);
    pour_.add(paragraph(fonts_, {{day, type_.title, ink}}, width_, 28));
    pour_.add(paragraph(fonts_,
                        {{"What needs hands today, in order of time.", type_.text, second_ink}},
                        width_, type_.leading));
    pour_.space(type_.leading);
    pour_.rule(1.2, ink);
    if (list_.entries.empty()) {
      pour_.space(type_.half());
      pour_.add(paragraph(fonts_, {{"Nothing needs hands today.", type_.text, ink}}, width_,
                          type_.leading));
    }
    for (const DayEntry& entry : in_order(list_.entries)) pour_.add({entry_block(entry)});
    notes();
    document_.title = "Day list, " + day;
    document_.subject = "What needs hands on " + day;
    add_feet(document_, fonts_, pour_.sheet(), type_.note,
             (list_.shop.empty() ? "" : list_.shop + ". ") + day + ". Printed " +
                 to_text(list_.printed, look_.zone) + ".");
    return std::move(document_);
  }

 private:
  // The clock, or the day too when it is not this one.
  std::string moment(Instant at) const {
    const std::string clock = clock_text(at, look_.zone);
    const CalendarDate day = look_.zone.date_of(at);
    return day == list_.day ? clock : clock + ", " + short_text(day);
  }

  Block entry_block(const DayEntry& entry) const {
    const Points text_x = time_width + box_side + 12;
    const Points text_width = width_ - text_x;
    const std::string time = entry.at ? moment(*entry.at) : "any time";
    Flow left = paragraph(fonts_, {{time, sans(12, Weight::bold), ink}}, time_width - 4, 15);
    if (entry.until) {
      append(left, paragraph(fonts_, {{"to " + moment(*entry.until), type_.note, second_ink}},
                             time_width - 4, 12));
    }
    std::vector<Span> what;
    if (entry.overdue) what.push_back({"Overdue: ", type_.text_bold, ink});
    what.push_back({entry.what, type_.text_bold, ink});
    if (!entry.where.empty()) what.push_back({"  " + entry.where, type_.text, ink});
    Flow right = paragraph(fonts_, what, text_width, type_.leading);
    if (!entry.why.empty()) {
      append(right, paragraph(fonts_, {{entry.why, sans(9), second_ink}}, text_width, 12));
    }
    Block block = blank(std::max(height_of(left), height_of(right)) + 12);
    for (const Element& e : glued(left).elements) block.elements.push_back(moved(e, 0, 5.5));
    for (const Element& e : tick_box({time_width, 6.5}, box_side, Tick::open)) {
      block.elements.push_back(e);
    }
    for (const Element& e : glued(right).elements) {
      block.elements.push_back(moved(e, text_x, 6));
    }
    block.elements.push_back(Line{{0, block.height}, {width_, block.height}, 0.5, rule_grey, 0});
    return block;
  }

  void notes() {
    if (list_.notes.empty()) return;
    pour_.space(type_.leading);
    for (const std::string& note : list_.notes) {
      pour_.add(paragraph(fonts_, {{note, type_.text, ink}}, width_, type_.leading));
      pour_.space(type_.half() / 2);
    }
  }

  const DayList& list_;
  const Look& look_;
  const FontBook& fonts_;
  TypeScale type_ = bench_type();
  Document document_;
  Pour pour_;
  Points width_;
};

}  // namespace

Outcome<Document> day_list_document(const DayList& list, const Look& look, const FontBook& fonts) {
  Problems problems = problems_of(list, fonts);
  if (!problems.empty()) return problems;
  return ListSetter(list, look, fonts).set();
}

}  // namespace tangmark::reports
