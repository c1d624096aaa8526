// SPDX-License-Identifier: MIT
#include "domain/steel/hardness_scale.h"

#include <cmath>
#include <vector>

#include "domain/steel/built_in_data.h"
#include "domain/steel/data_table.h"

namespace tangmark::steel {
namespace {

struct ScaleRow {
  double hrc;
  double hv;
};

// Rows rise in both scales.
const std::vector<ScaleRow>& rows() {
  static const std::vector<ScaleRow> read = [] {
    const DataTable table(built_in::hardness_e140);
    std::vector<ScaleRow> list;
    for (std::size_t i = 0; i < table.size(); ++i) {
      list.push_back({table.number(i, "hrc"), table.number(i, "hv")});
    }
    return list;
  }();
  return read;
}

// The other scale's figure between the two rows that hold x, or a refusal.
Outcome<double> between_rows(double x, double ScaleRow::*from, double ScaleRow::*to,
                             const char* field, const char* range) {
  const auto& table = rows();
  if (!(x >= table.front().*from && x <= table.back().*from)) {
    return Problem{field, std::string("The hardness table covers ") + range + " only.",
                   "Measure on a scale that covers this hardness."};
  }
  std::size_t upper = 1;
  while (table[upper].*from < x) ++upper;
  const ScaleRow& a = table[upper - 1];
  const ScaleRow& b = table[upper];
  return a.*to + (b.*to - a.*to) * (x - a.*from) / (b.*from - a.*from);
}

}  // namespace

Outcome<Vickers> to_vickers(RockwellC hardness) {
  auto hv = between_rows(hardness.points, &ScaleRow::hrc, &ScaleRow::hv, "hrc", "20 to 68 HRC");
  if (!hv) return hv.problems();
  return Vickers{*hv};
}

Outcome<RockwellC> to_rockwell_c(Vickers hardness) {
  auto hrc = between_rows(hardness.points, &ScaleRow::hv, &ScaleRow::hrc, "hv", "238 to 940 HV");
  if (!hrc) return hrc.problems();
  return RockwellC{*hrc};
}

}  // namespace tangmark::steel
