// SPDX-License-Identifier: MIT
#include "sample_blades.h"

#include <algorithm>
#include <stdexcept>

namespace tangmark::certificate::sample {
namespace {
using namespace date::literals;
using std::chrono::hours, std::chrono::minutes;

Share percent(double p) {
  return Share::millionths(static_cast<std::int64_t>(p * 10'000 + 0.5));
}

ElementLimits between(double lo, double hi) {
  return {percent(lo), percent(hi)};
}
ElementLimits at_most(double hi) {
  return {std::nullopt, percent(hi)};
}

Lot lot_1095() {
  Lot lot;
  lot.tag = {"5"};
  lot.supplier = "Northbank Steel";
  lot.grade = "1095";
  lot.document = SupplyDocument::label;
  lot.facts = GradeFacts{"SAE J403",
                         {{"C", between(0.90, 1.03)}, {"Mn", between(0.30, 0.50)}},
                         false,
                         HardensIn::water};
  return lot;
}

Lot lot_1084() {
  Lot lot = lot_1095();
  lot.tag = {"17"};
  lot.grade = "1084";
  lot.document = SupplyDocument::type_3_1;
  lot.document_number = "4711";
  lot.melt_number = "Q4471";
  lot.mark = BarMark::matched;
  lot.analysis = Analysis{{"C", percent(0.85)}, {"Mn", percent(0.71)}, {"P", percent(0.011)}};
  lot.facts->limits = {
      {"C", between(0.80, 0.93)}, {"Mn", between(0.60, 0.90)}, {"P", at_most(0.03)}};
  return lot;
}

Lot lot_15n20() {
  Lot lot = lot_1084();
  lot.tag = {"22"};
  lot.grade = "15N20";
  lot.document_number = "4800";
  lot.melt_number = "80R15";
  lot.mark = BarMark::none_on_bar;
  lot.analysis = Analysis{{"C", percent(0.75)}, {"Ni", percent(2.02)}};
  lot.facts = GradeFacts{"EN 10132-4",
                         {{"C", between(0.72, 0.78)}, {"Ni", between(1.80, 2.10)}},
                         false,
                         HardensIn::oil};
  return lot;
}

Lot lot_52100() {
  Lot lot = lot_1095();
  lot.tag = {"9"};
  lot.grade = "52100";
  lot.facts = GradeFacts{"ASTM A295",
                         {{"C", between(0.93, 1.05)}, {"Cr", between(1.35, 1.60)}},
                         false,
                         HardensIn::oil};
  return lot;
}

Lot lot_iron() {
  Lot lot = lot_1095();
  lot.tag = {"12"};
  lot.grade = "soft iron";
  lot.facts.reset();
  return lot;
}

Lot lot_stainless() {
  Lot lot = lot_1084();
  lot.tag = {"30"};
  lot.grade = "440C";
  lot.melt_number = "S900";
  lot.analysis = Analysis{{"C", percent(1.02)}, {"Cr", percent(17.1)}, {"Mo", percent(0.6)}};
  lot.facts =
      GradeFacts{"ASTM A276",
                 {{"C", between(0.95, 1.20)}, {"Cr", between(16.0, 18.0)}, {"Mo", at_most(0.75)}},
                 false,
                 HardensIn::air};
  return lot;
}

Piece piece(const std::string& tag,
            const std::variant<LotTag, BilletTag, MeltTag, PieceTag>& from) {
  return {{tag}, from, Identity::kept, std::nullopt, std::nullopt};
}

Heat recorded(int low, int high, Duration hold, Instant from, Instant to) {
  Heat heat;
  heat.set = Temperature::celsius(low);
  heat.hold = hold;
  RecordCoverage record;
  record.instrument = Instrument::independent_thermocouple;
  record.from = from - minutes(30);
  record.to = to + minutes(30);
  record.soak_low = Temperature::celsius(low);
  record.soak_high = Temperature::celsius(high);
  record.kiln_checked = 2026_y / 6 / 1;
  heat.record = record;
  return heat;
}

void heat_treat(Dossier& d, const std::string& medium) {
  BenchEntry& harden = add(d, Operation::harden, clock(8, 30), clock(8, 50));
  harden.heat = recorded(803, 808, minutes(12), clock(8, 30), clock(8, 50));
  harden.quench =
      Quench{medium, false, Temperature::celsius(52), std::nullopt, Immersion::whole, false};
  for (int number : {1, 2}) {
    BenchEntry& temper = add(d, Operation::temper, clock(7 + 3 * number), clock(9 + 3 * number));
    temper.heat = recorded(200, 203, hours(2), clock(7 + 3 * number), clock(9 + 3 * number));
    temper.temper = TemperFacts{number, number == 1 ? std::nullopt : std::optional(true)};
  }
}

void measure(Dossier& d) {
  for (int tenths : {605, 615}) {
    HardnessReading reading;
    reading.tenths = tenths;
    reading.place = tenths == 605 ? "near the heel, 10 mm from the edge" : "middle of the edge";
    reading.tester = "bench tester";
    reading.block = BlockCheck{612, 610, 2026_y / 11 / 7};
    reading.after = AfterHeat::last;
    reading.taken = clock(18);
    d.hardness.push_back(reading);
  }
}

// Everything but the steel and its shaping.
Dossier knife(int number) {
  Dossier d;
  d.blade = number;
  d.title = "Kitchen knife";
  d.item = "kitchen knife";
  d.maker = "I. Marlow";
  d.shop = "Alder Bench";
  HandleMaterial oak;
  oak.part = "scales";
  oak.material = "bog oak";
  oak.natural = true;
  oak.species = "Quercus robur";
  oak.evidence = SpeciesEvidence::label;
  oak.source = "a wood merchant in the fens";
  d.handle.push_back(oak);
  return d;
}

void finish(Dossier& d) {
  measure(d);
  add(d, Operation::finish_grind, clock(19), clock(20));
  add(d, Operation::handle, clock(21), clock(22));
}

void from_bar(Dossier& d, const Lot& lot) {
  d.steel.lots = {lot};
  d.steel.pieces = {piece(lot.tag.text + "-1", lot.tag),
                    piece(lot.tag.text + "-1a", PieceTag{lot.tag.text + "-1"})};
  d.steel.blade_piece = PieceTag{lot.tag.text + "-1a"};
}

Dossier ground_from(int number, const Lot& lot, const std::string& medium) {
  Dossier d = knife(number);
  from_bar(d, lot);
  add(d, Operation::profile, clock(6), clock(6, 30));
  add(d, Operation::rough_grind, clock(7), clock(8));
  heat_treat(d, medium);
  finish(d);
  return d;
}

WeldStage stage(StageWork work, int pieces = 0) {
  WeldStage made;
  made.work = work;
  made.pieces = pieces;
  made.at = clock(1);
  return made;
}

void see(Dossier& d, FindingKind kind, SeenAfter after) {
  Finding finding;
  finding.number = static_cast<int>(d.findings.size()) + 1;
  finding.kind = kind;
  finding.seen = clock(20, 30);
  finding.after = after;
  d.findings.push_back(finding);
}

Melt melt_of(MeltKind kind) {
  Melt melt;
  melt.tag = {"3"};
  melt.kind = kind;
  melt.day = 2026_y / 10 / 3;
  melt.charge = {{kind == MeltKind::crucible ? "bloom iron" : "bog ore", Mass::grams(1500)},
                 {"charcoal", Mass::grams(40)}};
  melt.lining = "clay and graphite";
  melt.peak = Temperature::celsius(1540);
  melt.time = minutes(95);
  melt.ingot_mass = Mass::grams(1420);
  melt.carbon_from_charge = percent(1.5);
  return melt;
}

Dossier from_melt(int number, MeltKind kind) {
  Dossier d = knife(number);
  d.steel.melts = {melt_of(kind)};
  d.steel.pieces = {piece("i3", MeltTag{"3"})};
  d.steel.blade_piece = PieceTag{"i3"};
  add(d, Operation::forge, clock(5), clock(7));
  heat_treat(d, "fast oil");
  finish(d);
  add(d, Operation::etch, clock(20), clock(20, 20)).etch =
      Etch{EtchPurpose::show_steel, "ferric chloride", std::nullopt};
  return d;
}

}  // namespace

Instant clock(int h, int m) {
  return Instant(date::sys_days{2026_y / 11 / 7}) + hours(h) + minutes(m);
}

BenchEntry& add(Dossier& d, Operation operation, Instant from, Instant to) {
  BenchEntry entry;
  entry.number = static_cast<int>(d.log.size()) + 1;
  entry.operation = operation;
  entry.from = from;
  entry.to = to;
  return d.log.emplace_back(entry);
}

BenchEntry& line(Dossier& d, Operation operation, int which) {
  for (BenchEntry& entry : d.log)
    if (entry.operation == operation && which-- == 0) return entry;
  throw std::logic_error("the sample has no such line");
}

void drop(Dossier& d, Operation operation) {
  std::erase_if(d.log, [&](const BenchEntry& entry) { return entry.operation == operation; });
}

Dossier bar_blade() {
  return ground_from(41, lot_1095(), "fast oil");
}

Dossier hamon_blade() {
  Dossier d = ground_from(44, lot_1095(), "water");
  line(d, Operation::harden).quench->clay = true;
  add(d, Operation::polish, clock(20), clock(20, 20));
  see(d, FindingKind::hamon_seen, SeenAfter::polish);
  return d;
}

Dossier pattern_blade() {
  Dossier d = knife(42);
  d.title = "Hunter";
  d.steel.lots = {lot_1084(), lot_15n20()};
  d.steel.pieces = {piece("17-2", LotTag{"17"}), piece("22-1", LotTag{"22"}),
                    piece("b31", BilletTag{"31"})};
  Billet billet;
  billet.tag = {"31"};
  billet.photos = {1, 2};
  billet.stages = {stage(StageWork::stack), stage(StageWork::weld),  stage(StageWork::cut, 3),
                   stage(StageWork::weld),  stage(StageWork::twist), stage(StageWork::cut, 4),
                   stage(StageWork::weld)};
  billet.stages[0].parts = {{{"17-2"}, 6, Role::layer}, {{"22-1"}, 5, Role::layer}};
  d.steel.billets = {billet};
  d.steel.blade_piece = PieceTag{"b31"};
  add(d, Operation::forge, clock(5), clock(7));
  heat_treat(d, "fast oil");
  finish(d);
  add(d, Operation::etch, clock(20), clock(20, 20)).etch =
      Etch{EtchPurpose::show_steel, "ferric chloride", std::nullopt};
  return d;
}

Dossier bought_pattern_blade() {
  Lot lot = lot_1095();
  lot.tag = {"25"};
  lot.grade.reset();
  lot.facts.reset();
  lot.sold_as = SoldAs::pattern_welded;
  lot.stated_layers = 300;
  lot.stated_maker = "an outside smith";
  lot.stated_steels = {"1080", "15N20"};
  return ground_from(43, lot, "fast oil");
}

Dossier laminated_blade() {
  Dossier d = knife(46);
  d.steel.lots = {lot_52100(), lot_iron()};
  d.steel.pieces = {piece("9-1", LotTag{"9"}), piece("12-1", LotTag{"12"}),
                    piece("b8", BilletTag{"8"})};
  Billet billet;
  billet.tag = {"8"};
  billet.stages = {stage(StageWork::stack), stage(StageWork::weld)};
  billet.stages[0].parts = {{{"9-1"}, 1, Role::core}, {{"12-1"}, 2, Role::cladding}};
  d.steel.billets = {billet};
  d.steel.blade_piece = PieceTag{"b8"};
  add(d, Operation::forge, clock(5), clock(7));
  heat_treat(d, "fast oil");
  finish(d);
  return d;
}

Dossier wootz_blade() {
  Dossier d = from_melt(47, MeltKind::crucible);
  see(d, FindingKind::pattern_carbides, SeenAfter::etch);
  return d;
}

Dossier smelted_blade() {
  return from_melt(48, MeltKind::bloomery);
}

Dossier banded_blade() {
  Dossier d = knife(49);
  from_bar(d, lot_52100());
  add(d, Operation::forge, clock(3), clock(4));
  for (int i = 0; i < 3; ++i)
    add(d, Operation::thermal_cycle, clock(4, 10 * i), clock(4, 10 * i + 10));
  heat_treat(d, "fast oil");
  finish(d);
  add(d, Operation::etch, clock(20), clock(20, 20)).etch =
      Etch{EtchPurpose::show_steel, "ferric chloride", std::nullopt};
  see(d, FindingKind::pattern_carbides, SeenAfter::etch);
  return d;
}

Dossier image_blade() {
  Dossier d = bar_blade();
  add(d, Operation::etch, clock(20), clock(20, 20)).etch =
      Etch{EtchPurpose::image, "ferric chloride", "a vinyl stencil"};
  return d;
}

Dossier stainless_blade() {
  Dossier d = ground_from(50, lot_stainless(), "plates");
  line(d, Operation::harden).quench->still_air = true;
  BenchEntry cold;
  cold.number = 90;
  cold.operation = Operation::sub_zero;
  cold.from = clock(9);
  cold.to = clock(11);
  cold.cold = Cold{Temperature::celsius(-196), hours(2), "liquid nitrogen"};
  const auto temper = std::find_if(d.log.begin(), d.log.end(), [](const BenchEntry& entry) {
    return entry.operation == Operation::temper;
  });
  d.log.insert(temper, cold);
  for (BenchEntry& entry : d.log)
    if (entry.operation == Operation::temper) {
      *entry.from += hours(2);
      *entry.to += hours(2);
      entry.heat->record->to += hours(2);
    }
  return d;
}

Dossier spring_blade() {
  Lot lot = lot_1095();
  lot.tag = {"60"};
  lot.grade.reset();
  lot.facts.reset();
  lot.document = SupplyDocument::none;
  lot.owner = Owner::customer;
  lot.recycled_from = "a coil spring from the buyer's tractor";
  lot.own_tests = {"a coupon hardened in oil resisted a file"};
  return ground_from(45, lot, "fast oil");
}

Dossier blade_called(std::string_view name) {
  if (name == "bar") return bar_blade();
  if (name == "hamon") return hamon_blade();
  if (name == "pattern") return pattern_blade();
  if (name == "bought") return bought_pattern_blade();
  if (name == "laminated") return laminated_blade();
  if (name == "wootz") return wootz_blade();
  if (name == "banded") return banded_blade();
  if (name == "smelted") return smelted_blade();
  if (name == "image") return image_blade();
  if (name == "stainless") return stainless_blade();
  if (name == "spring") return spring_blade();
  throw std::logic_error("no sample blade of this name");
}

}  // namespace tangmark::certificate::sample
