// SPDX-License-Identifier: MIT
#include "domain/steel/layer_count.h"

#include <charconv>
#include <cmath>

#include "domain/steel/figure_text.h"

namespace tangmark::steel {
namespace {

constexpr std::int64_t most_layers = 1'000'000'000'000'000;

Outcome<Restack> parse_restack(std::string_view word, std::string_view field) {
  const std::string small = lower(word);
  if (small == "fold") return Restack{2};
  if (small.starts_with("cut")) {
    std::int64_t pieces = 0;
    const char* end_of_word = small.data() + small.size();
    const auto [end, fault] = std::from_chars(small.data() + 3, end_of_word, pieces);
    if (fault == std::errc{} && end == end_of_word) return Restack{pieces};
  }
  return Problem{std::string(field), "\"" + std::string(word) + "\" is not a restack.",
                 "Write fold, or cut with a number of pieces such as cut3."};
}

}  // namespace

Outcome<std::int64_t> nominal_layers(std::int64_t start, const std::vector<Restack>& restacks) {
  if (start < 1) {
    return Problem{"start", "A billet starts with at least one layer.", "Count the first stack."};
  }
  std::int64_t layers = start;
  for (const Restack& restack : restacks) {
    if (restack.pieces < 2) {
      return Problem{"operations", "A cut makes at least two pieces.", "Write cut2 or more."};
    }
    if (layers > most_layers / restack.pieces) {
      return Problem{"operations", "That is more than 10^15 layers.",
                     "Check the restacks: layers would be thinner than an atom."};
    }
    layers *= restack.pieces;
  }
  if (layers > most_layers) return Problem{"start", "That is more than 10^15 layers.", "Check it."};
  return layers;
}

Length mean_layer_thickness(Length billet, std::int64_t layers) {
  return Length::nanometres(std::llround(static_cast<double>(billet.nanometres()) /
                                         static_cast<double>(layers)));
}

double mean_layer_thickness_mm(double billet_mm, std::int64_t layers) {
  return billet_mm / static_cast<double>(layers);
}

Outcome<std::vector<Restack>> parse_restacks(std::string_view text, std::string_view field) {
  std::vector<Restack> restacks;
  if (trimmed(text).empty()) return restacks;
  Gather form;
  for (const std::string_view word : split_outside_brackets(text, ',')) {
    restacks.push_back(form.take(parse_restack(word, field)));
  }
  if (form.refused()) return form.problems();
  return restacks;
}

}  // namespace tangmark::steel
