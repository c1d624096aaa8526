// SPDX-License-Identifier: MIT
#include "reports/page_text.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <vector>

#include "reports/block.h"

namespace tangmark::reports {

namespace {

std::string tenth(Points at) {
  const double rounded = std::round(at * 10) / 10;
  std::array<char, 32> text{};
  std::snprintf(text.data(), text.size(), "%.1f", rounded == 0 ? 0.0 : rounded);
  return text.data();
}

std::string face_name(const Font& font) {
  std::string name = font.face == Face::serif ? "serif" : font.face == Face::sans ? "sans" : "mono";
  if (font.weight == Weight::bold) name += " bold";
  if (font.slant == Slant::italic) name += " italic";
  return name + " " + tenth(font.size);
}

struct KindName {
  const char* operator()(const TextRun&) const { return "text"; }
  const char* operator()(const Line&) const { return "line"; }
  const char* operator()(const Rectangle&) const { return "rectangle"; }
  const char* operator()(const Circle&) const { return "circle"; }
  const char* operator()(const Polyline&) const { return "polyline"; }
  const char* operator()(const Polygon&) const { return "polygon"; }
  const char* operator()(const PlacedPicture&) const { return "picture"; }
  const char* operator()(const PlacedQr&) const { return "qr"; }
};

std::string shape_line(const Element& element) {
  const Box box = cover(element);
  return std::string(std::visit(KindName{}, element)) + " " + tenth(box.x) + " " + tenth(box.y) +
         " " + tenth(box.width) + " " + tenth(box.height) + "\n";
}

std::vector<const TextRun*> runs_in_order(const Page& page) {
  std::vector<const TextRun*> runs;
  for (const auto* layer : {&page.underlay, &page.elements}) {
    for (const Element& element : *layer) {
      if (const auto* run = std::get_if<TextRun>(&element)) runs.push_back(run);
    }
  }
  std::stable_sort(runs.begin(), runs.end(), [](const TextRun* a, const TextRun* b) {
    const long ay = std::lround(a->baseline.y * 10);
    const long by = std::lround(b->baseline.y * 10);
    return ay != by ? ay < by : a->baseline.x < b->baseline.x;
  });
  return runs;
}

}  // namespace

std::string page_text(const Document& document) {
  std::string out = "title | " + document.title + "\nauthor | " + document.author + "\nsubject | " +
                    document.subject + "\n";
  for (const OutlineEntry& entry : document.outline) {
    out += "outline " + std::to_string(entry.page + 1) + " | " + entry.title + "\n";
  }
  for (std::size_t i = 0; i < document.pages.size(); ++i) {
    const Page& page = document.pages[i];
    out += "page " + std::to_string(i + 1) + " of " + std::to_string(document.pages.size()) + ", " +
           tenth(page.width) + " x " + tenth(page.height) + "\n";
    for (const TextRun* run : runs_in_order(page)) {
      out += tenth(run->baseline.x) + " " + tenth(run->baseline.y) + " " + face_name(run->font) +
             " | " + run->text + "\n";
    }
    for (const Element& element : page.elements) {
      if (!std::holds_alternative<TextRun>(element)) out += shape_line(element);
    }
  }
  return out;
}

std::string words_of(const Document& document) {
  std::string out;
  for (const Page& page : document.pages) {
    for (const TextRun* run : runs_in_order(page)) out += run->text + "\n";
  }
  return out;
}

}  // namespace tangmark::reports
