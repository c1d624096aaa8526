// SPDX-License-Identifier: MIT
// tangmark: what is typed. The steel desk answers at once, from a program that loads nothing but
// the domain; everything else is done by tangmark-words and by the window, which need the libraries
// of shop files, pages and displays.
#include <algorithm>
#include <clocale>
#include <exception>

#include "gui/command/beside.h"
#include "gui/command/calc_word.h"
#include "gui/command/word_line.h"

namespace tangmark::command {
namespace {

// A shop's own grades stand in its file.
bool names_shop(const std::string& typed) {
  return typed.starts_with("--shop");
}

int run(int count, char** typed) {
  const std::vector<std::string> behind(typed + std::min(count, 1), typed + count);
  if (!behind.empty() && behind.front() == "calc" &&
      std::none_of(behind.begin(), behind.end(), names_shop))
    return run_word(calc_word([](const Call&) { return steel::GradeBook::published(); }), count,
                    typed);
  become("tangmark-words", behind);
  return static_cast<int>(Exit::usage);
}

}  // namespace
}  // namespace tangmark::command

int main(int count, char** typed) {
  std::setlocale(LC_ALL, "C.UTF-8");
  using namespace tangmark;
  try {
    return command::run(count, typed);
  } catch (const std::exception& error) {
    command::tell(std::string("The machine failed: ") + error.what() + ".");
  }
  return static_cast<int>(command::Exit::refused);
}
