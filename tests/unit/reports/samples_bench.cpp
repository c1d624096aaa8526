// SPDX-License-Identifier: MIT
#include "samples.h"

namespace tangmark::reports::samples {

using namespace date::literals;
using std::chrono::minutes;

namespace {

Temperature c(std::int64_t degrees) {
  return Temperature::celsius(degrees);
}

const std::string long_words =
    "Закалочная ванна с быстрым маслом; λάδι ταχείας ψύξης, oil drawn from the second drum";

std::string code(const std::string& what) {
  return "tangmark:" + what;
}

void strain_it(TravellerCard& t) {
  t.blade = "10214-Б";
  t.job = long_words;
  t.model = long_words;
  t.steel = long_words + long_words;
  t.cautions.assign(6, long_words);
  const std::vector<TravellerStep> usual = t.steps;
  while (t.steps.size() < 40) {
    TravellerStep step = usual[t.steps.size() % usual.size()];
    step.operation = "Επαναφορά " + std::to_string(t.steps.size());
    step.note = long_words;
    step.to_fill.push_back("температура масла");
    t.steps.push_back(step);
  }
}

FiringBlade firing_blade(int i, Strain strain) {
  FiringBlade b;
  b.number = std::to_string(41 + i);
  b.steel = i % 2 == 0 ? "1084" : "W2";
  b.position = std::to_string(i + 1);
  b.in = noon() + minutes(50 + 3 * i);
  b.out = noon() + minutes(62 + 3 * i);
  b.window = i == 1 ? std::optional(Window{c(790), c(805)}) : std::nullopt;
  b.soak_least = minutes(8);
  b.soak_most = minutes(18);
  b.medium = i % 2 == 0 ? "fast oil" : "medium oil";
  b.medium_band = Window{c(45), c(60)};
  if (strain == Strain::hard) {
    b.steel = long_words;
    b.medium = long_words;
    b.note = long_words;
  }
  return b;
}

}  // namespace

TravellerCard traveller(Strain strain) {
  TravellerCard t;
  t.blade = "214";
  t.job = "C-72";
  t.model = "Chef’s knife 240";
  t.steel = "1084 and 15N20, 132 layers";
  t.piece = "Billet 31";
  t.blade_length = Length::millimetres(240);
  t.height_at_heel = Length::millimetres(51);
  t.spine_thickness = Length::nanometres(2'900'000);
  t.hardness_aim = "60 to 61 HRC";
  t.cautions = {"Edge not under 1.2 mm before the quench.", "Number on the tang before the fire."};
  t.steps = {
      {"Profile and drill", {}, {}, "two 5 mm holes", {"min", "belts"}, noon(), false},
      {"Mark", {}, {}, "stamp 214 on the tang", {"ok"}, {}, false},
      {"Normalize", {c(870), c(850), c(825)}, minutes(10), "still air", {"in", "out"}, {}, false},
      {"Rough grind", {}, {}, "", {"edge mm", "min"}, {}, true},
      {"Harden", {c(805)}, minutes(12), "fast oil", {"in", "out", "oil °C", "s to oil"}, {}, false},
      {"Temper 1", {c(200)}, minutes(120), "", {"in", "out", "cold at"}, {}, true},
      {"Temper 2", {c(205)}, minutes(120), "", {"in", "out"}, {}, true},
      {"Hardness", {}, {}, "four places", {"1", "2", "3", "4"}, {}, false},
      {"Finish grind", {}, {}, "to 400", {"min", "belts"}, {}, false},
      {"Hand sand", {}, {}, "to 800", {"min"}, {}, false},
      {"Etch", {}, {}, "3 passes", {"min", "grit"}, {}, false},
      {"Handle and glue", {}, {}, "bog oak, bronze", {"lot", "on", "off"}, {}, false},
      {"Sharpen", {}, {}, "15° each side", {"min"}, {}, false}};
  t.qr = code("blade/214");
  t.printed = noon();
  if (strain == Strain::hard) strain_it(t);
  return t;
}

FiringSheet firing(Strain strain) {
  FiringSheet f;
  f.number = "57";
  f.kiln = "Long kiln";
  f.purpose = "hardening";
  f.start = noon();
  f.end = noon() + minutes(150);
  f.set = c(805);
  f.window = Window{c(795), c(815)};
  f.soak = minutes(10);
  f.protection = "bare, in argon";
  f.programme = {{c(650), {}, minutes(10)},
                 {c(805), TemperatureDifference::celsius(600), minutes(60)}};
  f.attendance = "from 13:20 to the last quench";
  f.qr = code("firing/57");
  f.printed = noon();
  const int count = strain == Strain::hard ? 24 : 4;
  for (int i = 0; i < count; ++i) {
    f.blades.push_back(firing_blade(i, strain));
    f.planned.marks.push_back({*f.blades.back().out, f.blades.back().number + " out"});
  }
  f.planned.title = "Planned, " + f.kiln;
  f.planned.window = f.window;
  f.planned.points = {{noon(), c(20)},
                      {noon() + minutes(25), c(650)},
                      {noon() + minutes(35), c(650)},
                      {noon() + minutes(50), c(805)},
                      {noon() + minutes(110), c(805)},
                      {noon() + minutes(150), c(640)}};
  if (strain == Strain::hard) f.cautions.assign(8, long_words + ". " + long_words);
  return f;
}

std::vector<LotLabel> lots(Strain strain) {
  std::vector<LotLabel> all;
  for (int i = 0; i < (strain == Strain::hard ? 50 : 5); ++i) {
    LotLabel lot{std::to_string(17 + i),
                 "1084",
                 "38 × 5 mm",
                 "Fernholt Steel",
                 "Q4471",
                 "inspection document 3.1",
                 2026_y / 3 / 2,
                 i == 2 ? "C-70" : "",
                 code("lot/" + std::to_string(17 + i))};
    if (strain == Strain::hard) {
      lot.number += "-Ωμέγα-Щит-" + std::string(30, 'W');
      lot.grade = long_words;
      lot.owner = long_words;
    }
    all.push_back(lot);
  }
  return all;
}

std::vector<PieceLabel> pieces(Strain strain) {
  std::vector<PieceLabel> all;
  for (int i = 0; i < (strain == Strain::hard ? 35 : 6); ++i) {
    PieceLabel piece;
    piece.tag = "17-" + std::to_string(i + 1);
    piece.grade = i == 5 ? "steel not identified" : "1084";
    piece.length = Length::millimetres(300);
    piece.width = Length::millimetres(38);
    piece.thickness = Length::millimetres(5);
    piece.mass = Mass::grams(447);
    piece.melt_number = "Q4471";
    piece.parent = "17";
    piece.carries_mark = i == 0;
    piece.qr = code("piece/17-" + std::to_string(i + 1));
    if (strain == Strain::hard) piece.grade = long_words;
    all.push_back(piece);
  }
  return all;
}

std::vector<BladeLabel> blades(Strain strain) {
  std::vector<BladeLabel> all;
  for (int i = 0; i < 4; ++i) {
    all.push_back({std::to_string(211 + i), "C-72",
                   strain == Strain::hard ? long_words : "Chef’s knife 240", "1084 and 15N20",
                   code("blade/" + std::to_string(211 + i))});
  }
  return all;
}

DayList day_list(Strain strain) {
  DayList d;
  d.shop = "Quillfen Bench";
  d.day = 2026_y / 11 / 24;
  d.printed = noon();
  d.entries = {{noon() + minutes(240), noon() + minutes(360), "Temper 2 at 205 °C: 41, 42, 43, 61",
                "temper oven", "Cold since 14:05; no handle before this.", false},
               {noon() + minutes(90),
                {},
                "Take out 41, 42, 43 and quench in fast oil",
                "long kiln",
                "Steady at 795–815. Oil at 45 to 60 °C.",
                false},
               {noon() - minutes(60),
                {},
                "Temper 58: quenched yesterday at 20:35",
                "temper oven",
                "Held at 150 °C since.",
                true},
               {{}, {}, "Tell H. Osterby that the sheath is a week late", "office", "", false}};
  d.notes = {"Deposit of 516.00 EUR awaited from job C-75.", "Bar 15N20 is below its floor."};
  if (strain == Strain::hard) {
    for (int i = 0; i < 40; ++i) {
      d.entries.push_back({noon() + minutes(7 * i), noon() + minutes(3000), long_words, long_words,
                           long_words + long_words, i % 3 == 0});
    }
  }
  return d;
}

}  // namespace tangmark::reports::samples
