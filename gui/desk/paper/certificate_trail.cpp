// SPDX-License-Identifier: MIT
#include "gui/desk/paper/certificate_trail.h"

#include <algorithm>
#include <map>

#include "domain/certificate/layer_count.h"
#include "domain/certificate/limits_check.h"
#include "domain/certificate/trail.h"

namespace tangmark::desk {
namespace {

namespace cert = certificate;

std::string document_line(const cert::Lot& lot) {
  using enum cert::SupplyDocument;
  switch (lot.document) {
    case type_3_2: return "inspection document 3.2";
    case type_3_1: return "inspection document 3.1";
    case type_2_2: return "test report 2.2";
    case type_2_1: return "declaration 2.1";
    case label: return "supplier's label";
    case suppliers_word: return "supplier's word";
    case none: return "no document";
  }
  return {};
}

std::string mark_line(const cert::Lot& lot) {
  switch (lot.mark) {
    case cert::BarMark::matched: return "mark on bar matched";
    case cert::BarMark::none_on_bar: return "no mark on the bar";
    case cert::BarMark::differs: return "mark on bar differs";
    case cert::BarMark::not_looked_for: return "mark not looked for";
  }
  return {};
}

class BoxMaker {
 public:
  explicit BoxMaker(const cert::Dossier& dossier) : dossier_(dossier) {}

  std::vector<reports::TrailBox> make() {
    std::vector<std::size_t> last;
    if (dossier_.steel.blade_piece) last = piece(*dossier_.steel.blade_piece, 0);
    else last = {add("", {"Steel not listed", {"no piece on record"}, {}})};
    add("", {"Blade " + std::to_string(dossier_.blade), {}, last});
    return std::move(boxes_);
  }

 private:
  std::size_t add(const std::string& key, reports::TrailBox box) {
    if (!key.empty())
      if (const auto known = known_.find(key); known != known_.end()) return known->second;
    boxes_.push_back(std::move(box));
    if (!key.empty()) known_[key] = boxes_.size() - 1;
    return boxes_.size() - 1;
  }

  // Cut pieces stand in one box with the bar they are from: a reader follows the steel, not each cut.
  std::vector<std::size_t> piece(const cert::PieceTag& tag, int depth) {
    const cert::Piece* found = cert::find(dossier_.steel, tag);
    if (!found || depth > 40) return {};
    if (const auto* parent = std::get_if<cert::PieceTag>(&found->from)) {
      const cert::PieceTag* root = parent;
      const cert::Piece* up = cert::find(dossier_.steel, *root);
      for (int i = 0; up && i < 40; ++i) {
        const auto* next = std::get_if<cert::PieceTag>(&up->from);
        if (!next) break;
        root = next;
        up = cert::find(dossier_.steel, *root);
      }
      if (!up) return {};
      return {bar(*up, "piece " + tag.text, found->identity == cert::Identity::gap, depth)};
    }
    return {bar(*found, "", found->identity == cert::Identity::gap, depth)};
  }

  std::size_t bar(const cert::Piece& root, const std::string& piece_line, bool gap, int depth) {
    std::vector<std::size_t> from;
    std::string title = "Bar " + root.tag.text;
    if (const auto* lot = std::get_if<cert::LotTag>(&root.from)) {
      from.push_back(lot_box(*lot));
    } else if (const auto* billet = std::get_if<cert::BilletTag>(&root.from)) {
      if (piece_line.empty() && !gap) return billet_box(*billet, depth);
      from.push_back(billet_box(*billet, depth));
      title = "Piece " + root.tag.text;
    } else if (const auto* melt = std::get_if<cert::MeltTag>(&root.from)) {
      if (piece_line.empty() && !gap) return melt_box(*melt);
      from.push_back(melt_box(*melt));
      title = "Ingot " + root.tag.text;
    }
    std::vector<std::string> lines;
    if (!piece_line.empty()) lines.push_back(piece_line);
    if (root.mass) lines.push_back(to_text(*root.mass, dossier_.manner.mass));
    if (gap) lines.push_back("identity gap");
    return add("bar " + root.tag.text + piece_line, {title, lines, from});
  }

  std::size_t lot_box(const cert::LotTag& tag) {
    const cert::Lot* lot = cert::find(dossier_.steel, tag);
    if (!lot) return add("lot " + tag.text, {"Lot " + tag.text, {}, {}});
    std::vector<std::string> lines{document_line(*lot)};
    if (lot->melt_number) lines.push_back("melt number " + *lot->melt_number);
    lines.push_back(mark_line(*lot));
    return add("lot " + tag.text, {"Lot " + tag.text + ", " + lot->grade.value_or("not identified"), lines, {}});
  }

  std::size_t billet_box(const cert::BilletTag& tag, int depth) {
    const cert::Billet* billet = cert::find(dossier_.steel, tag);
    std::vector<std::size_t> from;
    std::vector<std::string> lines;
    if (billet) {
      for (const cert::WeldStage& stage : billet->stages)
        for (const cert::StackPart& part : stage.parts)
          for (const std::size_t box : piece(part.piece, depth + 1))
            if (std::find(from.begin(), from.end(), box) == from.end()) from.push_back(box);
      if (const auto count = cert::layer_count(dossier_.steel, *billet); count && count->layers > 3)
        lines.push_back(std::to_string(count->layers) + " layers");
      if (billet->pattern_name) lines.push_back(*billet->pattern_name);
    }
    return add("billet " + tag.text, {"Billet " + tag.text, lines, from});
  }

  std::size_t melt_box(const cert::MeltTag& tag) {
    const cert::Melt* melt = cert::find(dossier_.steel, tag);
    std::vector<std::string> lines;
    if (melt) {
      lines.push_back(melt->kind == cert::MeltKind::crucible ? "melted in a crucible" : "smelted");
      if (melt->ingot_mass) lines.push_back("ingot " + to_text(*melt->ingot_mass, dossier_.manner.mass));
    }
    return add("melt " + tag.text, {"Melt " + tag.text, lines, {}});
  }

  const cert::Dossier& dossier_;
  std::vector<reports::TrailBox> boxes_;
  std::map<std::string, std::size_t> known_;
};

double percent(Share share) { return static_cast<double>(share.millionths()) / 10'000; }

}  // namespace

std::vector<reports::TrailBox> trail_boxes(const cert::Dossier& dossier) { return BoxMaker(dossier).make(); }

std::vector<reports::Analysis> analyses_of(const cert::Dossier& dossier) {
  std::vector<reports::Analysis> all;
  for (const cert::Lot& lot : dossier.steel.lots) {
    reports::Analysis analysis;
    analysis.lot = "Lot " + lot.tag.text + ", " + lot.grade.value_or("not identified");
    analysis.source = lot.analysis_source == cert::AnalysisSource::document     ? "from the mill document"
                      : lot.analysis_source == cert::AnalysisSource::laboratory ? "from a laboratory"
                                                                                : "by hand-held X-ray, which gives no carbon";
    if (lot.analysis)
      for (const auto& [element, share] : *lot.analysis) {
        reports::AnalysisLine line{element, percent(share), {}, {}, percent(share) < 0.1 ? 3 : 2};
        if (lot.facts && !lot.facts->nominal)
          if (const auto limits = lot.facts->limits.find(element); limits != lot.facts->limits.end()) {
            if (limits->second.lo) line.least_wt_percent = percent(*limits->second.lo);
            if (limits->second.hi) line.most_wt_percent = percent(*limits->second.hi);
          }
        analysis.lines.push_back(line);
      }
    all.push_back(std::move(analysis));
  }
  return all;
}

std::string analysis_note(const cert::Dossier& dossier) {
  bool compared = false, all_inside = true;
  std::string outside;
  for (const cert::Lot& lot : dossier.steel.lots) {
    const cert::LimitsCheck check = cert::check_limits(lot);
    if (check.verdict == cert::LimitsVerdict::no_analysis) continue;
    compared = true;
    all_inside = all_inside && check.verdict == cert::LimitsVerdict::inside;
    for (const std::string& sentence : check.outside) outside += " Lot " + lot.tag.text + ": " + sentence + ".";
  }
  if (!compared) return "No analysis is on file.";
  if (all_inside) return "All inside the limits.";
  return outside.empty() ? "Not every element could be compared with limits." : outside.substr(1);
}

}  // namespace tangmark::desk
