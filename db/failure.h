// SPDX-License-Identifier: MIT
#pragma once

#include <stdexcept>
#include <string>

namespace tangmark::db {

/// The machine failed: disk full, file locked, file damaged under our hands. The text is one plain
/// sentence for the maker; what was being stored has been rolled back.
class Failure : public std::runtime_error {
 public:
  using std::runtime_error::runtime_error;
};

}  // namespace tangmark::db
