// SPDX-License-Identifier: MIT
#include "reports/paragraph.h"

#include <algorithm>
#include <array>
#include <utility>

#include "reports/settable.h"

namespace tangmark::reports {

namespace {

constexpr Points hair = 1e-6;
// A last line of one short word looks lost: it takes the word before along, unless both together
// are longer than this share of a line.
constexpr double most_tied_share = 0.4;

bool letter(char c) {
  const auto u = static_cast<unsigned char>(c);
  return (u >= 'A' && u <= 'Z') || (u >= 'a' && u <= 'z') || u >= 0x80;
}

// Letters of a paragraph that stay on one line, perhaps in several fonts, and the space after them.
struct Word {
  std::vector<Span> parts;
  std::string space;  // in the font of the last part
  bool ends_line = false;
  bool tied = false;  // stays on one line with the next
};

// Letters alone, without the stops that close a clause.
std::string_view bare(std::string_view word) {
  while (!word.empty() && std::string_view(".,;:)").find(word.back()) != std::string_view::npos)
    word.remove_suffix(1);
  return word;
}

bool digit(char c) {
  return c >= '0' && c <= '9';
}

template <std::size_t n>
bool among(const std::array<std::string_view, n>& words, std::string_view word) {
  return std::find(words.begin(), words.end(), word) != words.end();
}

// A figure stays with its unit, hours with their minutes, an element with its share.
bool read_as_one(std::string_view first, std::string_view second) {
  static constexpr std::array<std::string_view, 18> units = {
      "°C", "°F", "HRC", "HRA", "HV", "mm", "cm", "m", "in",
      "min", "h", "s", "d", "g", "kg", "lb", "oz", "%"};
  static constexpr std::array<std::string_view, 16> elements = {
      "C", "Mn", "Si", "P", "S", "Cr", "Ni", "Mo", "V", "W", "Co", "N", "Cu", "Nb", "Al", "Ti"};
  if (first.empty() || second.empty()) return false;
  if (digit(first.back())) return among(units, bare(second));
  return digit(second.front()) && (first == "h" || among(elements, first));
}

std::string text_of(const Word& word) {
  std::string text;
  for (const Span& part : word.parts) text += part.text;
  return text;
}

class WordCutter {
 public:
  std::vector<Word> cut(const std::vector<Span>& spans) {
    for (const Span& span : spans) cut(span);
    close();
    tie();
    return std::move(words_);
  }

 private:
  void cut(const Span& span) {
    const std::string text = settable(span.text);
    for (std::size_t at = 0; at < text.size();) {
      const std::size_t bytes = first_sign(std::string_view(text).substr(at)).bytes;
      const std::string_view sign = std::string_view(text).substr(at, bytes);
      if (sign == "\n") {
        word_.ends_line = true;
        close();
      } else if (sign == " ") {
        if (word_.parts.empty()) word_.parts.push_back({"", span.font, span.grey});
        word_.space += ' ';
      } else {
        if (!word_.space.empty()) close();
        put(span, sign);
        const char next = at + bytes < text.size() ? text[at + bytes] : ' ';
        if (may_break_after(sign, next)) close();
      }
      at += bytes;
    }
  }

  bool may_break_after(std::string_view sign, char next) const {
    if (sign != "-" && sign != "/" && sign != "–") return false;
    const std::string& so_far = word_.parts.back().text;
    return so_far.size() > sign.size() && letter(so_far[so_far.size() - sign.size() - 1]) &&
           letter(next);
  }

  void put(const Span& span, std::string_view sign) {
    if (word_.parts.empty() || word_.parts.back().font != span.font ||
        word_.parts.back().grey != span.grey) {
      word_.parts.push_back({"", span.font, span.grey});
    }
    word_.parts.back().text += sign;
  }

  void close() {
    if (!word_.parts.empty() || word_.ends_line) words_.push_back(std::move(word_));
    word_ = {};
  }

  void tie() {
    for (std::size_t i = 0; i + 1 < words_.size(); ++i) {
      if (words_[i].ends_line || words_[i].space.empty()) continue;
      words_[i].tied = read_as_one(text_of(words_[i]), text_of(words_[i + 1]));
    }
  }

  std::vector<Word> words_;
  Word word_;
};

class LineFiller {
 public:
  LineFiller(const FontBook& fonts, Points width) : fonts_(fonts), width_(width) {}

  std::vector<SetLine> fill(const std::vector<Word>& words) {
    for (std::size_t first = 0; first < words.size();) {
      const std::size_t end = end_of_tied(words, first);
      const Points wide = width_of_tied(words, first, end);
      const Points spaced = spaces_.empty() ? 0 : fonts_.width(spaces_, space_font_);
      if (!line_.empty() && wide <= width_ && x_ + spaced + wide > width_ + hair) end_line();
      for (; first < end; ++first) place(words[first]);
    }
    end_line();
    return std::move(lines_);
  }

 private:
  // One past the last word that stays on a line with this one.
  std::size_t end_of_tied(const std::vector<Word>& words, std::size_t first) const {
    std::size_t last = first;
    while (words[last].tied) ++last;
    const bool before_last = last + 1 < words.size() && !words[last].ends_line &&
                             (last + 2 == words.size() || words[last + 1].ends_line);
    const Points most = most_tied_share * width_;
    if (before_last && width_of_tied(words, first, last + 2) <= most) return last + 2;
    return last + 1;
  }

  Points width_of_tied(const std::vector<Word>& words, std::size_t first, std::size_t end) const {
    Points sum = 0;
    for (std::size_t i = first; i < end; ++i) {
      sum += width_of(words[i].parts);
      if (i + 1 < end && !words[i].parts.empty())
        sum += fonts_.width(words[i].space, words[i].parts.back().font);
    }
    return sum;
  }

  void place(const Word& word) {
    const Points wide = width_of(word.parts);
    const Points spaced = spaces_.empty() ? 0 : fonts_.width(spaces_, space_font_);
    if (!line_.empty() && x_ + spaced + wide > width_ + hair) {
      end_line();
    } else if (!line_.empty() && !spaces_.empty()) {
      add(line_.back().font, line_.back().grey, spaces_, spaced);
    }
    spaces_.clear();
    if (wide > width_ + hair) {
      place_broken(word);
    } else {
      for (const Span& part : word.parts) {
        add(part.font, part.grey, part.text, fonts_.width(part.text, part.font));
      }
    }
    spaces_ = word.space;
    if (!word.parts.empty()) space_font_ = word.parts.back().font;
    if (word.ends_line) end_line();
  }

  void place_broken(const Word& word) {
    for (const Span& part : word.parts) {
      std::string_view rest = part.text;
      while (!rest.empty()) {
        const std::string_view sign = rest.substr(0, first_sign(rest).bytes);
        const Points wide = fonts_.width(sign, part.font);
        if (!line_.empty() && x_ + wide > width_ + hair) end_line();
        add(part.font, part.grey, sign, wide);
        rest.remove_prefix(sign.size());
      }
    }
  }

  Points width_of(const std::vector<Span>& parts) const {
    Points sum = 0;
    for (const Span& part : parts) sum += fonts_.width(part.text, part.font);
    return sum;
  }

  void add(const Font& font, Grey grey, std::string_view text, Points wide) {
    if (text.empty()) return;
    if (line_.empty() || line_.back().font != font || line_.back().grey != grey) {
      line_.push_back({{x_, 0}, "", font, grey, 0, 0});
    }
    line_.back().text += text;
    line_.back().width += wide;
    x_ += wide;
  }

  void end_line() {
    lines_.push_back({std::move(line_), x_});
    line_ = {};
    x_ = 0;
    spaces_.clear();
  }

  const FontBook& fonts_;
  Points width_;
  std::vector<SetLine> lines_;
  std::vector<TextRun> line_;
  Points x_ = 0;
  std::string spaces_;
  Font space_font_;
};

Points start_of(Points x, Points room, Points taken, Align align) {
  if (align == Align::right) return x + room - taken;
  if (align == Align::centre) return x + (room - taken) / 2;
  return x;
}

}  // namespace

std::vector<SetLine> broken_lines(const FontBook& fonts, const std::vector<Span>& spans,
                                  Points width) {
  std::vector<SetLine> lines = LineFiller(fonts, width).fill(WordCutter().cut(spans));
  while (lines.size() > 1 && lines.back().runs.empty()) lines.pop_back();
  return lines;
}

void put_line(Block& block, const SetLine& line, Points x, Points y, Points width, Align align) {
  const Points start = start_of(x, width, line.width, align);
  for (const TextRun& run : line.runs) block.elements.push_back(moved(run, start, y));
}

Flow paragraph(const FontBook& fonts, const std::vector<Span>& spans, Points width, Points leading,
               Align align) {
  Flow flow;
  for (const SetLine& line : broken_lines(fonts, spans, width)) {
    Block block = blank(leading);
    put_line(block, line, 0, baseline_in(leading), width, align);
    block = marked(std::move(block), Role::paragraph);
    block.marks.front().continues = !flow.empty();
    flow.push_back(std::move(block));
  }
  if (flow.size() > 1) {
    flow.front().keep_with_next = true;
    flow[flow.size() - 2].keep_with_next = true;
  }
  return flow;
}

TextRun run_at(const FontBook& fonts, Place baseline, std::string_view text, const Font& font,
               Grey grey, Align align) {
  TextRun run{baseline, settable(text), font, grey, 0, 0};
  std::replace(run.text.begin(), run.text.end(), '\n', ' ');
  run.width = fonts.width(run.text, font);
  run.baseline.x = start_of(baseline.x, 0, run.width, align);
  return run;
}

TextRun fitted_run(const FontBook& fonts, Place baseline, std::string_view text, Font font,
                   Points width, Points least, Align align) {
  TextRun run = run_at(fonts, baseline, text, font, ink, align);
  while (run.width > width && font.size > least) {
    font.size = std::max(least, font.size - 0.5);
    run = run_at(fonts, baseline, text, font, ink, align);
  }
  std::string kept = run.text;
  while (run.width > width && !kept.empty()) {
    while (kept.size() > 1 && (static_cast<unsigned char>(kept.back()) & 0xC0U) == 0x80U) {
      kept.pop_back();
    }
    kept.pop_back();
    run = run_at(fonts, baseline, kept + "…", font, ink, align);
  }
  return run;
}

}  // namespace tangmark::reports
