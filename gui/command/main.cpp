// SPDX-License-Identifier: MIT
#include <unistd.h>

#include <CLI/CLI.hpp>

#include <algorithm>
#include <chrono>
#include <clocale>
#include <cstdio>
#include <exception>

#include "db/failure.h"
#include "gui/command/word.h"
#include "gui/desk/paper/certificate_printer.h"
#include "gui/desk/paper/photo_reader.h"
#include "reports/page_failure.h"

namespace tangmark::command {
namespace {

Outcome<Instant> the_time(const Call& call) {
  const auto clock = std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now());
  const auto given = call.option("now");
  if (!given) return clock;
  return parse_instant(*given, Zone(), clock, "--now");
}

// The window is a program of its own beside this one, so that the words start without a display.
int open_window(int count, char** words) {
  std::error_code error;
  const auto self = std::filesystem::read_symlink("/proc/self/exe", error);
  const std::string window = (self.parent_path() / "tangmark-window").string();
  std::vector<char*> arguments{const_cast<char*>(window.c_str())};
  for (int i = 1; i < count; ++i) arguments.push_back(words[i]);
  arguments.push_back(nullptr);
  ::execv(window.c_str(), arguments.data());
  tell("The window program " + window + " is not there. Build it, or use a word: tangmark --help.");
  return static_cast<int>(Exit::usage);
}

// Lets CLI11 read what was typed behind one word.
std::optional<int> read_call(const Word& word, int count, char** typed, Call& call) {
  CLI::App app{std::string(word.summary), "tangmark " + std::string(word.name)};
  app.positionals_at_end(false);
  auto* words = app.add_option(std::string(word.takes.empty() ? "words" : "words"), call.words,
                               std::string(word.takes));
  words->expected(word.least, word.most < 0 ? 100'000 : std::max(word.most, 1));
  if (word.least > 0) words->required();
  std::map<std::string, std::string> values;
  std::map<std::string, bool> switches;
  std::vector<Option> options = word.options;
  options.push_back({"now", "WHEN", "stands in for the clock: ISO 8601 with offset"});
  for (const Option& option : options) {
    const std::string name(option.name);
    if (option.value.empty())
      app.add_flag("--" + name, switches[name], std::string(option.help));
    else
      app.add_option("--" + name, values[name], std::string(option.help))
          ->type_name(std::string(option.value));
  }
  app.footer(std::string(word.more));
  try {
    app.parse(count - 1, typed + 1);
  } catch (const CLI::ParseError& error) {
    return app.exit(error) == 0 ? 0 : static_cast<int>(Exit::usage);
  }
  if (word.most >= 0 && static_cast<int>(call.words.size()) > word.most) {
    tell("tangmark " + std::string(word.name) + " takes: " + std::string(word.takes));
    return static_cast<int>(Exit::usage);
  }
  for (auto& [name, value] : values)
    if (app.count("--" + name) > 0) call.options[name] = value;
  for (auto& [name, on] : switches)
    if (on) call.options[name] = "yes";
  return std::nullopt;
}

int run_word(const Word& word, int count, char** typed) {
  Call call;
  if (const auto ended = read_call(word, count, typed, call)) return *ended;
  const auto now = the_time(call);
  if (!now) return static_cast<int>(refuse(now.problems()));
  call.now = *now;
  return static_cast<int>(word.run(call));
}

void print_help() {
  say("Tangmark keeps the work of a maker of custom knives together.\n");
  say("  tangmark [SHOPFILE]    open the window\n");
  for (const Word& word : all_words()) {
    std::string line = "  tangmark " + std::string(word.name) + " " + std::string(word.takes);
    if (line.size() < 46) line.resize(46, ' ');
    say(line + "  " + std::string(word.summary));
  }
  say("\nEvery word has --help. Exit: 0 done, 1 the answer is no, 2 usage, 3 input refused.");
}

int run(int count, char** typed) {
  const std::string first = count > 1 ? typed[1] : "";
  if (first == "--help" || first == "-h" || first == "help") {
    print_help();
    return 0;
  }
  if (first == "--version") {
    say("tangmark " TANGMARK_VERSION);
    return 0;
  }
  const auto words = all_words();
  const auto word =
      std::find_if(words.begin(), words.end(), [&](const Word& w) { return w.name == first; });
  if (word != words.end()) return run_word(*word, count, typed);
  if (first.empty() || first.starts_with("-") || std::filesystem::exists(first) ||
      first.ends_with(".tangmark"))
    return open_window(count, typed);
  tell("\"" + first +
       "\" is neither a word of this program nor a file. List the words with: tangmark --help.");
  return static_cast<int>(Exit::usage);
}

}  // namespace
}  // namespace tangmark::command

int main(int count, char** typed) {
  std::setlocale(LC_ALL, "C.UTF-8");
  using namespace tangmark;
  desk::lend_certificate_printer();
  desk::lend_photo_reader();
  // The one rim where a failing machine becomes a sentence.
  try {
    return command::run(count, typed);
  } catch (const db::Failure& failure) {
    command::tell(failure.what());
  } catch (const reports::PageFailure& failure) {
    command::tell(failure.what());
  } catch (const std::exception& error) {
    command::tell(std::string("The machine failed: ") + error.what() +
                  ". Nothing more was stored.");
  }
  return static_cast<int>(command::Exit::refused);
}
