// SPDX-License-Identifier: MIT
#include "db/store/money_store.h"
#include "db/store/question_list.h"
#include "db/store/settings_store.h"

namespace tangmark::db {
namespace {

using namespace commission;

Outcome<Answer> answer_13(const ShopFile& shop, const Given&, Instant now) {
  const auto settings = load_settings(shop);
  const auto all = commissions_with_money(shop);
  Answer answer{"What do I owe in deposits, and who owes me?",
                {},
                {"Commission", "State", "What", "Amount", "Days"},
                {}};
  for (const CommissionMoney& one : all) {
    const Money held = held_for_unfinished_work(one.commission.state, one.account);
    if (!held.is_zero())
      answer.rows.push_back({std::to_string(one.commission.number),
                             std::string(word_of(one.commission.state)), "held for unfinished work",
                             to_text(held), ""});
  }
  for (const OwedBalance& balance : owed_balances(shop, settings.zone, now))
    answer.rows.push_back({std::to_string(balance.commission.number),
                           std::string(word_of(balance.commission.state)),
                           "balance owed to the shop", to_text(balance.owed),
                           balance.days ? std::to_string(*balance.days) : ""});
  for (const CommissionMoney& one : deposits_awaited(shop))
    answer.rows.push_back({std::to_string(one.commission.number),
                           std::string(word_of(one.commission.state)), "deposit awaited",
                           to_text(one.account.deposit_due - one.account.received), ""});
  const auto held = money_held(all);
  if (held.empty()) answer.sentences.push_back("No money is held for unfinished work.");
  for (const Money& sum : held)
    answer.sentences.push_back(to_text(sum) + " is held for work that is not delivered.");
  return answer;
}

}  // namespace

const Question question_13{
    13, "What do I owe in deposits, and who owes me balances?", {}, answer_13};

}  // namespace tangmark::db
