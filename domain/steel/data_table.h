// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace tangmark::steel {

/// One of our own compiled-in tables, read once. A fault in it is a mistake in the program and
/// asserts: every table is read in the tests.
class DataTable {
 public:
  /// Reads CSV with one head line; a field may be quoted, a quote inside a field may not occur.
  explicit DataTable(std::string_view csv);

  std::size_t size() const { return rows_.size(); }
  std::string_view text(std::size_t row, std::string_view column) const;
  /// The number of a cell that must hold one.
  double number(std::size_t row, std::string_view column) const;
  /// The number of a cell that may be empty.
  std::optional<double> number_if_any(std::size_t row, std::string_view column) const;
  const std::vector<std::string_view>& columns() const { return head_; }

 private:
  std::vector<std::string_view> head_;
  std::vector<std::vector<std::string_view>> rows_;
};

}  // namespace tangmark::steel
