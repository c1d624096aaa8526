// SPDX-License-Identifier: MIT
#include "db/store/questions.h"

#include <algorithm>

#include "db/store/question_list.h"

namespace tangmark::db {
namespace {

std::vector<Question> gathered() {
  std::vector<Question> all{
      question_01, question_02, question_03, question_04, question_05, question_06, question_07,
      question_08, question_09, question_10, question_11, question_12, question_13, question_14,
      question_15, question_16, question_17, question_18, question_19, question_20, question_21,
      question_22, question_23, question_24, question_25, question_31, question_32, question_33,
      question_34, question_35, question_36, question_37, question_38, question_39, question_40};
  std::sort(all.begin(), all.end(),
            [](const Question& a, const Question& b) { return a.number < b.number; });
  return all;
}

Problems unknown_keys(const Question& question, const Given& given) {
  Problems problems;
  for (const auto& [key, value] : given) {
    const bool known = std::any_of(question.fields.begin(), question.fields.end(),
                                   [&](const Field& field) { return field.name == key; });
    if (known) continue;
    std::string keys;
    for (const Field& field : question.fields)
      keys += (keys.empty() ? "" : ", ") + std::string(field.name);
    problems.push_back(
        {key, "Question " + std::to_string(question.number) + " does not ask for \"" + key + "\".",
         keys.empty() ? "It asks for nothing." : "It asks for: " + keys + "."});
  }
  return problems;
}

}  // namespace

std::span<const Question> all_questions() {
  static const std::vector<Question> all = gathered();
  return all;
}

Outcome<Answer> ask(const ShopFile& shop, int number, const Given& given, Instant now) {
  for (const Question& question : all_questions()) {
    if (question.number != number) continue;
    if (Problems unknown = unknown_keys(question, given); !unknown.empty()) return unknown;
    return question.answer(shop, given, now);
  }
  return Problem{"question", "There is no question " + std::to_string(number) + ".",
                 "Ask without a number for the list of all."};
}

std::optional<std::string> given_text(const Given& given, std::string_view key) {
  const auto found = given.find(key);
  if (found == given.end() || found->second.find_first_not_of(" \t") == std::string::npos)
    return std::nullopt;
  return found->second;
}

}  // namespace tangmark::db
