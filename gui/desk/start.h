// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <optional>
#include <span>
#include <string>

#include "domain/measure/outcome.h"
#include "domain/measure/when.h"
#include "gui/desk/place.h"

namespace tangmark::desk {

/// How the window program is started:
///     tangmark-window [SHOPFILE] [--now WHEN] [--place NAME] [--select ID] [--quiet-dialogs]
struct Start {
  std::optional<std::filesystem::path> shop;
  std::optional<Instant> now;        ///< stands in for the clock, which then stands still
  Place place = Place::today;
  std::string select;                ///< what to select there
  bool quiet_dialogs = false;        ///< trouble goes to standard error, never into a dialog
  bool wants_help = false;
};

/// Reads the words after the program's name.
Outcome<Start> read_start(std::span<const std::string> words);
/// What --help prints.
std::string start_help();

}  // namespace tangmark::desk
