// SPDX-License-Identifier: MIT
#pragma once

#include <stdexcept>

namespace tangmark::reports {

/// The machine cannot make the page: a font file is missing, the disk is full, memory ran out.
/// what() is one plain sentence with what to do. Nothing was written, or the file half written was
/// removed.
class PageFailure : public std::runtime_error {
 public:
  using std::runtime_error::runtime_error;
};

}  // namespace tangmark::reports
