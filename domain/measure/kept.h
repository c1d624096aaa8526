// SPDX-License-Identifier: MIT
#pragma once

#include <utility>

namespace tangmark {

/// A value and the identity the shop file keeps it under. A new value has none yet: the store gives
/// it one.
///
///     KeptLot lot = *load_lot(shop, id);     // lot.id, lot.grade
template <class Value, class Identity>
struct Kept : Value {
  Kept(Identity identity, Value value) : Value(std::move(value)), id(identity) {}
  Identity id;
  friend bool operator==(const Kept&, const Kept&) = default;
};

}  // namespace tangmark
