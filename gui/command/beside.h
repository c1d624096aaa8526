// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

namespace tangmark::command {

/// Lets another program of ours, which stands in the folder of this one, take this process over
/// with these arguments. Comes back only when it cannot, having told so.
void become(const std::string& program, std::vector<std::string> arguments);

}  // namespace tangmark::command
