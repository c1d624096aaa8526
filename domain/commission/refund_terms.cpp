// SPDX-License-Identifier: MIT
#include "domain/commission/refund_terms.h"

#include <algorithm>

namespace tangmark::commission {

Money refund_by(RefundTerms terms, Money received, bool work_has_begun, Money material_used) {
  const Money nothing(0, received.currency());
  const Money all = std::max(received, nothing);
  switch (terms) {
    case RefundTerms::full:
      return all;
    case RefundTerms::less_material:
      return work_has_begun ? std::max(all - std::max(material_used, nothing), nothing) : all;
    case RefundTerms::until_work:
      return work_has_begun ? nothing : all;
    case RefundTerms::none:
      return nothing;
  }
  return nothing;
}

}  // namespace tangmark::commission
