// SPDX-License-Identifier: MIT
#include "gui/command/calc_word.h"

#include <algorithm>

#include "domain/steel/desk_calc.h"
#include "gui/command/desk_json.h"

namespace tangmark::command {
namespace {

void say_why(const steel::DeskCalculation& calculation) {
  say("Source: " + calculation.source);
  say("Valid:  " + calculation.range);
}

void list_calculations() {
  for (const auto& calculation : steel::desk_calculations()) {
    std::string line = "  " + calculation.name;
    line.resize(std::max<std::size_t>(line.size() + 1, 16), ' ');
    say(line + calculation.answers);
  }
}

void list_keys(const steel::DeskCalculation& calculation) {
  say(calculation.name + ": " + calculation.answers);
  for (const auto& key : calculation.keys) {
    std::string line = "  " + key.name + (key.fallback.empty() ? "" : "=" + key.fallback);
    line.resize(std::max<std::size_t>(line.size() + 1, 30), ' ');
    say(line + key.meaning + (key.unit.empty() ? "" : ", " + key.unit) +
        (key.need == steel::Need::required ? " (needed)" : ""));
  }
  say_why(calculation);
}

Exit calc(const Call& call, const BookOf& book_of) {
  if (call.words.empty()) {
    list_calculations();
    return Exit::done;
  }
  const steel::DeskCalculation* calculation = steel::find_desk_calculation(call.words[0]);
  if (!calculation)
    return refused(call, {{"name", "There is no computation \"" + call.words[0] + "\".",
                           "List them with: tangmark calc."}});
  if (call.words.size() == 1) {
    list_keys(*calculation);
    return Exit::done;
  }
  const auto pairs = call.pairs(1);
  if (!pairs) return refused(call, pairs.problems());
  const std::vector<std::pair<std::string, std::string>> keys(pairs->begin(), pairs->end());
  const auto book = book_of(call);
  if (!book) return refused(call, book.problems());
  const auto answer = steel::run_desk_calculation(call.words[0], keys, *book);
  if (!answer) return refused(call, answer.problems());
  const Json fields = json_of(steel::DeskValue(answer->fields));
  if (call.has("json")) {
    Json json = fields;
    if (!answer->notes.empty()) json["notes"] = answer->notes;
    if (call.has("why")) {
      json["source"] = calculation->source;
      json["range"] = calculation->range;
    }
    say_json(json);
    return Exit::done;
  }
  for (const auto& [name, value] : fields.items()) say(name + " = " + plain_text(value));
  for (const auto& note : answer->notes) tell(note);
  if (call.has("why")) say_why(*calculation);
  return Exit::done;
}

}  // namespace

Word calc_word(BookOf book_of) {
  const Option json{"json", "", "one JSON object on standard output"};
  return {"calc",
          "a computation of the steel desk; NAME alone lists keys, units, source",
          "[NAME [key=value ...]]",
          0,
          -1,
          {json,
           {"why", "", "say the source and the range"},
           {"shop", "FILE", "know the grades of this shop, too"}},
          [book_of = std::move(book_of)](const Call& call) { return calc(call, book_of); }};
}

}  // namespace tangmark::command
