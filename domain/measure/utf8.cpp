// SPDX-License-Identifier: MIT
#include "domain/measure/utf8.h"

#include <cassert>

namespace tangmark {
namespace {

constexpr char32_t replacement = 0xFFFD;

unsigned char byte_at(std::string_view text, std::size_t i) {
  return static_cast<unsigned char>(text[i]);
}

bool within(unsigned char b, unsigned char low, unsigned char high) {
  return b >= low && b <= high;
}

struct Shape {
  std::size_t length;
  unsigned char second_low;
  unsigned char second_high;
};

// One row of table 3-7 for a lead byte; length 0 for a byte that cannot lead.
Shape shape_of(unsigned char lead) {
  if (lead < 0x80) return {1, 0, 0};
  if (within(lead, 0xC2, 0xDF)) return {2, 0x80, 0xBF};
  if (lead == 0xE0) return {3, 0xA0, 0xBF};
  if (lead == 0xED) return {3, 0x80, 0x9F};
  if (within(lead, 0xE1, 0xEF)) return {3, 0x80, 0xBF};
  if (lead == 0xF0) return {4, 0x90, 0xBF};
  if (within(lead, 0xF1, 0xF3)) return {4, 0x80, 0xBF};
  if (lead == 0xF4) return {4, 0x80, 0x8F};
  return {0, 0, 0};
}

// Length of the well-formed sequence at the front, or 0.
std::size_t sequence_length(std::string_view text) {
  const Shape shape = shape_of(byte_at(text, 0));
  if (shape.length <= 1) return shape.length;
  if (text.size() < shape.length) return 0;
  if (!within(byte_at(text, 1), shape.second_low, shape.second_high)) return 0;
  for (std::size_t i = 2; i < shape.length; ++i) {
    if (!within(byte_at(text, i), 0x80, 0xBF)) return 0;
  }
  return shape.length;
}

}  // namespace

std::size_t first_broken_byte(std::string_view text) {
  std::size_t at = 0;
  while (at < text.size()) {
    if (byte_at(text, at) < 0x80) {
      ++at;
      continue;
    }
    const std::size_t length = sequence_length(text.substr(at));
    if (length == 0) return at;
    at += length;
  }
  return std::string_view::npos;
}

bool is_valid_utf8(std::string_view text) {
  return first_broken_byte(text) == std::string_view::npos;
}

char32_t take_code_point(std::string_view& text) {
  assert(!text.empty() && "there is no code point in an empty text");
  const std::size_t length = sequence_length(text);
  const unsigned char lead = byte_at(text, 0);
  if (length <= 1) {
    text.remove_prefix(1);
    return length == 1 ? char32_t{lead} : replacement;
  }
  char32_t code_point = lead & (0xFFu >> (length + 1));
  for (std::size_t i = 1; i < length; ++i)
    code_point = (code_point << 6) | (byte_at(text, i) & 0x3Fu);
  text.remove_prefix(length);
  return code_point;
}

void append_code_point(std::string& out, char32_t c) {
  if (c > 0x10FFFF || (c >= 0xD800 && c <= 0xDFFF)) c = replacement;
  const auto put = [&out](char32_t b) {
    out.push_back(static_cast<char>(static_cast<unsigned char>(b)));
  };
  if (c < 0x80) return put(c);
  if (c < 0x800) {
    put(0xC0 | (c >> 6));
    return put(0x80 | (c & 0x3F));
  }
  if (c < 0x10000) {
    put(0xE0 | (c >> 12));
    put(0x80 | ((c >> 6) & 0x3F));
    return put(0x80 | (c & 0x3F));
  }
  put(0xF0 | (c >> 18));
  put(0x80 | ((c >> 12) & 0x3F));
  put(0x80 | ((c >> 6) & 0x3F));
  put(0x80 | (c & 0x3F));
}

std::size_t count_code_points(std::string_view text) {
  std::size_t n = 0;
  for (; !text.empty(); ++n) take_code_point(text);
  return n;
}

std::string_view first_code_points(std::string_view text, std::size_t n) {
  std::string_view rest = text;
  for (; n > 0 && !rest.empty(); --n) take_code_point(rest);
  return text.substr(0, text.size() - rest.size());
}

}  // namespace tangmark
