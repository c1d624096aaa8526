// SPDX-License-Identifier: MIT
#include "domain/stock/mark_at_cut.h"

#include <catch2/catch.hpp>

using namespace tangmark;
using namespace tangmark::stock;

TEST_CASE("catch 1: a cut with no statement of which part kept the mark is stopped") {
  for (const PieceMark parent : {PieceMark::carries_the_mark, PieceMark::tagged}) {
    const auto caught = cut_without_mark(parent, std::nullopt);
    REQUIRE(caught);
    CHECK(caught->number == 1);
    CHECK(caught->weight == Weight::stop);
    CHECK(caught->field == "mark");
    CHECK_FALSE(cut_without_mark(parent, MarkWentTo::blank));
    CHECK_FALSE(cut_without_mark(parent, MarkWentTo::rest));
  }
}

TEST_CASE("catch 1: a mark that neither part kept goes through with a remark") {
  const auto caught = cut_without_mark(PieceMark::carries_the_mark, MarkWentTo::neither);
  REQUIRE(caught);
  CHECK(caught->weight == Weight::remark);
}

TEST_CASE("a piece that is an identity gap already has no mark to lose") {
  CHECK_FALSE(cut_without_mark(PieceMark::identity_gap, std::nullopt));
  CHECK(mark_of_blank(PieceMark::identity_gap, MarkWentTo::blank) == PieceMark::identity_gap);
  CHECK(mark_of_rest(PieceMark::identity_gap, MarkWentTo::rest) == PieceMark::identity_gap);
}

TEST_CASE("the part without the mark gets a tag at once") {
  CHECK(mark_of_blank(PieceMark::carries_the_mark, MarkWentTo::blank) ==
        PieceMark::carries_the_mark);
  CHECK(mark_of_rest(PieceMark::carries_the_mark, MarkWentTo::blank) == PieceMark::tagged);
  CHECK(mark_of_blank(PieceMark::carries_the_mark, MarkWentTo::rest) == PieceMark::tagged);
  CHECK(mark_of_rest(PieceMark::tagged, MarkWentTo::rest) == PieceMark::tagged);
  CHECK(mark_of_blank(PieceMark::tagged, MarkWentTo::neither) == PieceMark::identity_gap);
  CHECK(mark_of_rest(PieceMark::carries_the_mark, MarkWentTo::neither) == PieceMark::identity_gap);
}
