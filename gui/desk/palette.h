// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string>

namespace tangmark::desk {

/// One colour of the screen, eight bits a part.
struct Rgb {
  std::uint8_t r = 0, g = 0, b = 0;
  friend bool operator==(const Rgb&, const Rgb&) = default;
};

/// What the desktop asks for: dark ink on a light ground, or the reverse.
enum class Ground { light, dark };

/// The few colours that are not temperature: everything else is ink, grey and one deep green.
struct Palette {
  Rgb window, panel, raised, line;  ///< grounds from back to front, and the line between them
  Rgb ink, second_ink;              ///< text, and text that stands back; both 4.5 : 1 or better
  Rgb accent, on_accent;            ///< what can be pressed or is proposed; the text on it
  Rgb attended, unattended;         ///< hours with someone at the bench, and hours without
};
Palette palette(Ground ground);

/// The colour of steel at a temperature, for areas: neutral below 180 C, temper colours from 180 to
/// 320 C, grey, then the glow from 520 to 1250 C. Straight lines between stops in sRGB.
/// Source: none, tuned by eye (common practice). A figure in degrees always stands beside it.
Rgb tint(double celsius, Ground ground);
/// "straw", "cherry", "neutral": the name of the nearest stop at or below.
std::string tint_word(double celsius);

/// Contrast of two colours, 1 to 21. Source: W3C WCAG 2.1, relative luminance and contrast ratio.
double contrast(Rgb a, Rgb b);
/// "#17594a".
std::string hex(Rgb colour);

/// The greys of the parts of a price, from the bottom up; neighbours differ.
Rgb cost_grey(std::size_t part);

}  // namespace tangmark::desk
