// SPDX-License-Identifier: MIT
// What stands beside a quote while it is priced: its versions, and the last pieces of its models.
#include <algorithm>
#include <set>

#include "db/store/item_store.h"
#include "db/store/model_store.h"
#include "db/store/named.h"
#include "db/store/questions.h"
#include "db/store/quote_store.h"
#include "db/store/quote_versions.h"
#include "gui/desk/quote_desk.h"

namespace tangmark::desk {
namespace {

NextLine back_to_quote(const std::string& sentence, const std::string& why,
                       const std::string& number) {
  return {sentence, why, {{"Back to the quote", PlaceWork{"quote again", number}, "Esc", ""}}};
}

// Figures stand at the right, under each other.
Section table_of(const std::vector<std::string>& columns,
                 const std::vector<std::vector<std::string>>& rows, std::size_t words) {
  Section section;
  for (std::size_t i = 0; i < columns.size(); ++i)
    section.table.columns.push_back({columns[i], i < words ? Align::left : Align::right});
  for (const auto& row : rows) {
    const bool sum = !row.empty() && row.front() == "sum";
    section.table.rows.push_back({row, sum, {}});
  }
  return section;
}

db::QuoteWish wish_of(const QuoteTyped& typed, Currency currency) {
  db::QuoteWish wish;
  wish.changes = typed.changes;
  if (typed.price_by == PriceBy::list) wish.by_list = true;
  const auto share = parse_share(
      typed.share + (typed.share.find('%') == std::string::npos ? " %" : ""), "share");
  if (typed.price_by == PriceBy::margin && share) wish.margin = *share;
  if (typed.price_by == PriceBy::markup && share) wish.markup = *share;
  if (const auto price = parse_money(typed.price, currency, "price");
      typed.price_by == PriceBy::hand && price)
    wish.price = *price;
  return wish;
}

}  // namespace

PlaceView quote_versions_view(const Sight& sight, const std::string& number,
                              const QuoteTyped& typed) {
  PlaceView view;
  view.next = back_to_quote("Versions of the quote for commission " + number,
                            "The last column but one is what stands on the desk now.", number);
  const auto commission = db::commission_named(sight.shop, number, "commission");
  if (!commission) return view;
  auto kept = db::quotes_of(sight.shop, commission->id);
  std::reverse(kept.begin(), kept.end());
  // More than four do not fit beside each other; the oldest go first.
  if (kept.size() > 4) kept.erase(kept.begin(), kept.end() - 4);
  std::vector<commission::Quote> quotes(kept.begin(), kept.end());
  std::vector<std::string> heads;
  for (const commission::Quote& quote : quotes) heads.push_back(db::version_head(quote));
  if (const auto draft = db::draft_quote(sight.shop, *commission,
                                         wish_of(typed, commission->currency), sight.now)) {
    quotes.push_back(draft->quote);
    heads.push_back("on the desk");
  }
  view.sheet.title = "Versions side by side";
  view.sheet.under = "In " + commission->currency.code() + ", as each was made.";
  if (quotes.empty()) return view;
  const auto compared = db::compared_quotes(quotes, heads);
  Section section = table_of(compared.columns, compared.rows, 2);
  section.paragraphs = compared.sentences;
  view.sheet.sections = {std::move(section)};
  return view;
}

PlaceView quote_pieces_view(const Sight& sight, const std::string& number) {
  PlaceView view;
  view.next = back_to_quote("The last pieces of the models in commission " + number,
                            "What was quoted, what came of it, and why they differ.", number);
  view.sheet.title = "Quoted and actual";
  const auto commission = db::commission_named(sight.shop, number, "commission");
  if (!commission) return view;
  std::set<std::string> seen;
  for (const auto& item : db::items_of(sight.shop, commission->id)) {
    const auto model = item.model ? db::load_model(sight.shop, *item.model) : std::nullopt;
    if (!model || item.cancelled_on || !seen.insert(model->name).second) continue;
    const auto answer = db::ask(sight.shop, 34, {{"model", model->name}, {"last", "5"}}, sight.now);
    if (!answer) continue;
    Section section = table_of(answer->columns, answer->rows, 2);
    section.title = model->name;
    section.paragraphs = answer->sentences;
    view.sheet.sections.push_back(std::move(section));
  }
  if (view.sheet.sections.empty())
    view.sheet.under = "No item of it has a model, so there is nothing to compare with.";
  return view;
}

}  // namespace tangmark::desk
