// SPDX-License-Identifier: MIT
#include "reports/firing_sheet.h"

#include <algorithm>

#include "domain/measure/utf8.h"
#include "reports/bench_marks.h"
#include "reports/curve_chart.h"
#include "reports/layout.h"
#include "reports/letter.h"
#include "reports/paragraph.h"
#include "reports/qr.h"
#include "reports/table.h"
#include "reports/text_check.h"

namespace tangmark::reports {

namespace {

constexpr Points side_margin = 40;
constexpr Points code_side = 70;

Problems problems_of(const FiringSheet& sheet, const FontBook& fonts) {
  TextCheck check(fonts);
  check.needed(sheet.number, "firing number");
  check.needed(sheet.kiln, "kiln");
  check.text(sheet.purpose, "purpose of the firing");
  check.text(sheet.protection, "protection");
  check.text(sheet.attendance, "attendance");
  check.texts(sheet.cautions, "caution");
  check.text(sheet.planned.title, "title of the curve");
  if (sheet.recorded) check.text(sheet.recorded->title, "title of the record");
  for (const CurveMark& mark : sheet.planned.marks) check.text(mark.text, "mark on the curve");
  for (const FiringBlade& blade : sheet.blades) {
    check.needed(blade.number, "blade number");
    check.text(blade.steel, "steel");
    check.text(blade.position, "position in the kiln");
    check.text(blade.medium, "quench medium");
    check.text(blade.note, "note of a blade");
  }
  check.code(sheet.qr, "code of the sheet");
  return check.problems();
}

bool quenches(const FiringSheet& sheet) {
  return std::any_of(sheet.blades.begin(), sheet.blades.end(),
                     [](const FiringBlade& blade) { return !blade.medium.empty(); });
}

bool quenches_in_oil(const FiringSheet& sheet) {
  return std::any_of(sheet.blades.begin(), sheet.blades.end(), [](const FiringBlade& blade) {
    return lower_case(blade.medium).find("oil") != std::string::npos;
  });
}

// Common practice, no source.
std::vector<std::string> cautions_for(const FiringSheet& sheet) {
  std::vector<std::string> cautions{
      "Hot kiln: face shield and dry leather gloves. Switch off the elements before the door "
      "opens. "
      "Nothing that burns within reach of the open door."};
  if (quenches_in_oil(sheet)) {
    cautions.push_back(
        "Quench oil flames when steel is only part under: all of the blade, in one go. Lid and "
        "extinguisher at hand on the way out, no water near, oil never over two thirds of the "
        "tank.");
  }
  cautions.insert(cautions.end(), sheet.cautions.begin(), sheet.cautions.end());
  return cautions;
}

std::string soak_words(const FiringBlade& blade) {
  using std::chrono::minutes;
  if (blade.soak_least && blade.soak_most) {
    const auto least = date::floor<minutes>(*blade.soak_least);
    const auto most = date::floor<minutes>(*blade.soak_most);
    if (least == *blade.soak_least && most == *blade.soak_most && most < minutes(60)) {
      return std::to_string(least.count()) + "–" + std::to_string(most.count()) + " min";
    }
    return to_text(*blade.soak_least) + " to " + to_text(*blade.soak_most);
  }
  if (blade.soak_least) return "from " + to_text(*blade.soak_least);
  return blade.soak_most ? "up to " + to_text(*blade.soak_most) : std::string();
}

class FiringSetter {
 public:
  FiringSetter(const FiringSheet& sheet, const Look& look, const FontBook& fonts)
      : firing_(sheet),
        look_(look),
        fonts_(fonts),
        document_{look.paper, "", "", "", sheet.printed, {}, {}, {}},
        pour_(full_sheet(look.paper, side_margin, 34, 48), document_, nullptr),
        width_(pour_.sheet().text_width()) {}

  Document set() {
    pour_.add({head()});
    pour_.add(fact_flow(fonts_, type_, facts(), width_, 2));
    pour_.space(type_.half());
    programme();
    if (firing_.planned.points.size() > 1) {
      pour_.space(type_.half());
      const Points height = firing_.blades.size() > 8 ? 126 : 168;
      pour_.add(
          {curve_chart(fonts_, firing_.planned, CurveKind::planned, look_, {width_, height, 8.5})});
    }
    if (firing_.recorded) {
      pour_.space(type_.half());
      pour_.add(
          {curve_chart(fonts_, *firing_.recorded, CurveKind::recorded, look_, {width_, 168, 8.5})});
    }
    pour_.space(type_.half());
    blades();
    pour_.space(type_.leading);
    pour_.add(caution_flow(fonts_, type_, cautions_for(firing_), width_));
    pour_.space(type_.half());
    pour_.add(
        {pencil_fields(fonts_, {{"kiln on at", 60}, {"steady at", 60}, {"off at", 60}, {"by", 70}},
                       width_, type_.note)});
    document_.title = "Firing " + firing_.number;
    document_.subject = firing_.kiln + ", " + firing_.purpose;
    add_feet(document_, fonts_, pour_.sheet(), type_.note,
             "Firing " + firing_.number + ", " + firing_.kiln + ". Printed " +
                 to_text(firing_.printed, look_.zone) + ".");
    return std::move(document_);
  }

 private:
  Block head() const {
    const Points right = firing_.qr.empty() ? width_ : width_ - code_side;
    Flow words = paragraph(
        fonts_, {{"Firing " + firing_.number + ", " + firing_.kiln, type_.title, ink}}, right, 26);
    const std::string purpose = firing_.purpose.empty() ? "" : firing_.purpose + ", ";
    append(words, paragraph(fonts_, {{purpose + when(), type_.head, ink}}, right, 16));
    Block block = glued(words);
    block.height += 6;
    if (firing_.qr.empty()) return block;
    const auto code = qr_modules(firing_.qr, "code");
    const Points quiet = code_side * 4.0 / (code->across + 8);
    block.elements.push_back(placed_qr(*code, {width_ - code_side + quiet, -quiet}, code_side));
    block.height = std::max(block.height, 66.0);
    return block;
  }

  std::string when() const {
    const bool same_day = look_.zone.date_of(firing_.start) == look_.zone.date_of(firing_.end);
    return to_text(firing_.start, look_.zone) + " to " +
           (same_day ? clock_text(firing_.end, look_.zone) : to_text(firing_.end, look_.zone));
  }

  std::vector<std::pair<std::string, std::string>> facts() const {
    std::vector<std::pair<std::string, std::string>> facts;
    facts.emplace_back("Set", to_text(firing_.set, look_.temperature));
    if (firing_.window) {
      facts.emplace_back("Window",
                         window_text(firing_.window->low, firing_.window->high, look_.temperature));
    }
    if (firing_.soak) facts.emplace_back("Soak", to_text(*firing_.soak));
    if (!firing_.protection.empty()) facts.emplace_back("Protection", firing_.protection);
    if (!firing_.attendance.empty()) facts.emplace_back("Attended", firing_.attendance);
    return facts;
  }

  std::string rate_words(TemperatureDifference rate) const {
    const bool fahrenheit = look_.temperature == TemperatureUnit::fahrenheit;
    const std::int64_t per_degree = fahrenheit ? 1000 : 1800;
    const std::int64_t whole = (rate.counts() + per_degree / 2) / per_degree;
    return std::to_string(whole) + (fahrenheit ? " °F per hour" : " °C per hour");
  }

  void programme() {
    if (firing_.programme.empty()) return;
    std::string words;
    for (const ProgrammeStep& step : firing_.programme) {
      words += (words.empty() ? "" : "; then ") + to_text(step.to, look_.temperature);
      words += step.per_hour ? " at " + rate_words(*step.per_hour) : " as fast as it goes";
      if (step.hold) words += ", hold " + to_text(*step.hold);
    }
    pour_.add(paragraph(fonts_,
                        {{"Programme. ", type_.text_bold, ink}, {words + ".", type_.text, ink}},
                        width_, type_.leading));
  }

  void blades() {
    const bool quench = quenches(firing_);
    Table table;
    table.head_font = type_.note;
    table.leading = type_.leading;
    table.row_space = 8;
    table.gap = 9;
    table.boxed = true;
    table.columns = {
        {"", ColumnAlign::right, 0, false},           {"Blade", ColumnAlign::left, 0, false},
        {"Steel, place", ColumnAlign::left, 0, true}, {"Plan in", ColumnAlign::centre, 0, false},
        {"In", ColumnAlign::left, 42, false},         {"Soak", ColumnAlign::left, 0, true},
        {"Plan out", ColumnAlign::centre, 0, false},  {"Out", ColumnAlign::left, 42, false}};
    if (quench) {
      table.columns.push_back({"Into", ColumnAlign::left, 0, true});
      table.columns.push_back({look_.temperature == TemperatureUnit::fahrenheit ? "°F" : "°C",
                               ColumnAlign::left, 32, false});
    }
    for (std::size_t i = 0; i < firing_.blades.size(); ++i) {
      table.rows.push_back(blade_row(i, quench));
    }
    if (table.rows.empty()) return;
    pour_.add(table_flow(fonts_, table, width_));
  }

  std::string planned(const std::optional<Instant>& at) const {
    return at ? clock_text(*at, look_.zone) : std::string("–");
  }

  Row blade_row(std::size_t i, bool quench) const {
    const FiringBlade& blade = firing_.blades[i];
    const Font small = sans(9);
    std::string steel = blade.steel;
    if (!blade.position.empty()) steel += (steel.empty() ? "" : ", ") + blade.position;
    if (blade.window) {
      steel += "; " + window_text(blade.window->low, blade.window->high, look_.temperature);
    }
    if (!blade.note.empty()) steel += ". " + blade.note;
    Row row;
    row.least_height = 30;
    row.cells = {cell(std::to_string(i + 1) + ".", small, second_ink),
                 cell(blade.number, sans(15, Weight::bold)),
                 cell(steel, small),
                 cell(planned(blade.in), type_.table),
                 cell("", small),
                 cell(soak_words(blade), small),
                 cell(planned(blade.out), type_.table),
                 cell("", small)};
    if (quench) {
      Cell into = cell(blade.medium.empty() ? "–" : blade.medium, type_.table_bold);
      if (blade.medium_band) {
        into.spans.push_back(
            {"\n" + window_text(blade.medium_band->low, blade.medium_band->high, look_.temperature),
             small, second_ink});
      }
      row.cells.push_back(std::move(into));
      row.cells.push_back(cell("", small));
    }
    return row;
  }

  const FiringSheet& firing_;
  const Look& look_;
  const FontBook& fonts_;
  TypeScale type_ = bench_type();
  Document document_;
  Pour pour_;
  Points width_;
};

}  // namespace

Outcome<Document> firing_sheet_document(const FiringSheet& sheet, const Look& look,
                                        const FontBook& fonts) {
  Problems problems = problems_of(sheet, fonts);
  if (!problems.empty()) return problems;
  return FiringSetter(sheet, look, fonts).set();
}

}  // namespace tangmark::reports
