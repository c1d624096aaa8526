// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

namespace tangmark::steel {

struct DeskField;

/// What a computation of the desk answers: nothing, a yes or no, a number, words, a list, or named
/// values in a fixed order. Printing it (as text or JSON) is the caller's affair.
class DeskValue {
 public:
  using List = std::vector<DeskValue>;
  using Fields = std::vector<DeskField>;
  using Held = std::variant<std::monostate, bool, std::int64_t, double, std::string, List, Fields>;

  DeskValue();  ///< nothing ("null")
  DeskValue(bool yes);
  DeskValue(std::int64_t whole);
  DeskValue(double number);
  DeskValue(std::string words);
  DeskValue(std::string_view words);
  DeskValue(const char* words);
  DeskValue(List list);
  DeskValue(Fields fields);
  DeskValue(const std::vector<std::string>& words);
  DeskValue(const DeskValue& other);
  DeskValue(DeskValue&& other) noexcept;
  DeskValue& operator=(const DeskValue& other);
  DeskValue& operator=(DeskValue&& other) noexcept;
  ~DeskValue();

  const Held& held() const { return held_; }
  bool is_nothing() const { return held_.index() == 0; }
  /// The named value, or null when this holds none of that name.
  const DeskValue* find(std::string_view name) const;
  /// Its number; only when it holds one.
  double number() const;
  /// Its words; only when it holds words.
  const std::string& words() const;
  /// Its list; only when it holds one.
  const List& list() const;

 private:
  Held held_;  // a field holds a value in turn, so all that makes one stands in the source file
};

/// One named value.
struct DeskField {
  std::string name;
  DeskValue value;
};

}  // namespace tangmark::steel
