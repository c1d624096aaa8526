// SPDX-License-Identifier: MIT
#include "gui/command/word_line.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <chrono>

namespace tangmark::command {
namespace {

Outcome<Instant> the_time(const Call& call) {
  const auto clock = std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now());
  const auto given = call.option("now");
  if (!given) return clock;
  return parse_instant(*given, Zone(), clock, "--now");
}

// A word's help names what it takes as the list of words does.
class WordHelp : public CLI::Formatter {
 public:
  explicit WordHelp(const Word& word) : takes_(word.takes) {}
  std::string make_usage(const CLI::App* app, std::string) const override {
    return "Usage: " + app->get_name() + (takes_.empty() ? "" : " ") + takes_ + " [options]\n";
  }
  std::string make_positionals(const CLI::App*) const override { return {}; }

 private:
  std::string takes_;
};

// Lets CLI11 read what was typed behind one word.
std::optional<int> read_call(const Word& word, int count, char** typed, Call& call) {
  CLI::App app{std::string(word.summary), "tangmark " + std::string(word.name)};
  app.positionals_at_end(false);
  app.formatter(std::make_shared<WordHelp>(word));
  auto* words = app.add_option("words", call.words);
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

}  // namespace

int run_word(const Word& word, int count, char** typed) {
  Call call;
  if (const auto ended = read_call(word, count, typed, call)) return *ended;
  const auto now = the_time(call);
  if (!now) return static_cast<int>(refuse(now.problems()));
  call.now = *now;
  return static_cast<int>(word.run(call));
}

}  // namespace tangmark::command
