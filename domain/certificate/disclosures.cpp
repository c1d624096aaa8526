// SPDX-License-Identifier: MIT
#include "domain/certificate/disclosures.h"

#include <algorithm>

#include "domain/certificate/claims_hardness.h"
#include "domain/certificate/claims_steel.h"
#include "domain/certificate/dossier_words.h"
#include "domain/certificate/phrasing.h"

namespace tangmark::certificate {
namespace {

using Told = std::vector<Disclosure>;

void tell(Told& told, DisclosureKind kind, std::string text) {
  told.push_back({kind, std::move(text), {}, {}});
}

std::string decision_text(Decision decision) {
  switch (decision) {
    case Decision::open:
      return "not decided";
    case Decision::no_fault:
      return "judged no fault";
    case Decision::removed:
      return "removed";
    case Decision::closed:
      return "closed, still there";
    case Decision::left_disclosed:
      return "left as it is";
    case Decision::done_again:
      return "the work was done again";
    case Decision::scrapped:
      return "scrap";
  }
  return {};
}

std::string finding_text(const Finding& finding, const Manner& manner) {
  std::string text = capital(std::string(word_of(finding.kind)));
  if (finding.size) text += ", " + to_text(*finding.size, manner.length);
  if (!finding.place.empty()) text += ", " + finding.place;
  if (!finding.what.empty()) text += ": " + finding.what;
  text += "; " + decision_text(finding.decision);
  if (!finding.how.empty()) text += ": " + finding.how;
  text += ".";
  if (finding.seen) text += " Seen on " + to_text(manner.zone.date_of(*finding.seen)) + ".";
  if (finding.reaches_edge) text += " It reaches the edge: not for use as a cutting tool.";
  if (finding.buyer_accepted)
    text += " The buyer accepted it on " + to_text(*finding.buyer_accepted) + ".";
  if (finding.photo) text += " See picture " + std::to_string(*finding.photo) + ".";
  return text;
}

void findings(const BladeCase& blade, Told& told) {
  for (const Finding& finding : blade.dossier.findings)
    if (must_be_told(finding))
      told.push_back({DisclosureKind::finding, finding_text(finding, blade.dossier.manner),
                      finding.number, finding.photo});
}

void heats(const BladeCase& blade, Told& told) {
  const auto& hardenings = blade.heats.hardenings();
  if (hardenings.empty()) return;
  const Hardening& now = hardenings.back();
  if (hardenings.size() > 1)
    tell(told, DisclosureKind::hardened_again,
         "Hardened " + times_text(static_cast<int>(hardenings.size())) +
             "; heat treatment and hardness stated are those of the last.");
  const int tempers = static_cast<int>(now.temper_entries.size());
  if (tempers > std::max(blade.dossier.tempers_planned, 1))
    tell(told, DisclosureKind::tempered_again,
         "Tempered " + times_text(tempers) + "; the route planned " +
             times_text(std::max(blade.dossier.tempers_planned, 1)) + ".");
  if (now.straightened > 0)
    tell(told, DisclosureKind::straightened,
         "Straightened after hardening " + times_text(now.straightened) + ".");
}

void other_hands(const BladeCase& blade, Told& told) {
  for (const OutsideWork& work : blade.dossier.outside)
    tell(told, DisclosureKind::work_by_others,
         "Work by others: " + (work.what.empty() ? "not named" : work.what) + ", by " +
             (work.by.empty() ? "an outside service whose name is not on record" : work.by) + ".");
  for (const std::string& name : outside_names(blade.heats.live()))
    tell(told, DisclosureKind::work_by_others,
         "Work by others: steps of the bench log, by " + name + ".");
  for (const BilletUse& use : blade.trail.billets())
    for (const WeldStage& stage : use.billet->stages)
      if (stage.hand.outside()) {
        tell(told, DisclosureKind::work_by_others,
             "Work by others: billet " + use.billet->tag.text + ", by " + hand_name(stage.hand) +
                 ".");
        break;
      }
  for (const Source& source : blade.trail.sources()) {
    if (source.melt && source.melt->hand.outside())
      tell(told, DisclosureKind::work_by_others,
           "Work by others: melt " + source.melt->tag.text + ", by " +
               hand_name(source.melt->hand) + ".");
    if (source.lot && source.lot->sold_as != SoldAs::one_steel)
      tell(told, DisclosureKind::work_by_others,
           "Work by others: " + lot_name(*source.lot) + " was bought ready welded" +
               (source.lot->supplier.empty() ? "." : " from " + source.lot->supplier + "."));
    if (source.lot && source.lot->owner == Owner::customer)
      tell(told, DisclosureKind::customers_material,
           "The steel of " + lot_name(*source.lot) + " was brought by the customer.");
  }
}

// "normalize 3 times and harden".
std::vector<std::string> entered_later(const BladeCase& blade) {
  std::vector<std::pair<std::string, int>> counts;
  for (const BenchEntry* entry : blade.heats.live()) {
    if (entry->logged != Logged::later) continue;
    const std::string name = operation_text(*entry);
    const auto known = std::find_if(counts.begin(), counts.end(),
                                    [&](const auto& one) { return one.first == name; });
    if (known == counts.end())
      counts.emplace_back(name, 1);
    else
      ++known->second;
  }
  std::vector<std::string> names;
  for (const auto& [name, count] : counts)
    names.push_back(count == 1 ? name : name + " " + times_text(count));
  return names;
}

void weak_links(const BladeCase& blade, Told& told) {
  for (const Piece* piece : blade.trail.pieces()) {
    if (piece->identity == Identity::kept) continue;
    std::string text = "Piece " + piece->tag.text + " was for a time without mark or tag";
    if (piece->identity == Identity::gap_closed_by_test) text += "; answered by a test";
    if (piece->identity_note) text += ": " + *piece->identity_note;
    tell(told, DisclosureKind::identity_gap, text + ".");
  }
  const std::vector<std::string> later = entered_later(blade);
  if (!later.empty())
    tell(told, DisclosureKind::entered_later,
         "Entered later, with estimated times: " + listed(later) + ".");
  if (!holds(judge_hardness(blade)) && blade.dossier.expected_hrc_low)
    tell(told, DisclosureKind::estimate, "The hardness given is an estimate, not a measurement.");
  for (const Source& source : blade.trail.sources())
    if (source.melt && !source.melt->analysis && source.melt->carbon_from_charge)
      tell(told, DisclosureKind::estimate,
           "The carbon of melt " + source.melt->tag.text + " is an estimate from its charge.");
}

std::string watch_text(const HandleMaterial& material, const Dossier& dossier) {
  const std::string name = material.species.value_or(material.material);
  std::string text = capital(material.material) + " (" + name + "): ";
  text += material.watch == TreatyWatch::look_alike
              ? "taken for a species under the CITES treaty"
              : "under the CITES treaty, " + std::string(word_of(material.watch));
  if (material.watch_list_date) text += ", list of " + to_text(*material.watch_list_date);
  text += material.papers.empty() ? "; no papers on file."
                                  : "; papers on file: " + listed(material.papers) + ".";
  const bool abroad = dossier.destination_country && dossier.home_country &&
                      *dossier.destination_country != *dossier.home_country;
  text += abroad ? " It goes to " + *dossier.destination_country +
                       ": papers to be checked before sending."
                 : " Not to be carried abroad without checking.";
  return text;
}

void handle(const BladeCase& blade, Told& told) {
  for (const HandleMaterial& material : blade.dossier.handle) {
    const std::string name = capital(material.material);
    if (material.watch != TreatyWatch::none)
      tell(told, DisclosureKind::species, watch_text(material, blade.dossier));
    else if (material.natural && !material.species)
      tell(told, DisclosureKind::species, name + ": species not on record.");
    if (!material.treatments.empty())
      tell(told, DisclosureKind::treatment, name + ": " + listed(material.treatments) + ".");
    if (!material.health_notes.empty())
      tell(told, DisclosureKind::health, name + ": " + listed(material.health_notes) + ".");
  }
}

// The most of an element that a lot surely has, or the least, by analysis or limits.
enum class End { least, most };
std::optional<Share> amount(const Lot& lot, const std::string& element, End end) {
  if (lot.analysis && lot.analysis->contains(element)) return lot.analysis->at(element);
  if (!lot.facts || !lot.facts->limits.contains(element)) return std::nullopt;
  const ElementLimits& limits = lot.facts->limits.at(element);
  return end == End::least ? limits.lo : limits.hi;
}

void steel_itself(const BladeCase& blade, Told& told) {
  if (stainless(blade) == false)
    tell(told, DisclosureKind::rusts, "This steel rusts. Keep it dry.");
  for (const Source& source : blade.trail.sources()) {
    if (!source.lot) continue;
    const auto nickel = amount(*source.lot, "Ni", End::least);
    if (nickel && *nickel >= Share::millionths(5000))
      tell(told, DisclosureKind::nickel,
           "Contains nickel: " + source_name(source) + ", " + percent_figure(*nickel) +
               (source.lot->analysis && source.lot->analysis->contains("Ni")
                    ? " % by its analysis."
                    : " % or more by its grade."));
  }
  for (const std::string& coat : blade.dossier.finish)
    tell(told, DisclosureKind::finish, "Finish: " + coat + ".");
}

void order(const BladeCase& blade, Told& told) {
  const OrderCompared& order = blade.dossier.order;
  if (order.ordered_grade) {
    const auto& sources = blade.trail.sources();
    const bool used = std::any_of(sources.begin(), sources.end(), [&](const Source& source) {
      return source.lot && sold_name(*source.lot) == *order.ordered_grade;
    });
    if (!used)
      tell(told, DisclosureKind::other_than_ordered,
           "Ordered in " + *order.ordered_grade + ", made in another steel.");
  }
  std::vector<std::string> outside;
  for (const HardnessReading* reading : readings_that_count(blade)) {
    const bool soft = order.aim_low_tenths && reading->tenths < *order.aim_low_tenths;
    const bool hard = order.aim_high_tenths && reading->tenths > *order.aim_high_tenths;
    if (reading->scale == HardnessScale::hrc && (soft || hard))
      outside.push_back(tenths_text(reading->tenths) + " HRC " +
                        (reading->place.starts_with("near") ? "" : "at ") + reading->place);
  }
  if (!outside.empty())
    tell(told, DisclosureKind::other_than_ordered,
         "Hardness outside the aim of the order: " + listed(outside) + ".");
  for (const std::string& difference : order.differences)
    tell(told, DisclosureKind::other_than_ordered, "Other than ordered: " + difference + ".");
}

void corrections(const BladeCase& blade, Told& told) {
  for (const Correction& one : log_corrections(blade.dossier))
    tell(told, DisclosureKind::corrected, correction_text(one));
  for (const Correction& one : blade.dossier.corrections)
    tell(told, DisclosureKind::corrected, correction_text(one));
}

}  // namespace

bool must_be_told(const Finding& finding) {
  if (finding.superseded) return false;
  switch (finding.kind) {
    case FindingKind::pattern_layers:
    case FindingKind::pattern_carbides:
    case FindingKind::no_pattern:
    case FindingKind::hamon_seen:
    case FindingKind::warp:
    case FindingKind::other:
      return finding.affects_blade;
    case FindingKind::crack:
    case FindingKind::delamination:
      return true;
    default:
      return finding.affects_blade || finding.decision != Decision::no_fault;
  }
}

std::optional<bool> stainless(const BladeCase& blade) {
  const Share enough = Share::millionths(105'000);
  bool all = blade.trail.leads_somewhere();
  for (const Source& source : blade.trail.sources()) {
    if (!source.lot) return std::nullopt;
    const auto least = amount(*source.lot, "Cr", End::least);
    const auto most = amount(*source.lot, "Cr", End::most);
    const bool has_limits = source.lot->facts && !source.lot->facts->limits.empty();
    if (least && *least >= enough) continue;
    if ((most && *most < enough) || (has_limits && !most)) return false;
    all = false;
  }
  if (all) return true;
  return std::nullopt;
}

std::vector<Disclosure> disclosures(const BladeCase& blade) {
  Told told;
  findings(blade, told);
  heats(blade, told);
  other_hands(blade, told);
  weak_links(blade, told);
  handle(blade, told);
  order(blade, told);
  steel_itself(blade, told);
  corrections(blade, told);
  return told;
}

}  // namespace tangmark::certificate
