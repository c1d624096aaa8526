// SPDX-License-Identifier: MIT
#include "domain/stock/label_stock.h"

#include <algorithm>
#include <array>

namespace tangmark::stock {

namespace {

constexpr Length micrometres(std::int64_t n) {
  return Length::nanometres(n * 1000);
}
// 1/32 in is 793,750 nm: the fractions of such sheets are exact.
constexpr Length thirty_seconds(std::int64_t n) {
  return Length::nanometres(n * 793'750);
}
constexpr Length a4_width = micrometres(210'000);
constexpr Length a4_height = micrometres(297'000);
constexpr Length letter_width = thirty_seconds(272);
constexpr Length letter_height = thirty_seconds(352);

const std::array<LabelStock, 8>& known() {
  static const std::array<LabelStock, 8> all{{
      {"A4, 21 labels of 63.5 x 38.1 mm", a4_width, a4_height, 3, 7, micrometres(7'210),
       micrometres(15'150), micrometres(63'500), micrometres(38'100), micrometres(66'040),
       micrometres(38'100)},
      {"A4, 18 labels of 63.5 x 46.6 mm", a4_width, a4_height, 3, 6, micrometres(7'210),
       micrometres(8'700), micrometres(63'500), micrometres(46'600), micrometres(66'040),
       micrometres(46'600)},
      {"A4, 14 labels of 99.1 x 38.1 mm", a4_width, a4_height, 2, 7, micrometres(4'650),
       micrometres(15'150), micrometres(99'100), micrometres(38'100), micrometres(101'600),
       micrometres(38'100)},
      {"A4, 8 labels of 99.1 x 67.7 mm", a4_width, a4_height, 2, 4, micrometres(4'650),
       micrometres(13'100), micrometres(99'100), micrometres(67'700), micrometres(101'600),
       micrometres(67'700)},
      {"A4, 40 labels of 48.5 x 25.4 mm", a4_width, a4_height, 4, 10, micrometres(8'000),
       micrometres(21'500), micrometres(48'500), micrometres(25'400), micrometres(48'500),
       micrometres(25'400)},
      {"A4, 65 labels of 38.1 x 21.2 mm", a4_width, a4_height, 5, 13, micrometres(4'670),
       micrometres(10'700), micrometres(38'100), micrometres(21'200), micrometres(40'640),
       micrometres(21'200)},
      {"Letter, 30 labels of 2 5/8 x 1 in", letter_width, letter_height, 3, 10, thirty_seconds(6),
       thirty_seconds(16), thirty_seconds(84), thirty_seconds(32), thirty_seconds(88),
       thirty_seconds(32)},
      {"Letter, 10 labels of 4 x 2 in", letter_width, letter_height, 2, 5, thirty_seconds(5),
       thirty_seconds(16), thirty_seconds(128), thirty_seconds(64), thirty_seconds(134),
       thirty_seconds(64)},
  }};
  return all;
}

Length far_edge(Length start, Length pitch, std::size_t count, Length size) {
  return start + pitch * static_cast<std::int64_t>(count - 1) + size;
}

}  // namespace

std::span<const LabelStock> usual_label_stock() {
  return known();
}

const LabelStock& usual_letter_labels() {
  return known()[6];
}

Problems label_stock_problems(const LabelStock& stock) {
  if (stock.across < 1 || stock.down < 1 || stock.across > 20 || stock.down > 40)
    return {{"across", "A sheet has at least one label and at most 20 across and 40 down.",
             "Count the labels of one row and of one column."}};
  Problems problems;
  const Length least_width = micrometres(38'000), least_height = micrometres(19'000);
  if (stock.width < least_width || stock.height < least_height)
    problems.push_back({"width",
                        "A label smaller than 38 mm by 19 mm cannot hold a number and its code.",
                        "Take larger labels."});
  if ((stock.across > 1 && stock.pitch_across < stock.width) ||
      (stock.down > 1 && stock.pitch_down < stock.height))
    problems.push_back({"pitch_across", "The labels overlap: the pitch is less than a label.",
                        "Measure from the left edge of one label to the left edge of the next."});
  const Length hair = micrometres(100);
  if (far_edge(stock.left, stock.pitch_across, stock.across, stock.width) >
          stock.sheet_width + hair ||
      far_edge(stock.top, stock.pitch_down, stock.down, stock.height) > stock.sheet_height + hair)
    problems.push_back({"left", "The labels reach over the edge of the sheet.",
                        "Measure sheet, margins and pitch again."});
  return problems;
}

}  // namespace tangmark::stock
