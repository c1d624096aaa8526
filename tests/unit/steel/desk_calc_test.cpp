// SPDX-License-Identifier: MIT
#include "domain/steel/desk_calc.h"

#include <catch2/catch.hpp>
#include <sstream>

#include "domain/costing/loss.h"

using namespace tangmark;
using namespace tangmark::steel;

namespace {

// "mass length_mm=300 ...": the name and the keys as they are typed.
Outcome<DeskAnswer> run(const std::string& line) {
  std::istringstream words(line);
  std::string name;
  std::string word;
  words >> name;
  std::vector<std::pair<std::string, std::string>> keys;
  while (words >> word) {
    const auto mark = word.find('=');
    keys.emplace_back(word.substr(0, mark), word.substr(mark + 1));
  }
  return run_desk_calculation(name, keys, GradeBook::published());
}

DeskValue answer(const std::string& line) {
  CAPTURE(line);
  const auto result = run(line);
  if (!result) FAIL(line + ": " + result.problem().field + ": " + result.problem().sentence);
  return DeskValue(result->fields);
}

double number(const std::string& line, std::string_view path) {
  DeskValue at = answer(line);
  while (!path.empty()) {
    const auto dot = std::min(path.find('.'), path.size());
    const DeskValue* next = at.find(path.substr(0, dot));
    if (!next) FAIL(line + " answers no such value");
    const DeskValue copy = *next;
    at = copy;
    path.remove_prefix(std::min(dot + 1, path.size()));
  }
  return at.number();
}

// The field that a refusal names.
std::string refused(const std::string& line) {
  const auto result = run(line);
  if (result) return "not refused";
  CHECK_FALSE(result.problem().sentence.empty());
  return result.problem().field;
}

}  // namespace

TEST_CASE("every computation of the desk names its keys, its source and its range") {
  for (const char* name :
       {"mass", "hardness", "temper", "critical", "ms", "hardenability", "phases", "carbon",
        "layers", "blend", "etchant", "fuel", "cooling", "loss", "price"}) {
    CAPTURE(name);
    const DeskCalculation* calculation = find_desk_calculation(name);
    REQUIRE(calculation);
    CHECK_FALSE(calculation->keys.empty());
    CHECK_FALSE(calculation->source.empty());
    CHECK_FALSE(calculation->range.empty());
  }
}

TEST_CASE("a bar's mass is its volume times its density") {
  CHECK(number("mass length_mm=300 width_mm=25 thickness_mm=4", "mass_kg") == Approx(0.2355));
  CHECK(number("mass length_mm=1000 diameter_mm=20", "mass_kg") == Approx(2.46615).epsilon(1e-5));
  CHECK(number("mass length_mm=1000 width_mm=10 thickness_mm=10 density_kg_m3=7810", "mass_kg") ==
        Approx(0.781));
  CHECK(refused("mass length_mm=300 width_mm=25") == "thickness_mm");
  CHECK(refused("mass length_mm=300 width_mm=25 thickness_mm=4 diameter_mm=4") == "diameter_mm");
  CHECK(refused("mass length_mm=-300 width_mm=25 thickness_mm=4") == "length_mm");
  CHECK(refused("mass length_mm=0 width_mm=25 thickness_mm=4") == "length_mm");
  CHECK(refused("mass length_mm=300 thickness_mm=4") == "width_mm");
  CHECK(refused("mass length_mm=300 width_mm=25 thickness_mm=4 density_kg_m3=7.85") ==
        "density_kg_m3");
}

TEST_CASE("hardness converts one way or the other, not both") {
  CHECK(number("hardness hrc=60", "hv") == 697);
  CHECK(number("hardness hv=697", "hrc") == 60);
  CHECK(refused("hardness hrc=60 hv=697") == "hv");
  CHECK(refused("hardness") == "hrc");
  CHECK(refused("hardness hrc=19") == "hrc");
  CHECK(refused("hardness hv=1000") == "hv");
}

TEST_CASE("two equal tempers count as one of their joint length") {
  CHECK(number("temper steps=204C/120min,204C/2h", "equivalent_min") == Approx(240));
  CHECK(number("temper steps=204C/7200s", "equivalent_min") == Approx(120));
  CHECK(number("temper steps=400F/2h", "parameter") ==
        Approx((400 - 32) / 1.8 * 20.30103 + 273.15 * 20.30103).epsilon(1e-6));
  const DeskValue both = answer("temper steps=200C/1h,220C/1h");
  CHECK(both.find("per_step")->list().size() == 2);
  CHECK(both.find("equivalent_min")->number() == Approx(60 * 1.154).epsilon(0.001));
  CHECK(both.find("parameter")->number() == Approx(9894).epsilon(0.0001));
  CHECK(refused("temper steps=204C") == "steps");
  CHECK(refused("temper steps=204/120min") == "steps");
  CHECK(refused("temper steps=204C/120") == "steps");
  CHECK(refused("temper steps=204C/0min") == "steps");
  CHECK(refused("temper steps=204C/-5min") == "steps");
  CHECK(refused("temper steps=204C/2h c=0") == "c");
  CHECK(refused("temper") == "steps");
}

TEST_CASE("there is no Ac3 above 0.76 % carbon, and the answer says why") {
  const DeskValue low = answer("critical composition=C:0.40,Mn:0.90,Si:0.25,Cr:1.00,Mo:0.20");
  CHECK(low.find("ac1_c")->number() == Approx(737.5).margin(0.1));
  CHECK(low.find("ac3_c")->number() == Approx(799.1).margin(0.1));
  CHECK_FALSE(low.find("reason"));
  const DeskValue high = answer("critical composition=C:0.95,Mn:0.40");
  CHECK(high.find("ac3_c")->is_nothing());
  CHECK_FALSE(high.find("reason")->words().empty());
  CHECK(high.find("ac1_c")->number() == Approx(718.72));
  CHECK_FALSE(answer("critical composition=C:0.76").find("ac3_c")->is_nothing());
  CHECK(refused("critical composition=Mn:0.9") == "composition");
  CHECK(refused("critical composition=nosuch") == "composition");
}

TEST_CASE("hardenability says what lies outside the method") {
  const DeskValue inside = answer("hardenability composition=C:0.60,Mn:0.88,Si:0.25,Cr:0.80");
  CHECK(inside.find("out_of_range")->list().empty());
  const DeskValue outside = answer("hardenability composition=C:0.84,Mn:0.75,Si:0.25");
  REQUIRE(outside.find("out_of_range")->list().size() == 1);
  CHECK(outside.find("out_of_range")->list()[0].words() == "C");
  CHECK(number("hardenability composition=C:0.84,Mn:0.75,Si:0.25", "di_mm") ==
        Approx(25.4 * number("hardenability composition=C:0.84,Mn:0.75,Si:0.25", "di_in")));
  CHECK(refused("hardenability composition=C:0.84 grain=0") == "grain");
}

TEST_CASE("the phases at, below and above the eutectoid") {
  CHECK(number("phases carbon_wt=0.35 temperature_c=727", "constituents.pearlite") ==
        Approx(0.4444).margin(0.0001));
  CHECK(number("phases carbon_wt=0.95 temperature_c=700", "constituents.proeutectoid_cementite") ==
        Approx(0.032).margin(0.0005));
  CHECK(number("phases carbon_wt=0.95 temperature_c=700", "phases.cementite") ==
        Approx(0.139).margin(0.0005));
  CHECK_FALSE(answer("phases carbon_wt=0.95 temperature_c=728").find("constituents"));
  CHECK(number("phases carbon_wt=0.5 temperature_c=1000", "phases.austenite") == 1);
  CHECK(number("phases carbon_wt=0 temperature_c=911", "phases.ferrite") == 1);
  CHECK(number("phases carbon_wt=0 temperature_c=912", "phases.austenite") == 1);
  CHECK(number("phases carbon_wt=2.14 temperature_c=1147", "phases.austenite") == 1);
  CHECK(number("phases carbon_wt=1.1 temperature_c=750C", "carbon_in.austenite") ==
        Approx(0.76 + 1.38 * 23 / 420));
  CHECK(number("phases carbon_wt=0.01 temperature_c=20", "constituents.proeutectoid_ferrite") == 1);
  CHECK(refused("phases carbon_wt=2.15 temperature_c=800") == "carbon_wt");
  CHECK(refused("phases carbon_wt=-0.1 temperature_c=800") == "carbon_wt");
  CHECK(refused("phases carbon_wt=1 temperature_c=1148") == "temperature_c");
}

TEST_CASE("phases always sum to one and hold all the carbon") {
  for (int carbon = 0; carbon <= 214; carbon += 3) {
    for (int c = 20; c <= 1147; c += 7) {
      const auto wt = std::to_string(carbon / 100.0);
      const DeskValue found =
          answer("phases carbon_wt=" + wt + " temperature_c=" + std::to_string(c));
      double sum = 0;
      double held = 0;
      for (const char* phase : {"ferrite", "austenite", "cementite"}) {
        const double share = found.find("phases")->find(phase)->number();
        CHECK((share >= 0 && share <= 1));
        sum += share;
        if (const DeskValue* in = found.find("carbon_in")->find(phase))
          held += share * in->number();
      }
      CAPTURE(carbon, c);
      CHECK(sum == Approx(1));
      CHECK(held == Approx(carbon / 100.0).margin(1e-9));
    }
  }
}

TEST_CASE("carbon below a surface follows the error function") {
  CHECK(number(
            "carbon surface_wt=1.2 initial_wt=0.25 diffusivity_m2_s=1.6e-11 hours=7.1 depth_mm=0.5",
            "carbon_wt") == Approx(0.80).margin(0.01));
  CHECK(number("carbon surface_wt=0 initial_wt=0.8 temperature_c=950 hours=60min depth_mm=0",
               "carbon_wt") == 0);
  CHECK(number("carbon surface_wt=1 initial_wt=0.2 temperature_c=950 hours=1 depth_mm=1",
               "diffusivity_m2_s") == Approx(1.10e-11).epsilon(0.005));
  CHECK(refused("carbon surface_wt=1 initial_wt=0.2 temperature_c=950 hours=1 depth_mm=-1") ==
        "depth_mm");
  CHECK(refused("carbon surface_wt=1 initial_wt=0.2 hours=1 depth_mm=1") == "temperature_c");
  CHECK(refused("carbon surface_wt=1 initial_wt=0.2 temperature_c=600 hours=1 depth_mm=1") ==
        "temperature_c");
}

TEST_CASE("layers double with a fold and multiply with a cut") {
  CHECK(number("layers start=7 operations=cut2,fold,cut3", "layers") == 84);
  CHECK(number("layers start=7", "layers") == 7);
  CHECK(number("layers start=25 operations=cut4 thickness=5", "thickness_mm") == Approx(0.05));
  CHECK(refused("layers start=0 operations=fold") == "start");
  CHECK(refused("layers start=2.5 operations=fold") == "start");
  CHECK(refused("layers start=7 operations=cut1") == "operations");
  CHECK(refused("layers start=7 operations=cut") == "operations");
  CHECK(refused("layers start=7 operations=cut-2") == "operations");
  CHECK(refused("layers start=7 operations=twist") == "operations");
  CHECK(refused("layers start=1000000 operations=cut1000,cut1000,cut1000,cut1000") == "operations");
}

TEST_CASE("a blend takes grades, compositions and both, and says what it assumed") {
  CHECK(number("blend parts=(C:0.95,Mn:0.3):0.6,(C:0.75,Ni:2.0):0.4", "composition.C") ==
        Approx(0.87));
  CHECK(number("blend parts=W1:0.6,15N20:0.4", "composition.C") == Approx(0.6 * 1.10 + 0.4 * 0.75));
  CHECK(number("blend parts=W1:300,15N20:200", "composition.Ni") ==
        Approx(0.6 * 0.10 + 0.4 * 1.95));
  CHECK(number("blend parts=1095:60%,(C:0.75,Ni:2):40%", "composition.Ni") == Approx(0.8));
  CHECK(answer("blend parts=W1:0.6,15N20:0.4").find("assumed")->list().size() == 2);
  CHECK(refused("blend parts=W1") == "parts");
  CHECK(refused("blend parts=nosuch:1") == "parts");
  CHECK(refused("blend parts=W1:0,15N20:1") == "parts");
  CHECK(refused("blend parts=(C:0.95") == "parts");
}

TEST_CASE("a ferric chloride bath is mixed by mass") {
  const std::string line = "etchant have_wt=40 want_wt=20 make_ml=1000";
  CHECK(number(line, "stock_ml") == Approx(418).margin(0.5));
  CHECK(number(line, "water_ml") == Approx(593).margin(0.5));
  CHECK(number(line, "density_g_ml") == Approx(1.183));
  CHECK(number("etchant have_be=42.5 want_wt=20 make_ml=1l", "stock_ml") == Approx(418).margin(1));
  CHECK(number("etchant have_wt=40 want_wt=40 make_ml=100", "water_ml") == Approx(0).margin(1e-9));
  CHECK(refused("etchant have_wt=20 want_wt=40 make_ml=1000") == "want_wt");
  CHECK(refused("etchant have_wt=45 want_wt=40 make_ml=1000") == "have_wt");
  CHECK(refused("etchant have_wt=40 have_be=42 want_wt=20 make_ml=1000") == "have_be");
  CHECK(refused("etchant have_be=50 want_wt=20 make_ml=1000") == "have_be");
  CHECK(refused("etchant have_wt=40 want_wt=20 make_ml=0") == "make_ml");
}

TEST_CASE("a 20 lb cylinder holds about 126 kWh") {
  CHECK(number("fuel gas=propane mass_kg=9.0718474", "energy_kwh") == Approx(126.4).margin(0.2));
  CHECK(number("fuel gas=propane volume_l=3.785411784", "energy_btu") == Approx(91'452));
  CHECK(number("fuel gas=propane volume_l=3.785411784", "energy_mj") == Approx(96.49).margin(0.01));
  CHECK(number("fuel gas=natural_gas volume_m3=1", "energy_mj") == Approx(38.64).margin(0.01));
  CHECK(refused("fuel gas=natural_gas mass_kg=1") == "gas");
  CHECK(refused("fuel gas=butane mass_kg=1") == "gas");
  CHECK(refused("fuel gas=propane") == "mass_kg");
  CHECK(refused("fuel gas=propane mass_kg=-1") == "mass_kg");
}

TEST_CASE("a kiln cools downwards and never quite to the room") {
  CHECK(number("cooling from_c=800 to_c=200 ambient_c=20 tau_min=180", "minutes") ==
        Approx(180 * std::log(780.0 / 180)));
  CHECK(number("cooling from_c=1472F to_c=200C ambient_c=293.15K tau_min=3h", "minutes") ==
        Approx(180 * std::log(780.0 / 180)));
  CHECK(number("cooling from_c=800 to_c=800 ambient_c=20 tau_min=180", "minutes") == 0);
  CHECK(refused("cooling from_c=200 to_c=800 ambient_c=20 tau_min=180") == "to_c");
  CHECK(refused("cooling from_c=800 to_c=20 ambient_c=20 tau_min=180") == "to_c");
  CHECK(refused("cooling from_c=800 to_c=200 ambient_c=20 tau_min=0") == "tau_min");
  CHECK(refused("cooling from_c=800 to_c=200 tau_min=90") == "ambient_c");
}

TEST_CASE("the loss of the desk is the loss of a quote") {
  const double desk = number("loss costs=100,50,30 survival=0.9,0.8,1", "cost_per_good");
  CHECK(desk == Approx((100 + 50 * 0.9 + 30 * 0.72) / 0.72));
  const Currency eur;
  const auto quote = costing::cost_per_good({{Money(10'000, eur), Share::percent(90)},
                                             {Money(5'000, eur), Share::percent(80)},
                                             {Money(3'000, eur), Share::percent(100)}});
  CHECK(static_cast<double>(quote.value().per_good.minor()) == Approx(100 * desk).margin(0.5));
  CHECK(refused("loss costs=100,50 survival=0.9") == "survival");
  CHECK(refused("loss costs=100 survival=0") == "survival");
  CHECK(refused("loss costs=100 survival=1.1") == "survival");
  CHECK(refused("loss costs=-100 survival=0.9") == "costs");
  CHECK(refused("loss costs=100,x survival=0.9,1") == "costs");
}

TEST_CASE("a price is rounded up to its step and not a step too far") {
  CHECK(number("price cost=60 margin=0.4 step=5", "price") == 100);
  CHECK(number("price cost=60.01 margin=0.4 step=5", "price") == 105);
  CHECK(number("price cost=60 markup=1.5 step=10", "price") == 150);
  CHECK(number("price cost=100 margin=0.3", "price") == Approx(142.86));
  CHECK(number("price cost=60.01 margin=0.4 step=5", "margin") == Approx((105 - 60.01) / 105));
  CHECK(number("price cost=60.01 margin=0.4 step=5", "markup") == Approx((105 - 60.01) / 60.01));
  CHECK(number("price cost=10000 margin=0.3 step=500 currency=JPY", "price") == 14'500);
  CHECK(refused("price cost=60 margin=1") == "margin");
  CHECK(refused("price cost=60 margin=0.4 markup=0.5") == "markup");
  CHECK(refused("price cost=60") == "margin");
  CHECK(refused("price cost=-60 margin=0.4") == "cost");
  CHECK(refused("price cost=60 margin=0.4 currency=ZZZ") == "currency");
  CHECK(refused("price cost=60 margin=0.4 step=0") == "step");
}

TEST_CASE("a name or a key that does not exist is refused, a key given twice too") {
  CHECK(refused("nosuch a=1") == "name");
  CHECK(refused("cooling from=800 to_c=200 ambient_c=20 tau_min=90") == "from");
  CHECK(refused("hardness hrc=60 hrc=61") == "hrc");
  CHECK(refused("hardness hrc=") == "hrc");
  CHECK(refused("hardness hrc=60x") == "hrc");
  CHECK(refused("hardness hrc=nan") == "hrc");
}

TEST_CASE("a band of hardness is expected from published tables and never beyond them") {
  const DeskValue band = answer("expect grade=O1 steps=400F/2h,400F/2h");
  CHECK(band.find("hrc_low")->number() <= 62);
  CHECK(band.find("hrc_high")->number() >= 62);
  CHECK(band.find("sources")->list().size() == 2);
  CHECK(refused("expect grade=O1 steps=150F/1h") == "steps");
  CHECK(refused("expect grade=O1 steps=1400F/1h") == "steps");
  CHECK(refused("expect grade=1084 steps=400F/2h") == "grade");
}

TEST_CASE("a thin section hardens through where a thick one does not") {
  CHECK(answer("through composition=O1 thickness_mm=4 bath=oil").find("through")->words() == "yes");
  CHECK(answer("through composition=1095 thickness_mm=25 bath=oil").find("through")->words() ==
        "no");
  CHECK(refused("through composition=1095 thickness_mm=5 bath=tea") == "bath");
}
