// SPDX-License-Identifier: MIT
#include "domain/steel/desk_value.h"

#include <cassert>

namespace tangmark::steel {

DeskValue::DeskValue() = default;
DeskValue::DeskValue(bool yes) : held_(yes) {}
DeskValue::DeskValue(std::int64_t whole) : held_(whole) {}
DeskValue::DeskValue(double number) : held_(number) {}
DeskValue::DeskValue(std::string words) : held_(std::move(words)) {}
DeskValue::DeskValue(std::string_view words) : held_(std::string(words)) {}
DeskValue::DeskValue(const char* words) : held_(std::string(words)) {}
DeskValue::DeskValue(const DeskValue& other) = default;
DeskValue::DeskValue(DeskValue&& other) noexcept = default;
DeskValue& DeskValue::operator=(const DeskValue& other) = default;
DeskValue& DeskValue::operator=(DeskValue&& other) noexcept = default;
DeskValue::~DeskValue() = default;
DeskValue::DeskValue(List list) : held_(std::move(list)) {}
DeskValue::DeskValue(Fields fields) : held_(std::move(fields)) {}

DeskValue::DeskValue(const std::vector<std::string>& words) {
  List list;
  for (const std::string& word : words) list.emplace_back(word);
  held_ = std::move(list);
}

const DeskValue* DeskValue::find(std::string_view name) const {
  const auto* fields = std::get_if<Fields>(&held_);
  if (!fields) return nullptr;
  for (const DeskField& field : *fields) {
    if (field.name == name) return &field.value;
  }
  return nullptr;
}

double DeskValue::number() const {
  if (const auto* whole = std::get_if<std::int64_t>(&held_)) return static_cast<double>(*whole);
  assert(std::holds_alternative<double>(held_) && "this value holds no number");
  return std::get<double>(held_);
}

const std::string& DeskValue::words() const {
  assert(std::holds_alternative<std::string>(held_) && "this value holds no words");
  return std::get<std::string>(held_);
}

const DeskValue::List& DeskValue::list() const {
  assert(std::holds_alternative<List>(held_) && "this value holds no list");
  return std::get<List>(held_);
}

}  // namespace tangmark::steel
