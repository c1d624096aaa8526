// SPDX-License-Identifier: MIT
#include <algorithm>

#include "reports/certificate_parts.h"

namespace tangmark::reports {

namespace {

const char* const stated_head = "What we state, and on what evidence";

// Everything that stands in the two columns, set to both widths.
class Columns {
 public:
  Columns(const CertificateSetting& set, const BuildCertificate& c, bool opens_with_hardness,
          const ColumnWidths& widths)
      : set_(set), c_(c), widths_(widths) {
    facts_left_ = facts(opens_with_hardness, widths.left);
    facts_right_ = facts(opens_with_hardness, widths.right);
  }

  FactColumns choose() const {
    // The order is that of liking: a later one has to be a line lower to be taken.
    FactColumns best = facts_beside(facts_left_.size());
    for (std::size_t kept = facts_left_.size(); kept-- > 1;) take_lower(best, facts_beside(kept));
    for (std::size_t first = c_.statements.size(); first-- > 1;)
      take_lower(best, statements_from_the_left(first));
    return best;
  }

 private:
  std::vector<Flow> facts(bool opens_with_hardness, Points width) const {
    std::vector<Flow> parts;
    if (opens_with_hardness) parts.push_back(hardness_part(set_, c_.hardness, width));
    for (Flow& part : fact_parts(set_, c_, Spread::one_page, width))
      parts.push_back(std::move(part));
    return parts;
  }

  void add(Flow& column, const Flow& part) const {
    const bool opens = column.empty();
    append(column, part);
    if (opens) column.front().space_before = 0;
  }

  // The first facts at the left, the statements and the other facts at the right.
  FactColumns facts_beside(std::size_t kept) const {
    FactColumns columns;
    for (std::size_t i = 0; i < kept; ++i) add(columns.left, facts_left_[i]);
    columns.right = part_heading(set_, stated_head, widths_.right);
    append(columns.right, statements_flow(set_, c_, 0, c_.statements.size(), widths_.right));
    for (std::size_t i = kept; i < facts_right_.size(); ++i) add(columns.right, facts_right_[i]);
    return columns;
  }

  // The first statements at the left; the others, and then the facts, at the right.
  FactColumns statements_from_the_left(std::size_t first) const {
    FactColumns columns{true, statements_flow(set_, c_, 0, first, widths_.left), {}};
    columns.right = statements_flow(set_, c_, first, c_.statements.size(), widths_.right);
    for (const Flow& part : facts_right_) add(columns.right, part);
    return columns;
  }

  Points height(const FactColumns& columns) const {
    return std::max(height_of(columns.left), height_of(columns.right)) +
           (columns.heading_across ? 2 * set_.type.leading : 0);
  }

  void take_lower(FactColumns& best, FactColumns other) const {
    const Points gain = height(best) - height(other);
    if (gain > (best.heading_across ? 0 : set_.type.leading)) best = std::move(other);
  }

  const CertificateSetting& set_;
  const BuildCertificate& c_;
  ColumnWidths widths_;
  std::vector<Flow> facts_left_;
  std::vector<Flow> facts_right_;
};

}  // namespace

FactColumns fact_columns(const CertificateSetting& set, const BuildCertificate& certificate,
                         bool opens_with_hardness, const ColumnWidths& widths) {
  return Columns(set, certificate, opens_with_hardness, widths).choose();
}

Flow stated_heading(const CertificateSetting& set, Points width) {
  return part_heading(set, stated_head, width);
}

}  // namespace tangmark::reports
