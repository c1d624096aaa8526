// SPDX-License-Identifier: MIT
#include "db/store/delay_letter_of.h"

#include "db/store/customer_store.h"
#include "db/store/item_store.h"
#include "db/store/promise_reader.h"
#include "db/store/promise_store.h"
#include "db/store/settings_store.h"

namespace tangmark::db {

using namespace commission;

Outcome<DelayLetter> delay_letter_of(const ShopFile& shop, const KeptCommission& commission,
                                     Instant now) {
  const std::string name = "Commission " + std::to_string(commission.number);
  const auto promise = standing_promise(shop, commission.id);
  if (is_over(commission.state))
    return Problem{"commission", name + " is over.", "There is nobody left to tell."};
  if (!promise)
    return Problem{"commission", name + " has no promised day.", "Promise one with promise_date."};
  const auto answer = answer_promise(shop, commission, now, Runs{});
  if (!answer) return answer.problems();
  if (answer->forecast.p80 <= promise->day)
    return Problem{
        "commission",
        name + " is promised for " + to_text(promise->day) + ", and that holds in 80 of 100 runs.",
        "There is no delay to tell."};
  const ShopSettings settings = load_settings(shop);
  DelayLetter letter;
  letter.commission = commission.number;
  if (const auto customer = load_customer(shop, commission.customer))
    letter.buyer = customer->name.value_or("");
  for (const KeptItem& item : items_of(shop, commission.id))
    if (!item.cancelled_on) letter.items += (letter.items.empty() ? "" : ", ") + item.title;
  letter.promised = promise->day;
  letter.new_day = answer->forecast.p80;
  if (!answer->causes.empty()) letter.cause = sentence(answer->causes.front().cause);
  letter.maker = settings.maker_name;
  letter.shop = settings.shop_name;
  letter.refund_rule = commission.refund_rule;
  return letter;
}

}  // namespace tangmark::db
