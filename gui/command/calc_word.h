// SPDX-License-Identifier: MIT
#pragma once

#include <functional>

#include "domain/steel/grade.h"
#include "gui/command/word.h"

namespace tangmark::command {

/// The grades that a call means: the published ones, or those of a shop before them.
using BookOf = std::function<Outcome<steel::GradeBook>(const Call&)>;

/// calc NAME key=value ...: the computations of the steel desk by name.
Word calc_word(BookOf book_of);

}  // namespace tangmark::command
