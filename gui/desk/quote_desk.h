// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include "db/store/quote_inputs.h"
#include "domain/measure/outcome.h"
#include "gui/desk/place_view.h"
#include "gui/desk/sight.h"

namespace tangmark::desk {

/// The quote desk of one commission: its cost lines, the price and all that follows from it, and
/// the promise date when its odds have been counted. `typed` is what the maker changed so far;
/// none, and the desk begins with the changes of the last version. A commission that cannot be
/// quoted says why.
PlaceView quote_view(const Sight& sight, const std::string& commission,
                     const std::optional<QuoteTyped>& typed,
                     const std::optional<PromiseView>& promise);

/// What the quote of a commission is made from: read once, and kept while figures are typed.
Outcome<db::QuoteInputs> read_quote_inputs(const Sight& sight, const std::string& commission);

/// What the figures typed would mean, worked out from those. Refuses what cannot be read, naming
/// the line or "price".
Outcome<QuoteLive> answer_quote(const Sight& sight, const db::QuoteInputs& inputs,
                                const QuoteTyped& typed);

/// The fields of make_quote that keep what was typed as a version.
Typed make_quote_fields(const std::string& commission, const QuoteTyped& typed);

/// The versions side by side, with what stands on the desk as the last; and the last pieces of the
/// models on it: quoted, actual, why they differ.
PlaceView quote_versions_view(const Sight& sight, const std::string& commission,
                              const QuoteTyped& typed);
PlaceView quote_pieces_view(const Sight& sight, const std::string& commission);

/// Counts how often each day is met, by runs over the queue. A shop that cannot forecast says why.
PromiseView promise_of(const Sight& sight, const std::string& commission);

}  // namespace tangmark::desk
