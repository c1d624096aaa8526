// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <variant>
#include <vector>

#include "domain/measure/when.h"

namespace tangmark::reports {

/// A length on paper: 1/72 in. Every place on a page is counted from its top left corner, x to the
/// right and y down, so that the writers and the screen draw the very same page.
using Points = double;

struct Place {
  Points x = 0;
  Points y = 0;
  friend bool operator==(const Place&, const Place&) = default;
};

struct Box {
  Points x = 0;
  Points y = 0;
  Points width = 0;
  Points height = 0;
  Points right() const { return x + width; }
  Points bottom() const { return y + height; }
  friend bool operator==(const Box&, const Box&) = default;
};

/// Documents are ink and grey only, so that a copy stays true. 0 is black, 255 is paper.
struct Grey {
  std::uint8_t level = 30;
  friend bool operator==(Grey, Grey) = default;
};
inline constexpr Grey ink{30};
inline constexpr Grey second_ink{92};  ///< units, captions: contrast 6.7 on white
inline constexpr Grey rule_grey{190};
inline constexpr Grey band_grey{205};
inline constexpr Grey paper_white{255};

enum class Face { serif, sans, mono };
enum class Weight { regular, bold };
enum class Slant { upright, italic };

struct Font {
  Face face = Face::sans;
  Weight weight = Weight::regular;
  Slant slant = Slant::upright;
  Points size = 8.5;
  friend bool operator==(const Font&, const Font&) = default;
};

/// One line of text of one font. `width` is what the real font takes, so that nobody after the
/// layout has to measure. `turn_degrees` turns it anticlockwise about its start.
struct TextRun {
  Place baseline;
  std::string text;  ///< UTF-8, no line breaks
  Font font;
  Grey grey = ink;
  Points width = 0;
  double turn_degrees = 0;
  friend bool operator==(const TextRun&, const TextRun&) = default;
};

/// A stroke; `dash` 0 is a whole line, else the length of a dash and of a gap.
struct Line {
  Place from;
  Place to;
  Points width = 0.5;
  Grey grey = ink;
  Points dash = 0;
  friend bool operator==(const Line&, const Line&) = default;
};

/// How a closed shape is drawn: outline, fill or both.
struct Paint {
  bool stroked = true;
  Points width = 0.5;
  Grey stroke = ink;
  bool filled = false;
  Grey fill = paper_white;
  friend bool operator==(const Paint&, const Paint&) = default;
};

struct Rectangle {
  Box box;
  Paint paint;
  friend bool operator==(const Rectangle&, const Rectangle&) = default;
};

struct Circle {
  Place centre;
  Points radius = 0;
  Paint paint;
  friend bool operator==(const Circle&, const Circle&) = default;
};

struct Polyline {
  std::vector<Place> places;
  Points width = 0.5;
  Grey grey = ink;
  Points dash = 0;
  friend bool operator==(const Polyline&, const Polyline&) = default;
};

struct Polygon {
  std::vector<Place> places;
  Paint paint;
  friend bool operator==(const Polygon&, const Polygon&) = default;
};

/// A decoded picture. `rgb` has 3 bytes for each pixel, rows from the top; `alpha` is empty or has
/// one byte for each pixel, 0 clear to 255 solid. See picture.h for reading one from a file.
/// With `jpeg` the PDF holds that very file, so that its digest can be compared; then `rgb` may be
/// empty where nothing is drawn on a screen.
struct Picture {
  int width_px = 0;
  int height_px = 0;
  std::vector<std::uint8_t> rgb;
  std::vector<std::uint8_t> alpha;
  std::string jpeg{};
  friend bool operator==(const Picture&, const Picture&) = default;
};

struct PlacedPicture {
  Box box;
  Picture picture;
  friend bool operator==(const PlacedPicture&, const PlacedPicture&) = default;
};

/// A QR code as its modules, row by row, true for dark; without the quiet margin of 4 modules,
/// which the layout keeps free around it. See qr.h.
struct QrModules {
  int across = 0;
  std::vector<bool> dark;
  friend bool operator==(const QrModules&, const QrModules&) = default;
};

struct PlacedQr {
  Box box;
  QrModules modules;
  friend bool operator==(const PlacedQr&, const PlacedQr&) = default;
};

using Element =
    std::variant<TextRun, Line, Rectangle, Circle, Polyline, Polygon, PlacedPicture, PlacedQr>;

/// What a stretch of elements is to somebody who has the page read out. `decoration` is not read:
/// rules, page numbers, the head of a table set again.
enum class Role { title, heading, paragraph, head_cell, cell, figure, decoration };

/// A stretch of elements and its role. Text without a mark is a paragraph, a drawing without one
/// decoration.
struct Mark {
  Role role = Role::paragraph;
  std::size_t first = 0;
  std::size_t count = 0;
  bool continues = false;    ///< the next line of the paragraph before it
  bool opens_row = false;    ///< the first cell of a row
  bool opens_table = false;  ///< the first cell of a table
  std::string words = {};    ///< of a figure: what it shows
  friend bool operator==(const Mark&, const Mark&) = default;
};

/// One page. Elements are drawn in their order, `underlay` before all others (a watermark). Marks
/// stand in the order of their elements and do not overlap.
struct Page {
  Points width = 0;
  Points height = 0;
  std::vector<Element> underlay;
  std::vector<Element> elements;
  std::vector<Mark> marks{};
  friend bool operator==(const Page&, const Page&) = default;
};

/// An entry of the outline that a reader shows beside the pages.
struct OutlineEntry {
  std::string title;
  std::size_t page = 0;  ///< counted from 0
  Points y = 0;
  friend bool operator==(const OutlineEntry&, const OutlineEntry&) = default;
};

/// A file that travels inside the document, such as the sealed record of a certificate.
struct Attachment {
  std::string name;  ///< plain ASCII file name
  std::string bytes;
  friend bool operator==(const Attachment&, const Attachment&) = default;
};

enum class Paper { a4, letter };

/// A whole document as data: tests read it, the screen previews it, the PDF writer prints it.
struct Document {
  Paper paper = Paper::a4;
  std::string title;
  std::string author;
  std::string subject;
  Instant created{};
  std::vector<Page> pages;
  std::vector<OutlineEntry> outline;
  std::vector<Attachment> attachments;
  friend bool operator==(const Document&, const Document&) = default;
};

}  // namespace tangmark::reports
