// SPDX-License-Identifier: MIT
#include "reports/block.h"

#include <algorithm>
#include <utility>

#include "reports/font_book.h"

namespace tangmark::reports {

namespace {

struct Mover {
  Points right;
  Points down;
  void move(Place& p) const {
    p.x += right;
    p.y += down;
  }
  void move(Box& b) const {
    b.x += right;
    b.y += down;
  }
  void move(std::vector<Place>& places) const {
    for (Place& p : places) move(p);
  }
  void operator()(TextRun& e) const { move(e.baseline); }
  void operator()(Line& e) const {
    move(e.from);
    move(e.to);
  }
  void operator()(Rectangle& e) const { move(e.box); }
  void operator()(Circle& e) const { move(e.centre); }
  void operator()(Polyline& e) const { move(e.places); }
  void operator()(Polygon& e) const { move(e.places); }
  void operator()(PlacedPicture& e) const { move(e.box); }
  void operator()(PlacedQr& e) const { move(e.box); }
};

Box around(const std::vector<Place>& places) {
  if (places.empty()) return {};
  Place low = places.front();
  Place high = places.front();
  for (const Place& p : places) {
    low = {std::min(low.x, p.x), std::min(low.y, p.y)};
    high = {std::max(high.x, p.x), std::max(high.y, p.y)};
  }
  return {low.x, low.y, high.x - low.x, high.y - low.y};
}

// Figures and plain capitals have no accents above and nothing below the line.
bool plain_tall(const std::string& text) {
  return std::all_of(text.begin(), text.end(), [](char c) {
    return (c >= '0' && c <= '9') || (c >= 'A' && c <= 'P') || (c >= 'R' && c <= 'Z') || c == ' ' ||
           c == '-' || c == '.';
  });
}

struct Coverer {
  Box operator()(const TextRun& e) const {
    const bool plain = plain_tall(e.text);
    const Points up = plain ? 0.76 * e.font.size : FontBook::ascent(e.font);
    const Points down = plain ? 0.02 * e.font.size : FontBook::descent(e.font);
    return {e.baseline.x, e.baseline.y - up, e.width, up + down};
  }
  Box operator()(const Line& e) const { return around({e.from, e.to}); }
  Box operator()(const Rectangle& e) const { return e.box; }
  Box operator()(const Circle& e) const {
    return {e.centre.x - e.radius, e.centre.y - e.radius, 2 * e.radius, 2 * e.radius};
  }
  Box operator()(const Polyline& e) const { return around(e.places); }
  Box operator()(const Polygon& e) const { return around(e.places); }
  Box operator()(const PlacedPicture& e) const { return e.box; }
  Box operator()(const PlacedQr& e) const { return e.box; }
};

}  // namespace

Element moved(Element element, Points right, Points down) {
  std::visit(Mover{right, down}, element);
  return element;
}

Box cover(const Element& element) {
  return std::visit(Coverer{}, element);
}

void append(Flow& flow, Flow more) {
  flow.insert(flow.end(), std::make_move_iterator(more.begin()),
              std::make_move_iterator(more.end()));
}

void put_into(Block& block, const Block& other, Points right, Points down) {
  const std::size_t before = block.elements.size();
  for (const Element& e : other.elements) block.elements.push_back(moved(e, right, down));
  for (Mark mark : other.marks) {
    mark.first += before;
    block.marks.push_back(std::move(mark));
  }
}

Block marked(Block block, Role role, std::string words) {
  Mark mark;
  mark.role = role;
  mark.count = block.elements.size();
  mark.words = std::move(words);
  block.marks = {std::move(mark)};
  return block;
}

Block blank(Points height) {
  Block block;
  block.height = height;
  return block;
}

Points height_of(const Flow& flow) {
  Points sum = 0;
  for (std::size_t i = 0; i < flow.size(); ++i) {
    sum += flow[i].height + (i == 0 ? 0 : flow[i].space_before);
  }
  return sum;
}

Block glued(const Flow& flow) {
  Block whole;
  for (std::size_t i = 0; i < flow.size(); ++i) {
    if (i != 0) whole.height += flow[i].space_before;
    if (whole.outline.empty()) whole.outline = flow[i].outline;
    put_into(whole, flow[i], 0, whole.height);
    whole.height += flow[i].height;
  }
  if (!flow.empty()) whole.space_before = flow.front().space_before;
  return whole;
}

}  // namespace tangmark::reports
