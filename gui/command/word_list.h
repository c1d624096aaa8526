// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "gui/command/word.h"

namespace tangmark::command {

// Each group of words stands in a file of its own; word_list.cpp joins them.
std::vector<Word> money_words();        // quote, invoice, receipt, promise
std::vector<Word> planning_words();     // plan, cut
std::vector<Word> certificate_words();  // certificate, revoke, wording, verify
std::vector<Word> paper_words();        // traveller, firing-sheet, day-list, labels, calendar
std::vector<Word> file_words();         // check, backup, restore, rescue, export, import
std::vector<Word> doing_words();        // demo, do, ask
std::vector<Word> desk_words();         // calc, kiln-record

}  // namespace tangmark::command
