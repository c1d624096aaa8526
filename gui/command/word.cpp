// SPDX-License-Identifier: MIT
#include "gui/command/word.h"

#include <cstdio>
#include <fstream>
#include <iterator>
#include <system_error>

namespace tangmark::command {

std::optional<std::string> Call::option(std::string_view name) const {
  const auto found = options.find(name);
  if (found == options.end()) return std::nullopt;
  return found->second;
}

Outcome<std::map<std::string, std::string, std::less<>>> Call::pairs(std::size_t first) const {
  std::map<std::string, std::string, std::less<>> given;
  Problems problems;
  for (std::size_t i = first; i < words.size(); ++i) {
    const auto equals = words[i].find('=');
    if (equals == std::string::npos || equals == 0)
      problems.push_back({words[i], "\"" + words[i] + "\" is not of the form key=value.",
                          "Write the field's name, an equals sign and its value."});
    else if (!given.emplace(words[i].substr(0, equals), words[i].substr(equals + 1)).second)
      problems.push_back(
          {words[i].substr(0, equals), "This field is given twice.", "Give it once."});
  }
  if (!problems.empty()) return problems;
  return given;
}

Exit refuse(const Problems& problems) {
  for (const Problem& p : problems)
    tell((p.field.empty() ? "" : p.field + ": ") + p.sentence +
         (p.remedy.empty() ? "" : " " + p.remedy));
  return Exit::refused;
}

void say(std::string_view line) {
  std::fwrite(line.data(), 1, line.size(), stdout);
  std::fputc('\n', stdout);
}

void tell(std::string_view line) {
  std::fwrite(line.data(), 1, line.size(), stderr);
  std::fputc('\n', stderr);
}

Outcome<Done> write_whole(const std::filesystem::path& path, std::string_view bytes) {
  const Problem refused{path.string(), path.string() + " cannot be written.",
                        "Choose a folder that exists, that has room and that you may write to."};
  std::filesystem::path part = path;
  part += ".part";
  std::error_code error;
  if (std::filesystem::is_directory(path, error)) return refused;
  {
    std::ofstream file(part, std::ios::binary | std::ios::trunc);
    file.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    file.flush();
    if (!file) {
      std::filesystem::remove(part, error);
      return refused;
    }
  }
  std::filesystem::rename(part, path, error);
  if (error) {
    std::filesystem::remove(part, error);
    return refused;
  }
  return Done{};
}

Outcome<std::string> read_whole(const std::filesystem::path& path) {
  std::error_code error;
  if (!std::filesystem::is_regular_file(path, error))
    return Problem{path.string(), "There is no file " + path.string() + ".", "Check the name."};
  std::ifstream file(path, std::ios::binary);
  std::string bytes(std::istreambuf_iterator<char>(file), {});
  if (file.bad() || (!file.is_open()))
    return Problem{path.string(), path.string() + " cannot be read.",
                   "Check that you may read it."};
  return bytes;
}

}  // namespace tangmark::command
