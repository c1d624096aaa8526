// SPDX-License-Identifier: MIT
#pragma once

#include "gui/command/word.h"

namespace tangmark::command {

/// kiln-record RECORD.csv: what a kiln record shows, against a window when one is given.
Exit kiln_record(const Call& call);

}  // namespace tangmark::command
