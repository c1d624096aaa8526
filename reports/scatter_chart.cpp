// SPDX-License-Identifier: MIT
#include "reports/scatter_chart.h"

#include <algorithm>
#include <cmath>

#include "domain/steel/figure_text.h"
#include "reports/label_place.h"
#include "reports/paragraph.h"
#include "reports/type.h"

namespace tangmark::reports {
namespace {

constexpr int most_figures = 6;
constexpr Points dot = 2.2;

// The smallest of 1, 2 and 5 times a power of ten that cuts the range into few enough parts.
double round_step(double range) {
  const double least = range / most_figures;
  const double power = std::pow(10.0, std::floor(std::log10(least)));
  for (const double factor : {1.0, 2.0, 5.0}) {
    if (power * factor >= least) return power * factor;
  }
  return power * 10;
}

// A range with room at both ends; one value alone gets a range around it.
struct Range {
  double low = 0, high = 1, step = 1;
  explicit Range(std::vector<double> values) {
    const auto [least, most] = std::minmax_element(values.begin(), values.end());
    const double wide = *most > *least ? *most - *least : std::max(1.0, std::abs(*most) * 0.1);
    step = round_step(wide * 1.2);
    low = std::floor((*least - wide * 0.08) / step) * step;
    high = std::ceil((*most + wide * 0.08) / step) * step;
  }
  double part(double value) const { return (value - low) / (high - low); }
};

std::vector<double> values_of(const Scatter& scatter, double ScatterPoint::*measure) {
  std::vector<double> values;
  for (const ScatterPoint& point : scatter.points) values.push_back(point.*measure);
  return values;
}

class Chart {
 public:
  Chart(const FontBook& fonts, const Scatter& scatter, const ChartSize& size)
      : fonts_(fonts),
        scatter_(scatter),
        size_(size),
        font_(sans(size.text)),
        block_(blank(size.height)),
        line_(size.text * 1.45),
        x_(values_of(scatter, &ScatterPoint::x)),
        y_(values_of(scatter, &ScatterPoint::y)) {
    plot_ = {size.text * 4, line_ * 1.3, size.width - size.text * 5, size.height - line_ * 3.8};
  }

  Block draw() {
    block_.elements.push_back(
        run_at(fonts_, {plot_.x, line_ * 0.76}, scatter_.y_title, sans(size_.text, Weight::bold)));
    block_.elements.push_back(run_at(fonts_, {plot_.right(), plot_.bottom() + line_ * 2},
                                     scatter_.x_title, sans(size_.text, Weight::bold), ink,
                                     Align::right));
    draw_axes();
    draw_points();
    return std::move(block_);
  }

 private:
  Points across(double x) const { return plot_.x + plot_.width * x_.part(x); }
  Points down(double y) const { return plot_.bottom() - plot_.height * y_.part(y); }

  void draw_axes() {
    block_.elements.push_back(Line{{plot_.x, plot_.y}, {plot_.x, plot_.bottom()}, 0.7, ink, 0});
    block_.elements.push_back(
        Line{{plot_.x, plot_.bottom()}, {plot_.right(), plot_.bottom()}, 0.7, ink, 0});
    for (double v = y_.low; v <= y_.high + y_.step / 2; v += y_.step) {
      block_.elements.push_back(Line{{plot_.x - 2.5, down(v)}, {plot_.x, down(v)}, 0.5, ink, 0});
      block_.elements.push_back(run_at(fonts_, {plot_.x - 4, down(v) + size_.text * 0.36},
                                       figure(v), font_, ink, Align::right));
    }
    for (double v = x_.low; v <= x_.high + x_.step / 2; v += x_.step) {
      block_.elements.push_back(
          Line{{across(v), plot_.bottom()}, {across(v), plot_.bottom() + 2.5}, 0.5, ink, 0});
      block_.elements.push_back(run_at(fonts_, {across(v), plot_.bottom() + line_}, figure(v),
                                       font_, ink, Align::centre));
    }
  }

  static std::string figure(double value) {
    const std::string text = steel::rounded_text(value, 2);
    return text == "-0" ? "0" : text;
  }

  void draw_points() {
    LabelPlace place({plot_.x + 1, plot_.y, plot_.width - 1, plot_.height - 1});
    for (const ScatterPoint& point : scatter_.points) {
      const Place at{across(point.x), down(point.y)};
      block_.elements.push_back(Circle{at, dot, {true, 0.8, ink, true, paper_white}});
      place.keep_clear_of(Box{at.x - dot, at.y - dot, 2 * dot, 2 * dot});
    }
    for (const ScatterPoint& point : scatter_.points) {
      const TextRun run = run_at(fonts_, {0, 0}, point.name, font_, second_ink);
      const auto box = place.take({across(point.x), down(point.y)}, 3, run.width + 2, line_);
      if (box) block_.elements.push_back(moved(run, box->x + 1, box->y + line_ * 0.76));
    }
  }

  const FontBook& fonts_;
  const Scatter& scatter_;
  ChartSize size_;
  Font font_;
  Block block_;
  Points line_;
  Range x_, y_;
  Box plot_;
};

}  // namespace

Block scatter_chart(const FontBook& fonts, const Scatter& scatter, const ChartSize& size) {
  if (!scatter.points.empty()) return Chart(fonts, scatter, size).draw();
  Block block = blank(size.text * 3);
  block.elements.push_back(run_at(
      fonts, {0, size.text * 1.5},
      "No blade has both " + scatter.x_title + " and " + scatter.y_title + ".", sans(size.text)));
  return block;
}

}  // namespace tangmark::reports
