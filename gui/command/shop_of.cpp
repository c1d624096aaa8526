// SPDX-License-Identifier: MIT
#include "gui/command/shop_of.h"

namespace tangmark::command {

Exit with_shop(const Call& call, const std::function<Exit(db::ShopFile&)>& work) {
  auto shop = db::ShopFile::open(call.words.at(0), call.now);
  if (!shop) return refused(call, shop.problems());
  if (!shop->notice().empty()) tell(shop->notice());
  return work(*shop);
}

}  // namespace tangmark::command
