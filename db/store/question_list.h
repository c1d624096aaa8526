// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include "db/store/questions.h"

namespace tangmark::db {

// Each question is in its own file, question_NN.cpp.
extern const Question question_01;
extern const Question question_02;
extern const Question question_03;
extern const Question question_04;
extern const Question question_05;
extern const Question question_06;
extern const Question question_07;
extern const Question question_08;
extern const Question question_09;
extern const Question question_10;
extern const Question question_11;
extern const Question question_12;
extern const Question question_13;
extern const Question question_14;
extern const Question question_15;
extern const Question question_16;
extern const Question question_17;
extern const Question question_18;
extern const Question question_19;
extern const Question question_20;
// Of the steel desk.
extern const Question question_21;
extern const Question question_22;
extern const Question question_23;
extern const Question question_24;
extern const Question question_25;
extern const Question question_31;
extern const Question question_32;
extern const Question question_33;
extern const Question question_34;
extern const Question question_35;
extern const Question question_36;
extern const Question question_37;
extern const Question question_38;
extern const Question question_39;
extern const Question question_40;

/// What was given under a key; nothing when it is missing or blank.
std::optional<std::string> given_text(const Given& given, std::string_view key);

/// What a key names, such as a blade; refuses a key that is missing.
template <class T>
Outcome<T> given_thing(const ShopFile& shop, const Given& given, std::string_view key,
                       Outcome<T> (*named)(const ShopFile&, std::string_view, std::string_view)) {
  const auto text = given_text(given, key);
  if (!text)
    return Problem{std::string(key), "Which " + std::string(key) + " is meant is not said.",
                   "Write " + std::string(key) + "=, for example " + std::string(key) + "=12."};
  return named(shop, *text, key);
}

}  // namespace tangmark::db
