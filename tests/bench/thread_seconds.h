// SPDX-License-Identifier: MIT
#pragma once

#include <ctime>

namespace tangmark::bench {

/// Seconds that this thread has had of a processor: a machine with other work measures the same.
inline double thread_seconds() {
  timespec now{};
  clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
  return static_cast<double>(now.tv_sec) + 1e-9 * static_cast<double>(now.tv_nsec);
}

}  // namespace tangmark::bench
