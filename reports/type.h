// SPDX-License-Identifier: MIT
#pragma once

#include "reports/page.h"

namespace tangmark::reports {

/// The few sizes a document is set in, and its line. Every block of text is a whole number of half
/// lines high, so that the baselines of neighbouring columns meet.
struct TypeScale {
  Font title;
  Font head;
  Font text;
  Font text_bold;
  Font text_italic;
  Font table;
  Font table_bold;
  Font note;
  Points leading = 11;
  Points half() const { return leading / 2; }
};

constexpr Font serif(Points size, Weight weight = Weight::regular, Slant slant = Slant::upright) {
  return {Face::serif, weight, slant, size};
}
constexpr Font sans(Points size, Weight weight = Weight::regular) {
  return {Face::sans, weight, Slant::upright, size};
}
constexpr Font mono(Points size) {
  return {Face::mono, Weight::regular, Slant::upright, size};
}

/// For the certificate: much on a page, read in the hand.
constexpr TypeScale certificate_type() {
  return {serif(20.5, Weight::bold),
          serif(9.5, Weight::bold),
          serif(8.5),
          serif(8.5, Weight::bold),
          serif(8.5, Weight::regular, Slant::italic),
          sans(8),
          sans(8, Weight::bold),
          sans(7.5),
          11};
}

/// For papers that go to a buyer, and lists on the wall.
constexpr TypeScale letter_type() {
  return {serif(20, Weight::bold),
          serif(11, Weight::bold),
          serif(10),
          serif(10, Weight::bold),
          serif(10, Weight::regular, Slant::italic),
          sans(9.5),
          sans(9.5, Weight::bold),
          sans(8),
          13};
}

/// For papers at the bench: larger, since they are read standing and with dirty glasses.
constexpr TypeScale bench_type() {
  return {sans(20, Weight::bold),
          sans(11.5, Weight::bold),
          sans(10.5),
          sans(10.5, Weight::bold),
          {Face::sans, Weight::regular, Slant::italic, 10.5},
          sans(10),
          sans(10, Weight::bold),
          sans(8.5),
          14};
}

}  // namespace tangmark::reports
