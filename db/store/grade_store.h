// SPDX-License-Identifier: MIT
#pragma once

#include "db/shop_file.h"
#include "domain/steel/grade.h"

namespace tangmark::db {

/// The published grades together with those this shop entered, which stand first.
steel::GradeBook grade_book(const ShopFile& shop);

}  // namespace tangmark::db
