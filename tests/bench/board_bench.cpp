// SPDX-License-Identifier: MIT
// The kiln place as the window refreshes it, in a shop with six kilns and sixty blades that are all
// planned: against reading the same shop's rows once, which no refresh can do without.
#include <catch2/catch.hpp>
#include <cstdio>
#include <ctime>

#include "db/listing/blade_rows.h"
#include "db/listing/kiln_rows.h"
#include "db/store/kiln_store.h"
#include "db/store/plan_case.h"
#include "db/store/plan_difference.h"
#include "db/store/settings_store.h"
#include "domain/kiln/plan_json.h"
#include "gui/desk/kiln_desk.h"
#include "tests/unit/db/kiln_day.h"

using namespace tangmark;
using namespace tangmark::test;

namespace {

constexpr int kilns = 6, blades = 60, times = 20;

struct FullShop : KilnDay {
  FullShop() {
    for (int k = 2; k < kilns; ++k) {
      const std::string name = (k % 2 == 0 ? "Kiln " : "Oven ") + std::to_string(k + 1);
      did("add_kiln", {{"name", name},
                       {"kind", k % 2 == 0 ? "kiln" : "oven"},
                       {"slots", "4"},
                       {"usable_length", "420 mm"},
                       {"lowest", "50 C"},
                       {"highest", k % 2 == 0 ? "1100 C" : "300 C"},
                       {"heats_per_hour", "800 C"},
                       {"cooling_time_constant", "90 min"},
                       {"heating_watts", "2400"},
                       {"holding_mw_per_c", "1000"}});
    }
    for (int b = 0; b < blades; ++b) planned_blade();
    book();
  }

  void book() {
    const db::ShopCase a_case = db::shop_case(shop, now, db::Keep::locked_only);
    kiln::SearchLimits limits;
    limits.iterations = 20'000;
    const kiln::PlanAnswer answer = kiln::plan_firings(a_case.a_case, limits, 1);
    REQUIRE(answer.unplaced.empty());
    did("accept_plan", {{"from", to_stored(a_case.origin)},
                        {"plan", kiln::write_firing_plan(answer.plan)}});
  }
};

double milliseconds_of(const auto& work) {
  work();  // the first time fills the file's own cache
  const std::clock_t start = std::clock();
  for (int i = 0; i < times; ++i) work();
  return 1e3 * static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC / times;
}

}  // namespace

TEST_CASE("the kiln board is drawn anew within a tenth of a second", "[bench][board]") {
  const FullShop full;
  const auto settings = db::load_settings(full.shop);
  const desk::Sight sight{full.shop, settings, full.now};
  const auto booked = db::booked_firings(full.shop);
  REQUIRE(booked.size() > 20);
  const std::string chosen = std::to_string(booked.front().number);
  const double read_ms = milliseconds_of([&] {
    REQUIRE(db::booked_firings(full.shop).size() == booked.size());
    REQUIRE(db::blades_in_shop(full.shop).size() == blades);
    REQUIRE(db::kiln_rows(full.shop).size() == kilns);
  });
  desk::KilnMemory memory;
  const double board_ms = milliseconds_of([&] {
    const auto view = desk::kiln_view(sight, chosen, std::nullopt, memory);
    REQUIRE(std::get<desk::KilnBoard>(view.picture).lanes.size() == kilns);
  });
  const double list_ms = milliseconds_of([&] { desk::kiln_list(sight); });
  std::printf(
      "board: %d kilns, %d blades, %zu firings: view %.1f ms, list %.1f ms; together %.2f times "
      "reading the rows (%.1f ms), %.2f of the 100 ms allowed\n",
      kilns, blades, booked.size(), board_ms, list_ms, (board_ms + list_ms) / read_ms, read_ms,
      (board_ms + list_ms) / 100);
  CHECK(board_ms + list_ms < 100);
}
