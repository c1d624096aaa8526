// SPDX-License-Identifier: MIT
#pragma once

#include <nlohmann/json.hpp>
#include <string>

#include "gui/command/word.h"

namespace tangmark::command {

/// One JSON object, its keys in the order they were put in.
using Json = nlohmann::ordered_json;

/// Prints one JSON object on standard output and nothing else.
inline void say_json(const Json& json) {
  say(json.dump(2));
}

/// A refusal under --json: the first problem as field, problem and remedy, all of them in problems.
inline Exit refuse_json(const Problems& problems) {
  Json all = Json::array();
  for (const Problem& p : problems)
    all.push_back({{"field", p.field}, {"problem", p.sentence}, {"remedy", p.remedy}});
  Json json{{"done", false}};
  json.update(all.at(0));
  json["problems"] = all;
  say_json(json);
  return refuse(problems);
}

/// Refuses in the way the call asked for.
inline Exit refused(const Call& call, const Problems& problems) {
  return call.has("json") ? refuse_json(problems) : refuse(problems);
}

}  // namespace tangmark::command
