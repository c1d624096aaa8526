// SPDX-License-Identifier: MIT
#include "domain/certificate/judge.h"

#include "domain/certificate/claims_construction.h"
#include "domain/certificate/claims_handle.h"
#include "domain/certificate/claims_hardness.h"
#include "domain/certificate/claims_heat.h"
#include "domain/certificate/claims_melt.h"
#include "domain/certificate/claims_pattern.h"
#include "domain/certificate/claims_shape.h"
#include "domain/certificate/claims_steel.h"

namespace tangmark::certificate {

Judgement judge(const BladeCase& blade, Claim claim) {
  switch (claim) {
    case Claim::grade:
      return judge_grade(blade);
    case Claim::analysis:
      return judge_analysis(blade);
    case Claim::pattern_welded:
      return judge_pattern_welded(blade);
    case Claim::pattern_welded_bought:
      return judge_pattern_welded_bought(blade);
    case Claim::crucible:
      return judge_crucible(blade);
    case Claim::wootz:
      return judge_wootz(blade);
    case Claim::carbide_banded:
      return judge_carbide_banded(blade);
    case Claim::laminated:
      return judge_laminated(blade);
    case Claim::hamon:
      return judge_hamon(blade);
    case Claim::differential:
      return judge_differential(blade);
    case Claim::hardness:
      return judge_hardness(blade);
    case Claim::heat_treatment:
      return judge_heat_treatment(blade);
    case Claim::forged:
      return judge_forged(blade);
    case Claim::stock_removal:
      return judge_stock_removal(blade);
    case Claim::outside_work:
      return judge_outside_work(blade);
    case Claim::sole_author:
      return judge_sole_author(blade);
    case Claim::layers:
      return judge_layers(blade);
    case Claim::sub_zero:
      return judge_sub_zero(blade);
    case Claim::smelted:
      return judge_smelted(blade);
    case Claim::etched_image:
      return judge_etched_image(blade);
    case Claim::handle_species:
      return judge_handle_species(blade);
    case Claim::unidentified:
      return judge_unidentified(blade);
  }
  return Missing{claim, {"a claim that this program knows"}};
}

Judgements judge_all(const BladeCase& blade) {
  Judgements judgements;
  for (Claim claim : all_claims) judgements.emplace(claim, judge(blade, claim));
  return judgements;
}

}  // namespace tangmark::certificate
