// SPDX-License-Identifier: MIT
#include <algorithm>

#include "db/store/named.h"
#include "db/store/question_list.h"
#include "db/store/quote_store.h"
#include "db/store/quote_versions.h"

namespace tangmark::db {
namespace {

Outcome<Answer> answer_33(const ShopFile& shop, const Given& given, Instant) {
  const auto commission = given_thing(shop, given, "commission", commission_named);
  if (!commission) return commission.problems();
  auto kept = quotes_of(shop, commission->id);
  if (kept.empty())
    return Problem{"commission", "No quote was made for it yet.", "Make one with make_quote."};
  std::reverse(kept.begin(), kept.end());
  std::vector<commission::Quote> quotes(kept.begin(), kept.end());
  std::vector<std::string> heads;
  for (const commission::Quote& quote : quotes) heads.push_back(version_head(quote));
  ComparedQuotes compared = compared_quotes(quotes, heads);
  return Answer{
      "What differs between the versions of quote " + std::to_string(commission->number) + "?",
      std::move(compared.sentences), std::move(compared.columns), std::move(compared.rows)};
}

}  // namespace

const Question question_33{33,
                           "What differs between the versions of a quote?",
                           {{"commission", "Commission", FieldKind::commission, true, "12"}},
                           answer_33};

}  // namespace tangmark::db
