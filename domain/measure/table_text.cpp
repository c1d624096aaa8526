// SPDX-License-Identifier: MIT
#include "domain/measure/table_text.h"

#include <algorithm>
#include <cassert>
#include <utility>

#include "domain/measure/utf8.h"

namespace tangmark {
namespace {

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";

std::size_t line_of(std::string_view text, std::size_t at) {
  const auto end = text.begin() + static_cast<std::ptrdiff_t>(at);
  return 1 + static_cast<std::size_t>(std::count(text.begin(), end, '\n'));
}

std::string cells_text(std::size_t n) {
  return std::to_string(n) + (n == 1 ? " cell" : " cells");
}

}  // namespace

TableReader::TableReader(std::string_view text, std::string_view what, char separator)
    : text_(text), what_(what), separator_(separator) {
  assert(separator != '"' && separator != '\n' && separator != '\r' && "no cell could be told");
  if (text_.starts_with(byte_order_mark)) at_ = byte_order_mark.size();
  if (const auto nul = text_.find('\0'); nul != std::string_view::npos) {
    refuse(line_of(text_, nul), "This line holds a zero byte, so this is no table of text.",
           "Save the table as comma separated text in UTF-8.");
  } else if (const auto broken = first_broken_byte(text_); broken != std::string_view::npos) {
    refuse(line_of(text_, broken), "This line is not UTF-8 text.",
           "Save the table as comma separated text in UTF-8.");
  } else if (only_line_ends_follow()) {
    refuse(1, "This table is empty.", "Give a table with a head line and at least one row.");
  }
}

const Problem& TableReader::problem() const {
  assert(refused_ && "there is a problem only after a refusal");
  return problem_;
}

bool TableReader::refuse(std::size_t line, std::string sentence, std::string remedy) {
  problem_ = {what_ + ", line " + std::to_string(line), std::move(sentence), std::move(remedy)};
  refused_ = true;
  return false;
}

bool TableReader::at_line_end() const {
  return at_ == text_.size() || text_[at_] == '\n' || text_.substr(at_).starts_with("\r\n");
}

void TableReader::take_line_end() {
  if (at_ == text_.size()) return;
  at_ += text_[at_] == '\r' ? 2 : 1;
  ++line_;
}

bool TableReader::only_line_ends_follow() const {
  return text_.find_first_not_of("\r\n", at_) == std::string_view::npos;
}

void TableReader::read_plain(std::string& cell) {
  std::size_t end = at_;
  while (end < text_.size() && text_[end] != separator_ && text_[end] != '\n' &&
         text_[end] != '"' && text_[end] != '\r') {
    ++end;
  }
  cell.assign(text_.substr(at_, end - at_));
  at_ = end;
}

bool TableReader::read_quoted(std::string& cell) {
  const std::size_t opened = line_;
  cell.clear();
  for (++at_;;) {
    const std::size_t quote = text_.find('"', at_);
    if (quote == std::string_view::npos) {
      return refuse(opened, "A quotation mark opens a cell on this line and none closes it.",
                    "Close the cell with a quotation mark.");
    }
    const std::string_view piece = text_.substr(at_, quote - at_);
    line_ += static_cast<std::size_t>(std::count(piece.begin(), piece.end(), '\n'));
    cell.append(piece);
    at_ = quote + 1;
    if (at_ == text_.size() || text_[at_] != '"') return true;
    cell.push_back('"');
    ++at_;
  }
}

bool TableReader::check_cell_end() {
  if (at_line_end() || text_[at_] == separator_) return true;
  if (text_[at_] == '\r') {
    return refuse(line_, "A carriage return stands alone on this line.",
                  "End each line with CRLF or LF.");
  }
  if (text_[at_] == '"') {
    return refuse(line_, "A quotation mark stands inside a cell that does not begin with one.",
                  "Put the whole cell in quotation marks and double those inside it.");
  }
  return refuse(line_, "There are words behind the closing quotation mark of a cell.",
                "Double the quotation marks that belong to the text of the cell.");
}

bool TableReader::read_cell(std::string& cell) {
  const bool quoted = at_ < text_.size() && text_[at_] == '"';
  if (!quoted) read_plain(cell);
  if (quoted && !read_quoted(cell)) return false;
  return check_cell_end();
}

bool TableReader::next(TableRow& row) {
  if (refused_ || only_line_ends_follow()) return false;
  row.line = line_;
  std::size_t n = 0;
  for (bool more = true; more; ++n) {
    if (n == row.cells.size()) row.cells.emplace_back();
    if (!read_cell(row.cells[n])) return false;
    more = !at_line_end();
    if (more) ++at_;  // the separator
  }
  row.cells.resize(n);
  take_line_end();
  if (columns_ == 0) columns_ = n;
  if (n == columns_) return true;
  return refuse(
      row.line,
      "This line has " + cells_text(n) + " where the first has " + std::to_string(columns_) + ".",
      "Give every line the same columns, and quote a cell that holds the separator.");
}

Outcome<std::vector<TableRow>> read_table(std::string_view text, std::string_view what,
                                          char separator) {
  TableReader reader(text, what, separator);
  std::vector<TableRow> rows;
  for (TableRow row; reader.next(row);) rows.push_back(row);
  if (reader.refused()) return reader.problem();
  return rows;
}

std::string to_table_line(const std::vector<std::string>& cells, char separator) {
  std::string line;
  for (std::size_t i = 0; i < cells.size(); ++i) {
    const std::string& cell = cells[i];
    if (i > 0) line.push_back(separator);
    const bool plain = cell.find_first_of("\"\r\n") == std::string::npos &&
                       cell.find(separator) == std::string::npos && !cell.starts_with(' ') &&
                       !cell.ends_with(' ') && !(cell.empty() && cells.size() == 1);
    if (plain) {
      line += cell;
      continue;
    }
    line.push_back('"');
    for (char c : cell) line.append(c == '"' ? 2 : 1, c);
    line.push_back('"');
  }
  return line + "\r\n";
}

std::string to_table_text(const std::vector<std::vector<std::string>>& records, char separator) {
  std::string text;
  for (const auto& record : records) text += to_table_line(record, separator);
  return text;
}

}  // namespace tangmark
