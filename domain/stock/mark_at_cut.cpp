// SPDX-License-Identifier: MIT
#include "domain/stock/mark_at_cut.h"

namespace tangmark::stock {
namespace {

PieceMark mark_of_part(PieceMark parent, bool keeps_the_mark, bool somebody_keeps_it) {
  if (parent == PieceMark::identity_gap || !somebody_keeps_it) return PieceMark::identity_gap;
  return keeps_the_mark ? parent : PieceMark::tagged;
}

}  // namespace

Catch cut_without_mark(PieceMark parent, std::optional<MarkWentTo> mark_went_to) {
  if (parent == PieceMark::identity_gap) return std::nullopt;
  if (!mark_went_to)
    return Caught{1, Weight::stop, "mark", "Nobody said which part kept the mark.",
                  "Look at the ends and give mark: blank, rest or neither."};
  if (*mark_went_to == MarkWentTo::neither)
    return Caught{1, Weight::remark, "mark",
                  "Neither part kept the mark: both are an identity gap.",
                  "Only an analysis of the piece itself can close it."};
  return std::nullopt;
}

PieceMark mark_of_blank(PieceMark parent, MarkWentTo mark_went_to) {
  return mark_of_part(parent, mark_went_to == MarkWentTo::blank,
                      mark_went_to != MarkWentTo::neither);
}

PieceMark mark_of_rest(PieceMark parent, MarkWentTo mark_went_to) {
  return mark_of_part(parent, mark_went_to == MarkWentTo::rest,
                      mark_went_to != MarkWentTo::neither);
}

}  // namespace tangmark::stock
