// SPDX-License-Identifier: MIT
// tangmark-words: every word of the command line, over shop files and pages.
#include <algorithm>
#include <clocale>
#include <exception>

#include "db/failure.h"
#include "gui/command/beside.h"
#include "gui/command/word_line.h"
#include "gui/desk/paper/certificate_printer.h"
#include "gui/desk/paper/photo_reader.h"
#include "reports/page_failure.h"

namespace tangmark::command {
namespace {

// The window is a program of its own beside this one, so that the words start without a display.
int open_window(int count, char** words) {
  become("tangmark-window", {words + std::min(count, 1), words + count});
  return static_cast<int>(Exit::usage);
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
