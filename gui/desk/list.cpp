// SPDX-License-Identifier: MIT
#include "gui/desk/list.h"

#include <algorithm>
#include <array>
#include <utility>

namespace tangmark::desk {
namespace {

// Latin-1 and Latin Extended-A letters without their accents: U+00C0 to U+017F. A dot means that
// the letter has no plain form and stays.
constexpr std::string_view plain_from_c0 =
    "aaaaaaaceeeeiiiidnooooo.ouuuuy.saaaaaaaceeeeiiiidnooooo.ouuuuy.y"
    "aaaaaaccccccccddddeeeeeeeeeegggggggghhhhiiiiiiiiii..jjkkklllllll"
    "lllnnnnnnn..oooooo..rrrrrrssssssssttttttuuuuuuuuuuuuwwyyyzzzzzzs";

std::vector<std::string> words_of(std::string_view text) {
  std::vector<std::string> words;
  std::string word;
  for (char c : text) {
    if (c == ' ' || c == '\t') {
      if (!word.empty()) words.push_back(std::exchange(word, {}));
    } else {
      word += c;
    }
  }
  if (!word.empty()) words.push_back(std::move(word));
  return words;
}

}  // namespace

std::string folded(std::string_view utf8) {
  std::string out;
  out.reserve(utf8.size());
  for (std::size_t i = 0; i < utf8.size(); ++i) {
    const auto c = static_cast<unsigned char>(utf8[i]);
    if (c < 0x80) {
      out += static_cast<char>(c >= 'A' && c <= 'Z' ? c + 32 : c);
      continue;
    }
    if ((c >= 0xC3 && c <= 0xC5) && i + 1 < utf8.size()) {
      const auto next = static_cast<unsigned char>(utf8[i + 1]);
      const unsigned point = ((c & 0x1Fu) << 6) | (next & 0x3Fu);
      const unsigned at = point - 0xC0u;
      if (at < plain_from_c0.size() && plain_from_c0[at] != '.') {
        out += plain_from_c0[at];
        ++i;
        continue;
      }
    }
    out += static_cast<char>(c);
  }
  return out;
}

List::List(std::vector<Row> rows) : rows_(std::move(rows)) {
  begins_.reserve(rows_.size() + 1);
  for (const Row& row : rows_) {
    begins_.push_back(folded_.size());
    for (const std::string* part : {&row.number, &row.line, &row.under, &row.more_words}) {
      folded_ += folded(*part);
      folded_ += '\n';
    }
  }
  begins_.push_back(folded_.size());
}

std::size_t List::index_of(std::string_view id) const {
  const auto at =
      std::find_if(rows_.begin(), rows_.end(), [id](const Row& r) { return r.id == id; });
  return static_cast<std::size_t>(at - rows_.begin());
}

std::vector<std::size_t> List::matching(std::string_view typed) const {
  const std::vector<std::string> words = words_of(folded(typed));
  std::vector<std::size_t> found;
  for (std::size_t i = 0; i < rows_.size(); ++i) {
    const std::string_view text =
        std::string_view(folded_).substr(begins_[i], begins_[i + 1] - begins_[i]);
    const bool all = std::all_of(words.begin(), words.end(), [text](const std::string& w) {
      return text.find(w) != std::string_view::npos;
    });
    if (all) found.push_back(i);
  }
  if (words.size() == 1) {
    std::stable_partition(found.begin(), found.end(),
                          [&](std::size_t i) { return folded(rows_[i].number) == words.front(); });
  }
  return found;
}

}  // namespace tangmark::desk
