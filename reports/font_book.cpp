// SPDX-License-Identifier: MIT
#include "reports/font_book.h"

#include <ft2build.h>
#include FT_ADVANCES_H
#include FT_FREETYPE_H

#include <fmt/format.h>

#include <cstdio>
#include <filesystem>
#include <memory>

#include "domain/measure/utf8.h"
#include "reports/page_failure.h"
#include "reports/settable.h"

namespace tangmark::reports {

namespace {

struct KnownFile {
  const char* name;
  const char* package;
};

// The order is the number of the file.
constexpr std::array<KnownFile, FontBook::file_count> known_files{{
    {"NotoSerif-Regular.ttf", "fonts-noto-core"},
    {"NotoSerif-Bold.ttf", "fonts-noto-core"},
    {"NotoSerif-Italic.ttf", "fonts-noto-core"},
    {"NotoSans-Regular.ttf", "fonts-noto-core"},
    {"NotoSans-Bold.ttf", "fonts-noto-core"},
    {"NotoSans-Italic.ttf", "fonts-noto-core"},
    {"DejaVuSansMono.ttf", "fonts-dejavu-core"},
    {"DejaVuSansMono-Bold.ttf", "fonts-dejavu-core"},
    {"DejaVuSans.ttf", "fonts-dejavu-core"},
    {"DejaVuSans-Bold.ttf", "fonts-dejavu-core"},
}};
constexpr std::size_t no_file = FontBook::file_count;
constexpr std::size_t stand_in = 8;
constexpr std::size_t stand_in_bold = 9;

constexpr std::array<const char*, 5> folders{
    "/usr/share/fonts/truetype/noto", "/usr/share/fonts/truetype/dejavu", "/usr/share/fonts/noto",
    "/usr/share/fonts/dejavu", "/usr/local/share/fonts"};

std::string path_of(const KnownFile& known) {
  for (const char* folder : folders) {
    std::string path = std::string(folder) + "/" + known.name;
    std::error_code ignored;
    if (std::filesystem::exists(path, ignored)) return path;
  }
  throw PageFailure(std::string("The font file ") + known.name +
                    " is not on this machine; install the package " + known.package + ".");
}

std::size_t primary_file(const Font& font) {
  const bool bold = font.weight == Weight::bold;
  if (font.face == Face::mono) return bold ? 7 : 6;
  const std::size_t first = font.face == Face::serif ? 0 : 3;
  if (bold) return first + 1;
  return font.slant == Slant::italic ? first + 2 : first;
}

// Hebrew to the Arabic extensions, and the presentation forms of both.
bool right_to_left(char32_t code) {
  return (code >= 0x0590 && code <= 0x08FF) || (code >= 0xFB1D && code <= 0xFDFF) ||
         (code >= 0xFE70 && code <= 0xFEFE);
}

class FreeType {
 public:
  FreeType() {
    if (FT_Init_FreeType(&library_) != 0) throw PageFailure("The font reader did not start.");
  }
  ~FreeType() { FT_Done_FreeType(library_); }
  FreeType(const FreeType&) = delete;
  FreeType& operator=(const FreeType&) = delete;

  std::vector<std::uint16_t> advances(const std::string& path, std::uint16_t lacking) const {
    FT_Face face = nullptr;
    if (FT_New_Face(library_, path.c_str(), 0, &face) != 0) {
      throw PageFailure("The font file " + path + " cannot be read; install its package again.");
    }
    const std::unique_ptr<FT_FaceRec_, decltype(&FT_Done_Face)> owner(face, &FT_Done_Face);
    // Beyond the basic plane the PDF writer would cut the code to 16 bits.
    std::vector<std::uint16_t> found(0x10000, lacking);
    FT_UInt glyph = 0;
    for (FT_ULong code = FT_Get_First_Char(face, &glyph); glyph != 0;
         code = FT_Get_Next_Char(face, code, &glyph)) {
      if (code >= found.size()) break;
      FT_Fixed advance = 0;
      if (FT_Get_Advance(face, glyph, FT_LOAD_NO_SCALE, &advance) != 0) continue;
      found[code] = static_cast<std::uint16_t>(advance * 1000 / face->units_per_EM);
    }
    return found;
  }

 private:
  FT_Library library_ = nullptr;
};

std::string code_name(char32_t code) {
  std::array<char, 16> name{};
  std::snprintf(name.data(), name.size(), "U+%04X", static_cast<unsigned>(code));
  return name.data();
}

}  // namespace

FontBook FontBook::load() {
  FontBook book;
  const FreeType freetype;
  for (std::size_t i = 0; i < file_count; ++i) {
    book.files_[i].path = path_of(known_files[i]);
    book.files_[i].advance = freetype.advances(book.files_[i].path, lacking);
  }
  return book;
}

std::size_t FontBook::file_for(char32_t code, const Font& font) const {
  const std::size_t primary = primary_file(font);
  if (files_[primary].has(code)) return primary;
  const std::size_t other = font.weight == Weight::bold ? stand_in_bold : stand_in;
  return files_[other].has(code) ? other : no_file;
}

std::vector<FontSegment> FontBook::segments(std::string_view text, const Font& font) const {
  std::vector<FontSegment> found;
  std::size_t start = 0;
  for (std::size_t at = 0; at < text.size();) {
    const Sign c = first_sign(text.substr(at));
    std::size_t file = file_for(c.code, font);
    int advance = 0;
    if (file == no_file) {
      file = found.empty() ? primary_file(font) : found.back().file;  // refused by unprintable()
    } else {
      advance = files_[file].advance[c.code];
    }
    if (found.empty() || found.back().file != file) {
      start = at;
      found.push_back({text.substr(start, 0), file, 0});
    }
    at += c.bytes;
    found.back().text = text.substr(start, at - start);
    found.back().width += advance * font.size / 1000.0;
  }
  return found;
}

Points FontBook::width(std::string_view text, const Font& font) const {
  Points sum = 0;
  for (const FontSegment& segment : segments(text, font)) sum += segment.width;
  return sum;
}

// FNV-1a of 64 bits. Source: G. Fowler, L. C. Noll, K.-P. Vo, the constants from memory.
std::string FontBook::digest() const {
  std::uint64_t sum = 14695981039346656037ULL;
  for (const FontFile& file : files_) {
    for (const std::uint16_t advance : file.advance) {
      sum = (sum ^ (advance & 0xFF)) * 1099511628211ULL;
      sum = (sum ^ (advance >> 8)) * 1099511628211ULL;
    }
  }
  return fmt::format("{:016x}", sum);
}

std::optional<Problem> FontBook::unprintable(std::string_view text, std::string_view field) const {
  const std::string where(field);
  if (!is_valid_utf8(text)) {
    return Problem{where, "The " + where + " holds bytes that are not UTF-8 text.",
                   "Type the " + where + " again."};
  }
  const std::string clean = settable(text);
  std::string_view rest = clean;
  while (!rest.empty()) {
    const Sign c = first_sign(rest);
    const std::string sign(rest.substr(0, c.bytes));
    rest.remove_prefix(c.bytes);
    if (c.code == '\n') continue;
    if (c.code < 0x20 || (c.code >= 0x7F && c.code < 0xA0)) {
      return Problem{where,
                     "The " + where + " holds a control character, " + code_name(c.code) + ".",
                     "Type the " + where + " again."};
    }
    if (right_to_left(c.code) || file_for(c.code, Font{}) == no_file) {
      return Problem{where,
                     "The " + where + " holds the character “" + sign + "” (" + code_name(c.code) +
                         "), which the fonts of the papers cannot print.",
                     "Write it in Latin, Greek or Cyrillic letters."};
    }
  }
  return std::nullopt;
}

}  // namespace tangmark::reports
