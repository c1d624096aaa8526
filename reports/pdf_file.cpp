// SPDX-License-Identifier: MIT
#include "reports/pdf_file.h"

#include <hpdf_catalog.h>
#include <hpdf_doc.h>
#include <hpdf_fontdef.h>
#include <hpdf_namedict.h>
#include <hpdf_objects.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <numbers>

#include "domain/measure/utf8.h"
#include "reports/font_subset.h"
#include "reports/page_failure.h"
#include "reports/unicode_map.h"
#include "reports/picture.h"
#include "reports/xmp.h"

namespace tangmark::reports {

namespace {

constexpr double print_dots_per_inch = 300;
constexpr int print_jpeg_quality = 88;
// A drawing smaller than this is kept as it is, without loss.
constexpr std::size_t small_picture_bytes = 64 * 1024;

float shade(Grey grey) {
  return static_cast<float>(grey.level) / 255.0F;
}

HPDF_Date pdf_date(Instant at) {
  const auto day = date::floor<date::days>(at);
  const date::year_month_day ymd(day);
  const date::hh_mm_ss time(at - day);
  HPDF_Date d{};
  d.year = static_cast<int>(ymd.year());
  d.month = static_cast<int>(static_cast<unsigned>(ymd.month()));
  d.day = static_cast<int>(static_cast<unsigned>(ymd.day()));
  d.hour = static_cast<int>(time.hours().count());
  d.minutes = static_cast<int>(time.minutes().count());
  d.seconds = static_cast<int>(time.seconds().count());
  d.ind = 'Z';
  return d;
}

const HPDF_BYTE* raw(const std::vector<std::uint8_t>& bytes) {
  return bytes.data();
}

}  // namespace

PdfFile::PdfFile(const FontBook& fonts)
    : fonts_(fonts), doc_(HPDF_New(nullptr, nullptr)), tags_(doc_.get()) {
  if (!doc_) throw PageFailure("The PDF could not be begun; the machine is short of memory.");
  HPDF_UseUTFEncodings(doc_.get());
  HPDF_SetCurrentEncoder(doc_.get(), "UTF-8");
  HPDF_SetCompressionMode(doc_.get(), HPDF_COMP_ALL);
  check();
}

void PdfFile::check() const {
  const HPDF_STATUS status = HPDF_GetError(doc_.get());
  if (status == HPDF_OK) return;
  std::array<char, 24> code{};
  std::snprintf(code.data(), code.size(), "0x%04lX", static_cast<unsigned long>(status));
  throw PageFailure(std::string("The PDF could not be made (libharu error ") + code.data() + ").");
}

void PdfFile::describe(const Document& document) {
  HPDF_Doc doc = doc_.get();
  HPDF_SetInfoAttr(doc, HPDF_INFO_TITLE, document.title.c_str());
  HPDF_SetInfoAttr(doc, HPDF_INFO_AUTHOR, document.author.c_str());
  HPDF_SetInfoAttr(doc, HPDF_INFO_SUBJECT, document.subject.c_str());
  HPDF_SetInfoAttr(doc, HPDF_INFO_CREATOR, "Tangmark");
  // The language of the text, for readers that speak it: ISO 32000-1, 14.9.2.
  HPDF_Dict_Add(doc->catalog, "Lang", HPDF_String_New(doc->mmgr, "en", nullptr));
  // The window of a reader is headed by the title, not by the name of the file: 12.2.
  HPDF_Dict shown = HPDF_Dict_New(doc->mmgr);
  HPDF_Dict_Add(shown, "DisplayDocTitle", HPDF_Boolean_New(doc->mmgr, HPDF_TRUE));
  HPDF_Dict_Add(doc->catalog, "ViewerPreferences", shown);
  add_metadata(document);
  HPDF_SetInfoDateAttr(doc, HPDF_INFO_CREATION_DATE, pdf_date(document.created));
  HPDF_SetInfoDateAttr(doc, HPDF_INFO_MOD_DATE, pdf_date(document.created));
  check();
  for (const Page& page : document.pages) {
    for (const Element& element : page.underlay) gather_characters(element);
    for (const Element& element : page.elements) gather_characters(element);
  }
}

void PdfFile::add_metadata(const Document& document) {
  HPDF_Doc doc = doc_.get();
  HPDF_Dict packet = HPDF_DictStream_New(doc->mmgr, doc->xref);
  check();
  HPDF_Dict_AddName(packet, "Type", "Metadata");
  HPDF_Dict_AddName(packet, "Subtype", "XML");
  const std::string words = xmp_packet(document);
  HPDF_Stream_Write(packet->stream, reinterpret_cast<const HPDF_BYTE*>(words.data()),
                    static_cast<HPDF_UINT>(words.size()));
  HPDF_Dict_Add(doc->catalog, "Metadata", packet);
  check();
}

void PdfFile::draw_page(const Page& page) {
  if (!page.underlay.empty()) {
    tags_.open({Role::decoration});
    for (const Element& element : page.underlay) draw(element);
    tags_.close();
  }
  for (const Mark& mark : whole_marks(page)) {
    if (mark.count == 0) {
      tags_.empty_cell(mark);
      continue;
    }
    tags_.open(mark);
    for (std::size_t i = mark.first; i < mark.first + mark.count; ++i) draw(page.elements[i]);
    tags_.close();
  }
  check();
}

void PdfFile::close_tags() {
  tags_.finish();
  check();
}

void PdfFile::start_page(Points width, Points height) {
  page_ = HPDF_AddPage(doc_.get());
  check();
  height_ = height;
  HPDF_Page_SetWidth(page_, static_cast<float>(width));
  HPDF_Page_SetHeight(page_, static_cast<float>(height));
  HPDF_Page_SetLineJoin(page_, HPDF_ROUND_JOIN);
  pages_.push_back(page_);
  tags_.start_page(page_);
  heights_.push_back(height);
}

void PdfFile::draw(const Element& element) {
  std::visit(*this, element);
  check();
}

void PdfFile::gather_characters(const Element& element) {
  const auto* run = std::get_if<TextRun>(&element);
  if (run == nullptr) return;
  for (const FontSegment& segment : fonts_.segments(run->text, run->font)) {
    for (std::string_view rest = segment.text; !rest.empty();) {
      characters_[segment.file].insert(take_code_point(rest));
    }
  }
}

// libharu reads fonts from files only, and takes long over large ones; this gives it the cut from
// memory, as its own loader would.
HPDF_Font PdfFile::font(std::size_t file) {
  if (loaded_[file] != nullptr) return loaded_[file];
  HPDF_Doc doc = doc_.get();
  // libharu looks at the head of every glyph, also of an empty one that begins at the end of the
  // file; the zeros keep it from reading beyond.
  const std::string cut = font_subset(fonts_.path(file), characters_[file]) + std::string(16, '\0');
  HPDF_Stream stream = HPDF_MemStream_New(doc->mmgr, static_cast<HPDF_UINT>(cut.size()));
  check();
  HPDF_Stream_Write(stream, reinterpret_cast<const HPDF_BYTE*>(cut.data()),
                    static_cast<HPDF_UINT>(cut.size()));
  HPDF_FontDef definition = HPDF_TTFontDef_Load(doc->mmgr, stream, HPDF_TRUE);  // owns the stream
  check();
  HPDF_List_Add(doc->fontdef_list, definition);
  // A tag of six capitals, another for each font: ISO 32000-1, 9.6.4.
  std::array<char, 7> tag{"TMFAAA"};
  tag[5] = static_cast<char>('A' + file);
  HPDF_TTFontDef_SetTagName(definition, tag.data());
  loaded_[file] = HPDF_GetFont(doc, definition->base_font, "UTF-8");
  check();
  // libharu's own map holds operators that do not belong into it, and readers complain of them.
  const HPDF_Dict map = static_cast<HPDF_FontAttr>(loaded_[file]->attr)->cmap_stream;
  const std::string used = unicode_map(characters_[file]);
  HPDF_MemStream_FreeData(map->stream);
  HPDF_Stream_Write(map->stream, reinterpret_cast<const HPDF_BYTE*>(used.data()),
                    static_cast<HPDF_UINT>(used.size()));
  check();
  return loaded_[file];
}

void PdfFile::operator()(const TextRun& run) {
  const double turn = run.turn_degrees * std::numbers::pi / 180.0;
  const auto cosine = static_cast<float>(std::cos(turn));
  const auto sine = static_cast<float>(std::sin(turn));
  Points along = 0;
  HPDF_Page_SetGrayFill(page_, shade(run.grey));
  for (const FontSegment& segment : fonts_.segments(run.text, run.font)) {
    HPDF_Font face = font(segment.file);
    HPDF_Page_BeginText(page_);
    HPDF_Page_SetFontAndSize(page_, face, static_cast<float>(run.font.size));
    HPDF_Page_SetTextMatrix(page_, cosine, sine, -sine, cosine,
                            x(run.baseline.x + along * std::cos(turn)),
                            y(run.baseline.y - along * std::sin(turn)));
    HPDF_Page_ShowText(page_, std::string(segment.text).c_str());
    HPDF_Page_EndText(page_);
    along += segment.width;
  }
}

void PdfFile::pen(Points width, Grey grey, Points dash) {
  HPDF_Page_SetLineWidth(page_, static_cast<float>(width));
  HPDF_Page_SetGrayStroke(page_, shade(grey));
  const auto length = static_cast<HPDF_UINT16>(std::lround(dash));
  const std::array<HPDF_UINT16, 2> pattern{length, length};
  HPDF_Page_SetDash(page_, length == 0 ? nullptr : pattern.data(), length == 0 ? 0 : 2, 0);
}

void PdfFile::operator()(const Line& line) {
  pen(line.width, line.grey, line.dash);
  HPDF_Page_MoveTo(page_, x(line.from.x), y(line.from.y));
  HPDF_Page_LineTo(page_, x(line.to.x), y(line.to.y));
  HPDF_Page_Stroke(page_);
}

void PdfFile::close_path(const Paint& paint) {
  if (paint.filled && paint.stroked) {
    HPDF_Page_FillStroke(page_);
  } else if (paint.filled) {
    HPDF_Page_Fill(page_);
  } else if (paint.stroked) {
    HPDF_Page_Stroke(page_);
  } else {
    HPDF_Page_EndPath(page_);
  }
}

void PdfFile::operator()(const Rectangle& rectangle) {
  const Box& box = rectangle.box;
  pen(rectangle.paint.width, rectangle.paint.stroke, 0);
  HPDF_Page_SetGrayFill(page_, shade(rectangle.paint.fill));
  HPDF_Page_Rectangle(page_, x(box.x), y(box.bottom()), static_cast<float>(box.width),
                      static_cast<float>(box.height));
  close_path(rectangle.paint);
}

void PdfFile::operator()(const Circle& circle) {
  pen(circle.paint.width, circle.paint.stroke, 0);
  HPDF_Page_SetGrayFill(page_, shade(circle.paint.fill));
  HPDF_Page_Circle(page_, x(circle.centre.x), y(circle.centre.y),
                   static_cast<float>(circle.radius));
  close_path(circle.paint);
}

void PdfFile::trace(const std::vector<Place>& places) {
  HPDF_Page_MoveTo(page_, x(places.front().x), y(places.front().y));
  for (std::size_t i = 1; i < places.size(); ++i) {
    HPDF_Page_LineTo(page_, x(places[i].x), y(places[i].y));
  }
}

void PdfFile::operator()(const Polyline& polyline) {
  if (polyline.places.size() < 2) return;
  pen(polyline.width, polyline.grey, polyline.dash);
  trace(polyline.places);
  HPDF_Page_Stroke(page_);
}

void PdfFile::operator()(const Polygon& polygon) {
  if (polygon.places.size() < 3) return;
  pen(polygon.paint.width, polygon.paint.stroke, 0);
  HPDF_Page_SetGrayFill(page_, shade(polygon.paint.fill));
  trace(polygon.places);
  HPDF_Page_ClosePath(page_);
  close_path(polygon.paint);
}

HPDF_Image PdfFile::image(const Picture& picture) {
  if (!picture.jpeg.empty()) {
    return HPDF_LoadJpegImageFromMem(doc_.get(),
                                     reinterpret_cast<const HPDF_BYTE*>(picture.jpeg.data()),
                                     static_cast<HPDF_UINT>(picture.jpeg.size()));
  }
  if (picture.alpha.empty() && picture.rgb.size() > small_picture_bytes) {
    const std::string jpeg = jpeg_bytes(picture, print_jpeg_quality);
    return HPDF_LoadJpegImageFromMem(doc_.get(), reinterpret_cast<const HPDF_BYTE*>(jpeg.data()),
                                     static_cast<HPDF_UINT>(jpeg.size()));
  }
  const auto width = static_cast<HPDF_UINT>(picture.width_px);
  const auto height = static_cast<HPDF_UINT>(picture.height_px);
  HPDF_Image colours =
      HPDF_LoadRawImageFromMem(doc_.get(), raw(picture.rgb), width, height, HPDF_CS_DEVICE_RGB, 8);
  if (!picture.alpha.empty()) {
    HPDF_Image clear = HPDF_LoadRawImageFromMem(doc_.get(), raw(picture.alpha), width, height,
                                                HPDF_CS_DEVICE_GRAY, 8);
    check();
    HPDF_Image_AddSMask(colours, clear);
  }
  return colours;
}

void PdfFile::operator()(const PlacedPicture& placed) {
  const double inches = std::max(placed.box.width, placed.box.height) / 72.0;
  const int most = std::max(1, static_cast<int>(inches * print_dots_per_inch));
  HPDF_Image drawn = placed.picture.jpeg.empty() ? image(scaled_down(placed.picture, most))
                                                 : image(placed.picture);
  check();
  HPDF_Page_DrawImage(page_, drawn, x(placed.box.x), y(placed.box.bottom()),
                      static_cast<float>(placed.box.width), static_cast<float>(placed.box.height));
}

void PdfFile::operator()(const PlacedQr& placed) {
  const int across = placed.modules.across;
  const double module = placed.box.width / across;
  HPDF_Page_SetGrayFill(page_, 0);
  const auto dark = [&](int row, int column) {
    return placed.modules.dark[static_cast<std::size_t>(row * across + column)];
  };
  for (int row = 0; row < across; ++row) {
    for (int column = 0; column < across; ++column) {
      if (!dark(row, column)) continue;
      const int first = column;
      while (column + 1 < across && dark(row, column + 1)) ++column;
      HPDF_Page_Rectangle(
          page_, x(placed.box.x + first * module), y(placed.box.y + (row + 1) * module),
          static_cast<float>((column + 1 - first) * module), static_cast<float>(module));
    }
  }
  HPDF_Page_Fill(page_);
}

void PdfFile::add_outline(const OutlineEntry& entry) {
  HPDF_Encoder encoder = HPDF_GetEncoder(doc_.get(), "UTF-8");
  HPDF_Outline outline = HPDF_CreateOutline(doc_.get(), nullptr, entry.title.c_str(), encoder);
  check();
  HPDF_Destination destination = HPDF_Page_CreateDestination(pages_[entry.page]);
  const double top = heights_[entry.page] - entry.y;
  HPDF_Destination_SetFitH(destination, static_cast<float>(top));
  HPDF_Outline_SetDestination(outline, destination);
  check();
}

// libharu attaches files from the disk only, and writes their paths into the PDF; this makes the
// same objects from memory. Source: ISO 32000-1, 7.11.3 and 7.11.4.
void PdfFile::attach(const Attachment& attachment) {
  HPDF_Doc doc = doc_.get();
  if (files_ == nullptr) {
    HPDF_NameDict names = HPDF_NameDict_New(doc->mmgr, doc->xref);
    files_ = HPDF_NameTree_New(doc->mmgr, doc->xref);
    check();
    HPDF_NameDict_SetNameTree(names, HPDF_NAME_EMBEDDED_FILES, files_);
    HPDF_Catalog_SetNames(doc->catalog, names);
  }
  HPDF_Dict body = HPDF_DictStream_New(doc->mmgr, doc->xref);
  HPDF_Dict specification = HPDF_Dict_New(doc->mmgr);
  HPDF_Dict held = HPDF_Dict_New(doc->mmgr);
  check();
  body->filter = HPDF_STREAM_FILTER_FLATE_DECODE;
  HPDF_Dict_AddName(body, "Type", "EmbeddedFile");
  HPDF_Stream_Write(body->stream, reinterpret_cast<const HPDF_BYTE*>(attachment.bytes.data()),
                    static_cast<HPDF_UINT>(attachment.bytes.size()));
  HPDF_Xref_Add(doc->xref, specification);
  HPDF_Dict_AddName(specification, "Type", "Filespec");
  const auto text = [&](const std::string& value) {
    return HPDF_String_New(doc->mmgr, value.c_str(), nullptr);
  };
  HPDF_Dict_Add(specification, "F", text(attachment.name));
  HPDF_Dict_Add(specification, "UF", text(attachment.name));
  HPDF_Dict_Add(specification, "EF", held);
  HPDF_Dict_Add(held, "F", body);
  HPDF_NameTree_Add(files_, text(attachment.name), specification);
  check();
}

std::string PdfFile::bytes() {
  HPDF_SaveToStream(doc_.get());
  check();
  std::string all(HPDF_GetStreamSize(doc_.get()), '\0');
  auto size = static_cast<HPDF_UINT32>(all.size());
  HPDF_ReadFromStream(doc_.get(), reinterpret_cast<HPDF_BYTE*>(all.data()), &size);
  if (size != all.size()) throw PageFailure("The PDF could not be read back whole.");
  return all;
}

}  // namespace tangmark::reports
