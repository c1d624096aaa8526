// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include "domain/commission/commission_id.h"
#include "domain/measure/kept.h"
#include "domain/measure/when.h"

namespace tangmark::commission {

/// A buyer. Name, contact, address and note are personal: history keeps salted hashes of them only,
/// and erasing drops them and the salt while everything made for the buyer stays.
struct Customer {
  std::optional<std::string> name{};  ///< none after erasing
  std::optional<std::string> contact{}, address{}, note{};
  std::optional<std::string> country{};
  Instant added_at{};
  std::optional<Instant> erased_at{};
  friend bool operator==(const Customer&, const Customer&) = default;
};
using KeptCustomer = Kept<Customer, CustomerId>;

}  // namespace tangmark::commission
