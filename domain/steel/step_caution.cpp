// SPDX-License-Identifier: MIT
#include "domain/steel/step_caution.h"

#include <algorithm>
#include <initializer_list>

namespace tangmark::steel {
namespace {

constexpr const char* sheet_first = " The product's own safety sheet and local codes come first.";

bool is_one_of(std::string_view word, std::initializer_list<std::string_view> known) {
  return std::find(known.begin(), known.end(), word) != known.end();
}

Caution with_sheet(std::string sentence, std::string source) {
  return {std::move(sentence) + sheet_first, std::move(source)};
}

Caution for_bath(std::string_view bath) {
  if (bath == "oil") {
    return with_sheet(
        "Quench oil can burn: put the blade in whole and without pausing, keep the oil at least 28 "
        "C "
        "(50 F) below its flash point and free of water, a metal lid and a class B extinguisher at "
        "hand.",
        "NFPA 86, from memory");
  }
  if (bath == "salt") {
    return with_sheet(
        "Anything wet erupts in molten salt; never mix nitrate or nitrite salt with oil, organics "
        "or "
        "cyanide, nor heat it above about 595 C.",
        "common practice, from memory");
  }
  return with_sheet(
      "Steam and brine spit: cover eyes, face and hands; a blade may crack with force.",
      "common practice, no source");
}

}  // namespace

std::vector<Caution> cautions_for(std::string_view operation, std::string_view bath) {
  std::vector<Caution> cautions;
  if (is_one_of(bath, {"oil", "salt", "water", "brine"})) cautions.push_back(for_bath(bath));
  if (is_one_of(operation, {"forge", "forge-weld", "twist", "melt"})) {
    cautions.push_back(
        with_sheet("A gas fire indoors needs make-up air and a carbon monoxide alarm (OSHA limit "
                   "50 ppm over 8 h, "
                   "NIOSH ceiling 200 ppm); propane is heavier than air and gathers low.",
                   "OSHA and NIOSH limits; NFPA 58 from memory"));
  }
  if (operation == "etch") {
    cautions.push_back(
        with_sheet("Ferric chloride burns skin and eyes and attacks most metals: goggles, gloves, "
                   "plastic vessels "
                   "only; the used bath holds metals and goes down no drain.",
                   "NIOSH limit for soluble iron salts, from memory"));
  }
  if (is_one_of(operation, {"rough grind", "finish grind", "profile", "hand sand", "handle"})) {
    cautions.push_back(with_sheet(
        "Grinding dust: fitted respirator and capture at the belt (OSHA limits: dust 15 mg/m3 in "
        "all, "
        "5 respirable; hexavalent chromium 0.005); no magnesium or aluminium with steel sparks.",
        "OSHA limits"));
  }
  if (operation == "sub-zero") {
    cautions.push_back(
        with_sheet("Liquid nitrogen and dry ice drive out the air: ventilate, and never close the "
                   "vessel tight.",
                   "common practice, from memory"));
  }
  return cautions;
}

}  // namespace tangmark::steel
