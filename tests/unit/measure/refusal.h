// SPDX-License-Identifier: MIT
#pragma once

#include <catch2/catch.hpp>
#include <string>

#include "domain/measure/outcome.h"

namespace tangmark {

/// A refusal the maker can act on: the field asked about, a sentence and a remedy with full stops,
/// and a word of the sentence.
template <class T>
void check_refused(const Outcome<T>& outcome, const std::string& field, const std::string& word) {
  REQUIRE_FALSE(outcome.ok());
  const Problem problem = outcome.problem();
  CHECK(problem.field == field);
  CHECK_THAT(problem.sentence, Catch::Matchers::Contains(word));
  CHECK_THAT(problem.sentence, Catch::Matchers::EndsWith("."));
  CHECK_THAT(problem.remedy, Catch::Matchers::EndsWith("."));
}

}  // namespace tangmark
