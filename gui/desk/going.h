// SPDX-License-Identifier: MIT
#pragma once

#include <atomic>
#include <functional>
#include <string>

namespace tangmark::desk {

/// Long work on its way: it looks at `stop` often, and tells now and then how far it has come.
struct Going {
  const std::atomic<bool>& stop;
  std::function<void(const std::string& sentence)> tell = [](const std::string&) {};
};

}  // namespace tangmark::desk
