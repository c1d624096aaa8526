// SPDX-License-Identifier: MIT
#include "gui/desk/form.h"

#include <algorithm>

namespace tangmark::desk {
namespace {

void add(std::string& text, const Problem& problem) {
  if (!text.empty()) text += ' ';
  text += problem.sentence;
  if (!problem.remedy.empty()) text += ' ' + problem.remedy;
}

}  // namespace

std::string beside(const Problems& problems, const std::string& field) {
  std::string text;
  for (const Problem& problem : problems) {
    if (problem.field == field) add(text, problem);
  }
  return text;
}

std::string above(const Problems& problems, const Form& form) {
  std::string text;
  for (const Problem& problem : problems) {
    const bool shown = std::any_of(form.fields.begin(), form.fields.end(),
                                   [&](const FormField& f) { return f.name == problem.field; });
    if (!shown) add(text, problem);
  }
  return text;
}

}  // namespace tangmark::desk
