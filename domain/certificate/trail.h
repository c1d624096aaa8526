// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "domain/certificate/evidence.h"
#include "domain/certificate/steel_trail.h"

namespace tangmark::certificate {

/// One steel that went into the blade: a lot that was bought, or a melt of the shop's own. Exactly
/// one of the two is set.
struct Source {
  const Lot* lot = nullptr;
  const Melt* melt = nullptr;
  int open_gaps = 0;    ///< pieces on the way that lost their mark
  int closed_gaps = 0;  ///< the same, answered by a test
};

/// A billet that the blade, or a part of it, was cut from.
struct BilletUse {
  const Billet* billet = nullptr;
  int open_gaps = 0;  ///< pieces between the billet and the blade that lost their mark
};

/// The way from the blade back to every steel in it. A view: the SteelTrail must outlive it, and
/// what it points to is never null.
class Trail {
 public:
  /// From the blade's own piece.
  explicit Trail(const SteelTrail& steel) : Trail(steel, steel.blade_piece) {}
  /// From any piece.
  Trail(const SteelTrail& steel, const std::optional<PieceTag>& piece);

  /// In the order in which they are met; each once.
  const std::vector<Source>& sources() const { return sources_; }
  /// The billet the blade was cut from first, then the billets inside it.
  const std::vector<BilletUse>& billets() const { return billets_; }
  /// Every piece on the way, each once.
  const std::vector<const Piece*>& pieces() const { return pieces_; }
  /// Sentences about tags that lead nowhere or in a circle; the record contradicts itself there.
  const std::vector<std::string>& breaks() const { return breaks_; }
  bool leads_somewhere() const { return !sources_.empty(); }
  /// The only steel of a blade that was cut from one bar or one ingot; else nullptr.
  const Source* only_source() const {
    return sources_.size() == 1 && billets_.empty() && breaks_.empty() ? &sources_[0] : nullptr;
  }

 private:
  struct Gaps {
    int open = 0;
    int closed = 0;
    friend auto operator<=>(const Gaps&, const Gaps&) = default;
  };
  void walk_piece(const PieceTag& tag, Gaps gaps);
  void walk_origin(const Piece& piece, Gaps gaps);
  void walk_billet(const BilletTag& tag, Gaps gaps);
  void reach(const Lot* lot, const Melt* melt, Gaps gaps);

  const SteelTrail& steel_;
  std::vector<Source> sources_;
  std::vector<BilletUse> billets_;
  std::vector<const Piece*> pieces_;
  std::vector<std::string> breaks_;
  std::set<std::pair<std::string, Gaps>> walked_;  // so that a wide family tree is walked once
  std::set<std::string> open_;                     // what is being walked, to find circles
};

const Lot* find(const SteelTrail& steel, const LotTag& tag);
const Piece* find(const SteelTrail& steel, const PieceTag& tag);
const Billet* find(const SteelTrail& steel, const BilletTag& tag);
const Melt* find(const SteelTrail& steel, const MeltTag& tag);

/// What the piece records are worth for one source: unbroken, a gap closed by test, or open.
Evidence chain_evidence(const Source& source);

}  // namespace tangmark::certificate
