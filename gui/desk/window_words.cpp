// SPDX-License-Identifier: MIT
#include "gui/desk/window_words.h"

#include <algorithm>
#include <cctype>
#include <string>
#include <string_view>

#include "db/actions/action.h"
#include "db/actions/work.h"
#include "gui/desk/form.h"
#include "gui/desk/forms.h"
#include "gui/desk/sight.h"

namespace tangmark::desk {
namespace {

constexpr std::string_view set_aside =
    " Or say at \"Set aside because\" why it is done all the same; the reason is kept.";

void replace_all(std::string& text, std::string_view what, std::string_view by) {
  for (std::size_t at = 0; (at = text.find(what, at)) != std::string::npos; at += by.size()) {
    text.replace(at, what.size(), by);
  }
}

// "skip_step" as a quoted label: the words on its target, else its own name with spaces.
std::string label_of(std::string_view action) {
  std::string words = submit_words(std::string(action));
  if (words == "Save") {
    words = std::string(action);
    std::replace(words.begin(), words.end(), '_', ' ');
    words = sentence_case(words);
  }
  return "\"" + words + "\"";
}

std::string spoken(std::string text) {
  replace_all(text, db::may_override, set_aside);
  for (const db::Action* action : db::all_actions()) {
    // Names of one word ("hold", "crop") are also words of the trade and stay as they are.
    if (action->name.find('_') == std::string_view::npos) continue;
    replace_all(text, action->name, label_of(action->name));
  }
  return text;
}

}  // namespace

Problems in_window_words(Problems problems) {
  for (Problem& problem : problems) {
    problem.sentence = spoken(std::move(problem.sentence));
    problem.remedy = spoken(std::move(problem.remedy));
  }
  return problems;
}

std::string in_window_words(std::string sentence) { return spoken(std::move(sentence)); }

bool may_be_set_aside(const Problems& problems) {
  return std::any_of(problems.begin(), problems.end(), [](const Problem& problem) {
    return problem.remedy.find(set_aside) != std::string::npos;
  });
}

}  // namespace tangmark::desk
