// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "tests/unit/command/program.h"

using namespace tangmark::test;

namespace {

bool is_pdf(const std::string& bytes) {
  return bytes.starts_with("%PDF-") && bytes.find("%%EOF") != std::string::npos;
}

}  // namespace

TEST_CASE("the demo shop is sound and has the blades that its stories tell of") {
  DemoShop demo;
  CHECK(run("check " + demo.file).exit == 0);
  const auto cracks = run("ask " + demo.file + " 17 --json").json();
  CHECK(cracks.at("rows").size() > 3);
  const auto waiting = run("ask " + demo.file + " 6 --json").json();
  CHECK(waiting.at("rows").size() == 1);
}

TEST_CASE("a quote's cost lines sum to its cost and the page is a PDF") {
  DemoShop demo;
  const auto pdf = demo.scratch / "quote.pdf";
  const Ran ran = run("quote " + demo.file + " 42 --json --pdf " + pdf.string());
  REQUIRE(ran.exit == 0);
  const auto quote = ran.json();
  std::int64_t sum = 0;
  for (const auto& line : quote.at("lines")) sum += line.at("amount_minor").get<std::int64_t>();
  CHECK(sum == quote.at("cost_minor").get<std::int64_t>());
  for (const char* key : {"commission", "version", "currency", "price_minor", "tax_minor",
                          "total_minor", "deposit_minor", "earned_per_hour_minor"})
    CHECK(quote.contains(key));
  CHECK(quote.at("hours").at("hands_on").get<double>() > 0);
  CHECK(is_pdf(bytes_of(pdf)));
}

TEST_CASE("a plan is booked only with --store, and then nothing is left to change") {
  DemoShop demo;
  const auto first = run("plan " + demo.file + " --json --iterations 2000 --seconds 20").json();
  CHECK_FALSE(first.at("firings").empty());
  CHECK_FALSE(first.at("stored").get<bool>());
  const Ran stored = run("plan " + demo.file + " --json --iterations 2000 --seconds 20 --store");
  CHECK(stored.json().at("stored").get<bool>());
  const Ran sheet =
      run("firing-sheet " + demo.file + " " + "6 --pdf " + (demo.scratch / "sheet.pdf").string());
  CHECK(sheet.exit == 0);
  CHECK(is_pdf(bytes_of(demo.scratch / "sheet.pdf")));
}

TEST_CASE("the week is planned, a blade cracks, and the new plan moves nothing that may stay") {
  DemoShop demo;
  const std::string limits = " --json --iterations 1500 --seconds 60";
  run("plan " + demo.file + limits + " --store");
  const auto booked = run("plan " + demo.file + limits).json();
  std::string cracked;
  for (const auto& change : booked.at("changes")) {
    const auto blades = change.at("blades").get<std::string>();
    if (change.at("what") == "kept" && blades.find(' ') != std::string::npos)
      cracked = blades.substr(0, blades.find(' '));
  }
  REQUIRE_FALSE(cracked.empty());
  REQUIRE(run("do " + demo.file + " scrap_blade blade=" + cracked +
              " why='a crack at the plunge' cost_to=shop")
              .exit == 0);
  const auto anew = run("plan " + demo.file + limits).json();
  const auto& difference = anew.at("difference");
  CHECK(difference.at("moved_firings") == 0);
  CHECK(difference.at("hands_on_after_min") <= difference.at("hands_on_before_min"));
  CHECK(difference.at("energy_after").at("kwh").get<double>() > 0);
  CHECK(anew.at("objective_with_moves") == anew.at("objective"));
  CHECK(anew.at("lower_bound_with_moves") <= anew.at("objective_with_moves"));
  for (const auto& change : anew.at("changes"))
    if (change.at("what") != "kept") CHECK_FALSE(change.at("why").get<std::string>().empty());
  CHECK_FALSE(anew.at("plate_values").empty());
  CHECK_FALSE(anew.at("stored").get<bool>());
  const Ran text = run("plan " + demo.file + " --iterations 1500 --seconds 60");
  for (const char* words :
       {"Against what is booked: ", "Energy ", "Your hands ", "Nothing is stored yet", "plate"})
    CHECK_THAT(text.out, Catch::Contains(words));
  CHECK(run("plan " + demo.file + limits + " --store").json().at("stored").get<bool>());
  CHECK(run("check " + demo.file).exit == 0);
}

TEST_CASE("the plan of the worked example costs what was reckoned by hand") {
  Scratch scratch;
  // The example's figures are worked out step by step in plan_check_test.cpp.
  write_file(scratch / "case.json",
             R"({"format":"kiln-plan-1","name":"example","horizon":1440,"ambient_c":20,
"cost":{"energy_cents_per_kwh":30,"attention_mc_per_min":500,"flow_mc_per_min":1},"windows":[[0,600]],
"kilns":[{"id":"K1","slots":2,"max_len_mm":450,"t_min":100,"t_max":1100,"heat_c_per_h":600,"tau_min":90,"heat_w":2400,"hold_mw_per_c":1000,"load_min":5,"unload_min":5,"circuit":null},
{"id":"OV","slots":4,"max_len_mm":450,"t_min":50,"t_max":260,"heat_c_per_h":600,"tau_min":40,"heat_w":1200,"hold_mw_per_c":1500,"load_min":5,"unload_min":5,"circuit":null}],
"blades":[{"id":"A","length_mm":250,"release":0,"due":240,"weight":50,"ops":[
{"kind":"harden","temp":800,"t_lo":795,"t_hi":810,"soak_min":10,"soak_max":20,"quench_min":4,"unattended":false,"gap_min":0,"gap_max":null},
{"kind":"soak","temp":200,"t_lo":190,"t_hi":210,"soak_min":120,"soak_max":150,"unattended":true,"gap_min":20,"gap_max":120}]},
{"id":"B","length_mm":250,"release":0,"due":300,"weight":50,"ops":[
{"kind":"harden","temp":800,"t_lo":795,"t_hi":810,"soak_min":10,"soak_max":20,"quench_min":4,"unattended":false,"gap_min":0,"gap_max":null},
{"kind":"soak","temp":200,"t_lo":190,"t_hi":210,"soak_min":120,"soak_max":150,"unattended":true,"gap_min":20,"gap_max":120}]}]})");
  const Ran ran =
      run("plan --case " + (scratch / "case.json").string() + " --iterations 3000 --seed 2");
  REQUIRE(ran.exit == 0);
  CHECK(ran.json().at("objective").get<std::int64_t>() == 143472);
}

TEST_CASE("a certificate says its evidence, and a reprint is the same bytes") {
  DemoShop demo;
  const auto one = demo.scratch / "one.pdf", two = demo.scratch / "two.pdf";
  const auto issued = run("certificate " + demo.file + " 21 --json --pdf " + one.string());
  REQUIRE(issued.exit == 0);
  CHECK(issued.json().at("issued").get<bool>());
  const auto said = issued.json();
  for (const auto& statement : said.at("statements")) {
    CHECK(std::string("ABCDE").find(statement.at("level").get<std::string>()) != std::string::npos);
    CHECK_FALSE(statement.at("evidence").empty());
  }
  REQUIRE(run("certificate " + demo.file + " 21 --pdf " + two.string()).exit == 0);
  CHECK(bytes_of(one) == bytes_of(two));
  CHECK(is_pdf(bytes_of(one)));
}

TEST_CASE("a blade tempered once of two gets no certificate and is told why") {
  DemoShop demo;
  const Ran ran =
      run("certificate " + demo.file + " 51 --json --pdf " + (demo.scratch / "no.pdf").string());
  CHECK(ran.exit == 1);
  CHECK_FALSE(ran.json().at("issued").get<bool>());
  CHECK_FALSE(std::filesystem::exists(demo.scratch / "no.pdf"));
}

TEST_CASE("a word without its evidence is found, with what would be true") {
  DemoShop demo;
  const Ran ran = run("wording " + demo.file + " 32 'genuine wootz, 300 layers' --json");
  CHECK(ran.exit == 1);
  const auto hits = ran.json().at("hits");
  REQUIRE(hits.size() >= 2);
  for (const auto& hit : hits) CHECK_FALSE(hit.at("truthful").empty());
  CHECK(run("wording " + demo.file + " 32 'not crucible steel' --json").exit == 0);
}

TEST_CASE("an exported demo shop comes back as the same shop") {
  DemoShop demo;
  const std::string folder = (demo.scratch / "out").string(),
                    again = (demo.scratch / "again.tangmark").string();
  REQUIRE(run("export " + demo.file + " " + folder).exit == 0);
  REQUIRE(run("import " + again + " " + folder).exit == 0);
  CHECK(run("check " + again).exit == 0);
}

TEST_CASE("every word has help and every weekly question is known") {
  for (const char* word :
       {"demo",         "quote",       "invoice", "receipt",     "promise",  "plan",
        "cut",          "certificate", "revoke",  "wording",     "verify",   "traveller",
        "firing-sheet", "day-list",    "labels",  "kiln-record", "calendar", "check",
        "backup",       "restore",     "rescue",  "export",      "import",   "ask",
        "do",           "calc"}) {
    INFO(word);
    const std::string line = std::string(TANGMARK_PROGRAM) + " " + word + " --help >/dev/null 2>&1";
    CHECK(std::system(line.c_str()) == 0);
  }
  DemoShop demo;
  const std::string given[] = {"commission=26 day=2026-12-20",
                               "model='petty 150'",
                               "commission=42",
                               "",
                               "",
                               "",
                               "blade=23",
                               "length='200 mm'",
                               "grade=1084",
                               "",
                               "grade=1084",
                               "blade=23",
                               "",
                               "",
                               "",
                               "",
                               "",
                               "",
                               "item=3",
                               "blade=32"};
  for (int i = 0; i < 20; ++i) {
    INFO("question " << i + 1);
    CHECK(run("ask " + demo.file + " " + std::to_string(i + 1) + " " + given[i] + " --json").exit ==
          0);
  }
  // Without a number every question is listed with what it must be told.
  const std::string list = run("ask " + demo.file).out;
  CHECK(list.find("   6  Which blade has been quenched and not tempered?\n") != std::string::npos);
  CHECK(list.find("  40  What if a line of a quote took more or less? commission= line=") !=
        std::string::npos);
  CHECK(run("ask " + demo.file + " 27").exit == 3);
}

TEST_CASE("a shop is begun from a terminal, or not at all") {
  const Scratch scratch;
  const std::string file = (scratch / "new.tangmark").string();
  CHECK(run("new " + file + " shop_name=Bench zone=Nowhere/X").exit == 3);
  CHECK_FALSE(std::filesystem::exists(file));
  CHECK(run("new " + file + " shop_name=Bench zone=Europe/Oslo currency=NOK").exit == 0);
  CHECK(run("do " + file + " new_customer name='Kari Example' --json").json()["number"] == "1");
  CHECK(run("new " + file).exit == 3);
  CHECK(run("do " + file + " new_customer name='Ola Example' --json").json()["number"] == "2");
}
