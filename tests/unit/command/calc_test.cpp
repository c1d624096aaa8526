// SPDX-License-Identifier: MIT
// Every computation as it is typed at the terminal: its keys, units, refusals and labels.
#include <catch2/catch.hpp>
#include <set>
#include <vector>

#include "tests/unit/command/program.h"

using namespace tangmark::test;
using Catch::Matchers::Contains;

namespace {

nlohmann::json answered(const std::string& line) {
  const Ran ran = run("calc " + line + " --json");
  INFO(line << ": " << ran.out);
  REQUIRE(ran.exit == 0);
  return ran.json();
}

std::set<std::string> keys_of(const nlohmann::json& object) {
  std::set<std::string> keys;
  for (const auto& [key, value] : object.items()) keys.insert(key);
  return keys;
}

struct Row {
  const char* line;
  std::vector<std::string> keys;  ///< that must be there
};

}  // namespace

TEST_CASE("each computation answers under its promised keys, as numbers where figures are meant") {
  const std::vector<Row> rows = {
      {"mass length_mm=300 width_mm=25 thickness_mm=4", {"mass_kg"}},
      {"mass length_mm=300 diameter_mm=20 density_kg_m3=7695", {"mass_kg"}},
      {"hardness hrc=60", {"hv"}},
      {"hardness hv=697", {"hrc"}},
      {"temper steps=204C/120min,204C/120min", {"equivalent_min", "parameter", "per_step"}},
      {"critical composition=C:0.40,Mn:0.90", {"ac1_c", "ac3_c"}},
      {"ms composition=C:0.40,Mn:0.90,Si:0.25", {"andrews_c", "steven_haynes_c"}},
      {"hardenability composition=C:0.40,Mn:0.90,Si:0.25",
       {"di_in", "di_mm", "in_range", "out_of_range"}},
      {"phases carbon_wt=0.35 temperature_c=727", {"phases", "carbon_in", "constituents"}},
      {"carbon surface_wt=1.2 initial_wt=0.25 temperature_c=950 hours=7 depth_mm=0.5",
       {"diffusivity_m2_s", "carbon_wt"}},
      {"layers start=7 operations=cut2,fold,cut3", {"layers"}},
      {"layers start=7 operations=cut2,fold,cut3 thickness_mm=30", {"layers", "thickness_mm"}},
      {"blend parts=W1:0.6,15N20:0.4", {"composition"}},
      {"etchant have_wt=40 want_wt=20 make_ml=1000", {"stock_ml", "water_ml", "density_g_ml"}},
      {"fuel gas=propane mass_kg=1", {"energy_mj", "energy_kwh", "energy_btu"}},
      {"cooling from_c=800 to_c=200 ambient_c=20 tau_min=180", {"minutes"}},
      {"loss costs=100,50,200 survival=1,0.9,0.95", {"cost_per_good"}},
      {"price cost=600 margin=0.4 step=10 currency=EUR", {"price", "margin", "markup"}},
  };
  for (const Row& row : rows) {
    CAPTURE(row.line);
    const nlohmann::json answer = answered(row.line);
    for (const std::string& key : row.keys) {
      CAPTURE(key);
      REQUIRE(answer.contains(key));
      const bool figure = key.ends_with("_c") || key.ends_with("_kg") || key.ends_with("_mm") ||
                          key.ends_with("_ml") || key.ends_with("_mj") || key.ends_with("_wt");
      if (figure) CHECK(answer[key].is_number());
    }
  }
}

TEST_CASE("parts of an answer have their promised names") {
  CHECK(keys_of(answered("phases carbon_wt=0.35 temperature_c=727")["phases"]) ==
        std::set<std::string>{"ferrite", "austenite", "cementite"});
  CHECK(keys_of(answered("phases carbon_wt=0.35 temperature_c=727")["constituents"]) ==
        std::set<std::string>{"pearlite", "proeutectoid_ferrite", "proeutectoid_cementite"});
  CHECK_FALSE(answered("phases carbon_wt=0.35 temperature_c=728").contains("constituents"));
  CHECK(answered("phases carbon_wt=0.35 temperature_c=800")["carbon_in"].contains("austenite"));
  const auto steps = answered("temper steps=200C/1h,220C/1h")["per_step"];
  REQUIRE(steps.size() == 2);
  CHECK(steps[0]["temperature_c"] == 200);
  CHECK(answered("blend 'parts=(C:0.95,Mn:0.3):0.6,(C:0.75,Ni:2):0.4'")["composition"]["Ni"] ==
        0.8);
  CHECK_FALSE(answered("blend parts=W1:0.6,15N20:0.4")["assumed"].empty());
  CHECK(answered("fuel gas=propane mass_kg=1").contains("net_mj"));
  CHECK(answered("hardenability composition=C:0.84,Mn:0.75")["in_range"] == false);
  CHECK(answered("hardenability composition=C:0.84,Mn:0.75,Si:0.25")["out_of_range"] ==
        nlohmann::json::array({"C"}));
}

TEST_CASE("above the eutectoid there is no Ac3: nothing stands there, with the reason") {
  const auto answer = answered("critical composition=C:0.95,Mn:0.4");
  CHECK(answer["ac3_c"].is_null());
  CHECK_FALSE(answer["reason"].get<std::string>().empty());
}

TEST_CASE("temperatures are read in C, F and K, times in s, min and h") {
  const double celsius = answered("phases carbon_wt=1.0 temperature_c=800")["phases"]["cementite"];
  for (const char* same : {"800C", "1472F", "1073.15K"}) {
    CAPTURE(same);
    const auto answer = answered(std::string("phases carbon_wt=1.0 temperature_c=") + same);
    CHECK(answer["phases"]["cementite"].get<double>() == Approx(celsius).epsilon(1e-6));
  }
  for (const char* same : {"400F/2h", "204.44444C/120min", "477.59444K/7200s"}) {
    CAPTURE(same);
    CHECK(answered(std::string("temper steps=") + same)["parameter"].get<double>() ==
          Approx(477.5944 * (20 + 0.30103)).epsilon(1e-6));
  }
  const double hours =
      answered("carbon surface_wt=1.2 initial_wt=0.25 temperature_c=1742F hours=7 depth_mm=0.5")
          ["carbon_wt"];
  for (const char* same : {"420min", "25200s", "7h"}) {
    CAPTURE(same);
    const auto answer = answered(std::string("carbon surface_wt=1.2 initial_wt=0.25 "
                                             "temperature_c=1223.15K depth_mm=0.5 hours=") +
                                 same);
    CHECK(answer["carbon_wt"].get<double>() == Approx(hours).epsilon(1e-6));
  }
  CHECK(answered("cooling from_c=1472F to_c=392F ambient_c=68F tau_min=3h")["minutes"]
            .get<double>() ==
        Approx(answered("cooling from_c=800 to_c=200 ambient_c=20 tau_min=180")["minutes"]
                   .get<double>()));
}

TEST_CASE("what cannot be computed is refused with exit 3 and a sentence, and gives no figure") {
  for (const char* line :
       {"mass length_mm=300",
        "mass length_mm=nan width_mm=2 thickness_mm=2",
        "hardness hrc=19.9",
        "hardness hrc=68.5",
        "hardness hv=237",
        "hardness hv=941",
        "temper steps=204/120min",
        "temper steps=",
        "critical composition=Mn:0.9",
        "ms composition=Xx:1",
        "hardenability composition=C:0.4 grain=99",
        "phases carbon_wt=2.2 temperature_c=800",
        "phases carbon_wt=1 temperature_c=1150",
        "phases carbon_wt=1 temperature_c=-300",
        "carbon surface_wt=1.2 initial_wt=0.25 temperature_c=950 hours=7 depth_mm=-0.1",
        "carbon surface_wt=1.2 initial_wt=0.25 hours=7 depth_mm=0.1",
        "layers start=0 operations=fold",
        "layers start=3 operations=cut1",
        "blend parts=W1:0,15N20:0",
        "blend parts=NOSUCH:1",
        "etchant have_wt=40 want_wt=45 make_ml=1000",
        "etchant have_wt=50 want_wt=20 make_ml=1000",
        "etchant have_wt=40 want_wt=20 make_ml=0",
        "fuel gas=butane mass_kg=1",
        "fuel gas=natural_gas volume_l=1",
        "fuel gas=propane mass_kg=-1",
        "cooling from_c=200 to_c=800 ambient_c=20 tau_min=60",
        "cooling from_c=800 to_c=20 ambient_c=20 tau_min=60",
        "loss costs=1,2 survival=1",
        "loss costs=1 survival=0",
        "price cost=100 margin=1",
        "price cost=100",
        "price cost=100 margin=0.4 markup=0.5",
        "expect grade=15N20 steps=204C/2h",
        "nosuch a=1",
        "mass length_mm=300 width_mm=25 thickness_mm=4 colour=red"}) {
    CAPTURE(line);
    const Ran ran = run(std::string("calc ") + line + " --json");
    CHECK(ran.exit == 3);
    const auto refusal = ran.json();
    CHECK(refusal["done"] == false);
    CHECK(refusal["problem"].get<std::string>().size() > 10);
    CHECK_FALSE(refusal["remedy"].get<std::string>().empty());
    CHECK(run(std::string("calc ") + line).out.empty());
    CHECK(run(std::string("calc ") + line, true).out.size() > 20);
  }
}

TEST_CASE("a name alone lists its keys, units and source; --why says source and range") {
  for (const char* name :
       {"mass",   "hardness", "temper", "critical", "ms",     "hardenability", "phases",
        "carbon", "layers",   "blend",  "etchant",  "fuel",   "cooling",       "loss",
        "price",  "through",  "decarb", "equalize", "expect", "grade",         "advice"}) {
    CAPTURE(name);
    const Ran ran = run(std::string("calc ") + name);
    CHECK(ran.exit == 0);
    CHECK_THAT(ran.out, Contains("Source: ") && Contains("Valid:  "));
  }
  const Ran why = run("calc hardness hrc=60 --why");
  CHECK_THAT(why.out, Contains("hv = 697") && Contains("Source: ASTM E140"));
  CHECK(run("calc hardness hrc=60 --why --json")
            .json()["source"]
            .get<std::string>()
            .starts_with("ASTM E140"));
}

TEST_CASE("what is expected off the quench and after each temper stands beside the whole") {
  const auto answer = answered("expect grade=O1 steps=400F/2h,400F/2h");
  CHECK(answer["as_quenched"]["hrc_low"].get<double>() <= 65);
  REQUIRE(answer["after_each"].size() == 2);
  CHECK(answer["after_each"][1]["hrc_high"] == answer["hrc_high"]);
}

TEST_CASE("a record whose columns are not found is read when they are named") {
  Scratch scratch;
  const std::string file = (scratch / "bare.csv").string();
  write_file(file, "1,07:51:00,800,612\n2,07:52:00,800,640\n3,07:53:00,800,655\n");
  const Ran named = run("kiln-record " + file + " --time 2 --sensors 4 --window 630C..660C --json");
  REQUIRE(named.exit == 0);
  CHECK(named.json()["peak_c"] == 655);
  CHECK(named.json()["sensors"].size() == 1);
  CHECK(run("kiln-record " + file + " --sensors nine --json").exit == 3);
  CHECK(run("kiln-record " + file + " --unit X --json").exit == 3);
}
