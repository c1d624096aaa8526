// SPDX-License-Identifier: MIT
#include "reports/build_certificate.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "reports/certificate_parts.h"
#include "reports/certificate_problems.h"
#include "reports/layout.h"
#include "reports/paragraph.h"

namespace tangmark::reports {

namespace {

// How a certificate is laid out: on one page where it fits, else with more air over two or more.
struct Plan {
  Spread spread = Spread::one_page;
  Points photo = 62;
  Points chart = 88;
  bool facts_on_next_page = false;  ///< so that both pages are filled alike
};

constexpr Points side_margin = 26;
constexpr Points top_margin = 20;
constexpr Points bottom_margin = 20;
constexpr Points column_gap = 18;

class Setter {
 public:
  Setter(const BuildCertificate& certificate, const CertificateSetting& set, const Plan& plan)
      : c_(certificate),
        set_(set),
        plan_(plan),
        document_{set.look.paper, "", "", "", certificate.issued, {}, {}, certificate.attachments},
        pour_(full_sheet(set.look.paper, side_margin, top_margin, bottom_margin), document_,
              [this](Page& page, std::size_t) { return continued(page); }),
        width_(pour_.sheet().text_width()) {}

  Document set() {
    open();
    trail_band();
    heat_band();
    if (records_across()) records_band();
    if (plan_.spread == Spread::more_pages) {
      if (plan_.facts_on_next_page) {
        spare_ = pour_.room();
        pour_.new_page();
      }
      facts_band();
      statements_in_columns();
    } else {
      statements_band();
    }
    seal();
    finish();
    return std::move(document_);
  }

  /// Height left free on the first page, which a larger photograph may take.
  Points spare() const { return spare_; }

 private:
  void open() {
    pour_.add({certificate_head(set_, c_, width_)});
    pour_.add({photo_part(set_, c_, width_, plan_.photo)});
    Flow flow;
    std::string what = sentence(c_.title);
    if (c_.name != c_.title) what += sentence(c_.name);
    std::vector<Span> spans;
    if (!what.empty()) spans.push_back({what, set_.type.text_bold, ink});
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

  // "Hunter in crucible steel. ": small letters begin it in the record, a capital on the page.
  static std::string sentence(std::string words) {
    if (words.empty()) return words;
    if (words[0] >= 'a' && words[0] <= 'z') words[0] = static_cast<char>(words[0] - 'a' + 'A');
    return words + (words.ends_with('.') ? " " : ". ");
  }

  Flow text(const std::vector<Span>& spans, Points width) const {
    return paragraph(set_.fonts, spans, width, set_.type.leading);
  }

  void band(SideColumn left, SideColumn right) {
    pour_.space(plan_.spread == Spread::one_page ? set_.type.half() : set_.type.leading);
    pour_.add_side_by_side({std::move(left), std::move(right)});
  }

  void trail_band() {
    const Points left = width_ * 0.6;
    const Points right = width_ - left - column_gap;
    band({trail_part(set_, c_.trail, c_.trail_note, left), 0, left},
         {analysis_part(set_, c_.analyses, c_.analysis_note, right), left + column_gap, right});
  }

  // Several records stand in rows of three where there is room, or no place beside the table.
  void records_band() {
    pour_.space(set_.type.leading);
    pour_.add(records_part(set_, c_, width_,
                           {std::min<std::size_t>(3, c_.recorded.size()), plan_.chart}));
  }

  bool records_across() const {
    const std::size_t most_beside = plan_.spread == Spread::more_pages ? 1 : 2;
    return !c_.recorded.empty() && (heats_across(c_) || c_.recorded.size() > most_beside);
  }

  // The hardness takes the room beside the table where no curves do.
  bool hardness_beside_heat() const {
    return !heats_across(c_) && (c_.recorded.empty() || records_across());
  }

  Points left_part() const { return width_ * 0.515; }
  Points right_part() const { return width_ - left_part() - column_gap; }
  Points each_half() const { return (width_ - column_gap) / 2; }

  void heat_band() {
    if (heats_across(c_)) {
      heats_in_halves();
      return;
    }
    const std::size_t across = c_.recorded.size() == 1 ? 1 : 2;
    Flow beside = hardness_beside_heat()
                      ? hardness_part(set_, c_.hardness, right_part())
                      : records_part(set_, c_, right_part(), {across, plan_.chart});
    band({heat_part(set_, c_, plan_.spread, left_part()), 0, left_part()},
         {std::move(beside), left_part() + column_gap, right_part()});
  }

  // A long table in two halves beside each other, read one after the other; in one where even its
  // halves are higher than a page.
  void heats_in_halves() {
    const std::size_t all = c_.heat.size();
    const std::size_t half = (all + 1) / 2;
    Flow first = heat_table(set_, c_, {0, half, Spread::one_page}, each_half());
    Flow second = heat_table(set_, c_, {half, all, Spread::one_page}, each_half());
    const Flow note = heat_note_part(set_, c_, width_);
    const Points heads = 3 * set_.type.leading;
    const Points high = std::max(height_of(first), height_of(second)) + heads + height_of(note);
    const bool halves = high <= pour_.sheet().floor() - top_margin - heads;
    if (halves && pour_.room() < high) pour_.new_page();
    pour_.space(set_.type.leading);
    if (!halves) {
      pour_.add(heat_part(set_, c_, plan_.spread, width_));
      return;
    }
    pour_.add(part_heading(set_, "Heat treatment", width_));
    pour_.add_side_by_side({{std::move(first), 0, each_half()},
                            {std::move(second), each_half() + column_gap, each_half()}});
    pour_.add(note);
  }

  void statements_band() {
    const bool opens_with_hardness = !hardness_beside_heat();
    FactColumns columns = fact_columns(set_, c_, opens_with_hardness, {left_part(), right_part()});
    const SideColumn right{std::move(columns.right), left_part() + column_gap, right_part()};
    if (!columns.heading_across) {
      band({std::move(columns.left), 0, left_part()}, right);
      return;
    }
    pour_.space(set_.type.half());
    pour_.add(stated_heading(set_, width_));
    pour_.add_side_by_side({{std::move(columns.left), 0, left_part()}, right});
  }

  // On more pages the thing itself fills the first, and what is stated of it the second.
  void facts_band() {
    std::vector<Flow> parts = fact_parts(set_, c_, plan_.spread, each_half());
    if (!hardness_beside_heat())
      parts.insert(parts.begin(), hardness_part(set_, c_.hardness, each_half()));
    Columns two = in_columns(parts);
    const Points page = pour_.sheet().floor() - top_margin - 4 * set_.type.leading;
    if (std::max(height_of(two.left), height_of(two.right)) > page) {
      two = in_columns(paragraphs_of(parts));
      if (!pour_.at_head()) pour_.new_page();
    }
    band({std::move(two.left), 0, each_half()},
         {std::move(two.right), each_half() + column_gap, each_half()});
  }

  struct Columns {
    Flow left;
    Flow right;
  };

  // A part that is higher than a page goes on at the head of the other column.
  static std::vector<Flow> paragraphs_of(const std::vector<Flow>& parts) {
    std::vector<Flow> paragraphs;
    for (const Flow& part : parts) {
      bool opens = true;
      for (const Block& block : part) {
        if (opens) paragraphs.emplace_back();
        paragraphs.back().push_back(block);
        opens = !block.keep_with_next && block.marks.size() == 1 && !continued_by(part, block);
      }
    }
    return paragraphs;
  }

  static bool continued_by(const Flow& part, const Block& block) {
    const auto next = static_cast<std::size_t>(&block - part.data()) + 1;
    return next < part.size() && !part[next].marks.empty() && part[next].marks.front().continues;
  }

  // Parts in two columns of like height, in the order left, right.
  Columns in_columns(std::vector<Flow> parts) const {
    Points total = 0;
    for (const Flow& part : parts) total += height_of(part);
    Columns columns;
    for (Flow& part : parts) {
      const bool first = height_of(columns.left) + height_of(part) / 2 <= total / 2;
      Flow& column = first && columns.right.empty() ? columns.left : columns.right;
      if (column.empty()) part.front().space_before = 0;
      append(column, std::move(part));
    }
    return columns;
  }

  void statements_in_columns() {
    std::vector<Flow> all;
    for (const Statement& s : c_.statements) {
      all.push_back(statement_flow(set_, s, each_half()));
      all.back().front().space_before = set_.type.half() / 2;
    }
    Columns two = in_columns(std::move(all));
    const Points high = std::max(height_of(two.left), height_of(two.right)) + 3 * set_.type.leading;
    if (pour_.room() < high && !pour_.at_head()) pour_.new_page();
    pour_.space(set_.type.leading);
    pour_.add(stated_heading(set_, width_));
    pour_.add_side_by_side({{std::move(two.left), 0, each_half()},
                            {std::move(two.right), each_half() + column_gap, each_half()}});
  }

  void seal() {
    const Block block = seal_part(set_, c_, width_);
    pour_.need(block.height + set_.type.half());
    if (plan_.spread == Spread::one_page) spare_ = pour_.room() - block.height - set_.type.half();
    pour_.put_at(block, pour_.sheet().left, pour_.sheet().floor() - block.height);
  }

  Points continued(Page& page) const {
    const Points y = top_margin + 12;
    const Sheet sheet = full_sheet(set_.look.paper, side_margin, top_margin, bottom_margin);
    page.marks.push_back({Role::decoration, page.elements.size(), 2});
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
        page.marks.push_back({Role::decoration, page.elements.size(), 1});
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
  Plan plan_;
  Document document_;
  Pour pour_;
  Points width_;
  Points spare_ = 0;
};

// How high the frame of a photograph may be before it only grows empty at the sides; a place where
// none is on record stays small.
Points whole_photo(const BuildCertificate& c, const CertificateSetting& set) {
  constexpr Points no_photo = 70;
  if (!c.photo) return no_photo;
  const Points width = full_sheet(set.look.paper, side_margin, 0, 0).text_width();
  return (width - 8) * c.photo->height_px / c.photo->width_px + 8;
}

// The photograph begins small and takes what is left on the page.
std::optional<Document> on_one_page(const BuildCertificate& c, const CertificateSetting& set,
                                    Points chart) {
  Plan plan;
  plan.chart = chart;
  if (!c.photo) plan.photo = 44;
  Setter small(c, set, plan);
  Document document = small.set();
  if (document.pages.size() > 1) return std::nullopt;
  const Points larger = std::min(plan.photo + small.spare() - 1, whole_photo(c, set));
  if (larger < plan.photo + 8) return document;
  plan.photo = larger;
  Document with_larger = Setter(c, set, plan).set();
  return with_larger.pages.size() == 1 ? with_larger : document;
}

// With the largest photograph of these that leaves two pages; with the largest of all where it
// takes more than two anyway.
Plan plan_of_pages(const BuildCertificate& c, const CertificateSetting& set) {
  const Points whole = whole_photo(c, set);
  const Plan largest{Spread::more_pages, std::min<Points>(whole, 190), 104, false};
  for (const Points photo : {190.0, 150.0, 110.0, 70.0, 44.0}) {
    Plan plan = largest;
    plan.photo = std::min(whole, photo);
    if (photo < 190) plan.chart = 82;
    if (Setter(c, set, plan).set().pages.size() <= 2) return plan;
  }
  return largest;
}

// Two pages are filled alike when what is told and stated fits the second; the first then gives its
// room to the photograph and the curves.
Document on_more_pages(const BuildCertificate& c, const CertificateSetting& set) {
  const Points whole = whole_photo(c, set);
  Plan plan = plan_of_pages(c, set);
  Document plain = Setter(c, set, plan).set();
  if (plain.pages.size() != 2) return plain;
  plan.facts_on_next_page = true;
  Setter apart(c, set, plan);
  Document halves = apart.set();
  if (halves.pages.size() != 2) return plain;
  const Points photo = std::clamp(plan.photo + apart.spare() - 6, plan.photo,
                                  std::max(plan.photo, std::min<Points>(whole, 330)));
  const Points left = apart.spare() - 6 - (photo - plan.photo);
  const auto rows = static_cast<double>((c.recorded.size() + 2) / 3);
  plan.photo = photo;
  if (rows > 0) plan.chart += std::clamp(left / rows, 0.0, 70.0);
  Document larger = Setter(c, set, plan).set();
  return larger.pages.size() == 2 ? larger : halves;
}

}  // namespace

Flow text_flow(const CertificateSetting& set, const std::vector<Span>& spans, Points width) {
  return paragraph(set.fonts, spans, width, set.type.leading);
}

Flow part_heading(const CertificateSetting& set, const std::string& words, Points width) {
  Block block = blank(2 * set.type.leading);
  block.elements.push_back(Line{{0, 0.5}, {width, 0.5}, 0.7, ink, 0});
  const Points y = set.type.half() + baseline_in(set.type.leading);
  block.elements.push_back(fitted_run(set.fonts, {0, y}, words, set.type.head, width, 7));
  block.marks = {{Role::heading, 1, 1}};
  block.keep_with_next = true;
  block.outline = words;
  return {block};
}

Outcome<Document> certificate_document(const BuildCertificate& certificate, const Look& look,
                                       const FontBook& fonts) {
  Problems problems = certificate_problems(certificate, fonts);
  if (!problems.empty()) return problems;
  const CertificateSetting set{fonts, look, certificate_type()};
  for (const Points chart : {88.0, 66.0})
    if (auto one = on_one_page(certificate, set, chart)) return std::move(*one);
  return on_more_pages(certificate, set);
}

}  // namespace tangmark::reports
