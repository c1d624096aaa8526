// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include "domain/commission/commission_id.h"
#include "domain/measure/kept.h"
#include "domain/measure/when.h"

namespace tangmark::commission {

/// Something said between shop and buyer that matters later.
struct Contact {
  CommissionId commission;
  Instant at{};
  std::optional<std::string> channel{};
  std::string words{};
  friend bool operator==(const Contact&, const Contact&) = default;
};
using KeptContact = Kept<Contact, ContactId>;

}  // namespace tangmark::commission
