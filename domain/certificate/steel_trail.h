// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "domain/certificate/hand.h"
#include "domain/measure/mass.h"
#include "domain/measure/share.h"
#include "domain/measure/temperature.h"
#include "domain/measure/when.h"

namespace tangmark::certificate {

// The tags below are the words on the metal and on the cards ("17", "17-2"); each is unique among
// its own kind.
struct LotTag {
  std::string text;
  friend auto operator<=>(const LotTag&, const LotTag&) = default;
};
struct PieceTag {
  std::string text;
  friend auto operator<=>(const PieceTag&, const PieceTag&) = default;
};
struct BilletTag {
  std::string text;
  friend auto operator<=>(const BilletTag&, const BilletTag&) = default;
};
struct MeltTag {
  std::string text;
  friend auto operator<=>(const MeltTag&, const MeltTag&) = default;
};

/// Mass fractions by element symbol ("C", "Mn"); 0.85 % is Share::millionths(8500).
using Analysis = std::map<std::string, Share>;

/// The limits of one element in a grade; a missing end is open.
struct ElementLimits {
  std::optional<Share> lo;
  std::optional<Share> hi;
  friend bool operator==(const ElementLimits&, const ElementLimits&) = default;
};

/// What a steel is hardened in. An air-hardening steel cannot show a hamon.
enum class HardensIn { water, oil, air };

/// What the table of grades says about a lot's grade. Nominal compositions are given as equal ends
/// with `nominal` set, and are then not used to judge an analysis.
struct GradeFacts {
  std::string source;  ///< "ASTM A681", or "entered by the shop"
  std::map<std::string, ElementLimits> limits;
  bool nominal = false;
  std::optional<HardensIn> hardens_in;
  friend bool operator==(const GradeFacts&, const GradeFacts&) = default;
};

/// The paper behind a lot. Source of the numbered types: EN 10204:2004.
enum class SupplyDocument { none, suppliers_word, label, type_2_1, type_2_2, type_3_1, type_3_2 };

/// Whether the melt number of the document was found on the bar when it was received.
enum class BarMark { not_looked_for, none_on_bar, matched, differs };

/// Where an analysis comes from. A hand-held X-ray instrument does not give carbon.
enum class AnalysisSource { document, laboratory, handheld_xray };

/// What a lot was sold as.
enum class SoldAs { one_steel, pattern_welded, laminated };

enum class Owner { shop, customer };

/// One purchase of one steel, or one steel handed over by a customer.
struct Lot {
  LotTag tag;
  std::string supplier;
  std::optional<std::string> grade;  ///< none: nobody said what it is
  Owner owner = Owner::shop;
  SupplyDocument document = SupplyDocument::none;
  std::optional<std::string> document_number;
  std::optional<std::string> document_grade;        ///< when the document names one
  std::optional<std::string> document_melt_number;  ///< when the document names one
  std::optional<std::string> melt_number;           ///< the shop's own entry for this lot
  BarMark mark = BarMark::not_looked_for;
  std::optional<Analysis> analysis;
  AnalysisSource analysis_source = AnalysisSource::document;
  std::optional<GradeFacts> facts;  ///< none: the grade is in no table
  SoldAs sold_as = SoldAs::one_steel;
  std::optional<int> stated_layers;          ///< as stated by the supplier
  std::optional<std::string> stated_maker;   ///< who welded it, as stated by the supplier
  std::vector<std::string> stated_steels;    ///< constituents or core and sides, as stated
  std::optional<std::string> recycled_from;  ///< "a coil spring from the buyer's tractor"
  std::vector<std::string> own_tests;        ///< "a coupon hardened in oil resisted a file"
};

/// What a cut did to the identity of a piece (one end of a bar carries the paint).
enum class Identity {
  kept,                ///< carried the mark, or was tagged at the cut
  gap,                 ///< a time without mark or tag
  gap_closed_by_test,  ///< the same, later answered by an analysis of the piece itself
};

/// Any part of a bar, of a billet or of an ingot. The parent of an offcut is a piece.
struct Piece {
  PieceTag tag;
  std::variant<LotTag, BilletTag, MeltTag, PieceTag> from;
  Identity identity = Identity::kept;
  std::optional<std::string> identity_note;  ///< why the gap, or which test closed it
  std::optional<Mass> mass;
};

/// What a part does in a billet.
enum class Role { layer, core, cladding };

/// `count` layers of one piece in a stack.
struct StackPart {
  PieceTag piece;
  int count = 1;
  Role role = Role::layer;
};

/// One thing done to a billet. `fold` doubles the layers, `cut` stacks `pieces` pieces again;
/// the others leave the count as it is.
enum class StageWork { stack, fold, cut, weld, twist, press_pattern, draw, crop };

struct WeldStage {
  StageWork work = StageWork::weld;
  std::vector<StackPart> parts;  ///< of a stack
  int pieces = 0;                ///< of a cut
  bool welded = false;           ///< the entry covers the weld that closes this stack, fold or cut
  std::optional<Instant> at;
  Logged logged = Logged::at_the_time;
  Hand hand;
  std::optional<Mass> mass_after;
  std::string note;
};

/// A bar made from pieces by welding.
struct Billet {
  BilletTag tag;
  std::vector<WeldStage> stages;            ///< in the order of the work
  std::optional<std::string> pattern_name;  ///< the maker's name for the pattern
  std::vector<int> photos;                  ///< numbers of Photo
};

enum class MeltKind { crucible, bloomery };

struct ChargePart {
  std::string what;
  Mass mass;
};

/// Steel melted in a crucible, or smelted from ore, and what came out.
struct Melt {
  MeltTag tag;
  MeltKind kind = MeltKind::crucible;
  std::optional<CalendarDate> day;
  Hand hand;
  Logged logged = Logged::at_the_time;
  std::vector<ChargePart> charge;
  std::optional<std::string> lining;  ///< crucible and lining, or furnace lining
  std::optional<Temperature> peak;
  std::optional<Duration> time;  ///< at heat
  std::optional<Mass> ingot_mass;
  std::optional<Analysis> analysis;  ///< of the ingot, measured
  std::string measured_how;          ///< by whom or how; empty: not noted
  std::optional<Share> carbon_from_charge;
  std::vector<int> photos;
};

/// Everything between the supplier and the blade, as flat lists; `blade_piece` is where to begin.
struct SteelTrail {
  std::vector<Lot> lots;
  std::vector<Piece> pieces;
  std::vector<Billet> billets;
  std::vector<Melt> melts;
  std::optional<PieceTag> blade_piece;  ///< none: the blade is tied to no piece
};

}  // namespace tangmark::certificate
