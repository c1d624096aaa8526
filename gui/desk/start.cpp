// SPDX-License-Identifier: MIT
#include "gui/desk/start.h"

namespace tangmark::desk {
namespace {

struct Words {
  std::span<const std::string> all;
  std::size_t at = 0;
  Outcome<std::string> value_of(const std::string& option) {
    if (at + 1 >= all.size()) {
      return Problem{option, option + " needs a value after it.", "See --help."};
    }
    return all[++at];
  }
};

Outcome<Done> read_option(const std::string& word, Words& words, Start& start) {
  if (word == "--quiet-dialogs") {
    start.quiet_dialogs = true;
    return Done{};
  }
  if (word != "--now" && word != "--place" && word != "--select") {
    return Problem{word, "There is no option " + word + ".", "See --help."};
  }
  const auto value = words.value_of(word);
  if (!value) return value.problems();
  if (word == "--select") {
    start.select = *value;
  } else if (word == "--place") {
    const auto place = place_called(*value);
    if (!place) {
      return Problem{word, "There is no place " + *value + ".",
                     "The places are today, commissions, steel, blades, kiln, certificates, shop."};
    }
    start.place = *place;
  } else {
    const auto now = parse_instant(*value, Zone(), Instant{}, word);
    if (!now) return now.problems();
    start.now = *now;
  }
  return Done{};
}

}  // namespace

Outcome<Start> read_start(std::span<const std::string> all) {
  Start start;
  Words words{all};
  for (; words.at < all.size(); ++words.at) {
    const std::string& word = all[words.at];
    if (word == "--help" || word == "-h") {
      start.wants_help = true;
      return start;
    }
    if (word.starts_with("-") && word.size() > 1) {
      if (auto done = read_option(word, words, start); !done) return done.problems();
    } else if (start.shop) {
      return Problem{word, "Only one shop file can be opened in a window.",
                     "Start a second window."};
    } else {
      start.shop = word;
    }
  }
  return start;
}

std::string start_help() {
  return "tangmark-window [SHOPFILE] [--now WHEN] [--place NAME] [--select ID] [--quiet-dialogs]\n"
         "\n"
         "Opens the window on a shop file, or, without one, on the choice of a shop.\n"
         "  --now WHEN        stands in for the clock (2026-11-25T09:00:00+01:00)\n"
         "  --place NAME      today, commissions, steel, blades, kiln, certificates or shop\n"
         "  --select ID       selects a number or tag there\n"
         "  --quiet-dialogs   trouble goes to standard error, never into a dialog\n";
}

}  // namespace tangmark::desk
