// SPDX-License-Identifier: MIT
#include "db/actions/registry.h"

#include <algorithm>

namespace tangmark::db {
namespace {

std::vector<const Action*> joined() {
  std::vector<const Action*> all;
  for (const auto& group : {commission_actions(), stock_actions(), blade_actions(), kiln_actions(),
                            certificate_actions(), shop_actions()})
    all.insert(all.end(), group.begin(), group.end());
  return all;
}

}  // namespace

std::span<const Action* const> all_actions() {
  static const std::vector<const Action*> all = joined();
  return all;
}

const Action* find_action(std::string_view name) {
  const auto all = all_actions();
  const auto found =
      std::find_if(all.begin(), all.end(), [&](const Action* a) { return a->name == name; });
  return found == all.end() ? nullptr : *found;
}

}  // namespace tangmark::db
