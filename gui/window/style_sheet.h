// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "gui/desk/palette.h"

namespace tangmark::window {

/// The three sizes of text, the price, and the step of spacing, in pixels at text size 1.
struct Sizes {
  double text_size = 1;  ///< grows everything: 1, 1.25, 1.5 ...
  int of(int pixels) const { return static_cast<int>(pixels * text_size + 0.5); }
  int note() const { return of(13); }
  int text() const { return of(15); }
  int heading() const { return of(22); }
  int figure() const { return of(34); }
  int gap(int eighths) const { return of(8 * eighths); }
};

/// The style sheet of the native controls: quiet, square, one accent.
std::string style_sheet(const desk::Palette& palette, const Sizes& sizes);

}  // namespace tangmark::window
