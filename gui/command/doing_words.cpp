// SPDX-License-Identifier: MIT
// Words that do or ask: any action, the weekly questions, the demo shop.
#include "db/actions/action.h"
#include "gui/command/json_text.h"
#include "gui/command/shop_of.h"
#include "gui/command/word_list.h"

namespace tangmark::command {
namespace {

std::string_view kind_word(db::FieldKind kind) {
  using enum db::FieldKind;
  switch (kind) {
    case text: return "text";
    case long_text: return "text";
    case choice: return "choice";
    case yes_no: return "yes or no";
    case number: return "number";
    case share: return "share";
    case money: return "amount";
    case date: return "date";
    case instant: return "time";
    case duration: return "span";
    case temperature: return "temperature";
    case temperature_step: return "degrees";
    case length: return "length";
    case mass: return "mass";
    case volume: return "volume";
    case file: return "file";
    case commission: return "commission number";
    case item: return "item number";
    case blade: return "blade number";
    case lot: return "lot number";
    case piece: return "piece tag";
    case billet: return "billet number";
    case kiln: return "kiln";
    case firing: return "firing number";
    case bath: return "bath";
    case model: return "model";
    case customer: return "customer number";
    case finding: return "finding number";
    case certificate: return "certificate number";
  }
  return "";
}

void list_actions() {
  for (const db::Action* action : db::all_actions()) {
    std::string line = "  " + std::string(action->name);
    line.resize(std::max<std::size_t>(line.size() + 1, 26), ' ');
    say(line + std::string(action->summary));
  }
}

void list_fields(const db::Action& action) {
  say(std::string(action.name) + ": " + std::string(action.summary));
  for (const db::Field& field : action.fields) {
    std::string line = "  " + std::string(field.name) + "=";
    line.resize(std::max<std::size_t>(line.size() + 1, 26), ' ');
    line += std::string(kind_word(field.kind)) + (field.required ? ", needed" : "");
    if (!field.choices.empty()) {
      line += ": ";
      for (const auto choice : field.choices) line += std::string(choice) + (choice == field.choices.back() ? "" : " | ");
    } else if (!field.help.empty()) {
      line += ", for example " + std::string(field.help);
    }
    if (!field.fallback.empty()) line += " (else " + std::string(field.fallback) + ")";
    say(line);
  }
  say("  at=, override=, note_why= are taken by every action: when it really happened, why a catch is\n"
      "  set aside, and the reason kept in history.");
}

Exit do_word(const Call& call) {
  if (call.words.size() == 1) {
    list_actions();
    return Exit::done;
  }
  const db::Action* action = db::find_action(call.words[1]);
  if (!action)
    return refused(call, {{"action", "There is no action \"" + call.words[1] + "\".",
                           "List all actions with: tangmark do FILE."}});
  if (call.words.size() == 2) {
    list_fields(*action);
    return Exit::done;
  }
  const auto given = call.pairs(2);
  if (!given) return refused(call, given.problems());
  return with_shop(call, [&](db::ShopFile& shop) {
    auto result = db::perform(shop, *action, *given, call.now);
    if (!result) return refused(call, result.problems());
    if (call.has("json")) {
      say_json({{"done", true}, {"number", result->number}, {"warnings", result->warnings}});
    } else {
      say("Done" + (result->number.empty() ? std::string(".") : ": " + result->number + "."));
      for (const auto& warning : result->warnings) tell(warning);
    }
    return Exit::done;
  });
}

}  // namespace

std::vector<Word> doing_words() {
  const Option json{"json", "", "one JSON object on standard output"};
  return {{"do", "any action; ACTION alone lists its fields, none lists all", "FILE [ACTION [key=value ...]]", 1, -1,
           {json}, do_word}};
}

}  // namespace tangmark::command
