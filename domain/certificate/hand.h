// SPDX-License-Identifier: MIT
#pragma once

#include <string>

namespace tangmark::certificate {

/// Who did a piece of work: the maker whose name stands on the certificate, someone else working in
/// the same shop, or an outside service.
enum class Whose { maker, shop_hand, outside };

/// The hand behind a step, a billet or a melt. `name` is printed where it was not the maker's.
struct Hand {
  Whose whose = Whose::maker;
  std::string name;
  bool outside() const { return whose == Whose::outside; }
  friend bool operator==(const Hand&, const Hand&) = default;
};

/// How an entry reached the record. `later` is an entry typed after the work, with estimated times.
enum class Logged { at_the_time, later };

}  // namespace tangmark::certificate
