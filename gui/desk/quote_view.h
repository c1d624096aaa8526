// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "domain/costing/line_change.h"
#include "gui/desk/offer.h"

namespace tangmark::desk {

/// The figures of a row that the maker may change in place.
enum class QuoteCell { how_much, each, amount };

/// One printed row of the cost build-up. A head row carries the sum of its group.
struct QuoteRow {
  std::string text;
  std::string how_much;
  std::string unit;
  std::string each;
  std::string amount;
  bool head = false;
  bool total = false;
  std::string name = {};               ///< what a change of its quantity or amount names
  std::string each_name = {};          ///< the same for the price of one: "Hourly rate"
  std::vector<QuoteCell> cells = {};   ///< that may be changed; none for sums
  bool by_hand = false;                ///< differs from what the models say

  bool may_change(QuoteCell cell) const;
  const std::string& figure(QuoteCell cell) const;
};

/// How the price comes about.
enum class PriceBy { hand, list, margin, markup };

/// All that the maker has typed on the quote desk.
struct QuoteTyped {
  PriceBy price_by = PriceBy::hand;
  std::string price;                           ///< with PriceBy::hand
  std::string share;                           ///< with margin or mark-up
  std::vector<costing::LineChange> changes;    ///< of the lines, in the order they were made
  friend bool operator==(const QuoteTyped&, const QuoteTyped&) = default;
};

/// What is typed once a figure of a row is set to something; nothing puts the row back to what the
/// models say.
QuoteTyped with_figure(QuoteTyped typed, const QuoteRow& row, QuoteCell cell,
                       const std::string& figure);

/// One part of the stacked bar, from the bottom up.
struct PricePart {
  std::string name;
  std::string amount;
  double size = 0;       ///< in units of the currency, for drawing only
  bool margin = false;   ///< drawn open, above the line of the floor price
};

/// One of the lines that move the price most; with a price that stands, the floor under it.
struct Mover {
  std::string name;
  std::string range;      ///< "4.5 to 9.0 h"
  std::string low_text, high_text;
  double low = 0, high = 0;  ///< change of the floor price, for drawing only
};

/// The live answer to a price: all of it recomputed while typing.
struct PriceAnswer {
  std::string margin, margin_share;
  std::string earned_per_hour, aim_per_hour;
  std::string floor;
  std::string deposit, deposit_note;
  std::string tax, total;
  std::string share;             ///< margin or mark-up, as it comes about by the price
  std::string sentence;          ///< "Above the floor by 282.14."
  std::vector<PricePart> parts;
};

/// A day and how many of 100 runs were ready by it.
struct OddsPoint {
  double days = 0;     ///< from the first day drawn
  double share = 0;    ///< 0 to 1
};
struct OddsMark {
  double days = 0;
  double share = 0;
  std::string day;     ///< "12 Feb"
  std::string odds;    ///< "8 in 10"
  bool offered = false;
};
struct PromiseView {
  std::string day;         ///< "Fri 12 Feb 2027"
  std::string sentence;    ///< "Ready in time: 8 times in 10."
  std::string from;        ///< "From your log of 23 knives ..."
  std::vector<OddsPoint> curve;
  std::vector<OddsMark> marks;
  std::vector<std::string> notes;  ///< what most often makes it late; who is moved by it
};

/// Everything on the desk that follows what is typed.
struct QuoteLive {
  std::vector<QuoteRow> rows;
  std::string price;  ///< what the buyer is told
  PriceAnswer answer;
  std::vector<Mover> movers;
};

/// The quote of one item of a commission: what it costs, what it may ask, when it may be ready.
struct QuoteView {
  std::string commission;    ///< id
  std::string item;          ///< id
  std::string currency;
  QuoteTyped typed;
  QuoteLive live;
  std::string list_words;    ///< how the list price comes about; empty when there is none
  std::vector<std::string> notes;  ///< what was assumed, and which figures come from own pieces
  PromiseView promise;
  bool promise_ready = false;
  std::vector<Offer> offers;  ///< compare versions, look at the last pieces, add a line ...
};

std::string in_words(const QuoteView& view);

}  // namespace tangmark::desk
