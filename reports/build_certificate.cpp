// SPDX-License-Identifier: MIT
#include "reports/build_certificate.h"

#include <algorithm>
#include <cmath>

#include "reports/certificate_parts.h"
#include "reports/certificate_problems.h"
#include "reports/curve_chart.h"
#include "reports/layout.h"
#include "reports/letter.h"
#include "reports/table.h"

namespace tangmark::reports {

namespace {

/// A certificate stands on one page where it fits, else it is set with more air over two or more.
enum class Spread { one_page, more_pages };

constexpr Points side_margin = 26;
constexpr Points top_margin = 20;
constexpr Points bottom_margin = 20;
constexpr Points column_gap = 18;

class Setter {
 public:
  Setter(const BuildCertificate& certificate, const CertificateSetting& set, Spread spread)
      : c_(certificate),
        set_(set),
        spread_(spread),
        document_{set.look.paper, "", "", "", certificate.issued, {}, {}, certificate.attachments},
        pour_(full_sheet(set.look.paper, side_margin, top_margin, bottom_margin), document_,
              [this](Page& page, std::size_t) { return continued(page); }),
        width_(pour_.sheet().text_width()) {}

  Document set() {
    open();
    trail_band();
    heat_band();
    if (spread_ == Spread::more_pages) {
      if (c_.recorded.size() > 1) records_band();
      facts_band();
      statements_in_columns();
    } else {
      statements_band();
    }
    seal();
    finish();
    return std::move(document_);
  }

 private:
  void open() {
    pour_.add({certificate_head(set_, c_, width_)});
    const bool airy = spread_ == Spread::more_pages;
    pour_.add({photo_part(set_, c_, width_, !airy ? 82 : c_.photo ? 190 : 120)});
    Flow flow;
    std::string what = c_.title;
    if (!what.empty() && what[0] >= 'a' && what[0] <= 'z') what[0] = static_cast<char>(what[0] - 32);
    if (!c_.name.empty() && c_.name != c_.title) what += (what.empty() ? "" : ", ") + c_.name;
    std::vector<Span> spans;
    if (!what.empty()) spans.push_back({what + (what.ends_with('.') ? " " : ". "), set_.type.text_bold, ink});
    if (!c_.knife.empty()) spans.push_back({c_.knife, set_.type.text, ink});
    if (!c_.buyer.empty()) spans.push_back({" Made for " + c_.buyer + ".", set_.type.text, ink});
    if (!spans.empty()) append(flow, text(spans, width_));
    if (!c_.replaces.empty()) {
      append(flow,
             text({{"Replaces: ", set_.type.text_bold, ink}, {c_.replaces, set_.type.text, ink}},
                  width_));
    }
    if (!flow.empty()) flow.front().space_before = 3;
    pour_.add(flow);
  }

  Flow text(const std::vector<Span>& spans, Points width) const {
    return paragraph(set_.fonts, spans, width, set_.type.leading);
  }

  void band(SideColumn left, SideColumn right) {
    pour_.space(spread_ == Spread::one_page ? set_.type.half() : set_.type.leading);
    pour_.add_side_by_side({std::move(left), std::move(right)});
  }

  void trail_band() {
    const Points left = width_ * 0.6;
    const Points right = width_ - left - column_gap;
    band({trail_part(set_, c_.trail, c_.trail_note, left), 0, left},
         {analysis_part(set_, c_.analyses, c_.analysis_note, right), left + column_gap, right});
  }

  // On a sheet with room several records stand in rows of three under the table.
  void records_band() {
    pour_.space(set_.type.leading);
    pour_.add(record_part(width_, std::min<std::size_t>(3, c_.recorded.size()), 104));
  }

  void heat_band() {
    if (spread_ == Spread::more_pages && c_.recorded.size() > 1) {
      pour_.space(set_.type.leading);
      pour_.add(heat_part(width_));
      return;
    }
    const Points left = width_ * 0.515;
    const Points right = width_ - left - column_gap;
    band({heat_part(left), 0, left}, {record_part(right, c_.recorded.size() == 1 ? 1 : 2,
                      spread_ == Spread::one_page ? 88 : 132),
          left + column_gap, right});
  }

  Flow heat_part(Points width) const {
    Flow flow = part_heading(set_, "Heat treatment", width);
    if (c_.heat.empty()) append(flow, text({{"Not recorded.", set_.type.text, ink}}, width));
    Table table;
    table.head_font = set_.type.note;
    table.leading = set_.type.leading;
    table.row_space = spread_ == Spread::one_page ? 3.3 : set_.type.half();
    const bool fahrenheit = set_.look.temperature == TemperatureUnit::fahrenheit;
    table.columns = {{"Step", ColumnAlign::left, 0, true},
                     {fahrenheit ? "°F" : "°C", ColumnAlign::right, 0, false},
                     {"Time", ColumnAlign::right, 0, false},
                     {"Evidence", ColumnAlign::right, 0, false}};
    for (const HeatLine& line : c_.heat) {
      std::string degrees;
      for (const Temperature t : line.temperatures) {
        degrees += (degrees.empty() ? "" : line.range ? "–" : ", ") +
                   figure(t, set_.look.temperature);
      }
      table.rows.push_back(
          {{cell(line.step, set_.type.table), cell(degrees, set_.type.table),
            cell(line.time, set_.type.table), cell(line.evidence, set_.type.table_bold)},
           false,
           0.5,
           rule_grey,
           0});
    }
    if (!table.rows.empty()) append(flow, table_flow(set_.fonts, table, width));
    if (!c_.heat_note.empty()) {
      Flow note = text({{c_.heat_note, set_.type.table, ink}}, width);
      note.front().space_before = 3;
      append(flow, std::move(note));
    }
    return flow;
  }

  // Records beside each other, further ones below.
  Flow record_part(Points width, std::size_t across, Points high) const {
    std::string head = "As recorded";
    if (!c_.recorded.empty() && !c_.recorded.front().points.empty()) {
      const Instant first = c_.recorded.front().points.front().at;
      head += ", " + to_text(set_.look.zone.date_of(first)).substr(4);
    }
    Flow flow = part_heading(set_, head, width);
    if (c_.recorded.empty()) {
      append(flow, text({{"No temperature record is on file.", set_.type.text, ink}}, width));
    }
    const Points gap = 10;
    const auto columns = static_cast<double>(across);
    const Points each = (width - gap * (columns - 1)) / columns;
    for (std::size_t i = 0; i < c_.recorded.size(); i += across) {
      Block row = blank(0);
      for (std::size_t k = i; k < std::min(i + across, c_.recorded.size()); ++k) {
        const Block chart = curve_chart(set_.fonts, c_.recorded[k], CurveKind::recorded, set_.look,
                                        {each, high, 7});
        const Points x = static_cast<double>(k - i) * (each + gap);
        for (const Element& e : chart.elements) row.elements.push_back(moved(e, x, 0));
        row.height = std::max(row.height, chart.height);
      }
      flow.push_back(std::move(row));
    }
    return flow;
  }

  void statements_band() {
    const Points left = width_ * 0.515;
    const Points right = width_ - left - column_gap;
    Flow own = hardness_part(set_, c_.hardness, left);
    append(own, told_part(left));
    append(own, care_part(left));
    append(own, legend_part(left));
    band({std::move(own), 0, left}, {statements_part(right), left + column_gap, right});
  }

  // On more pages the thing itself fills the first, and what is stated of it the second.
  void facts_band() {
    const Points each = (width_ - column_gap) / 2;
    Flow left = hardness_part(set_, c_.hardness, each);
    append(left, told_part(each));
    Flow right = care_part(each);
    right.front().space_before = 0;
    append(right, legend_part(each));
    band({std::move(left), 0, each}, {std::move(right), each + column_gap, each});
  }

  // The statements in two columns of like height, in the order left, right.
  void statements_in_columns() {
    const Points each = (width_ - column_gap) / 2;
    std::vector<Flow> all;
    Points total = 0;
    for (const Statement& s : c_.statements) {
      all.push_back(statement_flow(s, each));
      if (all.size() > 1) all.back().front().space_before = set_.type.half() / 2;
      total += height_of(all.back());
    }
    Flow left;
    Flow right;
    for (Flow& one : all) {
      const bool first = height_of(left) + height_of(one) / 2 <= total / 2;
      append(first && right.empty() ? left : right, std::move(one));
    }
    if (!right.empty()) right.front().space_before = 0;
    const Points high = std::max(height_of(left), height_of(right)) + 3 * set_.type.leading;
    if (pour_.room() < high && !pour_.at_head()) pour_.new_page();
    pour_.space(set_.type.leading);
    pour_.add(part_heading(set_, "What we state, and on what evidence", width_));
    pour_.add_side_by_side(
        {{std::move(left), 0, each}, {std::move(right), each + column_gap, each}});
  }

  Flow told_part(Points width) const {
    return list_part("Told openly", c_.told_openly,
                     "Nothing to tell: no finding on this blade is on record.", width);
  }

  Flow care_part(Points width) const {
    std::vector<std::string> care = c_.care;
    care.insert(care.end(), c_.cautions.begin(), c_.cautions.end());
    Flow flow = list_part("Care and cautions", care, "None entered.", width);
    if (!c_.notes.empty()) append(flow, list_part("From the maker", c_.notes, "", width));
    if (!c_.explanations.empty()) append(flow, list_part("Words", c_.explanations, "", width));
    return flow;
  }

  Flow list_part(const std::string& head, const std::vector<std::string>& points,
                 const std::string& none, Points width) const {
    Flow flow = part_heading(set_, head, width);
    flow.front().space_before = set_.type.half();
    const std::vector<std::string> nothing{none};
    bool first = true;
    for (const std::string& point : points.empty() ? nothing : points) {
      Flow lines = text({{point, set_.type.text, ink}}, width);
      if (!first) lines.front().space_before = set_.type.half() / 2;
      first = false;
      append(flow, std::move(lines));
    }
    return flow;
  }

  Flow statement_flow(const Statement& s, Points width) const {
    std::vector<Span> spans{{s.subject + ".", set_.type.text_bold, ink},
                            {" " + s.sentence, set_.type.text, ink}};
    std::string evidence;
    if (s.level) evidence = std::string("Level ") + *s.level;
    if (!s.evidence.empty()) evidence += (evidence.empty() ? "" : ": ") + s.evidence;
    if (!evidence.empty()) spans.push_back({"\n" + evidence, set_.type.text_italic, second_ink});
    return text(spans, width);
  }

  Flow statements_part(Points width) const {
    Flow flow = part_heading(set_, "What we state, and on what evidence", width);
    for (const Statement& s : c_.statements) {
      Flow lines = statement_flow(s, width);
      if (&s != &c_.statements.front()) lines.front().space_before = set_.type.half() / 2;
      append(flow, std::move(lines));
    }
    return flow;
  }

  // What each level on this page means, once, in small letters.
  Flow legend_part(Points width) const {
    if (c_.legend.empty()) return {};
    if (spread_ == Spread::one_page) {
      std::string levels;
      for (const std::string& level : c_.legend) levels += level + ". ";
      Flow lines = paragraph(set_.fonts,
                             {{"Levels. ", sans(7, Weight::bold), second_ink},
                              {levels, sans(7), second_ink}},
                             width, 9.5);
      Flow block{glued(lines)};
      block.front().space_before = set_.type.half();
      return block;
    }
    Flow lines;
    for (const std::string& level : c_.legend) {
      append(lines, paragraph(set_.fonts, {{level + ".", set_.type.note, second_ink}}, width, 9.5));
    }
    Flow head = part_heading(set_, "Levels of evidence", width);
    head.front().space_before = set_.type.half();
    append(head, {glued(lines)});
    return head;
  }

  void seal() {
    const Block block = seal_part(set_, c_, width_);
    pour_.need(block.height + set_.type.half());
    pour_.put_at(block, pour_.sheet().left, pour_.sheet().floor() - block.height);
  }

  Points continued(Page& page) const {
    const Points y = top_margin + 12;
    const Sheet sheet = full_sheet(set_.look.paper, side_margin, top_margin, bottom_margin);
    page.elements.push_back(run_at(set_.fonts, {sheet.left, y}, "Build certificate, continued",
                                   serif(12, Weight::bold)));
    page.elements.push_back(fitted_run(set_.fonts, {sheet.width - sheet.right, y},
                                       "Blade " + c_.blade, serif(12, Weight::bold),
                                       sheet.text_width() * 0.4, 6, Align::right));
    return 27.5;
  }

  void finish() {
    document_.title = "Build certificate, blade " + c_.blade;
    document_.author = c_.shop.shop;
    document_.subject = c_.number.empty() ? c_.knife : "Certificate " + c_.number;
    const std::size_t count = document_.pages.size();
    const Sheet& sheet = pour_.sheet();
    for (std::size_t i = 0; i < count; ++i) {
      Page& page = document_.pages[i];
      if (count > 1) {
        std::string words = "Page " + std::to_string(i + 1) + " of " + std::to_string(count);
        if (i + 1 < count) words += ", seal on the last";
        page.elements.push_back(run_at(set_.fonts, {sheet.width - sheet.right, sheet.height - 11},
                                       words, set_.type.note, second_ink, Align::right));
      }
      if (c_.state == IssueState::draft) watermark(page, "DRAFT");
      if (c_.state == IssueState::revoked) watermark(page, "REVOKED");
    }
  }

  // Across the page from the lower left to the upper right, under everything else.
  void watermark(Page& page, const std::string& word) const {
    const Font font = sans(word.size() > 5 ? 110 : 150, Weight::bold);
    TextRun run = run_at(set_.fonts, {0, 0}, word, font, Grey{228});
    const double half = run.width / 2 * std::sqrt(0.5);
    const double sink = font.size * 0.36 * std::sqrt(0.5);
    run.turn_degrees = 45;
    run.baseline = {page.width / 2 - half + sink, page.height / 2 + half + sink};
    page.underlay.push_back(run);
  }

  const BuildCertificate& c_;
  const CertificateSetting& set_;
  Spread spread_;
  Document document_;
  Pour pour_;
  Points width_;
};

}  // namespace

Flow part_heading(const CertificateSetting& set, const std::string& words, Points width) {
  Block block = blank(2 * set.type.leading);
  block.elements.push_back(Line{{0, 0.5}, {width, 0.5}, 0.7, ink, 0});
  const Points y = set.type.half() + baseline_in(set.type.leading);
  block.elements.push_back(fitted_run(set.fonts, {0, y}, words, set.type.head, width, 7));
  block.keep_with_next = true;
  block.outline = words;
  return {block};
}

Outcome<Document> certificate_document(const BuildCertificate& certificate, const Look& look,
                                       const FontBook& fonts) {
  Problems problems = certificate_problems(certificate, fonts);
  if (!problems.empty()) return problems;
  const CertificateSetting set{fonts, look, certificate_type()};
  Document document = Setter(certificate, set, Spread::one_page).set();
  if (document.pages.size() == 1) return document;
  return Setter(certificate, set, Spread::more_pages).set();
}

}  // namespace tangmark::reports
