// SPDX-License-Identifier: MIT
#include <array>
#include <cmath>
#include <cstdio>

#include "reports/certificate_parts.h"
#include "reports/label_place.h"
#include "reports/paragraph.h"

namespace tangmark::reports {

namespace {

constexpr Points outline_height = 49.5;

std::string reading_text(double hrc) {
  std::array<char, 16> text{};
  std::snprintf(text.data(), text.size(), "%.1f", hrc);
  return text.data();
}

// Points of a quadratic curve from `from` to `to`, drawn towards `pull`.
void bend(std::vector<Place>& places, Place from, Place pull, Place to) {
  constexpr int steps = 24;
  for (int i = 0; i <= steps; ++i) {
    const double t = static_cast<double>(i) / steps;
    const double a = (1 - t) * (1 - t);
    const double b = 2 * (1 - t) * t;
    const double c = t * t;
    places.push_back({a * from.x + b * pull.x + c * to.x, a * from.y + b * pull.y + c * to.y});
  }
}

// The height of the outline at this part of its length: spine and edge, 0 at the top of the box.
std::array<double, 2> spine_and_edge(double along) {
  const double spine = 0.02 + 0.30 * along * along;
  const double edge = 1.0 - 0.68 * along * along;
  return {spine, edge};
}

Place place_of(const HardnessPlace& reading, const Box& box) {
  const auto [spine, edge] = spine_and_edge(reading.along);
  return {box.x + box.width * (0.02 + 0.98 * reading.along),
          box.y + box.height * (edge - reading.up * (edge - spine))};
}

Block outline_block(const CertificateSetting& set, const std::vector<HardnessPlace>& readings,
                    Points width, std::string& unplaced) {
  Block block = blank(outline_height);
  const Box box{1, 2, width - 2, outline_height - 6};
  const std::vector<Place> outline = blade_outline(box);
  block.elements.push_back(Polygon{outline, {true, 1.0, ink, false, paper_white}});
  LabelPlace place({0, 0, width, outline_height});
  place.keep_clear_of(outline);
  for (const HardnessPlace& reading : readings) {
    const Place at = place_of(reading, box);
    place.keep_clear_of(Box{at.x - 2, at.y - 2, 4, 4});
  }
  for (const HardnessPlace& reading : readings) {
    const Place at = place_of(reading, box);
    block.elements.push_back(Circle{at, 1.8, {false, 0, ink, true, ink}});
    const TextRun run = run_at(set.fonts, {0, 0}, reading_text(reading.hrc), set.type.table_bold);
    if (const auto found = place.take(at, 3.2, run.width, 10)) {
      block.elements.push_back(moved(run, found->x, found->y + 7.8));
    } else {
      unplaced += (unplaced.empty() ? "" : ", ") + run.text;
    }
  }
  return block;
}

}  // namespace

std::vector<Place> blade_outline(const Box& box) {
  const auto at = [&](double x, double y) {
    return Place{box.x + box.width * x, box.y + box.height * y};
  };
  std::vector<Place> places{at(0.0, 0.02)};
  bend(places, at(0.02, 0.02), at(0.52, 0.02), at(1.0, 0.32));
  bend(places, at(1.0, 0.32), at(0.54, 1.0), at(0.02, 1.0));
  places.push_back(at(0.0, 0.5));
  return places;
}

Flow hardness_part(const CertificateSetting& set, const Hardness& hardness, Points width) {
  Flow flow = part_heading(set, "Hardness on this blade", width);
  std::string words = hardness.note;
  if (!hardness.readings.empty()) {
    std::string unplaced;
    flow.push_back(marked(outline_block(set, hardness.readings, width, unplaced), Role::figure,
                          "The readings at their places on the outline of the blade"));
    flow.back().keep_with_next = true;
    if (!unplaced.empty()) words += " Also read, for want of room: " + unplaced + ".";
  } else if (words.empty()) {
    words = "Not measured.";
  }
  append(flow, paragraph(set.fonts, {{words, set.type.table, ink}}, width, set.type.leading));
  return flow;
}

}  // namespace tangmark::reports
