// SPDX-License-Identifier: MIT
#include "reports/curve_chart.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <string>

#include "reports/label_place.h"
#include "reports/paragraph.h"
#include "reports/type.h"

namespace tangmark::reports {

namespace {

constexpr Grey bare_paper{255};
constexpr Points least_band = 5;  // a window drawn lower than this tells nothing

double in_unit(Temperature t, TemperatureUnit unit) {
  if (unit == TemperatureUnit::fahrenheit) return t.in_fahrenheit();
  return unit == TemperatureUnit::kelvin ? t.in_kelvin() : t.in_celsius();
}

const char* unit_name(TemperatureUnit unit) {
  if (unit == TemperatureUnit::fahrenheit) return "°F";
  return unit == TemperatureUnit::kelvin ? "K" : "°C";
}

// The smallest of 1, 2 and 5 times a power of ten that is not below `least`.
double round_step(double least) {
  double step = std::pow(10.0, std::floor(std::log10(least)));
  for (const double factor : {1.0, 2.0, 5.0, 10.0}) {
    if (step * factor >= least) return step * factor;
  }
  return step * 10;
}

class Chart {
 public:
  Chart(const FontBook& fonts, const Curve& curve, CurveKind kind, const Look& look,
        const ChartSize& size)
      : fonts_(fonts),
        curve_(curve),
        kind_(kind),
        look_(look),
        size_(size),
        font_(sans(size.text)) {
    points_ = thinned(curve.points, static_cast<std::size_t>(size.width * 2));
    line_ = size.text * 1.45;
    plot_ = {size.text * 3.2, line_ + 3, size.width - size.text * 3.2 - 1,
             size.height - 2 * line_ - 5};
    find_range();
  }

  Block draw() {
    block_ = blank(size_.height);
    block_.elements.push_back(fitted_run(fonts_, {plot_.x, line_ * 0.76}, curve_.title,
                                         sans(size_.text + 0.5, Weight::bold), plot_.width, 5));
    if (points_.size() < 2) {
      block_.elements.push_back(run_at(fonts_, {plot_.x, plot_.y + line_}, "No curve.", font_));
      return std::move(block_);
    }
    draw_window();
    draw_axes();
    draw_curve();
    draw_fitted();
    draw_marks();
    draw_notes();
    return std::move(block_);
  }

 private:
  double value(Temperature t) const { return in_unit(t, look_.temperature); }

  void find_range() {
    if (points_.empty()) return;
    start_ = points_.front().at;
    span_ = std::max<double>(1, static_cast<double>((points_.back().at - start_).count()));
    low_ = high_ = value(points_.front().temperature);
    for (const CurvePoint& p : points_) {
      low_ = std::min(low_, value(p.temperature));
      high_ = std::max(high_, value(p.temperature));
    }
    if (curve_.window) {
      const double floor = value(curve_.window->low);
      const double ceiling = value(curve_.window->high);
      high_ = std::max(high_, ceiling);
      low_ = std::min(low_, floor);
      const double band = ceiling - floor;
      const bool sliver = band / (high_ - low_) * plot_.height < least_band;
      // A plan is read for its whole course, a record for how it kept to the window.
      if (kind_ == CurveKind::recorded && band > 0 && sliver && curve_.fitted.empty()) {
        low_ = floor - 3 * band;
        cut_ = true;
      }
    }
    const double margin = std::max(1.0, (high_ - low_) * 0.08);
    high_ += margin;
    if (!cut_) low_ -= margin / 2;
  }

  Points x(Instant at) const {
    return plot_.x + plot_.width * static_cast<double>((at - start_).count()) / span_;
  }
  Points y(double v) const { return plot_.bottom() - plot_.height * (v - low_) / (high_ - low_); }

  void draw_window() {
    if (!curve_.window) return;
    const Points top = y(value(curve_.window->high));
    const Points bottom = y(value(curve_.window->low));
    block_.elements.push_back(
        Rectangle{{plot_.x, top, plot_.width, bottom - top}, {false, 0, ink, true, band_grey}});
  }

  void draw_axes() {
    block_.elements.push_back(Line{{plot_.x, plot_.y}, {plot_.x, plot_.bottom()}, 0.7, ink, 0});
    block_.elements.push_back(
        Line{{plot_.x, plot_.bottom()}, {plot_.right(), plot_.bottom()}, 0.7, ink, 0});
    std::vector<Points> taken;
    if (curve_.window) {
      put_level(value(curve_.window->high), taken);
      put_level(value(curve_.window->low), taken);
    }
    const double step = round_step((high_ - low_) * line_ * 1.6 / plot_.height);
    for (double v = std::ceil(low_ / step) * step; v < high_; v += step) put_level(v, taken);
    draw_clock();
  }

  // The figure of a level at the axis, unless another one stands there.
  void put_level(double v, std::vector<Points>& taken) {
    const Points at = y(v);
    if (at < plot_.y || at > plot_.bottom()) return;
    for (const Points other : taken) {
      if (std::abs(other - at) < line_ * 0.88) return;
    }
    taken.push_back(at);
    block_.elements.push_back(run_at(fonts_, {plot_.x - 4, at + size_.text * 0.36},
                                     std::to_string(std::lround(v)), font_, ink, Align::right));
    block_.elements.push_back(Line{{plot_.x - 2.5, at}, {plot_.x, at}, 0.5, ink, 0});
  }

  std::string clock(Instant at) const {
    const bool days = span_ > 24 * 3600;
    return (days ? to_text(at, look_.zone).substr(0, 3) + " " : "") + clock_text(at, look_.zone);
  }

  void draw_clock() {
    const double wide = fonts_.width(clock(start_), font_) + size_.text;
    const double least_s = span_ * wide / plot_.width;
    constexpr std::array<int, 12> steps{60,   300,   600,   900,   1800,  3600,
                                        7200, 10800, 21600, 43200, 86400, 172800};
    const auto fits = std::find_if(steps.begin(), steps.end(), [&](int s) { return s >= least_s; });
    const int step = fits == steps.end() ? steps.back() * 8 : *fits;
    Points free_from = 0;
    for (Instant at = start_; at <= points_.back().at; at += std::chrono::seconds(1)) {
      at = next_mark(at, step);
      if (at > points_.back().at) break;
      const TextRun run = run_at(fonts_, {x(at), plot_.bottom() + line_ * 0.95}, clock(at), font_,
                                 ink, Align::centre);
      const bool inside = run.baseline.x >= free_from && run.baseline.x + run.width <= size_.width;
      block_.elements.push_back(
          Line{{x(at), plot_.bottom()}, {x(at), plot_.bottom() + 2}, 0.5, ink, 0});
      if (!inside) continue;
      block_.elements.push_back(run);
      free_from = run.baseline.x + run.width + size_.text / 2;
    }
  }

  // The first moment from `at` on that is a whole number of steps after midnight by the wall clock.
  Instant next_mark(Instant at, int step) const {
    const auto since = std::chrono::seconds(look_.zone.clock_of(at)).count();
    const auto whole = date::floor<std::chrono::minutes>(at);
    const auto odd = (at - whole).count();
    const long past = static_cast<long>(since + odd) % step;
    return past == 0 ? at : at + std::chrono::seconds(step - past);
  }

  // The curve, cut where it dives below the foot of the chart.
  void draw_curve() {
    std::vector<Place> piece;
    for (std::size_t i = 0; i < points_.size(); ++i) {
      const double v = value(points_[i].temperature);
      if (i > 0 && (v < low_) != (value(points_[i - 1].temperature) < low_)) {
        piece.push_back(foot_between(points_[i - 1], points_[i]));
        if (v < low_) put_piece(piece);
      }
      if (v >= low_) piece.push_back({x(points_[i].at), y(v)});
    }
    put_piece(piece);
  }

  Place foot_between(const CurvePoint& a, const CurvePoint& b) const {
    const double va = value(a.temperature);
    const double part = (low_ - va) / (value(b.temperature) - va);
    return {x(a.at) + part * (x(b.at) - x(a.at)), plot_.bottom()};
  }

  void put_piece(std::vector<Place>& piece) {
    if (piece.size() > 1) {
      drawn_.push_back(piece);
      block_.elements.push_back(Polyline{piece, kind_ == CurveKind::recorded ? 1.1 : 0.5, ink, 0});
    }
    piece.clear();
  }

  // White under it, so that it stands out from the thick line that it lies on.
  void draw_fitted() {
    for (const FittedStretch& stretch : curve_.fitted) {
      std::vector<Place> line;
      for (const CurvePoint& p : thinned(stretch.points, static_cast<std::size_t>(size_.width)))
        if (value(p.temperature) >= low_) line.push_back({x(p.at), y(value(p.temperature))});
      if (line.size() < 2) continue;
      block_.elements.push_back(Polyline{line, 2.2, bare_paper, 0});
      block_.elements.push_back(Polyline{line, 1.0, ink, 3});
      drawn_.push_back(std::move(line));
    }
  }

  double value_at(Instant at) const {
    const auto after =
        std::lower_bound(points_.begin(), points_.end(), at,
                         [](const CurvePoint& p, Instant moment) { return p.at < moment; });
    if (after == points_.begin()) return value(points_.front().temperature);
    if (after == points_.end()) return value(points_.back().temperature);
    const auto before = after - 1;
    const auto length = static_cast<double>((after->at - before->at).count());
    const double part = static_cast<double>((at - before->at).count()) / length;
    return value(before->temperature) +
           part * (value(after->temperature) - value(before->temperature));
  }

  void draw_marks() {
    LabelPlace place({plot_.x + 1, plot_.y, plot_.width - 1, plot_.height - 1});
    for (const std::vector<Place>& line : drawn_) place.keep_clear_of(line);
    const Font bold = sans(size_.text, Weight::bold);
    for (const CurveMark& mark : curve_.marks) {
      const double v = value_at(mark.at);
      const TextRun run = run_at(fonts_, {0, 0}, mark.text, bold);
      const bool shown = mark.at >= start_ && mark.at <= points_.back().at && v >= low_;
      const Place anchor{x(mark.at), y(std::max(low_, v))};
      const auto box = shown ? place.take(anchor, 3, run.width + 2, line_) : std::nullopt;
      if (shown) {
        block_.elements.push_back(Circle{anchor, 1.4, {false, 0, ink, true, ink}});
        place.keep_clear_of(Box{anchor.x - 1.5, anchor.y - 1.5, 3, 3});
      }
      if (box) {
        block_.elements.push_back(moved(run, box->x + 1, box->y + line_ * 0.76));
      } else {
        notes_.push_back(mark.text + " at " + clock_text(mark.at, look_.zone));
      }
    }
  }

  void draw_notes() {
    std::string words = std::string(unit_name(look_.temperature)) + " by the clock";
    if (cut_) words += ", from " + std::to_string(std::lround(low_)) + " up";
    words += ".";
    for (std::size_t i = 0; i < notes_.size(); ++i) {
      words += " " + notes_[i] + (i + 1 < notes_.size() ? "," : ".");
    }
    for (const FittedStretch& stretch : curve_.fitted) words += " Dashed, " + stretch.text + ".";
    Flow flow = paragraph(fonts_, {{words, font_, second_ink}}, plot_.width, line_);
    for (const Block& line : flow) {
      for (const Element& e : line.elements) {
        block_.elements.push_back(moved(e, plot_.x, block_.height));
      }
      block_.height += line.height;
    }
  }

  const FontBook& fonts_;
  const Curve& curve_;
  CurveKind kind_;
  const Look& look_;
  ChartSize size_;
  Font font_;
  std::vector<CurvePoint> points_;
  Points line_ = 11;
  Box plot_;
  Instant start_{};
  double span_ = 1;
  double low_ = 0;
  double high_ = 1;
  bool cut_ = false;
  Block block_;
  std::vector<std::vector<Place>> drawn_;
  std::vector<std::string> notes_;
};

}  // namespace

std::vector<CurvePoint> thinned(const std::vector<CurvePoint>& points, std::size_t buckets) {
  if (points.size() <= 4 * buckets || buckets == 0) return points;
  std::vector<CurvePoint> kept;
  for (std::size_t b = 0; b < buckets; ++b) {
    const auto begin = points.begin() + static_cast<std::ptrdiff_t>(points.size() * b / buckets);
    const auto end =
        points.begin() + static_cast<std::ptrdiff_t>(points.size() * (b + 1) / buckets);
    const auto cooler = [](const CurvePoint& a, const CurvePoint& c) {
      return a.temperature < c.temperature;
    };
    const auto [lowest, highest] = std::minmax_element(begin, end, cooler);
    std::array<std::vector<CurvePoint>::const_iterator, 4> picks{begin, lowest, highest, end - 1};
    std::sort(picks.begin(), picks.end());
    const auto last = std::unique(picks.begin(), picks.end());
    for (auto pick = picks.begin(); pick != last; ++pick) kept.push_back(**pick);
  }
  return kept;
}

Block curve_chart(const FontBook& fonts, const Curve& curve, CurveKind kind, const Look& look,
                  const ChartSize& size) {
  return Chart(fonts, curve, kind, look, size).draw();
}

}  // namespace tangmark::reports
