// SPDX-License-Identifier: MIT
#include "domain/kiln/plan_catches.h"

#include <string_view>

namespace tangmark::kiln {
namespace {

struct Meaning {
  int number;
  Weight weight;
  std::string_view field, remedy;
};

Meaning meaning_of(int rule) {
  switch (rule) {
    case 2: return {5, Weight::stop, "blades", "Use a longer kiln, or put fewer blades in."};
    case 3: return {5, Weight::stop, "temperature", "Choose a kiln that reaches this temperature."};
    case 4: return {7, Weight::stop, "blades", "Fire these blades apart."};
    case 5: return {7, Weight::ask, "soak", "Change the soak, or put fewer blades in."};
    case 6:
    case 7: return {21, Weight::ask, "start", "Move it into hours when you are at the bench."};
    case 8: return {21, Weight::ask, "start", "Start earlier."};
    case 10: return {6, Weight::ask, "start", "Start after the work that comes before it."};
    case 11: return {8, Weight::ask, "start", "Move it nearer to the blade's step before."};
    case 12: return {21, Weight::stop, "start", "Leave the kiln time to heat or to cool."};
    case 13: return {21, Weight::ask, "start", "Move one of the two: you have one pair of hands."};
    case 14:
      return {21, Weight::stop, "start", "Move it until the other kiln on the circuit is off."};
    case 15: return {21, Weight::stop, "start", "Unlock the firing first."};
    case 16: return {22, Weight::ask, "start", "Let the bath cool first, or quench fewer blades."};
    default: return {21, Weight::stop, "firing", "Correct the firing."};
  }
}

}  // namespace

Catches catches_of(const PlanCheck& check) {
  Catches caught;
  for (const PlanViolation& violation : check.violations) {
    const Meaning meaning = meaning_of(violation.rule);
    caught.push_back({meaning.number, meaning.weight, std::string(meaning.field),
                      violation.sentence, std::string(meaning.remedy)});
  }
  return caught;
}

}  // namespace tangmark::kiln
