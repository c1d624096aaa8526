// SPDX-License-Identifier: MIT
#include "gui/command/word_list.h"

namespace tangmark::command {

std::span<const Word> all_words() {
  static const std::vector<Word> words = [] {
    std::vector<Word> joined;
    for (const auto& group : {money_words(), planning_words(), certificate_words(), paper_words(),
                              file_words(), doing_words(), desk_words()})
      joined.insert(joined.end(), group.begin(), group.end());
    return joined;
  }();
  return words;
}

}  // namespace tangmark::command
