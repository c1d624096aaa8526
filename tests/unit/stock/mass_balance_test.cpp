// SPDX-License-Identifier: MIT
#include "domain/stock/mass_balance.h"

#include <catch2/catch.hpp>

using namespace tangmark;
using namespace tangmark::stock;

namespace {

MassBalance grams(std::int64_t in, std::int64_t out, std::int64_t crop = 0, std::int64_t scale = 0,
                  std::int64_t swarf = 0) {
  return {Mass::grams(in), Mass::grams(out), Mass::grams(crop), Mass::grams(scale),
          Mass::grams(swarf)};
}

constexpr Share five_percent = Share::percent(5);

}  // namespace

TEST_CASE("catch 2: more mass out than in asks") {
  const auto caught = mass_at_cut(grams(500, 503), five_percent, MassUnit::gram);
  REQUIRE(caught.size() == 1);
  CHECK(caught[0].number == 2);
  CHECK(caught[0].weight == Weight::ask);
  CHECK(caught[0].sentence.find("3 g too much") != std::string::npos);
}

TEST_CASE("catch 2: an unexplained gap is always shown, and asks beyond the shop's tolerance") {
  CHECK(mass_at_cut(grams(500, 490, 0, 0, 10), five_percent, MassUnit::gram).empty());
  const auto small = mass_at_cut(grams(500, 480, 0, 0, 10), five_percent, MassUnit::gram);
  REQUIRE(small.size() == 1);
  CHECK(small[0].weight == Weight::remark);
  CHECK(small[0].sentence == "10 g of 500 g is unexplained.");
  const auto large = mass_at_cut(grams(500, 464, 0, 0, 10), five_percent, MassUnit::gram);
  REQUIRE(large.size() == 1);
  CHECK(large[0].weight == Weight::ask);
}

TEST_CASE("a gap of exactly the tolerance is a remark") {
  const auto caught = mass_at_cut(grams(500, 475), five_percent, MassUnit::gram);
  REQUIRE(caught.size() == 1);
  CHECK(caught[0].weight == Weight::remark);
}

TEST_CASE("catch 2: a loss beyond the range of the stage asks even when all of it is explained") {
  CHECK(mass_at_stage(StageWork::weld, grams(1000, 900, 0, 60, 40), five_percent, MassUnit::gram)
            .empty());
  const auto caught =
      mass_at_stage(StageWork::weld, grams(1000, 800, 0, 150, 50), five_percent, MassUnit::gram);
  REQUIRE(caught.size() == 1);
  CHECK(caught[0].weight == Weight::ask);
  CHECK(caught[0].sentence.find("weld usually costs") != std::string::npos);
}

TEST_CASE("a crop is deliberate and no loss of the stage") {
  CHECK(
      mass_at_stage(StageWork::crop, grams(1000, 700, 300), five_percent, MassUnit::gram).empty());
}

TEST_CASE("catch 2: an ingot heavier than its charge asks") {
  CHECK_FALSE(mass_at_melt(Mass::grams(1600), Mass::grams(1520), MassUnit::gram));
  const auto caught = mass_at_melt(Mass::grams(1600), Mass::grams(1601), MassUnit::gram);
  REQUIRE(caught);
  CHECK(caught->weight == Weight::ask);
}

TEST_CASE("every stage of a billet has a usual loss") {
  for (const auto& [work, word] : trade_words<StageWork>)
    CHECK((usual_loss_at_most(work) > Share() && usual_loss_at_most(work) < Share::percent(50)));
}
