// SPDX-License-Identifier: MIT
#include "db/schema/steps.h"

#include <array>

#include "db/schema/step_001.h"
#include "db/schema/step_002.h"
#include "db/schema/step_003.h"
#include "db/schema/step_004.h"
#include "db/schema/step_005.h"
#include "db/schema/step_006.h"
#include "db/schema/step_007.h"
#include "db/schema/step_008.h"
#include "db/schema/step_009.h"
#include "db/schema/step_010.h"
#include "db/schema/step_011.h"
#include "db/schema/step_012.h"

namespace tangmark::db {

std::span<const char* const> schema_steps() {
  static const std::array<const char*, 12> steps{step_001, step_002, step_003, step_004,
                                                 step_005, step_006, step_007, step_008,
                                                 step_009, step_010, step_011, step_012};
  return steps;
}

}  // namespace tangmark::db
