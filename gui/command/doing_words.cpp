// SPDX-License-Identifier: MIT
// Words that do or ask: any action, the weekly questions, the demo shop.
#include <algorithm>
#include <charconv>

#include "db/actions/action.h"
#include "db/exchange/day_book.h"
#include "db/new_shop.h"
#include "db/store/next_steps.h"
#include "db/store/questions.h"
#include "domain/measure/utf8.h"
#include "gui/command/json_text.h"
#include "gui/command/shop_of.h"
#include "gui/command/word_list.h"

namespace tangmark::command {
namespace {

// Columns as wide as their widest cell.
std::string plain_table(const std::vector<std::string>& columns,
                        const std::vector<std::vector<std::string>>& rows) {
  std::vector<std::size_t> widths;
  for (const auto& column : columns) widths.push_back(count_code_points(column));
  for (const auto& row : rows)
    for (std::size_t i = 0; i < std::min(row.size(), widths.size()); ++i)
      widths[i] = std::max(widths[i], count_code_points(row[i]));
  const auto line = [&](const std::vector<std::string>& cells) {
    std::string text;
    for (std::size_t i = 0; i < std::min(cells.size(), widths.size()); ++i)
      text += (i > 0 ? "  " : "") + cells[i] +
              std::string(widths[i] - count_code_points(cells[i]), ' ');
    return text.substr(0, text.find_last_not_of(' ') + 1);
  };
  std::string all = line(columns);
  for (const auto& row : rows) all += "\n" + line(row);
  return all;
}

std::string_view kind_word(db::FieldKind kind) {
  using enum db::FieldKind;
  switch (kind) {
    case text:
      return "text";
    case long_text:
      return "text";
    case secret:
      return "passphrase";
    case choice:
      return "choice";
    case yes_no:
      return "yes or no";
    case number:
      return "number";
    case share:
      return "share";
    case money:
      return "amount";
    case date:
      return "date";
    case instant:
      return "time";
    case duration:
      return "span";
    case temperature:
      return "temperature";
    case temperature_step:
      return "degrees";
    case length:
      return "length";
    case mass:
      return "mass";
    case volume:
      return "volume";
    case file:
      return "file";
    case commission:
      return "commission number";
    case item:
      return "item number";
    case blade:
      return "blade number";
    case lot:
      return "lot number";
    case piece:
      return "piece tag";
    case billet:
      return "billet number";
    case kiln:
      return "kiln";
    case firing:
      return "firing number";
    case bath:
      return "bath";
    case model:
      return "model";
    case customer:
      return "customer number";
    case finding:
      return "finding number";
    case certificate:
      return "certificate number";
    case operation:
      return "operation";
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
      for (const auto choice : field.choices)
        line += std::string(choice) + (choice == field.choices.back() ? "" : " | ");
    } else if (!field.help.empty()) {
      line += ", for example " + std::string(field.help);
    }
    if (!field.fallback.empty()) line += " (else " + std::string(field.fallback) + ")";
    say(line);
  }
  say("  at=, override=, note_why= are taken by every action: when it really happened, why a catch "
      "is\n"
      "  set aside, and the reason kept in history.");
}

Json json_of_advice(const std::vector<steel::Advice>& advice) {
  Json list = Json::array();
  for (const steel::Advice& one : advice)
    list.push_back({{"kind", steel::word_of(one.kind)},
                    {"heed", one.heed},
                    {"sentence", one.sentence},
                    {"source", one.source}});
  return list;
}

// What is to be heeded stands among the warnings already.
void tell_advice(const std::vector<steel::Advice>& advice, bool why) {
  for (const steel::Advice& one : advice)
    if (why || !one.heed) tell(one.sentence + (why ? " [" + one.source + "]" : ""));
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
      say_json({{"done", true},
                {"number", result->number},
                {"warnings", result->warnings},
                {"advice", json_of_advice(result->advice)}});
    } else {
      say("Done" + (result->number.empty() ? std::string(".") : ": " + result->number + "."));
      for (const auto& warning : result->warnings) tell(warning);
      tell_advice(result->advice, call.has("why"));
    }
    return Exit::done;
  });
}

// The demo shop is made like any other: by its day books, through the same actions.
Exit demo(const Call& call) {
  const auto done = db::begin_shop_from_day_books(call.words[0], TANGMARK_DEMO_SHOP, call.now);
  if (!done) return refuse(done.problems());
  say("The demo shop is in " + call.words[0] + ": " + std::to_string(*done) +
      " things done by an invented maker.");
  return Exit::done;
}

Exit begin(const Call& call) {
  const auto settings = call.pairs(1);
  if (!settings) return refused(call, settings.problems());
  const auto made =
      db::begin_shop(call.words[0], db::Given(settings->begin(), settings->end()), call.now);
  if (!made) return refused(call, made.problems());
  say("The shop is in " + call.words[0] + ".");
  return Exit::done;
}

// "tangmark do FILE stop_timer timer=3", as it is typed.
std::string command_of(const db::NextStep& step, const std::string& file) {
  if (step.action == "ledger")
    return "tangmark ledger " + file + " " + step.fields.at("year") + " --csv OUT";
  std::string text = "tangmark do " + file + " " + step.action;
  for (const auto& [key, value] : step.fields)
    text += " " + key + "=" + (value.find(' ') == std::string::npos ? value : "\"" + value + "\"");
  return text;
}

Json next_json(const std::vector<db::NextStep>& next) {
  Json steps = Json::array();
  for (const db::NextStep& step : next)
    steps.push_back({{"label", step.label}, {"action", step.action}, {"fields", step.fields}});
  return steps;
}

void list_questions() {
  for (const db::Question& question : db::all_questions()) {
    std::string keys;
    for (const db::Field& field : question.fields)
      keys += field.required ? fmt::format(" {}=", field.name) : fmt::format(" [{}=]", field.name);
    say(fmt::format("{:>4}  {}{}", question.number, question.words, keys));
  }
}

Exit ask(const Call& call) {
  if (call.words.size() == 1) {
    list_questions();
    return Exit::done;
  }
  int number = 0;
  const std::string& typed = call.words[1];
  const auto [end, wrong] = std::from_chars(typed.data(), typed.data() + typed.size(), number);
  if (wrong != std::errc() || end != typed.data() + typed.size())
    return refused(call, {{"NUMBER", "\"" + typed + "\" is not the number of a question.",
                           "Write the number of one of the questions."}});
  const auto given = call.pairs(2);
  if (!given) return refused(call, given.problems());
  return with_shop(call, [&](db::ShopFile& shop) {
    const auto answer = db::ask(shop, number, *given, call.now);
    if (!answer) return refused(call, answer.problems());
    const auto next = db::next_steps(shop, number, *given, call.now);
    if (call.has("json")) {
      say_json({{"title", answer->title},
                {"sentences", answer->sentences},
                {"columns", answer->columns},
                {"rows", answer->rows},
                {"next", next_json(next)}});
      return Exit::done;
    }
    say(answer->title);
    for (const auto& sentence : answer->sentences) say(sentence);
    if (!answer->rows.empty()) say(plain_table(answer->columns, answer->rows));
    for (const db::NextStep& step : next) say(step.label + ": " + command_of(step, call.words[0]));
    return Exit::done;
  });
}

}  // namespace

std::vector<Word> doing_words() {
  const Option json{"json", "", "one JSON object on standard output"};
  return {{"demo", "write the demo shop; its dates are relative to now", "FILE", 1, 1, {}, demo},
          {"new",
           "begin a shop in a new file",
           "FILE [shop_name=... zone=... currency=... ...]",
           1,
           -1,
           {},
           begin},
          {"ask",
           "one of the maker's questions by its number; none lists all",
           "FILE [NUMBER [key=value ...]]",
           1,
           -1,
           {json},
           ask},
          {"do",
           "any action; ACTION alone lists its fields, none lists all",
           "FILE [ACTION [key=value ...]]",
           1,
           -1,
           {json, {"why", "", "say the source of each sentence of advice"}},
           do_word}};
}

}  // namespace tangmark::command
