// SPDX-License-Identifier: MIT
#include "domain/certificate/trail.h"

#include <algorithm>

#include "domain/certificate/phrasing.h"

namespace tangmark::certificate {
namespace {

// No bar is cut this often; a longer trail comes from a damaged file.
constexpr std::size_t longest_trail = 2000;

template <class Rows, class Tag>
auto find_in(const Rows& rows, const Tag& tag) -> decltype(rows.data()) {
  const auto found =
      std::find_if(rows.begin(), rows.end(), [&](const auto& row) { return row.tag == tag; });
  return found == rows.end() ? nullptr : &*found;
}

}  // namespace

const Lot* find(const SteelTrail& steel, const LotTag& tag) {
  return find_in(steel.lots, tag);
}
const Piece* find(const SteelTrail& steel, const PieceTag& tag) {
  return find_in(steel.pieces, tag);
}
const Billet* find(const SteelTrail& steel, const BilletTag& tag) {
  return find_in(steel.billets, tag);
}
const Melt* find(const SteelTrail& steel, const MeltTag& tag) {
  return find_in(steel.melts, tag);
}

Trail::Trail(const SteelTrail& steel, const std::optional<PieceTag>& piece) : steel_(steel) {
  if (piece) walk_piece(*piece, {});
}

void Trail::walk_piece(const PieceTag& tag, Gaps gaps) {
  const std::string name = "piece " + tag.text;
  if (open_.contains(name)) {
    breaks_.push_back("The trail of " + name + " leads back to itself.");
    return;
  }
  if (open_.size() >= longest_trail) {
    breaks_.push_back("The trail of this blade runs through too many pieces to be followed.");
    return;
  }
  const Piece* piece = find(steel_, tag);
  if (!piece) {
    breaks_.push_back("The trail names " + name + ", which is not on record.");
    return;
  }
  if (std::find(pieces_.begin(), pieces_.end(), piece) == pieces_.end()) pieces_.push_back(piece);
  // Two gaps are told apart from one, more are not.
  if (piece->identity == Identity::gap) gaps.open = std::min(gaps.open + 1, 2);
  if (piece->identity == Identity::gap_closed_by_test) gaps.closed = std::min(gaps.closed + 1, 2);
  if (!walked_.emplace(name, gaps).second) return;

  open_.insert(name);
  walk_origin(*piece, gaps);
  open_.erase(name);
}

void Trail::walk_origin(const Piece& piece, Gaps gaps) {
  if (const auto* lot_tag = std::get_if<LotTag>(&piece.from)) {
    const Lot* lot = find(steel_, *lot_tag);
    if (lot)
      reach(lot, nullptr, gaps);
    else
      breaks_.push_back("The trail names lot " + lot_tag->text + ", which is not on record.");
  } else if (const auto* melt_tag = std::get_if<MeltTag>(&piece.from)) {
    const Melt* melt = find(steel_, *melt_tag);
    if (melt)
      reach(nullptr, melt, gaps);
    else
      breaks_.push_back("The trail names melt " + melt_tag->text + ", which is not on record.");
  } else if (const auto* billet_tag = std::get_if<BilletTag>(&piece.from)) {
    walk_billet(*billet_tag, gaps);
  } else {
    walk_piece(std::get<PieceTag>(piece.from), gaps);
  }
}

void Trail::walk_billet(const BilletTag& tag, Gaps gaps) {
  const Billet* billet = find(steel_, tag);
  if (!billet) {
    breaks_.push_back("The trail names billet " + tag.text + ", which is not on record.");
    return;
  }
  const auto known = std::find_if(billets_.begin(), billets_.end(),
                                  [&](const BilletUse& use) { return use.billet == billet; });
  if (known == billets_.end())
    billets_.push_back({billet, gaps.open});
  else
    known->open_gaps = std::max(known->open_gaps, gaps.open);
  for (const WeldStage& stage : billet->stages)
    for (const StackPart& part : stage.parts) walk_piece(part.piece, gaps);
}

void Trail::reach(const Lot* lot, const Melt* melt, Gaps gaps) {
  for (Source& source : sources_) {
    if (source.lot != lot || source.melt != melt) continue;
    source.open_gaps = std::max(source.open_gaps, gaps.open);
    source.closed_gaps = std::max(source.closed_gaps, gaps.closed);
    return;
  }
  sources_.push_back({lot, melt, gaps.open, gaps.closed});
}

Evidence chain_evidence(const Source& source) {
  const std::string what = source.lot ? lot_name(*source.lot) : "melt " + source.melt->tag.text;
  if (source.open_gaps > 0) return {EvidenceKind::chain_gap, what};
  if (source.closed_gaps == 1) return {EvidenceKind::gap_closed_by_test, what};
  if (source.closed_gaps > 1) return {EvidenceKind::gaps_closed_by_tests, what};
  return {EvidenceKind::chain_unbroken, what};
}

}  // namespace tangmark::certificate
