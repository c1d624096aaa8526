// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace tangmark::desk {

/// One row of a place's list: a short number, a line in full ink and a line that stands back.
struct Row {
  std::string id;
  std::string number;
  std::string line;
  std::string under;
  std::string more_words;  ///< found by, but not shown: the buyer's town, an old number
};

/// A place's list that is narrowed while typing. Made once per load; narrowing 100,000 rows is
/// meant to take a few milliseconds.
class List {
 public:
  List() = default;
  explicit List(std::vector<Row> rows);
  std::size_t size() const { return rows_.size(); }
  const Row& row(std::size_t i) const { return rows_[i]; }
  /// Index of the row with this id, or size() when there is none.
  std::size_t index_of(std::string_view id) const;
  /// Rows in which every typed word occurs, in their own order. Case and, for Latin letters with
  /// accents, the accent do not matter. A row whose number is exactly what was typed comes first.
  std::vector<std::size_t> matching(std::string_view typed) const;

 private:
  std::vector<Row> rows_;
  std::string folded_;                 // all rows' words, folded, one after the other
  std::vector<std::size_t> begins_;    // where each row begins in folded_; one more at the end
};

/// Small letters, accents of Latin letters dropped; other letters stay as they are.
std::string folded(std::string_view utf8);

}  // namespace tangmark::desk
