// SPDX-License-Identifier: MIT
#include "reports/traveller_card.h"

#include <algorithm>

#include "reports/bench_marks.h"
#include "reports/layout.h"
#include "reports/letter.h"
#include "reports/paragraph.h"
#include "reports/qr.h"
#include "reports/text_check.h"

namespace tangmark::reports {

namespace {

constexpr Points side_margin = 26;
constexpr Points code_side = 74;
constexpr Points box_side = 13;
constexpr Points step_text_x = 22;

Problems problems_of(const TravellerCard& card, const FontBook& fonts) {
  TextCheck check(fonts);
  check.needed(card.blade, "blade number");
  check.text(card.job, "job");
  check.text(card.model, "model");
  check.text(card.steel, "steel");
  check.text(card.piece, "piece");
  check.text(card.hardness_aim, "hardness aim");
  check.texts(card.cautions, "caution");
  for (const TravellerStep& step : card.steps) {
    check.needed(step.operation, "operation");
    check.text(step.note, "note of an operation");
    check.texts(step.to_fill, "field to fill");
  }
  check.code(card.qr, "code of the card");
  return check.problems();
}

std::string plan_words(const TravellerStep& step, const Look& look) {
  std::string words;
  for (const Temperature t : step.set) {
    words += (words.empty() ? "" : ", ") + to_text(t, look.temperature);
  }
  if (step.hold) words += (words.empty() ? "" : ", ") + to_text(*step.hold);
  if (!step.note.empty()) words += (words.empty() ? "" : ", ") + step.note;
  return words;
}

class CardSetter {
 public:
  CardSetter(const TravellerCard& card, const Look& look, const FontBook& fonts)
      : card_(card),
        look_(look),
        fonts_(fonts),
        document_{look.paper, "", "", "", card.printed, {}, {}, {}},
        pour_(half_sheet(look.paper, side_margin, 22, 44), document_,
              [this](Page& page, std::size_t index) { return further_card(page, index); }),
        width_(pour_.sheet().text_width()) {}

  Document set() {
    pour_.add({head()});
    pour_.add(facts());
    pour_.space(type_.half());
    pour_.add(caution_flow(fonts_, type_, card_.cautions, width_));
    pour_.space(type_.half());
    for (const TravellerStep& step : card_.steps) pour_.add({step_block(step)});
    document_.title = "Traveller, blade " + card_.blade;
    document_.subject = card_.model;
    const std::string words =
        "Blade " + card_.blade + ". Printed " + to_text(card_.printed, look_.zone) + ".";
    add_feet(document_, fonts_, pour_.sheet(), type_.note, words);
    return std::move(document_);
  }

 private:
  Block head() const {
    const Points height = 76;
    Block block = blank(height);
    Points right = width_;
    if (!card_.qr.empty()) {
      const auto code = qr_modules(card_.qr, "code");
      const Points quiet = code_side * 4.0 / (code->across + 8);
      block.elements.push_back(
          placed_qr(*code, {width_ - code_side + quiet, -quiet + 2}, code_side));
      right -= code_side;
    }
    const Font big = sans(78, Weight::bold);
    const TextRun number = fitted_run(fonts_, {0, 60}, card_.blade, big, right * 0.62, 20);
    block.elements.push_back(number);
    const Points x = number.width + 14;
    Flow words = paragraph(fonts_, {{card_.model, type_.head, ink}}, right - x, 14);
    if (!card_.job.empty()) {
      append(words, paragraph(fonts_, {{card_.job, type_.table, ink}}, right - x, 14));
    }
    for (const Element& e : glued(words).elements) block.elements.push_back(moved(e, x, 4));
    block.height = std::max(height, height_of(words) + 8);
    return block;
  }

  Flow facts() const {
    std::vector<std::pair<std::string, std::string>> facts;
    const auto add = [&](const char* name, const std::string& says) {
      if (!says.empty()) facts.emplace_back(name, says);
    };
    const auto length = [&](const std::optional<Length>& l) {
      return l ? to_text(*l, look_.length) : std::string();
    };
    add("Steel", card_.steel);
    add("From", card_.piece);
    add("Blade", length(card_.blade_length));
    add("Heel", length(card_.height_at_heel));
    add("Spine", length(card_.spine_thickness));
    add("Hardness", card_.hardness_aim);
    return fact_flow(fonts_, type_, facts, width_, 2);
  }

  // A tick box, the operation with its plan, and at the right the fields in the order of the log.
  Block step_block(const TravellerStep& step) const {
    const Points text_width = width_ * 0.46 - step_text_x;
    const Points fields_x = width_ * 0.49;
    Flow words = paragraph(fonts_, {{step.operation, type_.table_bold, ink}}, text_width, 13);
    const std::string plan = plan_words(step, look_);
    if (!plan.empty()) {
      append(words, paragraph(fonts_, {{plan, sans(9), ink}}, text_width, 11.5));
    }
    if (step.gate) {
      append(words,
             paragraph(fonts_, {{"Stop here until this is done.", sans(9, Weight::bold), ink}},
                       text_width, 11.5));
    }
    Block right = blank(0);
    if (step.done) {
      append_done(right, *step.done, width_ - fields_x);
    } else {
      std::vector<PencilField> fields;
      for (const std::string& name : step.to_fill) fields.push_back({name, 44});
      right = pencil_fields(fonts_, fields, width_ - fields_x, type_.note);
    }
    Block block = blank(std::max({height_of(words) + 6, right.height + 6, 24.0}));
    const Tick tick = step.done ? Tick::done : Tick::open;
    for (const Element& e : tick_box({0, 4}, box_side, tick)) block.elements.push_back(e);
    for (const Element& e : glued(words).elements) {
      block.elements.push_back(moved(e, step_text_x, 3));
    }
    for (const Element& e : right.elements) block.elements.push_back(moved(e, fields_x, 0));
    const Points weight = step.gate ? 1.8 : 0.5;
    block.elements.push_back(Line{{0, block.height - weight / 2},
                                  {width_, block.height - weight / 2},
                                  weight,
                                  step.gate ? ink : rule_grey,
                                  0});
    return block;
  }

  void append_done(Block& right, Instant done, Points width) const {
    const std::string words = "done " + to_text(done, look_.zone);
    for (const Block& line : paragraph(fonts_, {{words, type_.note, second_ink}}, width, 13)) {
      for (const Element& e : line.elements) {
        right.elements.push_back(moved(e, 0, right.height + 3));
      }
      right.height += line.height;
    }
  }

  Points further_card(Page& page, std::size_t index) const {
    const Sheet sheet = half_sheet(look_.paper, side_margin, 22, 44);
    page.elements.push_back(fitted_run(fonts_, {sheet.left, sheet.top + 36}, card_.blade,
                                       sans(46, Weight::bold), sheet.text_width() * 0.6, 14));
    page.elements.push_back(run_at(fonts_, {sheet.width - sheet.right, sheet.top + 36},
                                   "card " + std::to_string(index + 1), type_.head, ink,
                                   Align::right));
    return 49;
  }

  const TravellerCard& card_;
  const Look& look_;
  const FontBook& fonts_;
  TypeScale type_ = bench_type();
  Document document_;
  Pour pour_;
  Points width_;
};

}  // namespace

Outcome<Document> traveller_document(const TravellerCard& card, const Look& look,
                                     const FontBook& fonts) {
  Problems problems = problems_of(card, fonts);
  if (!problems.empty()) return problems;
  return CardSetter(card, look, fonts).set();
}

}  // namespace tangmark::reports
