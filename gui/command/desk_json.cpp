// SPDX-License-Identifier: MIT
#include "gui/command/desk_json.h"

#include <cmath>

namespace tangmark::command {
namespace {

struct AsJson {
  Json operator()(std::monostate) const { return nullptr; }
  Json operator()(bool yes) const { return yes; }
  Json operator()(std::int64_t whole) const { return whole; }
  Json operator()(double number) const {
    return std::isfinite(number) ? Json(number) : Json(nullptr);
  }
  Json operator()(const std::string& words) const { return words; }
  Json operator()(const steel::DeskValue::List& list) const {
    Json array = Json::array();
    for (const auto& each : list) array.push_back(json_of(each));
    return array;
  }
  Json operator()(const steel::DeskValue::Fields& fields) const {
    Json object = Json::object();
    for (const auto& field : fields) object[field.name] = json_of(field.value);
    return object;
  }
};

}  // namespace

Json json_of(const steel::DeskValue& value) {
  return std::visit(AsJson{}, value.held());
}

std::string plain_text(const Json& json) {
  return json.is_string() ? json.get<std::string>() : json.dump();
}

}  // namespace tangmark::command
