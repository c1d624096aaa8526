// SPDX-License-Identifier: MIT
#include "gui/desk/palette.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>

namespace tangmark::desk {
namespace {

constexpr Rgb of(std::uint32_t hex) {
  return {static_cast<std::uint8_t>(hex >> 16), static_cast<std::uint8_t>((hex >> 8) & 0xff),
          static_cast<std::uint8_t>(hex & 0xff)};
}

struct Stop {
  double celsius;
  const char* word;
  Rgb light, dark;
};

constexpr std::array stops{
    Stop{20, "neutral", of(0xD3D6D6), of(0x4B5154)},
    Stop{180, "neutral", of(0xD3D6D6), of(0x4B5154)},
    Stop{200, "straw", of(0xE6CF86), of(0xD8C078)},
    Stop{230, "dark straw", of(0xCF9F47), of(0xBE8F3C)},
    Stop{255, "brown", of(0x9C6138), of(0xA46A3E)},
    Stop{275, "purple", of(0x7A4A7A), of(0x94609A)},
    Stop{295, "blue", of(0x3F5BA3), of(0x5877C4)},
    Stop{320, "pale blue", of(0x7F9DC0), of(0x86A6CC)},
    Stop{360, "grey again", of(0xA3ABAF), of(0x6E777B)},
    Stop{500, "grey", of(0x8A8F92), of(0x5A6063)},
    Stop{520, "first dark red", of(0x5A3634), of(0x5E2A24)},
    Stop{600, "blood red", of(0x7A1F1A), of(0x8C241B)},
    Stop{700, "dark cherry", of(0xA32414), of(0xB82C17)},
    Stop{780, "cherry", of(0xC93A17), of(0xDB4419)},
    Stop{850, "bright cherry", of(0xDE571C), of(0xEC6320)},
    Stop{950, "orange", of(0xEF8330), of(0xF78D35)},
    Stop{1050, "yellow orange", of(0xF6AE48), of(0xFBB750)},
    Stop{1150, "yellow", of(0xFAD77C), of(0xFDDD86)},
    Stop{1250, "near white", of(0xFFF3D2), of(0xFFF6DC)},
};

std::uint8_t between(std::uint8_t a, std::uint8_t b, double share) {
  return static_cast<std::uint8_t>(std::lround(a + (b - a) * share));
}

double luminance(Rgb c) {
  const auto linear = [](std::uint8_t v) {
    const double s = v / 255.0;
    return s <= 0.03928 ? s / 12.92 : std::pow((s + 0.055) / 1.055, 2.4);
  };
  return 0.2126 * linear(c.r) + 0.7152 * linear(c.g) + 0.0722 * linear(c.b);
}

}  // namespace

Palette palette(Ground ground) {
  if (ground == Ground::dark) {
    return {of(0x1A1E20), of(0x22282B), of(0x2A3033), of(0x4B5356), of(0xF3F4F2), of(0xC6CDCF),
            of(0x8FD3BD), of(0x0D2720), of(0x30373A), of(0x22282B)};
  }
  return {of(0xECEDEB), of(0xFBFBF9), of(0xFFFFFF), of(0xC3C7C6), of(0x1E2426), of(0x596164),
          of(0x17594A), of(0xFFFFFF), of(0xFBFBF9), of(0xE1E3E1)};
}

Rgb tint(double celsius, Ground ground) {
  const auto colour = [ground](const Stop& s) { return ground == Ground::dark ? s.dark : s.light; };
  if (!(celsius > stops.front().celsius)) return colour(stops.front());
  if (celsius >= stops.back().celsius) return colour(stops.back());
  const auto above = std::find_if(stops.begin(), stops.end(),
                                  [celsius](const Stop& s) { return s.celsius > celsius; });
  const Stop& low = *(above - 1);
  const double share = (celsius - low.celsius) / (above->celsius - low.celsius);
  const Rgb a = colour(low), b = colour(*above);
  return {between(a.r, b.r, share), between(a.g, b.g, share), between(a.b, b.b, share)};
}

std::string tint_word(double celsius) {
  const char* word = stops.front().word;
  for (const Stop& s : stops) {
    if (s.celsius <= celsius) word = s.word;
  }
  return word;
}

double contrast(Rgb a, Rgb b) {
  const double x = luminance(a), y = luminance(b);
  return (std::max(x, y) + 0.05) / (std::min(x, y) + 0.05);
}

std::string hex(Rgb c) {
  std::array<char, 8> text{};
  std::snprintf(text.data(), text.size(), "#%02x%02x%02x", c.r, c.g, c.b);
  return text.data();
}

Rgb cost_grey(std::size_t part) {
  static constexpr std::array greys{of(0x4F5A5E), of(0x8D9699), of(0xC2C7C8), of(0x2E3B40),
                                    of(0xA5ADAF), of(0x6D777B), of(0xD9DCDB)};
  return greys[part % greys.size()];
}

}  // namespace tangmark::desk
