// SPDX-License-Identifier: MIT
#include "domain/stock/cutting_json.h"

#include <algorithm>
#include <initializer_list>
#include <nlohmann/json.hpp>
#include <set>

namespace tangmark::stock {
namespace {

using Json = nlohmann::ordered_json;

std::string member(const std::string& path, const std::string& key) {
  return path.empty() ? key : path + "." + key;
}

/// Gathers what is wrong while reading, so that the writer of a case sees all of it.
class Reader {
 public:
  std::int64_t whole(const Json& object, const std::string& path, const char* key) {
    const Json* value = find(object, path, key);
    if (value == nullptr) return 0;
    if (!value->is_number_integer() ||
        (value->is_number_unsigned() && value->get<std::uint64_t>() > most)) {
      add(member(path, key), "This must be a whole number.", "Give it without fraction.");
      return 0;
    }
    return value->get<std::int64_t>();
  }
  std::string text(const Json& object, const std::string& path, const char* key) {
    const Json* value = find(object, path, key);
    if (value == nullptr) return {};
    if (!value->is_string() || value->get_ref<const std::string&>().empty()) {
      add(member(path, key), "This must be a text that is not empty.", "Give it in quotes.");
      return {};
    }
    return value->get<std::string>();
  }
  const Json& list(const Json& object, const char* key) {
    static const Json none = Json::array();
    const Json* value = find(object, "", key);
    if (value == nullptr) return none;
    if (value->is_array()) return *value;
    add(key, "This must be a list.", "Give it in square brackets.");
    return none;
  }
  bool object(const Json& value, const std::string& path, std::initializer_list<const char*> keys) {
    if (!value.is_object()) {
      add(path.empty() ? "case" : path, "This must be an object.", "Give it in curly brackets.");
      return false;
    }
    for (const auto& [key, unused] : value.items())
      if (std::find(keys.begin(), keys.end(), key) == keys.end())
        add(member(path, key), "This key is not known.", "Leave it out, or check its spelling.");
    return true;
  }
  void add(std::string field, std::string sentence, std::string remedy) {
    problems.push_back({std::move(field), std::move(sentence), std::move(remedy)});
  }

  Problems problems;

 private:
  static constexpr std::uint64_t most = 1'000'000'000'000'000ULL;
  const Json* find(const Json& object, const std::string& path, const char* key) {
    const auto at = object.find(key);
    if (at != object.end()) return &*at;
    add(member(path, key), "This is missing.", "Add it.");
    return nullptr;
  }
};

/// The parsed text, or nothing after noting why not. The parser alone would keep the last of two
/// like keys without a word, so they are looked for while it reads.
std::optional<Json> parsed(std::string_view text, Reader& read) {
  std::vector<std::set<std::string>> keys;
  std::string twice;
  const auto watch = [&](int, Json::parse_event_t event, Json& value) {
    if (event == Json::parse_event_t::object_start) keys.emplace_back();
    if (event == Json::parse_event_t::object_end) keys.pop_back();
    if (event == Json::parse_event_t::key && !keys.back().insert(value.get<std::string>()).second)
      twice = value.get<std::string>();
    return true;
  };
  try {
    Json json = Json::parse(text.begin(), text.end(), watch);
    if (twice.empty()) return json;
    read.add(twice, "This key is given twice in one object.", "Leave one of them out.");
  } catch (const Json::parse_error& error) {
    read.add("case",
             "This is not JSON: reading stopped at character " + std::to_string(error.byte) + ".",
             "Check the brackets, quotes and commas there.");
  }
  return std::nullopt;
}

CuttingCase read_case(const Json& json, Reader& read) {
  CuttingCase cutting;
  if (!read.object(json, "", {"kerf_mm", "keep_mm", "bars", "blanks"})) return cutting;
  cutting.kerf_mm = read.whole(json, "", "kerf_mm");
  cutting.keep_mm = read.whole(json, "", "keep_mm");
  const Json& bars = read.list(json, "bars");
  for (std::size_t i = 0; i < bars.size(); ++i) {
    const std::string path = "bars[" + std::to_string(i) + "]";
    if (!read.object(bars[i], path, {"id", "length_mm", "price"})) continue;
    cutting.bars.push_back({read.text(bars[i], path, "id"), read.whole(bars[i], path, "length_mm"),
                            read.whole(bars[i], path, "price")});
  }
  const Json& blanks = read.list(json, "blanks");
  for (std::size_t i = 0; i < blanks.size(); ++i) {
    const std::string path = "blanks[" + std::to_string(i) + "]";
    if (!read.object(blanks[i], path, {"id", "length_mm"})) continue;
    cutting.blanks.push_back(
        {read.text(blanks[i], path, "id"), read.whole(blanks[i], path, "length_mm")});
  }
  return cutting;
}

}  // namespace

Outcome<CuttingCase> cutting_case_from(std::string_view text) {
  Reader read;
  const std::optional<Json> json = parsed(text, read);
  CuttingCase cutting;
  if (json) cutting = read_case(*json, read);
  if (!read.problems.empty()) return read.problems;
  return cutting;
}

std::string to_json(const CuttingPlan& plan, const CuttingCase& cutting) {
  Json cuts = Json::array(), unplaced = Json::array();
  std::size_t placed = 0;
  for (const CutBar& cut : plan.cuts) {
    Json blanks = Json::array();
    for (const std::size_t i : cut.blanks) blanks.push_back(cutting.blanks[i].id);
    placed += cut.blanks.size();
    cuts.push_back({{"bar", cutting.bars[cut.bar].id},
                    {"blanks", std::move(blanks)},
                    {"left_mm", cut.left_mm},
                    {"kept", cut.kept}});
  }
  for (const std::size_t i : plan.unplaced) unplaced.push_back(cutting.blanks[i].id);
  const Json answer = {{"placed", placed},
                       {"value_used", plan.value_used},
                       {"bars_cut", plan.cuts.size()},
                       {"cuts", std::move(cuts)},
                       {"unplaced", std::move(unplaced)},
                       {"proven_optimal", plan.proven},
                       {"value_at_least", plan.value_at_least}};
  return answer.dump(-1, ' ', false, Json::error_handler_t::replace);
}

Outcome<std::string> cut_case_text(std::string_view json, const OutOfTime& out_of_time) {
  const Outcome<CuttingCase> cutting = cutting_case_from(json);
  if (!cutting) return cutting.problems();
  const Outcome<CuttingPlan> plan = cutting_plan(*cutting, out_of_time);
  if (!plan) return plan.problems();
  return to_json(*plan, *cutting);
}

}  // namespace tangmark::stock
