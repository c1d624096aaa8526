// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "page_proof.h"
#include "reports/curve_chart.h"
#include "reports/page_text.h"
#include "samples.h"

namespace tangmark::reports::samples {

namespace {

using Catch::Contains;

template <class T>
std::size_t count_of(const Document& document) {
  std::size_t found = 0;
  for (const Page& page : document.pages) {
    for (const Element& e : page.elements) found += std::holds_alternative<T>(e) ? 1 : 0;
  }
  return found;
}

}  // namespace

TEST_CASE("a traveller keeps the order of the log and gives each operation a box") {
  const TravellerCard card = traveller(Strain::ordinary);
  const Document document = *traveller_document(card, metric(), fonts());
  const std::string said = words_of(document);
  std::size_t from = 0;
  for (const TravellerStep& step : card.steps) {
    INFO(step.operation);
    const std::size_t at = said.find(step.operation, from);
    REQUIRE(at != std::string::npos);
    from = at + 1;
  }
  std::size_t boxes = 0;
  for (const Page& page : document.pages) {
    for (const Element& e : page.elements) {
      const auto* box = std::get_if<Rectangle>(&e);
      boxes += box && !box->paint.filled ? 1 : 0;
    }
  }
  CHECK(boxes == card.steps.size());
}

TEST_CASE("each further card of a long route carries the blade's number") {
  const Document document = *traveller_document(traveller(Strain::hard), metric(), fonts());
  REQUIRE(document.pages.size() > 2);
  for (const Page& page : document.pages) {
    Document one;
    one.pages.push_back(page);
    CHECK_THAT(words_of(one), Contains("10214-Б\n"));
  }
}

TEST_CASE("bench papers speak the maker's units") {
  const std::string metric_words =
      words_of(*traveller_document(traveller(Strain::ordinary), metric(), fonts()));
  CHECK_THAT(metric_words, Contains("805 °C") && Contains("240 mm"));
  const std::string customary_words =
      words_of(*traveller_document(traveller(Strain::ordinary), customary(), fonts()));
  CHECK_THAT(customary_words, Contains("1481 °F") && Contains("9.449 in"));
}

TEST_CASE("a firing sheet lists the blades in quench order with what each goes into") {
  const std::string said =
      words_of(*firing_sheet_document(firing(Strain::ordinary), metric(), fonts()));
  CHECK(said.find("\n41\n") < said.find("\n42\n"));
  CHECK_THAT(said, Contains("fast oil") && Contains("medium oil") && Contains("795–815 °C"));
  CHECK_THAT(said, Contains("600 °C per hour"));
}

TEST_CASE("the caution for quench oil stands where oil is used, the one for heat always") {
  FiringSheet sheet = firing(Strain::ordinary);
  CHECK_THAT(words_of(*firing_sheet_document(sheet, metric(), fonts())),
             Contains("Quench oil flames"));
  for (FiringBlade& blade : sheet.blades) blade.medium = "plates";
  const std::string said = words_of(*firing_sheet_document(sheet, metric(), fonts()));
  CHECK_THAT(said, Contains("Hot kiln") && !Contains("Quench oil"));
}

TEST_CASE("a customer's own material is marked as such on its label") {
  const std::string said = words_of(*lot_labels(lots(Strain::ordinary), noon(), metric(), fonts()));
  CHECK_THAT(said, Contains("Customer’s own, job C-70"));
}

TEST_CASE("each label stands where the sheet was measured, in points of 1/72 in") {
  const auto boxes = [](const Document& document) {
    std::vector<Box> all;
    for (const Element& e : document.pages[0].elements)
      if (const auto* r = std::get_if<Rectangle>(&e); r && r->paint.stroke == Grey{215})
        all.push_back(r->box);
    return all;
  };
  const auto near = [](Points a, Points b) { return std::abs(a - b) < 0.01; };
  std::vector<LotLabel> many(8, lots(Strain::ordinary)[0]);
  // A4, 63.5 x 38.1 mm, pitch 66.04 mm, margins 7.21 and 15.15 mm: 1 mm is 2.834646 points.
  const auto a4 = boxes(*lot_labels(many, noon(), metric(), fonts()));
  REQUIRE(a4.size() == 8);
  CHECK((near(a4[0].x, 20.438) && near(a4[0].y, 42.945)));
  CHECK((near(a4[1].x, 207.638) && near(a4[1].y, 42.945)));
  CHECK((near(a4[7].x, 207.638) && near(a4[7].y, 42.945 + 2 * 108.0)));
  CHECK((near(a4[0].width, 180) && near(a4[0].height, 108)));
  // Letter, 2 5/8 x 1 in, pitch 2.75 in, margins 3/16 and 1/2 in.
  const auto letter = boxes(*lot_labels(many, noon(), customary(), fonts()));
  CHECK((near(letter[0].x, 13.5) && near(letter[0].y, 36)));
  CHECK((near(letter[5].x, 13.5 + 2 * 198) && near(letter[5].y, 36 + 72)));
  // A sheet of the maker's own.
  stock::LabelStock own{"own", Length::millimetres(210), Length::millimetres(297), 2, 3,
                        Length::millimetres(10), Length::millimetres(20), Length::millimetres(90),
                        Length::millimetres(50), Length::millimetres(100), Length::millimetres(60)};
  const auto mine = boxes(*lot_labels(many, noon(), metric(), fonts(), own));
  REQUIRE(mine.size() == 6);  // the other two stand on a second sheet
  CHECK((near(mine[3].x, (10 + 100) * 72 / 25.4) && near(mine[3].y, (20 + 60) * 72 / 25.4)));
  own.pitch_across = Length::millimetres(80);
  CHECK(lot_labels(many, noon(), metric(), fonts(), own).problem().sentence.find("overlap") !=
        std::string::npos);
  own.pitch_across = Length::millimetres(130);
  CHECK(lot_labels(many, noon(), metric(), fonts(), own).problem().sentence.find("over the edge") !=
        std::string::npos);
}

TEST_CASE(
    "every usual sheet of labels holds what it must, without a word cut or laid over another") {
  for (const stock::LabelStock& sheet : stock::usual_label_stock()) {
    INFO(sheet.name);
    CHECK(stock::label_stock_problems(sheet).empty());
    for (const Strain strain : {Strain::ordinary, Strain::hard})
      CHECK(faults_of(*lot_labels(lots(strain), noon(), metric(), fonts(), sheet), fonts()) ==
            std::vector<std::string>{});
  }
}

TEST_CASE("labels go on over as many sheets as they need, one code each") {
  const Document document = *lot_labels(lots(Strain::hard), noon(), metric(), fonts());
  CHECK(document.pages.size() == 3);  // 50 lots, 21 on a sheet
  CHECK(count_of<PlacedQr>(document) == 50);
  CHECK(!lot_labels({}, noon(), metric(), fonts()));
}

TEST_CASE("a day list is in order of time with the untimed last") {
  const std::string said =
      words_of(*day_list_document(day_list(Strain::ordinary), metric(), fonts()));
  const std::size_t overdue = said.find("Overdue: Temper 58");
  const std::size_t quench = said.find("Take out 41");
  const std::size_t temper = said.find("Temper 2 at 205");
  const std::size_t call = said.find("Tell H. Osterby");
  REQUIRE(call != std::string::npos);
  CHECK((overdue < quench && quench < temper && temper < call));
  CHECK_THAT(said, Contains("any time"));
}

TEST_CASE("what was fitted lies dashed over the record and is told below it") {
  const Instant start = date::sys_days{date::year{2026} / 11 / 25} + std::chrono::hours(9);
  Curve curve{
      "harden.csv: kiln", {}, Window{Temperature::celsius(795), Temperature::celsius(815)}, {}, {}};
  for (int m = 0; m <= 60; ++m)
    curve.points.push_back({start + std::chrono::minutes(m), Temperature::celsius(20 + 13 * m)});
  curve.fitted.push_back({"as fitted: It heats by 780 \u00B0C/h; error 0.0 \u00B0C over 1 record",
                          {curve.points.front(), curve.points.back()}});
  const Block chart = curve_chart(fonts(), curve, CurveKind::recorded, metric(), {400, 160, 8});
  bool dashed = false, told = false;
  for (const Element& e : chart.elements) {
    if (const auto* line = std::get_if<Polyline>(&e)) dashed = dashed || line->dash > 0;
    if (const auto* run = std::get_if<TextRun>(&e))
      told = told || run->text.find("780") != std::string::npos;
  }
  CHECK(dashed);
  CHECK(told);
}

TEST_CASE("an empty day says that nothing needs hands") {
  DayList list = day_list(Strain::ordinary);
  list.entries.clear();
  CHECK_THAT(words_of(*day_list_document(list, metric(), fonts())),
             Contains("Nothing needs hands today."));
}

TEST_CASE("a thinned record keeps its hottest and coldest moment and its order") {
  std::vector<CurvePoint> points;
  for (int i = 0; i < 100'000; ++i) {
    points.push_back({noon() + std::chrono::seconds(i), Temperature::celsius(800 + i % 7)});
  }
  points[54'321].temperature = Temperature::celsius(861);
  points[54'322].temperature = Temperature::celsius(12);
  const std::vector<CurvePoint> kept = thinned(points, 200);
  CHECK(kept.size() <= 800);
  const auto in_time = [](const CurvePoint& a, const CurvePoint& b) { return a.at < b.at; };
  CHECK(std::is_sorted(kept.begin(), kept.end(), in_time));
  CHECK(std::count(kept.begin(), kept.end(), points[54'321]) == 1);
  CHECK(std::count(kept.begin(), kept.end(), points[54'322]) == 1);
}

}  // namespace tangmark::reports::samples
