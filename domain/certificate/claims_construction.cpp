// SPDX-License-Identifier: MIT
#include "domain/certificate/claims_construction.h"

#include <algorithm>

#include "domain/certificate/claims_steel.h"
#include "domain/certificate/layer_count.h"
#include "domain/certificate/phrasing.h"

namespace tangmark::certificate {
namespace {

std::string billet_name(const Billet& billet) {
  return "billet " + billet.tag.text;
}

std::vector<std::string> outside_smiths(const Billet& billet) {
  std::vector<std::string> names;
  for (const WeldStage& stage : billet.stages) {
    if (!stage.hand.outside()) continue;
    const std::string name = hand_name(stage.hand);
    if (std::find(names.begin(), names.end(), name) == names.end()) names.push_back(name);
  }
  return names;
}

// The steels that went into a billet in one of these roles, each once, billets inside it included.
std::vector<Source> steels_of(const BladeCase& blade, const Billet& billet, Role role) {
  std::vector<Source> steels;
  for (const WeldStage& stage : billet.stages)
    for (const StackPart& part : stage.parts) {
      if (part.role != role) continue;
      const Trail trail(blade.dossier.steel, part.piece);
      for (const Source& source : trail.sources())
        if (std::none_of(steels.begin(), steels.end(), [&](const Source& known) {
              return known.lot == source.lot && known.melt == source.melt;
            }))
          steels.push_back(source);
    }
  return steels;
}

std::string names_of(const std::vector<Source>& steels) {
  std::vector<std::string> names;
  for (const Source& steel : steels) names.push_back(source_name(steel));
  return listed(names);
}

// The billet in which layers of at least two steels meet; nullptr for none.
const BilletUse* layered_billet(const BladeCase& blade) {
  for (const BilletUse& use : blade.trail.billets())
    if (steels_of(blade, *use.billet, Role::layer).size() > 1) return &use;
  return nullptr;
}

const BilletUse* cored_billet(const BladeCase& blade) {
  for (const BilletUse& use : blade.trail.billets())
    if (!steels_of(blade, *use.billet, Role::core).empty() &&
        !steels_of(blade, *use.billet, Role::cladding).empty())
      return &use;
  return nullptr;
}

std::vector<Evidence> billet_evidence(const Billet& billet) {
  std::vector<Evidence> evidence = {stage_evidence(billet)};
  if (!billet.photos.empty())
    evidence.push_back(
        {EvidenceKind::photograph,
         counted(static_cast<long long>(billet.photos.size()), "picture of ", "pictures of ") +
             billet_name(billet)});
  return evidence;
}

// What every claim on a billet needs before it may be made.
void need_sound_billet(const BladeCase& blade, const BilletUse& use, Needs& needs) {
  const std::string name = billet_name(*use.billet);
  needs.lacking(use.open_gaps > 0,
                "an unbroken record of the pieces from " + name + " to this blade");
  needs.lacking(!blade.trail.breaks().empty(), "a trail without breaks");
  needs.lacking(!welds_closed(blade, *use.billet),
                "a forge-weld entry for every stack, fold and cut of " + name);
}

const Source* bought_as(const BladeCase& blade, SoldAs sold_as) {
  for (const Source& source : blade.trail.sources())
    if (source.lot && source.lot->sold_as == sold_as) return &source;
  return nullptr;
}

EvidenceKind purchase_kind(const Lot& lot) {
  switch (lot.document) {
    case SupplyDocument::none:
      return EvidenceKind::nothing_on_file;
    case SupplyDocument::suppliers_word:
      return EvidenceKind::suppliers_word;
    case SupplyDocument::type_2_1:
      return EvidenceKind::compliance_declaration;
    case SupplyDocument::type_2_2:
      return EvidenceKind::test_report;
    // An inspection document speaks of the steels; nobody inspected the stacking.
    default:
      return EvidenceKind::supplier_label;
  }
}

std::string as_stated(const Lot& lot) {
  std::vector<std::string> stated;
  if (lot.stated_layers) stated.push_back(std::to_string(*lot.stated_layers) + " layers");
  if (const std::string steels = sold_name(lot); !steels.empty()) stated.push_back("of " + steels);
  if (lot.stated_maker) stated.push_back("welded by " + *lot.stated_maker);
  if (stated.empty()) return "The supplier states neither layers nor steels nor who welded it.";
  std::string text = "As stated by the supplier: ";
  for (std::size_t i = 0; i < stated.size(); ++i) text += (i ? ", " : "") + stated[i];
  return text + ".";
}

std::vector<Evidence> purchase_evidence(const Source& bought) {
  return {{purchase_kind(*bought.lot), lot_name(*bought.lot)}, chain_evidence(bought)};
}

// Whether only melts of this shop's own record lack nothing else than the outside smith.
Judgement welded_outside(const BladeCase& blade, const BilletUse& use) {
  const Billet& billet = *use.billet;
  Needs needs;
  need_sound_billet(blade, use, needs);
  if (needs.any()) return needs.missing(Claim::pattern_welded_bought);
  std::vector<Evidence> evidence = {stage_evidence(billet)};
  const OutsideWork* work = outside_of(blade, OutsideKind::billet);
  evidence.push_back(
      {work && work->slip_on_file ? EvidenceKind::outside_slip : EvidenceKind::outside_word,
       listed(outside_smiths(billet))});
  return stated(Claim::pattern_welded_bought,
                "Pattern-welded of " + names_of(steels_of(blade, billet, Role::layer)) + "; " +
                    billet_name(billet) + " was welded by " + listed(outside_smiths(billet)) +
                    ", not by this shop.",
                evidence);
}

// Where the core comes out is only known when somebody looked.
std::string core_text(const BladeCase& blade) {
  const Finding* seen = finding_of(blade, FindingKind::pattern_layers);
  if (seen && (seen_after_etch(blade, *seen) || seen_after_polish(blade, *seen)))
    return "The border of the core was seen after etch or polish (finding " +
           std::to_string(seen->number) + ").";
  return "The core is laid to be the edge; where it comes out was not looked at.";
}

}  // namespace

bool welds_closed(const BladeCase& blade, const Billet& billet) {
  bool any = false;
  bool open = false;
  for (const WeldStage& stage : billet.stages) {
    const bool opens = stage.work == StageWork::stack || stage.work == StageWork::fold ||
                       stage.work == StageWork::cut;
    if (opens) open = true;
    if (stage.welded || stage.work == StageWork::weld) {
      open = false;
      any = true;
    }
  }
  return (any && !open) || blade.heats.logged(Operation::forge_weld);
}

Judgement judge_pattern_welded(const BladeCase& blade) {
  Needs needs;
  const BilletUse* use = layered_billet(blade);
  if (!use) {
    needs.lacking(blade.trail.billets().empty(),
                  "a billet of this shop, to which the blade is traced");
    needs.lacking(true, "at least two steels as layers of that billet");
    return needs.missing(Claim::pattern_welded);
  }
  const Billet& billet = *use->billet;
  need_sound_billet(blade, *use, needs);
  const std::vector<std::string> smiths = outside_smiths(billet);
  needs.lacking(!smiths.empty(), "stages of " + billet_name(billet) + " done by this shop; " +
                                     listed(smiths) + " did some");
  if (needs.any()) return needs.missing(Claim::pattern_welded);
  return stated(Claim::pattern_welded,
                "Pattern-welded by this shop of " +
                    names_of(steels_of(blade, billet, Role::layer)) + ", forge-welded as " +
                    billet_name(billet) + ".",
                billet_evidence(billet));
}

Judgement judge_pattern_welded_bought(const BladeCase& blade) {
  const Source* bought = bought_as(blade, SoldAs::pattern_welded);
  const BilletUse* use = layered_billet(blade);
  if (!bought && use && !outside_smiths(*use->billet).empty()) return welded_outside(blade, *use);
  Needs needs;
  needs.lacking(!bought, "a lot that was bought as pattern-welded, to which the blade is traced");
  needs.lacking(bought && bought->lot->supplier.empty(), "who sold the pattern-welded bar");
  needs.lacking(bought && bought->open_gaps > 0,
                "an unbroken record of the pieces from the bought bar to this blade");
  if (needs.any()) return needs.missing(Claim::pattern_welded_bought);
  return stated(Claim::pattern_welded_bought,
                "Made here from a pattern-welded bar bought as such from " + bought->lot->supplier +
                    " (" + lot_name(*bought->lot) + "), not welded by this shop. " +
                    as_stated(*bought->lot),
                purchase_evidence(*bought));
}

Judgement judge_laminated(const BladeCase& blade) {
  Needs needs;
  if (const BilletUse* use = cored_billet(blade)) {
    const Billet& billet = *use->billet;
    need_sound_billet(blade, *use, needs);
    if (needs.any()) return needs.missing(Claim::laminated);
    const std::vector<std::string> smiths = outside_smiths(billet);
    std::vector<Evidence> evidence = billet_evidence(billet);
    if (!smiths.empty()) evidence.push_back({EvidenceKind::outside_word, listed(smiths)});
    return stated(Claim::laminated,
                  "Laminated: a core of " + names_of(steels_of(blade, billet, Role::core)) +
                      " between outer layers of " +
                      names_of(steels_of(blade, billet, Role::cladding)) + ", welded " +
                      (smiths.empty() ? "by this shop" : "by " + listed(smiths)) +
                      ". " + core_text(blade),
                  evidence);
  }
  const Source* bought = bought_as(blade, SoldAs::laminated);
  needs.lacking(!bought, "a billet with core and cladding, or a lot bought as a laminated bar");
  needs.lacking(bought && bought->lot->supplier.empty(), "who sold the laminated bar");
  needs.lacking(bought && bought->open_gaps > 0,
                "an unbroken record of the pieces from the bought bar to this blade");
  if (needs.any()) return needs.missing(Claim::laminated);
  return stated(Claim::laminated,
                "Made here from a laminated bar bought as such from " + bought->lot->supplier +
                    " (" + lot_name(*bought->lot) + "), not welded by this shop. " +
                    as_stated(*bought->lot),
                purchase_evidence(*bought));
}

Judgement judge_layers(const BladeCase& blade) {
  Needs needs;
  if (blade.trail.billets().empty()) {
    needs.lacking(true, bought_as(blade, SoldAs::pattern_welded)
                            ? "the logged stack; the supplier's count may be quoted as stated"
                            : "a billet of this shop with its logged stack");
    return needs.missing(Claim::layers);
  }
  const BilletUse& use = blade.trail.billets().front();
  need_sound_billet(blade, use, needs);
  const Outcome<LayerCount> count = layer_count(blade.dossier.steel, *use.billet);
  for (const Problem& problem : count.problems()) needs.lacking(true, problem.sentence);
  needs.lacking(count && count->layers < 2, "a stack of more than one layer");
  if (needs.any()) return needs.missing(Claim::layers);
  std::vector<Evidence> evidence = {stage_evidence(*use.billet),
                                    {EvidenceKind::by_count_of_stacking, billet_name(*use.billet)}};
  const std::vector<std::string> smiths = outside_smiths(*use.billet);
  if (!smiths.empty()) evidence.push_back({EvidenceKind::outside_word, listed(smiths)});
  return stated(Claim::layers,
                std::to_string(count->layers) + " layers by count of stacking: " + count->how +
                    ". Layers were not counted on the blade.",
                evidence);
}

}  // namespace tangmark::certificate
