// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "gui/desk/palette.h"

using namespace tangmark::desk;

TEST_CASE("text keeps a contrast of 4.5 to 1 on every ground, light and dark") {
  for (Ground ground : {Ground::light, Ground::dark}) {
    const Palette p = palette(ground);
    for (Rgb back : {p.window, p.panel, p.raised, p.attended}) {
      CHECK(contrast(p.ink, back) >= 4.5);
      CHECK(contrast(p.second_ink, back) >= 4.5);
      CHECK(contrast(p.accent, back) >= 4.5);
    }
    CHECK(contrast(p.on_accent, p.accent) >= 4.5);
  }
}

TEST_CASE("black on white has the contrast that WCAG 2.1 states for it") {
  // Source: W3C WCAG 2.1, definition of contrast ratio: it ranges from 1 to 21.
  CHECK(contrast({0, 0, 0}, {255, 255, 255}) == Approx(21.0));
  CHECK(contrast({90, 90, 90}, {90, 90, 90}) == Approx(1.0));
}

TEST_CASE("steel has no colour below 180 C and glows from 520 C") {
  CHECK(tint(20, Ground::light) == tint(179, Ground::light));
  CHECK(tint(-40, Ground::light) == tint(20, Ground::light));
  const Rgb cherry = tint(780, Ground::light);
  CHECK(cherry.r > 2 * cherry.g);
  CHECK(tint(3000, Ground::dark) == tint(1250, Ground::dark));
}

TEST_CASE("between two named colours the tint lies on the straight line") {
  const Rgb a = tint(200, Ground::light), b = tint(230, Ground::light),
            middle = tint(215, Ground::light);
  CHECK(middle.r == Approx((a.r + b.r) / 2.0).margin(1));
  CHECK(middle.g == Approx((a.g + b.g) / 2.0).margin(1));
}

TEST_CASE("a colour is named by the last stop it has reached") {
  CHECK(tint_word(100) == "neutral");
  CHECK(tint_word(205) == "straw");
  CHECK(tint_word(800) == "cherry");
  CHECK(tint_word(1300) == "near white");
}
