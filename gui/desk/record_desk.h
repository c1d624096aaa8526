// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "domain/measure/outcome.h"
#include "gui/desk/form.h"
#include "gui/desk/sheet.h"
#include "gui/desk/sight.h"

namespace tangmark::desk {

/// A kiln record that was looked at before it is attached: its first rows, what each column is
/// taken for, and how the rows read; the maker agrees or names the columns.
struct LookedAtRecord {
  std::string firing;  ///< number of the firing it is for
  std::vector<Section> sections;
};

/// The form that asks for the file and, behind "more", for how its columns are to be read.
Form record_form(const Sight& sight, const Typed& filled);

/// Reads the first 64 kB of the file. Refuses a firing that is not there, a file that cannot be
/// read, and a mapping with a word it does not know. A record that cannot be read so is shown all
/// the same, with why.
Outcome<LookedAtRecord> record_sheet(const Sight& sight, const Typed& typed);

}  // namespace tangmark::desk
