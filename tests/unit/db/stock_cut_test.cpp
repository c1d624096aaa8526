// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "db/history.h"
#include "db/row.h"
#include "db/store/commission_store.h"
#include "db/store/family_tree.h"
#include "db/store/piece_store.h"
#include "db/store/reservation_store.h"
#include "tests/unit/db/maker.h"

using namespace tangmark;
using namespace tangmark::test;

TEST_CASE("a cut gives the blank and the rest new tags and balances their masses") {
  Maker maker;
  maker.lot();
  const auto result = maker.tries(
      "cut_piece", {{"piece", "1-1"}, {"length", "390 mm"}, {"kerf", "2 mm"}, {"mark", "rest"}});
  REQUIRE(result);
  CHECK(result->number == "1-1A");
  CHECK(warns(result, "Write 1-1B on the rest now."));
  const auto blank = db::find_piece(maker.shop, "1-1A"), rest = db::find_piece(maker.shop, "1-1B");
  REQUIRE((blank && rest));
  CHECK(*rest->length == Length::millimetres(608));
  CHECK(blank->mark == stock::PieceMark::tagged);
  CHECK(rest->mark == stock::PieceMark::carries_the_mark);
  CHECK(db::find_piece(maker.shop, "1-1")->state == stock::PieceState::cut_up);
  const auto cuts = db::latest_cuts(maker.shop, 5);
  REQUIRE(cuts.size() == 1);
  CHECK(cuts[0].gap == Mass());
  CHECK(cuts[0].mass_before == cuts[0].mass_after + cuts[0].swarf);
}

TEST_CASE("a bar cut again and again keeps short tags, and none is given twice") {
  Maker maker;
  maker.lot();
  for (const auto& [piece, blank, rest] :
       {std::tuple{"1-1", "1-1A", "1-1B"}, {"1-1B", "1-1C", "1-1D"}, {"1-1D", "1-1E", "1-1F"}}) {
    const auto cut =
        maker.tries("cut_piece", {{"piece", piece}, {"length", "100 mm"}, {"mark", "rest"}});
    REQUIRE(cut);
    CHECK(cut->number == blank);
    CHECK(warns(cut, fmt::format("Write {} on the rest now.", rest)));
  }
}

TEST_CASE("a cut without a statement of the mark is refused, neither makes an identity gap") {
  Maker maker;
  maker.lot();
  check_refused(maker, "cut_piece", {{"piece", "1-1"}, {"length", "390 mm"}}, "mark");
  const auto result =
      maker.tries("cut_piece", {{"piece", "1-1"}, {"length", "390 mm"}, {"mark", "neither"}});
  CHECK(warns(result, "identity gap"));
  CHECK(db::find_piece(maker.shop, "1-1A")->mark == stock::PieceMark::identity_gap);
  CHECK(db::find_piece(maker.shop, "1-1B")->mark == stock::PieceMark::identity_gap);
}

TEST_CASE("a cut that cannot be is refused at its field") {
  Maker maker;
  maker.lot();
  const auto cut = [](const std::string& length) {
    return db::Given{{"piece", "1-1"}, {"length", length}, {"mark", "rest"}};
  };
  check_refused(maker, "cut_piece", cut("1001 mm"), "length");
  check_refused(maker, "cut_piece", cut("999 mm"), "kerf");
  check_refused(maker, "cut_piece", cut("0 mm"), "length");
  check_refused(maker, "cut_piece", {{"piece", "7-9"}, {"length", "10 mm"}, {"mark", "rest"}},
                "piece");
  maker.did("cut_piece", cut("390 mm"));
  check_refused(maker, "cut_piece", cut("390 mm"), "piece");
}

TEST_CASE("taking all of a piece is no cut and loses nothing") {
  Maker maker;
  maker.lot();
  CHECK(maker.did("cut_piece", {{"piece", "1-1"}, {"length", "1000 mm"}}) == "1-1A");
  CHECK_FALSE(db::find_piece(maker.shop, "1-1B"));
  CHECK(db::find_piece(maker.shop, "1-1A")->mass == Mass::grams(1570));
}

TEST_CASE("an unexplained gap asks, and the reason for setting it aside is kept") {
  Maker maker;
  maker.lot();
  db::Given given{{"piece", "1-1"},
                  {"length", "390 mm"},
                  {"mark", "rest"},
                  {"mass", "450 g"},
                  {"rest_mass", "950 g"}};
  check_refused(maker, "cut_piece", given, "mass");
  given["override"] = "the scale reads in steps of 50 g";
  maker.did("cut_piece", given);
  db::Query kept(maker.shop, "SELECT catch, reason FROM override");
  REQUIRE(kept.next());
  CHECK(kept.integer("catch") == 2);
  CHECK(kept.text("reason") == "the scale reads in steps of 50 g");
}

TEST_CASE("the same bar is not promised twice, and a promise follows the rest of a cut") {
  Maker maker;
  maker.lot();
  const auto one = maker.order(), two = maker.order();
  maker.did("reserve", {{"item", one.item}, {"piece", "1-1"}, {"length", "600 mm"}});
  check_refused(maker, "reserve", {{"item", two.item}, {"piece", "1-1"}, {"length", "500 mm"}},
                "piece");
  check_refused(maker, "cut_piece",
                {{"piece", "1-1"}, {"item", two.item}, {"length", "400 mm"}, {"mark", "rest"}},
                "length");
  maker.did("cut_piece",
            {{"piece", "1-1"}, {"item", two.item}, {"length", "390 mm"}, {"mark", "rest"}});
  const auto rest = db::find_piece(maker.shop, "1-1B");
  REQUIRE(rest);
  const auto bar = db::available_length(maker.shop, *rest, Length());
  CHECK(bar.reserved() == Length::millimetres(600));
  CHECK(bar.promised.front().item.row() == std::stoll(one.item));
}

TEST_CASE("a reservation that cannot be is refused at its field") {
  Maker maker;
  maker.lot();
  const auto order = maker.order();
  check_refused(maker, "reserve", {{"item", order.item}}, "piece");
  check_refused(maker, "reserve", {{"item", order.item}, {"piece", "1-1"}, {"lot", "1"}}, "piece");
  check_refused(maker, "reserve", {{"item", order.item}, {"lot", "1"}}, "lot");
  check_refused(maker, "reserve", {{"item", order.item}, {"piece", "1-1"}, {"length", "0 mm"}},
                "length");
  const auto number = maker.did("reserve", {{"item", order.item}, {"piece", "1-1"}});
  check_refused(maker, "reserve", {{"item", order.item}, {"piece", "1-1"}}, "piece");
  maker.did("release_reservation", {{"reservation", number}});
  check_refused(maker, "release_reservation", {{"reservation", number}}, "reservation");
  check_refused(maker, "release_reservation", {{"reservation", "99"}}, "reservation");
}

TEST_CASE("steel of another grade than the job's asks before it is cut") {
  Maker maker;
  maker.lot("O1");
  const auto order = maker.order();
  db::Given given{{"piece", "1-1"}, {"item", order.item}, {"length", "390 mm"}, {"mark", "rest"}};
  check_refused(maker, "cut_piece", given, "piece");
  given["override"] = "the buyer agreed to O1";
  maker.did("cut_piece", given);
}

TEST_CASE("a customer's material is not cut for anybody else") {
  Maker maker;
  const auto order = maker.order();
  const auto other = maker.buyer("Per Lund");
  maker.did("receive_lot", {{"name", "his bar"},
                            {"owner", other},
                            {"grade", "80CrV2"},
                            {"section", "flat"},
                            {"thickness", "4 mm"},
                            {"width", "50 mm"},
                            {"length", "500 mm"}});
  check_refused(maker, "cut_piece",
                {{"piece", "1-1"},
                 {"item", order.item},
                 {"length", "390 mm"},
                 {"mark", "rest"},
                 {"override", "nobody will know"}},
                "piece");
}

TEST_CASE("the first cut for a commission asks for its deposit and puts it in work") {
  Maker maker;
  maker.lot();
  const auto commission = maker.enquiry();
  const auto item = maker.did("add_item", {{"commission", commission}, {"model", maker.model()}});
  const db::Given cut{{"piece", "1-1"}, {"item", item}, {"length", "390 mm"}, {"mark", "rest"}};
  check_refused(maker, "cut_piece", cut, "item");  // an enquiry is not an order
  maker.did("make_quote", {{"commission", commission}});
  maker.did("accept_quote", {{"commission", commission}});
  check_refused(maker, "cut_piece", cut, "item");  // the deposit is missing
  maker.did("take_deposit", {{"commission", commission}});
  maker.did("cut_piece", cut);
  CHECK(db::find_commission(maker.shop, 1)->state == commission::CommissionState::in_work);
}

TEST_CASE("work does not begin on a specification a year old") {
  Maker maker;
  maker.lot();
  const auto order = maker.order();
  maker.now += std::chrono::hours(24 * 365);
  const db::Given cut{
      {"piece", "1-1"}, {"item", order.item}, {"length", "390 mm"}, {"mark", "rest"}};
  check_refused(maker, "cut_piece", cut, "item");
  maker.did("confirm_specification", {{"commission", order.commission}});
  maker.did("cut_piece", cut);
}
