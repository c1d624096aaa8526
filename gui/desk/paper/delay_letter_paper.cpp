// SPDX-License-Identifier: MIT
// The letter of delay on the shop's paper.
#include "db/store/delay_letter_of.h"
#include "db/store/named.h"
#include "db/store/promise_store.h"
#include "db/store/settings_store.h"
#include "gui/desk/paper/issued_paper.h"
#include "gui/desk/paper/letterhead.h"
#include "reports/plain_letter.h"

namespace tangmark::desk {
namespace {

// What was told is what prints; before that, the draft.
Outcome<std::string> words_of(const Press& press, const commission::KeptCommission& commission) {
  if (const auto notice = db::unanswered_notice(press.shop, commission.id)) return notice->words;
  const auto draft = db::delay_letter_of(press.shop, commission, press.now);
  if (draft) return commission::delay_letter(*draft);
  const auto told = db::delay_notices_of(press.shop, commission.id);
  if (!told.empty()) return told.back().words;
  return draft.problem();
}

}  // namespace

Outcome<reports::Document> delay_letter_paper(const Press& press, std::string_view number,
                                              const std::optional<std::string>& text) {
  const auto commission = db::commission_named(press.shop, number, "commission");
  if (!commission) return commission.problems();
  const auto words = text ? Outcome<std::string>(*text) : words_of(press, *commission);
  if (!words) return words.problem();
  const auto settings = db::load_settings(press.shop);
  reports::PlainLetter letter;
  letter.shop = letterhead_of(settings);
  letter.buyer = buyer_of(press, *commission);
  letter.written = press.now;
  letter.commission = std::to_string(commission->number);
  letter.subject = "A later day for commission " + letter.commission;
  letter.text = *words;
  return reports::plain_letter_document(letter, look_of(settings), press.fonts);
}

}  // namespace tangmark::desk
