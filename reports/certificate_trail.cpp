// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>
#include <optional>

#include "reports/certificate_parts.h"
#include "reports/paragraph.h"
#include "reports/table.h"

namespace tangmark::reports {

namespace {

constexpr Points box_gap = 13;       // between columns, for the connecting lines
constexpr Points row_gap = 8;        // between boxes above each other
constexpr Points inside = 5;         // between a box and its text
constexpr Points least_column = 62;  // narrower boxes break every word
constexpr Points most_height = 330;
constexpr Points small_leading = 9.5;

class Tree {
 public:
  Tree(const CertificateSetting& set, const std::vector<TrailBox>& trail, Points width)
      : set_(set), trail_(trail), width_(width) {
    find_columns();
    find_widths();
  }

  /// None when the tree is too wide or too high to be drawn.
  std::optional<Block> draw() {
    if (*std::min_element(widths_.begin(), widths_.end()) < least_column) return std::nullopt;
    for (std::size_t i = 0; i < trail_.size(); ++i) texts_.push_back(text_of(i));
    middle_.assign(trail_.size(), -1);
    for (std::size_t i = trail_.size(); i-- > 0;) {
      if (used_[i] == 0 && middle_[i] < 0) place(i);
    }
    if (next_y_ > most_height) return std::nullopt;
    spread_columns();
    level_single_lines();
    if (lowest() > most_height) return std::nullopt;
    Block block = blank(lowest());
    for (std::size_t i = 0; i < trail_.size(); ++i) put_lines(block, i);
    for (std::size_t i = 0; i < trail_.size(); ++i) put_box(block, i);
    return block;
  }

 private:
  // A box stands one column left of the leftmost box made of it.
  void find_columns() {
    std::vector<std::size_t> from_end(trail_.size(), 0);
    used_.assign(trail_.size(), 0);
    for (std::size_t i = trail_.size(); i-- > 0;) {
      for (const std::size_t parent : trail_[i].from) {
        from_end[parent] = std::max(from_end[parent], from_end[i] + 1);
        ++used_[parent];
      }
    }
    const std::size_t deepest = *std::max_element(from_end.begin(), from_end.end());
    columns_ = deepest + 1;
    for (const std::size_t back : from_end) column_.push_back(deepest - back);
  }

  Points natural(std::size_t i) const {
    const FontBook& fonts = set_.fonts;
    Points widest = fonts.width(trail_[i].title, set_.type.table_bold);
    if (last(i)) widest = fonts.width(trail_[i].title, sans(17, Weight::bold)) * 0.6;
    for (const std::string& line : trail_[i].lines) {
      widest = std::max(widest, fonts.width(line, set_.type.note));
    }
    return std::max(widest + 2 * inside + 1, least_column);
  }

  // Each column as wide as its text wants; where that is too much, the widest give way.
  void find_widths() {
    widths_.assign(columns_, least_column);
    for (std::size_t i = 0; i < trail_.size(); ++i) {
      widths_[column_[i]] = std::max(widths_[column_[i]], natural(i));
    }
    const Points room = width_ - box_gap * static_cast<double>(columns_ - 1);
    const Points cap = width_cap(widths_, room);
    Points taken = 0;
    for (Points& w : widths_) taken += w = std::min(w, cap);
    const Points spare = std::clamp((room - taken) / static_cast<double>(columns_), 0.0, 14.0);
    for (Points& w : widths_) w += spare;
  }

  bool last(std::size_t i) const { return i + 1 == trail_.size(); }

  Flow text_of(std::size_t i) const {
    const TrailBox& box = trail_[i];
    const Points width = widths_[column_[i]] - 2 * inside;
    const Grey grey = last(i) ? paper_white : ink;
    Flow flow = title_of(box, width, grey, last(i));
    for (const std::string& line : box.lines) {
      append(flow, paragraph(set_.fonts, {{line, set_.type.note, grey}}, width, small_leading));
    }
    return flow;
  }

  // The last box is the thing itself: its number stands large, as it is stamped.
  Flow title_of(const TrailBox& box, Points width, Grey grey, bool large) const {
    const std::size_t space = box.title.find(' ');
    if (!large || space == std::string::npos) {
      return paragraph(set_.fonts, {{box.title, set_.type.table_bold, grey}}, width,
                       small_leading + 0.5);
    }
    Flow flow = paragraph(set_.fonts, {{box.title.substr(0, space), set_.type.table_bold, grey}},
                          width, small_leading + 0.5);
    append(flow,
           paragraph(set_.fonts, {{box.title.substr(space + 1), sans(17, Weight::bold), grey}},
                     width, 22));
    return flow;
  }

  Points height(std::size_t i) const { return height_of(texts_[i]) + 2 * inside - 1; }

  // What a box is made of comes first; it stands at their middle.
  void place(std::size_t i) {
    const auto& from = trail_[i].from;
    Points sum = 0;
    std::size_t placed = 0;
    for (const std::size_t parent : from) {
      if (middle_[parent] < 0) place(parent);
      sum += middle_[parent];
      ++placed;
    }
    if (placed > 0) {
      middle_[i] = sum / static_cast<double>(placed);
      return;
    }
    middle_[i] = next_y_ + height(i) / 2;
    next_y_ += height(i) + row_gap;
  }

  // Boxes of one column that would touch are moved down, and all up again if one left the top.
  void spread_columns() {
    for (std::size_t c = 0; c < columns_; ++c) {
      std::vector<std::size_t> inside_column;
      for (std::size_t i = 0; i < trail_.size(); ++i) {
        if (column_[i] == c) inside_column.push_back(i);
      }
      std::stable_sort(inside_column.begin(), inside_column.end(),
                       [&](std::size_t a, std::size_t b) { return middle_[a] < middle_[b]; });
      Points free_from = 0;
      for (const std::size_t i : inside_column) {
        middle_[i] = std::max(middle_[i], free_from + height(i) / 2);
        free_from = middle_[i] + height(i) / 2 + row_gap;
      }
    }
  }

  // A box that alone made another stands level with it, so that the line between them is straight.
  void level_single_lines() {
    for (std::size_t i = trail_.size(); i-- > 0;) {
      const auto& from = trail_[i].from;
      if (from.size() != 1 || used_[from[0]] != 1) continue;
      const auto alone = std::count(column_.begin(), column_.end(), column_[from[0]]) == 1;
      if (alone && middle_[i] >= height(from[0]) / 2) middle_[from[0]] = middle_[i];
    }
  }

  Points lowest() const {
    Points low = 0;
    for (std::size_t i = 0; i < trail_.size(); ++i) {
      low = std::max(low, middle_[i] + height(i) / 2);
    }
    return low;
  }

  Points left(std::size_t i) const {
    Points x = 0;
    for (std::size_t c = 0; c < column_[i]; ++c) x += widths_[c] + box_gap;
    return x;
  }

  void put_lines(Block& block, std::size_t i) const {
    for (const std::size_t parent : trail_[i].from) {
      const Points from = left(parent) + widths_[column_[parent]];
      const Points to = left(i);
      const Points bend = to - box_gap / 2;
      block.elements.push_back(Polyline{
          {{from, middle_[parent]}, {bend, middle_[parent]}, {bend, middle_[i]}, {to, middle_[i]}},
          0.8,
          ink,
          0});
    }
  }

  void put_box(Block& block, std::size_t i) const {
    const Box box{left(i), middle_[i] - height(i) / 2, widths_[column_[i]], height(i)};
    block.elements.push_back(
        Rectangle{box, {true, last(i) ? 0.8 : 0.6, ink, true, last(i) ? ink : paper_white}});
    Points y = box.y + inside - 0.5;
    for (const Block& line : texts_[i]) {
      for (const Element& e : line.elements) block.elements.push_back(moved(e, box.x + inside, y));
      y += line.height;
    }
  }

  const CertificateSetting& set_;
  const std::vector<TrailBox>& trail_;
  Points width_;
  std::size_t columns_ = 1;
  std::vector<Points> widths_;
  std::vector<std::size_t> column_;
  std::vector<std::size_t> used_;
  std::vector<Flow> texts_;
  std::vector<Points> middle_;
  Points next_y_ = 0;
};

std::string sources(const std::vector<TrailBox>& trail, const TrailBox& box) {
  std::string words;
  for (const std::size_t parent : box.from) {
    words += (words.empty() ? " from " : ", ") + trail[parent].title;
  }
  return words;
}

Flow as_sentences(const CertificateSetting& set, const std::vector<TrailBox>& trail, Points width) {
  Flow flow;
  for (const TrailBox& box : trail) {
    std::string rest = sources(trail, box);
    for (const std::string& line : box.lines) rest += (rest.empty() ? " " : "; ") + line;
    Flow lines = paragraph(
        set.fonts, {{box.title, set.type.table_bold, ink}, {rest + ".", set.type.table, ink}},
        width, set.type.leading);
    append(flow, std::move(lines));
  }
  return flow;
}

}  // namespace

Flow trail_part(const CertificateSetting& set, const std::vector<TrailBox>& trail,
                const std::string& note, Points width) {
  Flow flow = part_heading(set, "The steel and its trail", width);
  if (trail.empty()) {
    const std::string words = note.empty() ? "No trail of the steel is on record." : note;
    append(flow, paragraph(set.fonts, {{words, set.type.text, ink}}, width, set.type.leading));
    return flow;
  }
  if (auto tree = Tree(set, trail, width).draw()) {
    tree->height = set.type.half() * std::ceil(tree->height / set.type.half());
    flow.push_back(marked(std::move(*tree), Role::figure, "The steel from the lots to the blade"));
  } else {
    append(flow, as_sentences(set, trail, width));
  }
  return flow;
}

}  // namespace tangmark::reports
