// SPDX-License-Identifier: MIT
#include "domain/costing/cost_line.h"

#include <array>
#include <cstdlib>
#include <utility>

namespace tangmark::costing {
namespace {

constexpr std::array<std::pair<LineKind, std::string_view>, 10> words{{
    {LineKind::material, "material"},
    {LineKind::used_up, "used_up"},
    {LineKind::energy, "energy"},
    {LineKind::hours, "hours"},
    {LineKind::made_elsewhere, "made_elsewhere"},
    {LineKind::overhead, "overhead"},
    {LineKind::loss, "loss"},
    {LineKind::packing, "packing"},
    {LineKind::shipping, "shipping"},
    {LineKind::fee, "fee"},
}};

}  // namespace

std::string_view to_word(LineKind kind) {
  for (const auto& [k, word] : words)
    if (k == kind) return word;
  return {};
}

std::optional<LineKind> line_kind_from(std::string_view word) {
  for (const auto& [kind, w] : words)
    if (w == word) return kind;
  return std::nullopt;
}

std::string to_text(const Quantity& quantity) {
  const std::int64_t whole = std::llabs(quantity.thousandths) / 1000;
  std::string text = (quantity.thousandths < 0 ? "-" : "") + std::to_string(whole);
  if (std::int64_t rest = std::llabs(quantity.thousandths) % 1000; rest != 0) {
    std::string digits = std::to_string(1000 + rest).substr(1);
    digits.erase(digits.find_last_not_of('0') + 1);
    text += "." + digits;
  }
  return quantity.unit.empty() ? text : text + " " + quantity.unit;
}

}  // namespace tangmark::costing
