// SPDX-License-Identifier: MIT
#include "domain/certificate/lexicon_match.h"

#include <algorithm>
#include <array>

#include "domain/certificate/negation.h"
#include "domain/certificate/number_words.h"
#include "domain/measure/utf8.h"

namespace tangmark::certificate {
namespace {

constexpr auto about_words = std::to_array<std::string_view>({"about",
                                                              "approx",
                                                              "approximately",
                                                              "around",
                                                              "roughly",
                                                              "circa",
                                                              "ca",
                                                              "rund",
                                                              "etwa",
                                                              "ungefahr",
                                                              "environ",
                                                              "approximativement",
                                                              "unos",
                                                              "unas",
                                                              "aproximadamente",
                                                              "approssimativamente",
                                                              "quasi",
                                                              "nearly",
                                                              "fast",
                                                              "some",
                                                              "near",
                                                              "gut"});
constexpr auto over_words = std::to_array<std::string_view>(
    {"over", "above", "than", "uber", "ueber", "als", "mehr", "plus", "oltre", "piu", "mas",
     "exceeding", "mindestens", "minimum"});
constexpr auto range_words =
    std::to_array<std::string_view>({"to", "bis", "a", "and", "und", "hasta"});

bool begins(std::string_view text, std::string_view with) {
  return text.substr(0, with.size()) == with;
}
bool ends(std::string_view text, std::string_view with) {
  return text.size() >= with.size() && text.substr(text.size() - with.size()) == with;
}

bool same(const FormWord& form, const TextWord& word, std::string_view typed) {
  switch (form.match) {
    case FormMatch::exact:
      return word.text == form.text;
    case FormMatch::begins:
      return begins(word.text, form.text);
    case FormMatch::ends:
      return ends(word.text, form.text);
    case FormMatch::holds:
      return word.text.find(form.text) != std::string::npos;
    case FormMatch::nearly:
      return nearly(form.text, word.text);
    case FormMatch::with_accents:
      return lower_case(typed.substr(word.at, word.end - word.at)) == form.text;
    case FormMatch::figure:
      return word.value.has_value();
  }
  return false;
}

bool written_in_digits(const TextWord& word) {
  return word.text[0] >= '0' && word.text[0] <= '9';
}

// The figure that starts at word i: one figure, or number words that belong together.
struct Run {
  std::size_t last = 0;
  SaidFigure figure;
};

Run figure_run(const std::vector<TextWord>& words, std::size_t i) {
  double total = 0;
  double now = 0;
  bool over = false;
  std::size_t k = i;
  for (; k < words.size(); ++k) {
    // "A hundred and thirty-two".
    const std::string& between = words[k].text;
    const bool last = k + 1 >= words.size();
    const bool joins = (between == "and" && (now >= 100 || total > 0)) ||
                       ((between == "y" || between == "et") && now >= 20);
    const bool joined = k > i && !last && joins && !written_in_digits(words[k + 1]) &&
                        (words[k + 1].value || is_one(words[k + 1].text));
    if (joined) continue;
    // "Sixty-one", "sesenta y uno": one counts behind a ten.
    const bool one = k > i && now >= 20 && is_one(words[k].text);
    if (one) {
      now += 1;
      continue;
    }
    if (!words[k].value) break;
    if (k > i && (written_in_digits(words[k]) || ends_clause(words[k].gap))) break;
    const double value = *words[k].value;
    const std::string& text = words[k].text;
    if (value == 100 && k > i)
      now *= 100;
    else if (value == 1000) {
      total += std::max(now, 1.0) * 1000;
      now = 0;
    } else
      now += value;
    over = over || text == "hundreds" || text == "thousands" || text == "hunderte" ||
           text == "tausende" || text == "centaines" || text == "milliers" || text == "centinaia" ||
           text == "migliaia" || text == "cientos" || text == "miles";
  }
  SaidFigure figure;
  figure.value = total + now;
  figure.over = over;
  return {k, figure};
}

// Reads the words before and after a figure: sign, "about", "over", the other end of a range.
SaidFigure qualified(const std::vector<TextWord>& words, std::size_t first, const Run& run) {
  SaidFigure figure = run.figure;
  const std::string& gap = words[first].gap;
  const bool after_figure = first > 0 && words[first - 1].value.has_value();
  if (!after_figure && !gap.empty() && gap.back() == '-' &&
      (gap.size() == 1 || gap[gap.size() - 2] == ' '))
    figure.negative = first == 0 || gap.size() > 1;
  if (gap.find('~') != std::string::npos || gap.find("\u2248") != std::string::npos)
    figure.about = true;
  if (gap.find('>') != std::string::npos) figure.over = true;
  if (run.last < words.size() && !words[run.last].gap.empty() && words[run.last].gap[0] == '+')
    figure.over = true;
  if (first == 0) return figure;
  const TextWord& before = words[first - 1];
  if (before.text == "minus" || before.text == "meno" || before.text == "moins" ||
      before.text == "menos")
    figure.negative = true;
  if (among(about_words, before.text)) figure.about = true;
  if (among(over_words, before.text)) figure.over = true;
  const bool dash =
      gap == "-" || gap == " - " || gap == "/" || gap == "\u2013" || gap == " \u2013 ";
  if (after_figure && dash) figure.from = before.value;
  if (after_figure && (gap.find("+/-") != std::string::npos ||
                       gap.find("\u00b1") != std::string::npos)) {  // "61 ±1" is 60 to 62
    figure.from = *before.value - figure.value;
    figure.value += *before.value;
  }
  if (among(range_words, before.text) && first > 1 && words[first - 2].value)
    figure.from = words[first - 2].value;
  return figure;
}

std::optional<Found> match_at(std::string_view typed, const std::vector<TextWord>& words,
                              std::size_t first, const LexiconEntry& entry, const Form& form) {
  Found found;
  found.entry = &entry;
  found.first = first;
  std::size_t k = first;
  for (std::size_t f = 0; f < form.size(); ++f) {
    if (k >= words.size()) return std::nullopt;
    // "Layers: 300" is one saying; any other clause ends a form.
    const bool figure_after_colon = form[f].match == FormMatch::figure && words[k].gap == ": ";
    if (f > 0 && ends_clause(words[k].gap) && !figure_after_colon) return std::nullopt;
    if (!same(form[f], words[k], typed)) return std::nullopt;
    if (form[f].match == FormMatch::figure) {
      const Run run = figure_run(words, k);
      found.figure = qualified(words, k, run);
      k = run.last;
    } else {
      ++k;
    }
  }
  found.last = k;
  return found;
}

constexpr auto numbering_words = std::to_array<std::string_view>(
    {"blade",    "knife",    "number", "no",     "nr",     "nummer", "num",     "serial",
     "year",     "in",       "since",  "messer", "klinge", "lame",   "couteau", "lama",
     "coltello", "cuchillo", "hoja",   "jahr",   "piece",  "lot",    "bar",     "issue"});

// A grade is written together ("440C", "AEB-L"); "440 C" is a temperature and "A2 paper" a sheet. A
// number alone is a grade unless it numbers or measures something.
bool reads_as_grade(std::string_view typed, const std::vector<TextWord>& words,
                    const Found& found) {
  for (std::size_t k = found.first + 1; k < found.last; ++k)
    if (!words[k].gap.empty() && words[k].gap != "-") return false;
  const TextWord& word = words[found.first];
  const bool short_name = found.last - found.first == 2 && word.text.size() == 1;
  if (short_name) {
    const char c = typed[word.at];
    if (c < 'A' || c > 'Z') return false;
    return found.first == 0 || words[found.first - 1].text.size() < 3 ||
           !(begins(words[found.first - 1].text, "photo") ||
             begins(words[found.first - 1].text, "pict") ||
             begins(words[found.first - 1].text, "bild") ||
             begins(words[found.first - 1].text, "fig"));
  }
  if (found.last - found.first > 1 || !written_in_digits(word)) return true;
  if (found.first > 0 && among(numbering_words, words[found.first - 1].text) &&
      word.text.size() == 4)
    return false;
  if (word.gap.find('#') != std::string::npos) return false;
  static constexpr auto units =
      std::to_array<std::string_view>({"mm", "g", "c", "f", "h", "min", "layers", "lagen", "hv"});
  return found.last >= words.size() || !among(units, words[found.last].text);
}

bool keep(std::string_view typed, const std::vector<TextWord>& words, const Found& found) {
  if (found.entry->proof == Proof::grade) return reads_as_grade(typed, words, found);
  // A warm temperature is no cold step.
  if (found.entry->proof == Proof::cold && found.figure) return found.figure->negative;
  return true;
}

// Letters that a word may be written with besides its own: "w00tz", "d@mascus".
char letter_for(char sign) {
  constexpr std::string_view signs = "013457@$!|";
  constexpr std::string_view letters = "oieastasil";
  const std::size_t at = signs.find(sign);
  return at == std::string_view::npos ? sign : letters[at];
}

bool one_letter(const TextWord& word) {
  return word.text.size() == 1 && !written_in_digits(word);
}

// Whether a word goes on over this gap: broken at a hyphen, spelled with other signs, or spaced
// out.
bool goes_on(const TextWord& before, const TextWord& word) {
  const std::string& gap = word.gap;
  if (gap.empty() || gap == "@" || gap == "$" || gap == "!" || gap == "|") return true;
  if (gap == "-" || gap == "-\n" || gap == "-\r\n" || gap == "- \n" || gap == "_") return true;
  return gap.size() == 1 && one_letter(before) && one_letter(word);
}

// The words from first to last read as one.
TextWord joined_word(const std::vector<TextWord>& words, std::size_t first, std::size_t last) {
  TextWord one = words[first];
  std::string text;
  for (std::size_t k = first; k < last; ++k) {
    if (k > first && words[k].gap.size() == 1 && letter_for(words[k].gap[0]) != words[k].gap[0])
      text += letter_for(words[k].gap[0]);
    for (const char c : words[k].text) text += letter_for(c);
  }
  one.text = text;
  one.end = words[last - 1].end;
  one.value.reset();
  return one;
}

// A word in pieces is looked up whole, in the forms of one word.
void find_in_pieces(std::string_view typed, const std::vector<TextWord>& words, std::size_t first,
                    const std::vector<LexiconEntry>& entries, std::vector<Found>& all) {
  constexpr std::size_t most_pieces = 14;
  if (is_negator(words[first].text)) return;
  for (std::size_t last = first + 1; last < words.size() && last - first < most_pieces; ++last) {
    if (!goes_on(words[last - 1], words[last])) return;
    const TextWord whole = joined_word(words, first, last + 1);
    for (const LexiconEntry& entry : entries)
      for (const Form& form : entry.forms) {
        const bool plain = form.size() == 1 && (form[0].match == FormMatch::exact ||
                                                form[0].match == FormMatch::begins ||
                                                form[0].match == FormMatch::nearly);
        if (!plain || entry.proof == Proof::allow || !same(form[0], whole, typed)) continue;
        Found found;
        found.entry = &entry;
        found.first = first;
        found.last = last + 1;
        all.push_back(found);
      }
  }
}

}  // namespace

std::vector<Found> find_words(std::string_view typed, const std::vector<TextWord>& words,
                              const std::vector<LexiconEntry>& entries) {
  std::vector<Found> all;
  for (std::size_t first = 0; first < words.size(); ++first) {
    find_in_pieces(typed, words, first, entries, all);
    for (const LexiconEntry& entry : entries)
      for (const Form& form : entry.forms) {
        if (!same(form[0], words[first], typed)) continue;
        auto found = match_at(typed, words, first, entry, form);
        if (found && keep(typed, words, *found)) all.push_back(*found);
      }
  }
  std::stable_sort(all.begin(), all.end(), [](const Found& a, const Found& b) {
    return a.last - a.first > b.last - b.first;
  });
  std::vector<Found> taken;
  for (const Found& found : all) {
    const bool overlaps = std::any_of(taken.begin(), taken.end(), [&](const Found& other) {
      return found.first < other.last && other.first < found.last;
    });
    if (!overlaps) taken.push_back(found);
  }
  std::sort(taken.begin(), taken.end(),
            [](const Found& a, const Found& b) { return a.first < b.first; });
  return taken;
}

}  // namespace tangmark::certificate
