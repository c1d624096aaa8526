// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "db/actions/form.h"
#include "db/actions/work.h"

namespace tangmark::db {

/// A field that may be set right by hand, and the column it stands in. The field is one of the
/// action's own kinds, so a correction is read like a first entry.
struct Correctable {
  std::string_view subject;  ///< "blade", "finding", "lot", "piece", "commission", "item"
  std::string_view field;    ///< as it is typed: "thickness"
  std::string_view column;   ///< "thickness_nm"
  FieldKind
      kind;  ///< text, length, temperature, mass, duration, share, number, date, yes_no, instant
  bool required = false;  ///< an empty value is refused
};

/// Everything that may be corrected in place; history keeps the old value. What is computed from
/// other rows, money, and a finding's decision are not: they have actions of their own.
const std::vector<Correctable>& correctable_fields();
/// The fields of one subject as "a, b, c".
std::string correctable_text(std::string_view subject);

/// Stores the corrected value of one row; an empty text takes it away. Problems when it does not
/// read.
Problems correct_column(Work& work, const Correctable& what, std::string_view table,
                        std::int64_t row, const std::string& text);

}  // namespace tangmark::db
