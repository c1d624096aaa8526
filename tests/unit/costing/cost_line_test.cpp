// SPDX-License-Identifier: MIT
#include "domain/costing/cost_line.h"

#include <catch2/catch.hpp>

using namespace tangmark::costing;

TEST_CASE("every kind of cost line has its word and comes back from it") {
  for (const LineKind kind :
       {LineKind::material, LineKind::used_up, LineKind::energy, LineKind::hours,
        LineKind::made_elsewhere, LineKind::overhead, LineKind::loss, LineKind::packing,
        LineKind::shipping, LineKind::fee}) {
    CHECK_FALSE(to_word(kind).empty());
    CHECK(line_kind_from(to_word(kind)) == kind);
  }
  CHECK(to_word(LineKind::made_elsewhere) == "made_elsewhere");
  CHECK_FALSE(line_kind_from("labour").has_value());
}

TEST_CASE("a quantity prints without needless zeros") {
  CHECK(to_text(Quantity{2500, "belts"}) == "2.5 belts");
  CHECK(to_text(Quantity{235'000, "g"}) == "235 g");
  CHECK(to_text(Quantity{40, "kWh"}) == "0.04 kWh");
  CHECK(to_text(Quantity{}) == "1");
}
