// SPDX-License-Identifier: MIT
#include "domain/commission/delay_letter.h"

namespace tangmark::commission {

std::string delay_letter(const DelayLetter& letter) {
  std::string text = letter.buyer.empty() ? "Dear customer,\n\n" : "Dear " + letter.buyer + ",\n\n";
  text += "I promised you commission " + std::to_string(letter.commission);
  if (!letter.items.empty()) text += " (" + letter.items + ")";
  text += " for " + to_text(letter.promised) + ". I cannot keep that day, and would rather tell " +
          "you now. The day I can honestly give you is " + to_text(letter.new_day) + ".\n\n";
  if (!letter.cause.empty()) text += "The reason: " + letter.cause + ".\n\n";
  text += "You may agree to the new day, or withdraw.";
  if (letter.refund_rule) text += " What we agreed for that case: " + *letter.refund_rule;
  text += "\n\nPlease answer either way; I do not take silence for a yes.\n\n";
  text += "With apologies,\n" + (letter.maker.empty() ? letter.shop : letter.maker);
  if (!letter.maker.empty() && !letter.shop.empty()) text += ", " + letter.shop;
  return text + "\n";
}

}  // namespace tangmark::commission
