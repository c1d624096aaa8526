// SPDX-License-Identifier: MIT
#include "domain/costing/mass_from_bar.h"

#include <catch2/catch.hpp>

using namespace tangmark;
using namespace tangmark::costing;

namespace {
BarCut a_cut() {
  BarCut cut;
  cut.blank_length = Length::millimetres(300);
  cut.section = FlatSection{Length::millimetres(25), Length::millimetres(4)};
  return cut;
}
}  // namespace

TEST_CASE("a plain cut takes the blank and nothing else") {
  // 25 x 4 x 300 mm at 7850 kg/m3 = 235.5 g.
  const auto m = mass_from_bar(a_cut());
  REQUIRE(m.ok());
  CHECK(m->blank.in_grams() == Approx(235.5));
  CHECK(m->total == m->blank);
  CHECK(m->rule == "One kerf of 0 mm for each blank; the rest of the bar stays on the rack.");
}

TEST_CASE("yield and kerf are paid by the blank") {
  BarCut cut = a_cut();
  cut.yield = Share::percent(80);
  cut.kerf = Length::millimetres(2);
  const auto m = mass_from_bar(cut);
  CHECK((m->blank + m->yield_loss).in_grams() == Approx(235.5 / 0.8));
  CHECK(m->kerf.in_grams() == Approx(25 * 4 * 2 * 7850e-6));
  CHECK(m->total == m->blank + m->yield_loss + m->kerf);
}

TEST_CASE("a rest too short to keep is shared by the blanks of the bar") {
  BarCut cut = a_cut();
  cut.kerf = Length::millimetres(2);
  cut.bar = WholeBar{Length::millimetres(1000), Length::millimetres(150)};
  // Three blanks need 3 x 300 + 2 x 2; what is left is 1000 - 3 x 302 = 94 mm, below 150.
  const auto m = mass_from_bar(cut);
  CHECK(m->blanks_per_bar == 3);
  CHECK(m->rest.in_grams() == Approx(94.0 / 3 * 25 * 4 * 7850e-6));
  cut.bar->keep = Length::millimetres(94);
  CHECK(mass_from_bar(cut)->rest == Mass{});
}

TEST_CASE("the last blank of a bar needs no kerf behind it") {
  BarCut cut = a_cut();
  cut.kerf = Length::millimetres(2);
  cut.bar = WholeBar{Length::millimetres(602), Length::millimetres(150)};
  CHECK(mass_from_bar(cut)->blanks_per_bar == 2);
  CHECK(mass_from_bar(cut)->rest == Mass{});
  cut.bar->length = Length::millimetres(601);
  CHECK(mass_from_bar(cut)->blanks_per_bar == 1);
}

TEST_CASE("a blank longer than its bar and absurd figures are refused by their field") {
  BarCut cut = a_cut();
  cut.bar = WholeBar{Length::millimetres(250), Length{}};
  CHECK(mass_from_bar(cut).problem().field == "bar length");
  cut = a_cut();
  cut.yield = Share{};
  CHECK(mass_from_bar(cut).problem().field == "yield");
  cut = a_cut();
  cut.blank_length = Length{};
  cut.section = RoundSection{};
  CHECK(mass_from_bar(cut).problems().size() == 2);
}

TEST_CASE("a long blank from round bar does not overflow") {
  BarCut cut = a_cut();
  cut.blank_length = Length::millimetres(12'000);
  cut.section = RoundSection{Length::millimetres(20)};
  cut.yield = Share::millionths(500'001);
  const auto m = mass_from_bar(cut);
  CHECK((m->blank + m->yield_loss).in_kilograms() / m->blank.in_kilograms() ==
        Approx(1 / 0.500001));
}
