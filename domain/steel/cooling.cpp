// SPDX-License-Identifier: MIT
#include "domain/steel/cooling.h"

#include <cmath>

namespace tangmark::steel {

Outcome<double> cooling_minutes(Temperature from, Temperature to, Temperature ambient,
                                double tau_min) {
  Gather form;
  if (to > from) {
    form.add({"to_c", "A kiln does not cool upwards: the end is hotter than the start.",
              "Give an end below the start."});
  }
  if (to <= ambient) {
    form.add({"to_c", "A kiln never quite cools to the air around it.",
              "Give an end above the ambient temperature."});
  }
  if (!(tau_min > 0)) {
    form.add({"tau_min", "The time constant must be above zero.",
              "Fit it to two logged readings of this kiln."});
  }
  if (form.refused()) return form.problems();
  return tau_min * std::log((from - ambient).kelvins() / (to - ambient).kelvins());
}

}  // namespace tangmark::steel
