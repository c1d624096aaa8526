// SPDX-License-Identifier: MIT
#include "db/actions/quote_asked.h"

namespace tangmark::db {

using namespace commission;

std::optional<KeptQuote> asked_quote(Work& work, Form& form,
                                     const std::optional<KeptCommission>& commission) {
  const auto version = form.maybe_whole("version", 1, 10'000);
  if (!commission) return std::nullopt;
  const auto quotes = quotes_of(work.shop(), commission->id);
  if (quotes.empty()) {
    form.add({"commission", "This commission has no quote yet.", "Make one with make_quote."});
    return std::nullopt;
  }
  if (!version) return quotes.front();
  for (const KeptQuote& quote : quotes)
    if (quote.version == *version) return quote;
  form.add({"version", "There is no version " + std::to_string(*version) + ".",
            "The newest is " + std::to_string(quotes.front().version) + "."});
  return std::nullopt;
}

std::string quote_number(const KeptCommission& commission, const Quote& quote) {
  return std::to_string(commission.number) + "/" + std::to_string(quote.version);
}

}  // namespace tangmark::db
