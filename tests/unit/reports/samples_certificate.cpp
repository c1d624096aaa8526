// SPDX-License-Identifier: MIT
#include <cmath>

#include "samples.h"

namespace tangmark::reports::samples {

using std::chrono::minutes;
using std::chrono::seconds;

namespace {

Temperature near(double degrees) {
  return Temperature::nearest_celsius(degrees);
}
Temperature c(std::int64_t degrees) {
  return Temperature::celsius(degrees);
}

// A record every 10 s: a straight rise, a soak with a small swing, dips when the door opens.
Curve hardening() {
  Curve curve;
  curve.title = "Hardening";
  curve.window = Window{c(795), c(815)};
  const Instant start = noon() - minutes(150);
  for (int i = 0; i < 300; ++i) {
    const double t = i / 6.0;
    double degrees = std::min(805.0, 20 + 65 * t) + (t > 12 ? 3 * std::sin(t * 2.3) : 0);
    if (t > 25 && t < 28) degrees -= 25 * (28 - t) / 3;
    if (t > 38 && t < 41) degrees -= 32 * (41 - t) / 3;
    curve.points.push_back({start + seconds(10 * i), near(degrees)});
  }
  curve.marks = {{start + minutes(39), "214 out"}};
  return curve;
}

Curve tempers() {
  Curve curve;
  curve.title = "Two tempers";
  curve.window = Window{c(190), c(210)};
  const Instant start = noon() - minutes(60);
  for (int i = 0; i < 370; ++i) {
    const double t = i % 185;
    double degrees = t < 15 ? 20 + 12 * t : 201 + 3 * std::sin(t);
    if (t > 130) degrees = 20 + 180 * std::exp(-(t - 130) / 14);
    curve.points.push_back({start + minutes(i), near(degrees)});
  }
  return curve;
}

std::vector<TrailBox> trail() {
  return {
      {"Lot 17, 1084", {"Inspection document 3.1", "melt number Q4471", "mark on bar matched"}, {}},
      {"Lot 22, 15N20", {"Inspection document 3.1", "melt number 80R15", "no mark on the bar"}, {}},
      {"Bar 17-2", {"0.92 kg, piece c"}, {0}},
      {"Bar 22-1", {"0.61 kg, piece a"}, {1}},
      {"Billet 31", {"11 × 3 × 4", "132 layers"}, {2, 3}},
      {"Blade 214", {}, {4}}};
}

std::vector<Analysis> analyses() {
  return {{"Lot 17, 1084",
           "mill document",
           {{"C", 0.85, 0.80, 0.93, 2},
            {"Mn", 0.71, 0.60, 0.90, 2},
            {"P", 0.011, {}, 0.040, 3},
            {"S", 0.006, {}, 0.050, 3}}},
          {"Lot 22, 15N20",
           "mill document",
           {{"C", 0.75, 0.70, 0.80, 2}, {"Ni", 2.02, 1.90, 2.10, 2}}}};
}

std::vector<Statement> statements() {
  return {
      {"Steel", "Layers of 1084 and 15N20.", 'B',
       "mill document on file for both lots; one bar bore no mark to match it."},
      {"Construction", "Pattern-welded by this shop, 132 layers by count of stacking.", 'A',
       "stacks, welds and cuts logged at the time, three photographs."},
      {"Shape", "Forged to shape here, then ground.", 'A', "forge steps logged on this blade."},
      {"Heat treatment", "As in the table.", 'C',
       "hardening and tempers recorded by an independent thermocouple; normalizing as set only."},
      {"Hardness", "60.5 to 61.5 HRC near the edge, read to ±1.", 'A',
       "measured on this blade, tester checked that day."},
      {"Sub-zero", "Not done.", {}, ""},
      {"Handle", "Bog oak, bronze spacer.", 'C', "species as stated by the supplier."},
      {"Authors", "Blade and handle by O. Renwick. Sheath by an outside saddler.", {}, ""}};
}

Seal seal() {
  return {"3660315a9af3df255d8f19ab077e4797cb41b38387d6fca01272be03380f6356",
          "88b3e13a98900e3dfa4b36074ae14aed88b3e13a98900e3dfa4b36074ae14aed",
          "ed25519 5d8f 19ab 077e 4797", "TANGMARK:2026-014:1:3660315A9AF3DF255D8F19AB077E4797"};
}

void strain_it(BuildCertificate& cert) {
  const std::string words =
      "Слоистая сталь, сваренная в этой мастерской; χάλυβας σε στρώσεις, by count of the stacking";
  cert.blade = "10214";
  cert.knife += " " + words + ". " + words + ".";
  cert.replaces = "Issue 1 of 3 November 2026: " + words;
  cert.photo = drawn_picture(1600, 700);
  cert.trail.clear();
  for (std::size_t i = 0; i < 9; ++i) {
    cert.trail.push_back(
        {"Lot " + std::to_string(i + 1) + ", " + words, {words, "melt 80R15"}, {}});
  }
  for (std::size_t i = 0; i < 9; ++i) {
    cert.trail.push_back({"Bar " + std::to_string(i + 1), {words}, {i}});
  }
  cert.trail.push_back({"Billet 31", {words}, {9, 10, 11, 12, 13, 14, 15, 16, 17}});
  cert.trail.push_back({"Blade 10214", {}, {18}});
  for (int i = 0; i < 3; ++i) cert.analyses.push_back(cert.analyses.front());
  cert.analyses.push_back({"Lot 9", "supplier’s word", {}});
  cert.analyses.front().lines[1].wt_percent = 1.2;
  for (int i = 0; i < 32; ++i) {
    cert.heat.push_back({"Thermal cycle " + std::to_string(i + 1) + ", " + words,
                         {c(870), c(850), c(825)},
                         "1 h 05 min",
                         "C, as set only"});
  }
  cert.recorded.push_back(cert.recorded.front());
  for (int i = 0; i < 12; ++i) {
    cert.recorded.back().marks.push_back({noon() - minutes(125 - i), std::to_string(i) + " out"});
  }
  for (int i = 0; i < 20; ++i) {
    cert.hardness.readings.push_back({59.0 + i % 4, 0.05 * i, 0.5});
  }
  for (int i = 0; i < 16; ++i) {
    cert.statements.push_back({"Предмет " + std::to_string(i), words, 'E', words + " " + words});
    cert.told_openly.push_back(words + ". " + words + ".");
  }
}

}  // namespace

Picture drawn_picture(int width_px, int height_px) {
  Picture p;
  p.width_px = width_px;
  p.height_px = height_px;
  for (int y = 0; y < height_px; ++y) {
    for (int x = 0; x < width_px; ++x) {
      const double u = static_cast<double>(x) / width_px;
      const double v = static_cast<double>(y) / height_px;
      const bool blade = v > 0.25 + 0.25 * u * u && v < 0.8 - 0.35 * u * u && u > 0.08 && u < 0.92;
      const double wave = 120 + 60 * std::sin(40 * v + 6 * std::sin(9 * u));
      const auto level = static_cast<std::uint8_t>(blade ? wave : 238 - 20 * v);
      p.rgb.insert(p.rgb.end(), {level, level, level});
    }
  }
  return p;
}

BuildCertificate certificate(Strain strain) {
  BuildCertificate cert;
  cert.shop = letterhead(strain);
  cert.blade = "214";
  cert.number = "2026-014";
  cert.issued = noon();
  cert.knife =
      "Chef’s knife. Blade 240.5 × 51.0 mm, 2.9 mm at the heel, tapering to 1.1 mm. Edge 0.15 mm "
      "behind the bevel, 15° each side. Knife 187 g.";
  cert.trail = trail();
  cert.analyses = analyses();
  cert.analysis_note = "All inside the limits.";
  cert.heat = {{"Normalize ×3", {c(870), c(850), c(825)}, "", "C, as set only"},
               {"Harden", {c(805)}, "12:20 soak", "A, recorded"},
               {"Quench, fast oil", {c(52)}, "9:01", "A, recorded"},
               {"Temper 1", {c(200)}, "2 h 00 min", "A, recorded"},
               {"Cold between", {c(21)}, "18 min", "A, recorded"},
               {"Temper 2", {c(205)}, "2 h 00 min", "A, recorded"}};
  cert.recorded = {hardening(), tempers()};
  cert.hardness.readings = {
      {61.0, 0.15, 0.2}, {60.5, 0.38, 0.75}, {61.5, 0.47, 0.2}, {60.5, 0.75, 0.5}};
  cert.hardness.note = "HRC, 4 places, 12 Nov 2026, after temper 2. Block 61.2 read 61.0.";
  cert.statements = statements();
  cert.told_openly = {
      "Weld line, closed, 4 mm long, left side, 11 mm from the edge. Seen after etch on 14 "
      "November. The buyer accepted it in writing on 15 November.",
      "Straightened once during temper 1, by 0.8 mm.",
      "Pores of the handle wood are filled with clear epoxy."};
  cert.legend = {"A: measured or recorded on this blade", "B: one link unchecked"};
  cert.care = {
      "This steel rusts. Wash by hand, dry at once, oil before storing. Acid foods darken "
      "it. Sharpen at 15° on stones; never dry-grind."};
  cert.cautions = {
      "Contains nickel, about 0.8 % of the blade. Not for bones, frozen food or prying. "
      "Above 190 °C the edge may soften."};
  cert.seal = seal();
  cert.attachments = {{"record.json", "{\"blade\":214}\n"}};
  if (strain == Strain::hard) strain_it(cert);
  return cert;
}

std::vector<Named> every_document(Strain strain, const Look& look) {
  const FontBook& book = fonts();
  return {{"quote", quote_document(quote(strain), look, book)},
          {"receipt", receipt_document(receipt(strain), look, book)},
          {"invoice", invoice_document(invoice(strain), look, book)},
          {"traveller", traveller_document(traveller(strain), look, book)},
          {"firing sheet", firing_sheet_document(firing(strain), look, book)},
          {"lot labels", lot_labels(lots(strain), noon(), look, book)},
          {"piece labels", piece_labels(pieces(strain), noon(), look, book)},
          {"blade labels", blade_labels(blades(strain), noon(), look, book)},
          {"day list", day_list_document(day_list(strain), look, book)},
          {"certificate", certificate_document(certificate(strain), look, book)}};
}

}  // namespace tangmark::reports::samples
