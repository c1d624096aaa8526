// SPDX-License-Identifier: MIT
#include "page_proof.h"

#include <cmath>

#include "reports/block.h"
#include "reports/label_place.h"

namespace tangmark::reports::samples {

namespace {

constexpr Points unprinted_margin = 8;  // common practice: most printers leave 3 to 5 mm white
constexpr Points hair = 0.35;

Box shrunk(const Box& box, Points by) {
  return {box.x + by, box.y + by, box.width - 2 * by, box.height - 2 * by};
}

bool within(const Box& inner, const Box& outer) {
  return inner.x >= outer.x && inner.y >= outer.y && inner.right() <= outer.right() &&
         inner.bottom() <= outer.bottom();
}

std::vector<Place> strokes(const Element& element) {
  if (const auto* line = std::get_if<Line>(&element)) return {line->from, line->to};
  if (const auto* line = std::get_if<Polyline>(&element)) return line->places;
  if (const auto* shape = std::get_if<Polygon>(&element)) {
    std::vector<Place> places = shape->places;
    if (!places.empty()) places.push_back(places.front());
    return places;
  }
  if (const auto* shape = std::get_if<Rectangle>(&element); shape && shape->paint.stroked) {
    const Box& b = shape->box;
    return {{b.x, b.y}, {b.right(), b.y}, {b.right(), b.bottom()}, {b.x, b.bottom()}, {b.x, b.y}};
  }
  return {};
}

bool fills(const Element& element) {
  if (const auto* r = std::get_if<Rectangle>(&element)) return r->paint.filled;
  if (const auto* c = std::get_if<Circle>(&element)) return c->paint.filled;
  if (const auto* p = std::get_if<Polygon>(&element)) return p->paint.filled;
  return std::holds_alternative<PlacedPicture>(element);
}

class PageProof {
 public:
  PageProof(const Page& page, const FontBook& fonts, std::string name,
            std::vector<std::string>& faults)
      : page_(page), fonts_(fonts), name_(std::move(name)), faults_(faults) {}

  void read() {
    for (std::size_t i = 0; i < page_.elements.size(); ++i) {
      inside_page(page_.elements[i]);
      if (std::holds_alternative<PlacedQr>(page_.elements[i])) quiet(i);
      if (std::holds_alternative<TextRun>(page_.elements[i])) text(i);
    }
  }

 private:
  void fault(const std::string& what) { faults_.push_back(name_ + ": " + what); }

  void inside_page(const Element& element) {
    const Box paper{unprinted_margin, unprinted_margin, page_.width - 2 * unprinted_margin,
                    page_.height - 2 * unprinted_margin};
    const auto* run = std::get_if<TextRun>(&element);
    if (!within(shrunk(cover(element), 0.01), paper)) {
      fault(run ? "leaves the page: " + run->text : "a shape leaves the page");
    }
  }

  void quiet(std::size_t i) {
    const auto& code = std::get<PlacedQr>(page_.elements[i]);
    const Points quiet = 4 * code.box.width / code.modules.across;
    const Box zone = shrunk(code.box, -quiet);
    for (std::size_t k = 0; k < page_.elements.size(); ++k) {
      if (k == i) continue;
      const auto places = strokes(page_.elements[k]);
      for (std::size_t s = 1; s < places.size(); ++s) {
        if (crosses(places[s - 1], places[s], shrunk(zone, hair)))
          fault("a line in a code's margin");
      }
      const auto* run = std::get_if<TextRun>(&page_.elements[k]);
      if (run && overlap(cover(*run), zone, hair)) fault("text in a code's margin: " + run->text);
    }
  }

  void text(std::size_t i) {
    const auto& run = std::get<TextRun>(page_.elements[i]);
    if (run.text.empty() || run.text.find('\n') != std::string::npos) fault("an odd run of text");
    if (std::abs(run.width - fonts_.width(run.text, run.font)) > 0.01) {
      fault("a width that is not the font's: " + run.text);
    }
    if (fonts_.unprintable(run.text, "text")) fault("not in the font: " + run.text);
    const Box box = cover(run);
    for (std::size_t k = 0; k < page_.elements.size(); ++k) {
      if (k != i) against(i, run, box, k);
    }
  }

  void against(std::size_t i, const TextRun& run, const Box& box, std::size_t k) {
    const Element& other = page_.elements[k];
    if (const auto* text = std::get_if<TextRun>(&other)) {
      if (k > i && overlap(box, cover(other), hair)) {
        fault("“" + run.text + "” over “" + text->text + "”");
      }
      return;
    }
    if (k > i && fills(other) && overlap(box, cover(other), hair)) {
      fault("painted over: " + run.text);
    }
    if (std::holds_alternative<PlacedPicture>(other) && overlap(box, cover(other), hair)) {
      fault("a picture under: " + run.text);
    }
    const std::vector<Place> places = strokes(other);
    for (std::size_t s = 1; s < places.size(); ++s) {
      if (crosses(places[s - 1], places[s], shrunk(box, hair)) && !hidden(k, i, box)) {
        fault("a stroke through: " + run.text);
        return;
      }
    }
  }

  // A box painted after the stroke and before the text hides the stroke under the text.
  bool hidden(std::size_t stroke, std::size_t text, const Box& box) const {
    for (std::size_t k = stroke + 1; k < text; ++k) {
      const auto* cover_box = std::get_if<Rectangle>(&page_.elements[k]);
      if (cover_box && cover_box->paint.filled && within(shrunk(box, 1), cover_box->box))
        return true;
    }
    return false;
  }

  const Page& page_;
  const FontBook& fonts_;
  std::string name_;
  std::vector<std::string>& faults_;
};

}  // namespace

std::vector<std::string> faults_of(const Document& document, const FontBook& fonts) {
  std::vector<std::string> faults;
  for (std::size_t i = 0; i < document.pages.size(); ++i) {
    PageProof(document.pages[i], fonts, "page " + std::to_string(i + 1), faults).read();
  }
  return faults;
}

}  // namespace tangmark::reports::samples
