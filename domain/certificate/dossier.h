// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "domain/certificate/bench_entry.h"
#include "domain/certificate/claim.h"
#include "domain/certificate/correction.h"
#include "domain/certificate/observation.h"
#include "domain/certificate/steel_trail.h"

namespace tangmark::certificate {

/// Treaty listing of a handle material. `look_alike` is not listed but taken for a listed one.
/// The list is the shop's and carries a date; it prompts and gives no verdict.
enum class TreatyWatch { none, appendix_1, appendix_2, appendix_3, look_alike };

/// How a handle material's identity is known.
enum class SpeciesEvidence { not_known, suppliers_word, label, document, laboratory };

/// One material of handle, fittings or sheath.
struct HandleMaterial {
  std::string part;                    ///< "scales", "bolster"
  std::string material;                ///< "bog oak"
  bool natural = false;                ///< wood, horn, bone: a species is owed
  std::optional<std::string> species;  ///< Latin name
  SpeciesEvidence evidence = SpeciesEvidence::not_known;
  std::optional<std::string> source;  ///< supplier, place, owner
  std::vector<std::string> papers;    ///< "CITES import permit 1234"
  TreatyWatch watch = TreatyWatch::none;
  std::optional<CalendarDate> watch_list_date;
  std::vector<std::string> treatments;    ///< "stabilised with resin", "pores filled"
  std::vector<std::string> health_notes;  ///< "contains beryllium"
};

enum class OutsideKind {
  billet,
  heat_treatment,
  blank_cutting,
  grinding,
  handle,
  sheath,
  engraving,
  other,
};

/// Work done elsewhere on this blade or on a part that goes with it.
struct OutsideWork {
  OutsideKind kind = OutsideKind::other;
  std::string what;  ///< "hardened and tempered"
  std::string by;    ///< as named on the certificate; empty: not recorded
  std::optional<CalendarDate> sent;
  std::optional<CalendarDate> back;
  bool slip_on_file = false;
  std::string their_words;  ///< from their slip
};

/// What the commission asked for, where the blade turned out otherwise.
struct OrderCompared {
  std::optional<std::string> ordered_grade;
  std::optional<int> aim_low_tenths;  ///< tenths of HRC
  std::optional<int> aim_high_tenths;
  std::vector<std::string> differences;  ///< "blade 4 mm shorter than drawn, agreed 3 May"
};

/// Words the maker typed that would print.
struct FreeText {
  std::string where;  ///< "title", "notes", "care"
  std::string text;
};

struct Photo {
  int number = 0;
  std::string shows;
  std::string sha256;  ///< lower-case hex, as stored
};

struct BladeSize {
  std::optional<Length> edge_length;
  std::optional<Length> height;
  std::optional<Length> thickness;
  std::optional<Length> behind_edge;
  std::optional<Mass> knife_mass;
};

/// How the shop likes figures to be written, and the zone of its wall clock.
struct Manner {
  TemperatureUnit temperature = TemperatureUnit::celsius;
  LengthUnit length = LengthUnit::millimetre;
  MassUnit mass = MassUnit::gram;
  Zone zone;
};

/// Everything the shop's record says about one blade, gathered by the store. Nothing in it is a
/// statement yet: compose() decides what may be said. A missing fact is an empty optional or list.
struct Dossier {
  int blade = 0;      ///< blade number
  std::string title;  ///< "Chef's knife in two steels"; read against the lexicon
  std::string item;   ///< kind of thing: "chef's knife"
  std::string maker;
  std::string shop;
  std::optional<std::string> buyer;  ///< printed only when the buyer asked for it
  Manner manner;

  SteelTrail steel;
  std::vector<BenchEntry> log;  ///< all entries, superseded ones too, in the order of the work
  std::vector<HardnessReading> hardness;
  std::optional<int> expected_hrc_low;  ///< an estimate in tenths of HRC, labelled as such
  std::optional<int> expected_hrc_high;
  std::string expected_hrc_source;
  std::vector<Finding> findings;
  std::vector<HandleMaterial> handle;
  std::vector<OutsideWork> outside;
  int tempers_planned = 2;                         ///< from the route
  std::vector<Operation> route_still_open;         ///< planned steps with no entry
  std::optional<std::string> home_country;         ///< ISO 3166 two letters
  std::optional<std::string> destination_country;  ///< the same
  OrderCompared order;
  BladeSize size;
  std::vector<Photo> photos;
  std::vector<std::string> finish;   ///< coatings, patina, oil
  std::vector<Correction> corrections;  ///< outside the bench log; those in it are found there
  std::vector<FreeText> free_texts;  ///< notes, care; the title is read as well
  std::vector<Claim> requested;      ///< claims the maker asks for beyond what the record gives
  std::optional<std::string> chosen_name;  ///< one of the truthful names, see pattern_name.h
};

}  // namespace tangmark::certificate
