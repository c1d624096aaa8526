// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <functional>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "domain/measure/outcome.h"
#include "domain/measure/when.h"

namespace tangmark::command {

/// How a word ended. These are the program's exit codes.
enum class Exit { done = 0, answer_is_no = 1, usage = 2, refused = 3 };

/// One option of a word: "--pdf OUT" or the switch "--json".
struct Option {
  std::string_view name;   ///< without the dashes
  std::string_view value;  ///< what it takes, in capitals; empty for a switch
  std::string_view help;
};

/// What was typed behind a word.
class Call {
 public:
  std::vector<std::string> words;  ///< everything that is not an option, in order
  std::map<std::string, std::string, std::less<>> options;
  Instant now;

  bool has(std::string_view option) const { return options.contains(option); }
  std::optional<std::string> option(std::string_view name) const;
  /// "key=value" among the words from `first` on; a word without "=" is a problem naming it.
  Outcome<std::map<std::string, std::string, std::less<>>> pairs(std::size_t first) const;
};

/// One word of the command line.
struct Word {
  std::string_view name;
  std::string_view summary;
  std::string_view takes;  ///< "FILE COMMISSION"
  int least, most;         ///< how many words behind it; most -1 for any number
  std::vector<Option> options;
  std::function<Exit(const Call&)> run;
  std::string_view more{};  ///< what --help says behind the options
};

/// All words, in the order that help lists them.
std::span<const Word> all_words();

/// Prints every problem as one line on standard error: "field: sentence remedy". Exit::refused.
Exit refuse(const Problems& problems);
/// Prints a line on standard output.
void say(std::string_view line);
/// Prints a line on standard error.
void tell(std::string_view line);

/// Writes a whole file at once: a neighbour first, then renamed, so that a full disk leaves no
/// half. Refuses a path that cannot be written.
Outcome<Done> write_whole(const std::filesystem::path& path, std::string_view bytes);
/// Reads a whole file; refuses one that is missing or unreadable.
Outcome<std::string> read_whole(const std::filesystem::path& path);

}  // namespace tangmark::command
