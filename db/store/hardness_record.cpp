// SPDX-License-Identifier: MIT
#include "db/store/hardness_record.h"

#include <fmt/format.h>

#include <cmath>
#include <map>

#include "db/row.h"
#include "db/store/grade_store.h"
#include "db/store/step_advice_reader.h"
#include "domain/steel/figure_text.h"
#include "domain/stock/steel_match.h"

namespace tangmark::db {
namespace {

using steel::rounded_text;

// A blade of several steels hardens as its core, which is named first; a table knows one steel.
const steel::Grade* grade_of(const steel::GradeBook& book, const blade::Blade& blade) {
  const auto named = stock::grades_named(blade.grade.value_or(""));
  return named.size() == 1 ? book.find(named.front()) : nullptr;
}

std::string kiln_of(const ShopFile& shop, const BladeOnRecord& record) {
  for (auto entry = record.log.rbegin(); entry != record.log.rend(); ++entry) {
    if (entry->operation != "harden" || !entry->firing) continue;
    Query query(shop, "SELECT k.name FROM firing f JOIN kiln k ON k.id = f.kiln_id WHERE f.id = ?");
    query.bind(*entry->firing);
    return query.next() ? query.text("name") : std::string();
  }
  return {};
}

HardnessRecord made(const ShopFile& shop, const steel::GradeBook& book,
                    const BladeOnRecord& record) {
  HardnessRecord hardness;
  hardness.number = record.blade.number;
  const steel::Grade* grade = grade_of(book, record.blade);
  if (grade != nullptr) hardness.grade = grade->name;
  hardness.kiln = kiln_of(shop, record);
  hardness.measured_hrc = mean_hrc_after_heat(record);
  const auto tempers = tempers_since_quench(record);
  if (grade == nullptr) {
    hardness.why_not = "It is not of one known steel.";
  } else if (tempers.empty()) {
    hardness.why_not = "No temper with its time is on record.";
  } else if (auto expected = steel::expected_hardness(*grade, tempers)) {
    hardness.expected = std::move(expected).value();
  } else {
    hardness.why_not = expected.problem().sentence;
  }
  return hardness;
}

}  // namespace

std::optional<double> mean_hrc_after_heat(const BladeOnRecord& record) {
  double sum = 0;
  int readings = 0;
  for (const blade::HardnessReading& reading : record.readings) {
    const bool counts = !reading.void_why && reading.scale == "HRC" &&
                        (!record.state.last_heat_at || reading.at >= *record.state.last_heat_at);
    if (!counts) continue;
    sum += static_cast<double>(reading.tenths + reading.tenths_to.value_or(reading.tenths)) / 20;
    ++readings;
  }
  if (readings == 0) return std::nullopt;
  return sum / readings;
}

HardnessRecord hardness_record_of(const ShopFile& shop, const BladeOnRecord& record) {
  return made(shop, grade_book(shop), record);
}

std::vector<HardnessRecord> hardness_records(const ShopFile& shop, const std::string& grade) {
  const steel::GradeBook book = grade_book(shop);
  Query query(shop, R"(
SELECT DISTINCT b.id, b.number, b.grade FROM blade b JOIN log_entry e ON e.blade_id = b.id
WHERE e.operation = 'temper' ORDER BY b.number)");
  std::vector<HardnessRecord> records;
  while (query.next()) {
    if (!grade.empty() && !stock::same_grade(query.text("grade"), grade, book)) continue;
    if (const auto record = load_record(shop, query.id<blade::BladeId>("id")))
      records.push_back(made(shop, book, *record));
  }
  return records;
}

std::vector<KilnBias> biases_of(const std::vector<HardnessRecord>& records) {
  std::map<std::pair<std::string, std::string>, std::vector<steel::ExpectedAndMeasured>> groups;
  for (const HardnessRecord& record : records)
    if (record.expected && record.measured_hrc)
      groups[{record.grade, record.kiln}].push_back({*record.expected, {*record.measured_hrc}});
  std::vector<KilnBias> biases;
  for (const auto& [name, blades] : groups)
    if (const auto bias = steel::hardness_bias(blades))
      biases.push_back({name.first, name.second, *bias});
  return biases;
}

std::string bias_sentence(const KilnBias& of) {
  const steel::HardnessBias& bias = of.bias;
  std::string words = fmt::format(
      "{} from {}: {} HRC {} the middle of the tables in {} blade{}, {} outside the band",
      of.grade, of.kiln.empty() ? "no kiln on record" : "the " + of.kiln,
      rounded_text(std::abs(bias.mean_points), 1), bias.mean_points < 0 ? "below" : "above",
      bias.blades, bias.blades == 1 ? "" : "s", bias.outside_band);
  if (bias.spread_points)
    words += ", single blades " + rounded_text(*bias.spread_points, 1) + " HRC apart";
  return words + (bias.blades < 3 ? ". Too few blades to lean on." : ".");
}

}  // namespace tangmark::db
