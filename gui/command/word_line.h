// SPDX-License-Identifier: MIT
#pragma once

#include "gui/command/word.h"

namespace tangmark::command {

/// Reads what was typed behind a word (typed[1] is the word itself), tells what is wrong with it or
/// the word's --help, and else runs the word. Returns the program's exit code.
int run_word(const Word& word, int count, char** typed);

}  // namespace tangmark::command
