// SPDX-License-Identifier: MIT
#include "domain/certificate/judge.h"

#include <array>
#include <cassert>

#include "domain/certificate/claims_construction.h"
#include "domain/certificate/claims_handle.h"
#include "domain/certificate/claims_hardness.h"
#include "domain/certificate/claims_heat.h"
#include "domain/certificate/claims_melt.h"
#include "domain/certificate/claims_pattern.h"
#include "domain/certificate/claims_shape.h"
#include "domain/certificate/claims_steel.h"

namespace tangmark::certificate {

namespace {

struct Judge {
  Claim claim;
  Judgement (*judge)(const BladeCase&);
};

constexpr std::array judges = {
    Judge{Claim::grade, judge_grade},
    Judge{Claim::analysis, judge_analysis},
    Judge{Claim::pattern_welded, judge_pattern_welded},
    Judge{Claim::pattern_welded_bought, judge_pattern_welded_bought},
    Judge{Claim::crucible, judge_crucible},
    Judge{Claim::wootz, judge_wootz},
    Judge{Claim::carbide_banded, judge_carbide_banded},
    Judge{Claim::laminated, judge_laminated},
    Judge{Claim::hamon, judge_hamon},
    Judge{Claim::differential, judge_differential},
    Judge{Claim::hardness, judge_hardness},
    Judge{Claim::heat_treatment, judge_heat_treatment},
    Judge{Claim::forged, judge_forged},
    Judge{Claim::stock_removal, judge_stock_removal},
    Judge{Claim::outside_work, judge_outside_work},
    Judge{Claim::sole_author, judge_sole_author},
    Judge{Claim::layers, judge_layers},
    Judge{Claim::sub_zero, judge_sub_zero},
    Judge{Claim::smelted, judge_smelted},
    Judge{Claim::etched_image, judge_etched_image},
    Judge{Claim::handle_species, judge_handle_species},
    Judge{Claim::unidentified, judge_unidentified},
};
static_assert(judges.size() == all_claims.size(), "every claim has its judge");

}  // namespace

Judgement judge(const BladeCase& blade, Claim claim) {
  for (const Judge& one : judges)
    if (one.claim == claim) return one.judge(blade);
  assert(false && "every claim has its judge");
  return Missing{claim, {}};
}

Judgements judge_all(const BladeCase& blade) {
  Judgements judgements;
  for (Claim claim : all_claims) judgements.emplace(claim, judge(blade, claim));
  return judgements;
}

}  // namespace tangmark::certificate
