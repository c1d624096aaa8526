// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "db/actions/form.h"
#include "db/actions/work.h"
#include "db/store/named.h"

namespace tangmark::db {

/// Reads a field that names a stored thing; nothing when it was not given or is not in the shop,
/// which the form then holds as a problem.
///
///     const auto piece = asked(work, form, "piece", piece_named);
///     if (form.refused()) return form.problems();
template <class T>
std::optional<T> asked(Work& work, Form& form, std::string_view field,
                       Outcome<T> (*named)(const ShopFile&, std::string_view, std::string_view)) {
  const auto text = form.maybe_text(field);
  if (!text) return std::nullopt;
  auto found = named(work.shop(), *text, field);
  if (found) return std::move(found).value();
  for (Problem& problem : found.problems()) form.add(std::move(problem));
  return std::nullopt;
}

/// The trade's words of an enum, for a field that offers them.
template <class E>
std::vector<std::string_view> choices_of() {
  std::vector<std::string_view> words;
  for (const auto& [value, word] : trade_words<E>) words.push_back(word);
  return words;
}

}  // namespace tangmark::db
