// SPDX-License-Identifier: MIT
#include "gui/command/beside.h"

#include <unistd.h>

#include <filesystem>

#include "gui/command/word.h"

namespace tangmark::command {

void become(const std::string& program, std::vector<std::string> arguments) {
  std::error_code error;
  const auto self = std::filesystem::read_symlink("/proc/self/exe", error);
  const std::string path = (self.parent_path() / program).string();
  std::vector<char*> passed{const_cast<char*>(path.c_str())};
  for (std::string& argument : arguments) passed.push_back(argument.data());
  passed.push_back(nullptr);
  ::execv(path.c_str(), passed.data());
  tell("The program " + path + " is not there. Build it, or put it beside tangmark.");
}

}  // namespace tangmark::command
