// SPDX-License-Identifier: MIT
// Every claim of the claim table both ways: made where the record bears it, and not made when any
// one piece of what it rests on is missing or says otherwise. What each claim rests on is written
// here from the evidence table of the design. A claim without its case fails.
#include <catch2/catch.hpp>

#include "both_ways.h"

using namespace tangmark;
using namespace tangmark::certificate;
using namespace tangmark::certificate::sample;

namespace {

const BothWays* case_of(const std::vector<BothWays>& all, Claim claim) {
  for (const BothWays& one : all)
    if (one.claim == claim) return &one;
  return nullptr;
}

// Whether a blade states the claim as something proven, not as unknown.
bool claims(const Dossier& d, Claim claim) {
  const CertificateDraft draft = compose(d);
  const Statement* made = statement(draft, claim);
  return made && (claim != Claim::hardness || made->level != Level::e);
}

}  // namespace

TEST_CASE("every claim has its case both ways, with evidence to take away") {
  const auto all = both_ways();
  for (const Claim claim : all_claims) {
    INFO(claim_id(claim));
    const BothWays* found = case_of(all, claim);
    REQUIRE(found);
    CHECK_FALSE(found->withouts.empty());
  }
  CHECK(all.size() >= all_claims.size());
}

TEST_CASE("a claim is made when it is proven, and is then no reason to stop the issue") {
  for (const BothWays& one : both_ways()) {
    INFO(claim_id(one.claim) << " of " << one.name);
    CHECK(claims(one.proven, one.claim));
    const CertificateDraft draft = asked(one.proven, one.claim);
    CHECK_FALSE(missing(draft, one.claim));
    CHECK(draft.may_issue());
  }
}

TEST_CASE("a claim is not made when one piece of its evidence is missing or says otherwise") {
  int records = 0;
  for (const BothWays& one : both_ways())
    for (const Without& without : one.withouts) {
      INFO(claim_id(one.claim) << " of " << one.name << ": " << without.what);
      Dossier d = one.proven;
      without.take(d);
      ++records;
      CHECK_FALSE(claims(d, one.claim));
      const CertificateDraft draft = asked(d, one.claim);
      const Missing* lacking = missing(draft, one.claim);
      REQUIRE(lacking);
      CHECK_FALSE(lacking->needs.empty());
      CHECK_FALSE(draft.may_issue());
    }
  CHECK(records >= 90);
}
