// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include "db/store/quote_inputs.h"
#include "domain/measure/outcome.h"
#include "gui/desk/place_view.h"
#include "gui/desk/sight.h"

namespace tangmark::desk {

/// The quote desk of one commission: its cost lines, the price and all that follows from it, and the
/// promise date when its odds have been counted. A commission that cannot be quoted says why.
PlaceView quote_view(const Sight& sight, const std::string& commission, const std::optional<PromiseView>& promise);
/// What the quote of a commission is made from: read once, and kept while prices are typed.
Outcome<db::QuoteInputs> read_quote_inputs(const Sight& sight, const std::string& commission);
/// What a typed price would mean, worked out from those. Refuses what is no price.
Outcome<PriceAnswer> answer_price(const Sight& sight, const db::QuoteInputs& inputs,
                                  const std::string& typed);
/// Counts how often each day is met, by runs over the queue. A shop that cannot forecast says why.
PromiseView promise_of(const Sight& sight, const std::string& commission);

}  // namespace tangmark::desk
