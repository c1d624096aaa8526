// SPDX-License-Identifier: MIT
#include "domain/stock/customers_material.h"

#include <fmt/format.h>

namespace tangmark::stock {

Catch customers_material_elsewhere(std::optional<commission::CustomerId> owner,
                                   std::optional<commission::CustomerId> job_customer,
                                   std::string_view tag) {
  if (!owner || owner == job_customer) return std::nullopt;
  return Caught{25, Weight::stop, "piece",
                fmt::format("{} belongs to customer {} and is kept for that customer's own work.",
                            tag, owner->row()),
                "Take the shop's own material, or choose the item it was brought for."};
}

Catch remainder_not_returned(std::string_view lot, Mass left, MassUnit shown_in) {
  return Caught{25, Weight::ask, "commission",
                fmt::format("{} of the customer's own material (lot {}) is still here.",
                            to_text(left, shown_in), lot),
                "Give it back with return_material, or say why it stays."};
}

}  // namespace tangmark::stock
