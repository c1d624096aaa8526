// SPDX-License-Identifier: MIT
#include "reports/paragraph.h"

#include <algorithm>
#include <utility>

#include "reports/settable.h"

namespace tangmark::reports {

namespace {

constexpr Points hair = 1e-6;

bool letter(char c) {
  const auto u = static_cast<unsigned char>(c);
  return (u >= 'A' && u <= 'Z') || (u >= 'a' && u <= 'z') || u >= 0x80;
}

// Letters of a paragraph that stay on one line, perhaps in several fonts, and the space after them.
struct Word {
  std::vector<Span> parts;
  std::string space;  // in the font of the last part
  bool ends_line = false;
};

class WordCutter {
 public:
  std::vector<Word> cut(const std::vector<Span>& spans) {
    for (const Span& span : spans) cut(span);
    close();
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

  std::vector<Word> words_;
  Word word_;
};

class LineFiller {
 public:
  LineFiller(const FontBook& fonts, Points width) : fonts_(fonts), width_(width) {}

  std::vector<SetLine> fill(const std::vector<Word>& words) {
    for (const Word& word : words) place(word);
    end_line();
    return std::move(lines_);
  }

 private:
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
