// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "domain/measure/outcome.h"

namespace tangmark::certificate {

/// The part of JSON that a certificate's record is written in: no fractions, so that no figure can
/// come out two ways, and members keep their order. **Source**: RFC 8259.
class RecordJson {
 public:
  using List = std::vector<RecordJson>;
  using Members = std::vector<std::pair<std::string, RecordJson>>;

  RecordJson() = default;  ///< null
  RecordJson(std::int64_t number) : held_(number) {}
  RecordJson(std::string text) : held_(std::move(text)) {}
  RecordJson(List list) : held_(std::move(list)) {}
  RecordJson(Members members) : held_(std::move(members)) {}

  bool is_null() const { return std::holds_alternative<std::monostate>(held_); }
  const std::int64_t* number() const { return std::get_if<std::int64_t>(&held_); }
  const std::string* text() const { return std::get_if<std::string>(&held_); }
  const List* list() const { return std::get_if<List>(&held_); }
  const Members* members() const { return std::get_if<Members>(&held_); }
  friend bool operator==(const RecordJson&, const RecordJson&) = default;

 private:
  std::variant<std::monostate, std::int64_t, std::string, List, Members> held_;
};

/// One member to a line, two blanks for each level, one line feed at the end; strings escape only
/// what RFC 8259 demands. The same value always gives the same bytes.
std::string record_text(const RecordJson& json);

/// Reads such text. Refuses text that is not UTF-8, fractions, true and false, a member named
/// twice, anything behind the value, and more than 32 levels, naming the byte at fault.
Outcome<RecordJson> read_record_json(std::string_view text);

}  // namespace tangmark::certificate
