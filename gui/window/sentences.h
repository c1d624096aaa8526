// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "domain/measure/outcome.h"

namespace tangmark::window {

/// All problems as one text: each sentence with what to do about it.
inline std::string all_of(const Problems& problems) {
  std::string text;
  for (const Problem& problem : problems) {
    if (!text.empty()) text += ' ';
    text += problem.sentence;
    if (!problem.remedy.empty()) text += ' ' + problem.remedy;
  }
  return text;
}

}  // namespace tangmark::window
