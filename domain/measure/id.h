// SPDX-License-Identifier: MIT
#pragma once

#include <compare>
#include <cstdint>
#include <functional>

namespace tangmark {

/// The identity of one stored thing. Made by the store alone; ids of two kinds do not mix, and
/// there is no arithmetic and no value for "none": that is std::optional.
///
///     using BladeId = Id<struct BladeTag>;
template <class Tag>
class Id {
 public:
  explicit constexpr Id(std::int64_t row) : row_(row) {}
  constexpr std::int64_t row() const { return row_; }
  friend constexpr auto operator<=>(Id, Id) = default;

 private:
  std::int64_t row_;
};

}  // namespace tangmark

template <class Tag>
struct std::hash<tangmark::Id<Tag>> {
  std::size_t operator()(tangmark::Id<Tag> id) const noexcept {
    return std::hash<std::int64_t>{}(id.row());
  }
};
