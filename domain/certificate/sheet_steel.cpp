// SPDX-License-Identifier: MIT
#include <algorithm>
#include <map>

#include "domain/certificate/claims_steel.h"
#include "domain/certificate/dossier_words.h"
#include "domain/certificate/layer_count.h"
#include "domain/certificate/limits_check.h"
#include "domain/certificate/phrasing.h"
#include "domain/certificate/sheet_parts.h"

namespace tangmark::certificate {
namespace {

std::string document_line(const Lot& lot) {
  switch (lot.document) {
    case SupplyDocument::none:
      return "nothing on file";
    case SupplyDocument::suppliers_word:
      return "supplier's word";
    case SupplyDocument::label:
      return "supplier's label";
    default:
      break;
  }
  return "EN 10204 " + std::string(word_of(lot.document)) +
         (lot.document_number ? ", no. " + *lot.document_number : "");
}

std::string mark_line(BarMark mark) {
  switch (mark) {
    case BarMark::matched:
      return "mark on bar matched";
    case BarMark::none_on_bar:
      return "no mark on the bar";
    case BarMark::differs:
      return "mark on bar differs";
    case BarMark::not_looked_for:
      break;
  }
  return "mark not looked for";
}

// Draws the family tree from the blade back; each box stands after the boxes it was made of. A
// reader follows the steel and not each cut: pieces of one bar stand in its box.
class Tree {
 public:
  explicit Tree(const BladeCase& blade)
      : steel_(blade.dossier.steel), manner_(blade.dossier.manner) {}

  int piece(const PieceTag& tag) {
    if (const auto known = known_.find("piece " + tag.text); known != known_.end())
      return known->second;
    const Piece& last = *find(steel_, tag);
    const Piece* first = &last;
    std::string gaps = gap_words(last);
    while (const auto* parent = std::get_if<PieceTag>(&first->from)) {
      first = find(steel_, *parent);
      if (gaps.empty()) gaps = gap_words(*first);
    }
    const bool cut = first != &last;
    const auto* lot_tag = std::get_if<LotTag>(&first->from);
    int origin = 0;
    if (lot_tag)
      origin = lot(*lot_tag);
    else if (const auto* billet_tag = std::get_if<BilletTag>(&first->from))
      origin = billet(*billet_tag);
    else
      origin = melt(std::get<MeltTag>(first->from));
    // What a billet or an ingot gave whole is that billet or ingot.
    if (!lot_tag && !cut && gaps.empty()) return known_["piece " + tag.text] = origin;
    TrailBoxLine box{(lot_tag ? "Bar " : "Piece ") + first->tag.text, {}, {origin}};
    if (cut) box.lines.push_back("piece " + tag.text);
    if (last.mass) box.lines.push_back(to_text(*last.mass, manner_.mass));
    if (!gaps.empty()) box.lines.push_back(gaps);
    return add("piece " + tag.text, std::move(box));
  }

  void blade(int number, int origin) {
    boxes_.push_back({"Blade " + std::to_string(number), {}, {origin}});
  }
  std::vector<TrailBoxLine> take() { return std::move(boxes_); }

 private:
  static std::string gap_words(const Piece& piece) {
    if (piece.identity == Identity::gap) return "lost its mark";
    return piece.identity == Identity::gap_closed_by_test ? "gap closed by a test" : "";
  }

  int add(const std::string& key, TrailBoxLine box) {
    boxes_.push_back(std::move(box));
    return known_[key] = static_cast<int>(boxes_.size()) - 1;
  }

  int lot(const LotTag& tag) {
    if (const auto known = known_.find("lot " + tag.text); known != known_.end())
      return known->second;
    const Lot& lot = *find(steel_, tag);
    TrailBoxLine box{"Lot " + tag.text, {}, {}};
    if (const std::string name = sold_name(lot); !name.empty()) box.title += ", " + name;
    if (!lot.supplier.empty()) box.lines.push_back(lot.supplier);
    box.lines.push_back(document_line(lot));
    const auto& number = lot.document_melt_number ? lot.document_melt_number : lot.melt_number;
    if (number) {
      box.lines.push_back("melt number " + *number);
      box.lines.push_back(mark_line(lot.mark));
    }
    return add("lot " + tag.text, std::move(box));
  }

  int melt(const MeltTag& tag) {
    if (const auto known = known_.find("melt " + tag.text); known != known_.end())
      return known->second;
    const Melt& melt = *find(steel_, tag);
    TrailBoxLine box{(melt.kind == MeltKind::crucible ? "Melt " : "Smelt ") + tag.text, {}, {}};
    box.lines.push_back(melt.kind == MeltKind::crucible ? "melted in a crucible" : "smelted");
    if (melt.ingot_mass) box.lines.push_back("ingot " + to_text(*melt.ingot_mass, manner_.mass));
    return add("melt " + tag.text, std::move(box));
  }

  int billet(const BilletTag& tag) {
    if (const auto known = known_.find("billet " + tag.text); known != known_.end())
      return known->second;
    const Billet& billet = *find(steel_, tag);
    TrailBoxLine box{"Billet " + tag.text, {}, {}};
    for (const WeldStage& stage : billet.stages)
      for (const StackPart& part : stage.parts) {
        const int from = piece(part.piece);
        if (std::find(box.from.begin(), box.from.end(), from) == box.from.end())
          box.from.push_back(from);
      }
    if (const auto count = layer_count(steel_, billet)) {
      box.lines.push_back(count->how);
      box.lines.push_back(std::to_string(count->layers) + " layers");
    }
    return add("billet " + tag.text, std::move(box));
  }

  const SteelTrail& steel_;
  const Manner& manner_;
  std::vector<TrailBoxLine> boxes_;
  std::map<std::string, int> known_;
};

std::string source_words(const Lot& lot) {
  switch (lot.analysis_source) {
    case AnalysisSource::document:
      return "from the document on file";
    case AnalysisSource::laboratory:
      return "by a laboratory";
    case AnalysisSource::handheld_xray:
      return "by hand-held X-ray, without carbon";
  }
  return {};
}

}  // namespace

std::vector<TrailBoxLine> trail_boxes(const BladeCase& blade) {
  if (!blade.trail.breaks().empty() || !blade.dossier.steel.blade_piece) return {};
  Tree tree(blade);
  tree.blade(blade.dossier.blade, tree.piece(*blade.dossier.steel.blade_piece));
  return tree.take();
}

std::string trail_note(const BladeCase& blade) {
  if (!blade.dossier.steel.blade_piece)
    return "Steel not identified: no piece of a bar is on record for this blade.";
  if (!blade.trail.breaks().empty()) return "The trail of the steel has a gap in the record.";
  return {};
}

std::vector<AnalysisBlock> analysis_blocks(const BladeCase& blade) {
  std::vector<AnalysisBlock> blocks;
  for (const Source& source : blade.trail.sources()) {
    if (!source.lot || !source.lot->analysis) continue;
    const Lot& lot = *source.lot;
    AnalysisBlock block{capital(source_name(source)), source_words(lot), {}};
    for (const std::string& element : elements_in_order(*lot.analysis)) {
      AnalysisRow row{element, lot.analysis->at(element), {}, {}};
      const bool limits = lot.facts && !lot.facts->nominal && lot.facts->limits.contains(element);
      if (limits) {
        row.least = lot.facts->limits.at(element).lo;
        row.most = lot.facts->limits.at(element).hi;
      }
      block.rows.push_back(row);
    }
    blocks.push_back(block);
  }
  return blocks;
}

std::string analysis_note(const BladeCase& blade) {
  bool any = false;
  std::vector<std::string> open;
  for (const Source& source : blade.trail.sources()) {
    if (!source.lot || !source.lot->analysis) continue;
    any = true;
    if (check_limits(*source.lot).verdict != LimitsVerdict::inside)
      open.push_back(lot_name(*source.lot));
  }
  if (!any) return {};
  if (open.empty()) return "All inside the limits.";
  return "Not shown to be inside limits: " + listed(open) + ".";
}

}  // namespace tangmark::certificate
