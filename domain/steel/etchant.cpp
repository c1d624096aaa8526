// SPDX-License-Identifier: MIT
#include "domain/steel/etchant.h"

#include <algorithm>
#include <vector>

#include "domain/steel/built_in_data.h"
#include "domain/steel/data_table.h"
#include "domain/steel/figure_text.h"

namespace tangmark::steel {
namespace {

constexpr double water_g_ml = 0.998;
constexpr double heavy_baume = 145;
constexpr double most_ml = 1e6;
constexpr double most_baume = 46.3;  // the strongest row, 44 weight per cent, as labels round it

struct EtchantRow {
  double weight_percent;
  double density_g_ml;
};

const std::vector<EtchantRow>& rows() {
  static const std::vector<EtchantRow> read = [] {
    const DataTable table(built_in::ferric_chloride);
    std::vector<EtchantRow> list;
    for (std::size_t i = 0; i < table.size(); ++i) {
      list.push_back({table.number(i, "weight_percent"), table.number(i, "density_kg_l_20c")});
    }
    return list;
  }();
  return read;
}

// x lies within the table; both columns rise.
double between_rows(double x, double EtchantRow::*from, double EtchantRow::*to) {
  const auto& table = rows();
  std::size_t upper = 1;
  while (upper + 1 < table.size() && table[upper].*from < x) ++upper;
  const EtchantRow& a = table[upper - 1];
  const EtchantRow& b = table[upper];
  return a.*to + (b.*to - a.*to) * (x - a.*from) / (b.*from - a.*from);
}

Problem outside_table(const char* field, double weight_percent) {
  return {field,
          rounded_text(weight_percent, 2) +
              " % is outside the ferric chloride table, which "
              "runs from 0 to 44 weight per cent.",
          "Check the label of the stock."};
}

}  // namespace

Outcome<double> ferric_chloride_density_g_ml(double weight_percent) {
  if (!(weight_percent >= 0 && weight_percent <= rows().back().weight_percent)) {
    return outside_table("weight_percent", weight_percent);
  }
  return between_rows(weight_percent, &EtchantRow::weight_percent, &EtchantRow::density_g_ml);
}

Outcome<double> ferric_chloride_from_baume_wt(double degrees) {
  const double density = heavy_baume / (heavy_baume - degrees);
  if (!(degrees >= 0 && degrees < heavy_baume) || degrees > most_baume) {
    return Problem{"baume", "The Baume degree must lie between 0 and 46.3.",
                   "Check the label: stock is often 42 degrees."};
  }
  const double heaviest = std::clamp(density, water_g_ml, rows().back().density_g_ml);
  return between_rows(heaviest, &EtchantRow::density_g_ml, &EtchantRow::weight_percent);
}

double baume_of_density(double density_g_ml) {
  return heavy_baume - heavy_baume / density_g_ml;
}

Outcome<EtchantMix> dilute_ferric_chloride(double have_wt, double want_wt, double make_ml) {
  Gather form;
  const auto check_strength = [&](const char* field, double wt) {
    if (!(wt > 0 && wt <= rows().back().weight_percent)) form.add(outside_table(field, wt));
  };
  check_strength("have_wt", have_wt);
  check_strength("want_wt", want_wt);
  if (!(make_ml > 0 && make_ml <= most_ml)) {
    form.add({"make_ml", "The volume to make must be above zero and at most 1000 litres.",
              "Give it in millilitres."});
  }
  if (want_wt > have_wt) {
    form.add({"want_wt", "The bath cannot be stronger than the stock it is made from.",
              "Ask for a weaker bath or use stronger stock."});
  }
  if (form.refused()) return form.problems();
  EtchantMix mix;
  mix.density_g_ml = ferric_chloride_density_g_ml(want_wt).value();
  const double bath_g = make_ml * mix.density_g_ml;
  const double stock_g = bath_g * want_wt / have_wt;
  mix.stock_ml = stock_g / ferric_chloride_density_g_ml(have_wt).value();
  mix.water_ml = (bath_g - stock_g) / water_g_ml;
  return mix;
}

}  // namespace tangmark::steel
