// SPDX-License-Identifier: MIT
// Words about price and date: quote, promise.
#include <charconv>

#include "db/row.h"
#include "db/store/commission_store.h"
#include "db/store/delay_letter_of.h"
#include "db/store/ledger.h"
#include "db/store/named.h"
#include "db/store/promise_reader.h"
#include "db/store/quote_inputs.h"
#include "db/store/quote_store.h"
#include "db/store/settings_store.h"
#include "gui/command/json_text.h"
#include "gui/command/shop_of.h"
#include "gui/command/word_list.h"
#include "gui/desk/paper/paper.h"
#include "reports/pdf.h"

namespace tangmark::command {
namespace {

double hours(Duration span) {
  return static_cast<double>(span.count()) / 3600.0;
}

Json lines_json(const commission::Quote& quote) {
  Json lines = Json::array();
  for (const auto& line : quote.lines)
    if (line.side == commission::QuoteSide::cost)
      lines.push_back(
          {{"kind", line.kind}, {"text", line.text}, {"amount_minor", line.amount.minor()}});
  return lines;
}

Json quote_json(std::int64_t number, const commission::Quote& quote, bool stored) {
  return {{"commission", std::to_string(number)},
          {"version", quote.version},
          {"stored", stored},
          {"currency", quote.price.currency().code()},
          {"lines", lines_json(quote)},
          {"cost_minor", quote.cost.minor()},
          {"price_minor", quote.price.minor()},
          {"tax_minor", quote.tax.minor()},
          {"total_minor", quote.total.minor()},
          {"deposit_minor", quote.deposit.minor()},
          {"floor_minor", quote.floor.minor()},
          {"earned_per_hour_minor", quote.earned_per_hour.minor()},
          {"hours",
           {{"hands_on", hours(quote.hands_on)},
            {"attended", hours(quote.attended)},
            {"unattended", hours(quote.unattended)}}},
          {"price_how", quote.price_how},
          {"valid_until", to_stored(quote.valid_until)}};
}

void say_quote(std::int64_t number, const commission::Quote& quote) {
  say("Quote for commission " + std::to_string(number) + ", version " +
      std::to_string(quote.version) + ", good until " + to_text(quote.valid_until) + ".");
  for (const auto& line : quote.lines) {
    if (line.side != commission::QuoteSide::cost) continue;
    std::string text = "  " + line.text;
    text.resize(std::max<std::size_t>(text.size() + 1, 56), ' ');
    say(text + amount_text(line.amount));
  }
  say("Cost " + to_text(quote.cost) + ", price " + to_text(quote.price) + " (" + quote.price_how +
      "), total " + to_text(quote.total) + ", deposit " + to_text(quote.deposit) + ".");
  say("Earned per hour " + to_text(quote.earned_per_hour) + "; floor price " +
      to_text(quote.floor) + "; hands-on " + to_text(quote.hands_on) + ".");
}

// The newest quote on record; where none was made yet, one worked out now and not stored.
Exit quote(const Call& call) {
  return with_shop(call, [&](db::ShopFile& shop) {
    const auto commission = db::commission_named(shop, call.words[1], "commission");
    if (!commission) return refused(call, commission.problems());
    const auto kept = db::latest_quote(shop, commission->id);
    std::optional<commission::Quote> shown;
    if (kept) {
      shown = *kept;
    } else {
      auto draft = db::draft_quote(shop, *commission, {}, call.now);
      if (!draft) return refused(call, draft.problems());
      shown = draft->quote;
    }
    if (const auto path = call.option("pdf")) {
      if (!kept)
        return refused(
            call,
            {{"commission",
              "No quote of commission " + call.words[1] +
                  " is on record, so there is none to print.",
              "Make it first: tangmark do FILE make_quote commission=" + call.words[1] + "."}});
      const auto fonts = reports::FontBook::load();
      auto document = desk::quote_paper({shop, fonts, call.now}, call.words[1]);
      if (!document) return refused(call, document.problems());
      if (auto done = write_whole(*path, reports::pdf_bytes(*document, fonts)); !done)
        return refused(call, done.problems());
    }
    if (call.has("json"))
      say_json(quote_json(commission->number, *shown, kept.has_value()));
    else
      say_quote(commission->number, *shown);
    return Exit::done;
  });
}

std::string number_of(const db::ShopFile& shop, commission::CommissionId id) {
  db::Query q(shop, "SELECT number FROM commission WHERE id = ?");
  q.bind(id);
  return q.next() ? q.text("number") : std::string();
}

Exit promise(const Call& call) {
  std::uint64_t seed = 1;
  if (const auto text = call.option("seed")) {
    const auto [end, error] = std::from_chars(text->data(), text->data() + text->size(), seed);
    if (error != std::errc() || end != text->data() + text->size())
      return refused(call, {{"--seed", "\"" + *text + "\" is not a whole number.",
                             "Write a whole number from 0 on."}});
  }
  return with_shop(call, [&](db::ShopFile& shop) {
    const auto commission = db::commission_named(shop, call.words[1], "commission");
    if (!commission) return refused(call, commission.problems());
    const auto answer =
        db::answer_promise(shop, *commission, call.now, {1000, seed},
                           call.has("rush") ? db::QueuePlace::rush : db::QueuePlace::last);
    if (!answer) return refused(call, answer.problems());
    Json harmed = Json::array();
    for (const auto& harm : answer->harmed)
      harmed.push_back({{"commission", number_of(shop, harm.commission)},
                        {"before", to_stored(harm.before)},
                        {"after", to_stored(harm.after)},
                        {"breaks_promise", harm.breaks_promise}});
    if (call.has("json")) {
      say_json({{"p50", to_stored(answer->forecast.p50)},
                {"p80", to_stored(answer->forecast.p80)},
                {"p95", to_stored(answer->forecast.p95)},
                {"harmed", harmed}});
      return Exit::done;
    }
    say("Ready by " + to_text(answer->forecast.p50) + " in 50 of 100 runs, by " +
        to_text(answer->forecast.p80) + " in 80, by " + to_text(answer->forecast.p95) + " in 95.");
    for (const auto& harm : answer->harmed)
      say("Commission " + number_of(shop, harm.commission) + " moves from " +
          short_text(harm.before) + " to " + short_text(harm.after) +
          (harm.breaks_promise ? ", which breaks its promise." : "."));
    if (!answer->causes.empty())
      say("What most often makes it late: " +
          std::string(commission::sentence(answer->causes.front().cause)) + ".");
    return Exit::done;
  });
}

// The page, in the maker's words when they were edited into a file.
Outcome<Done> print_letter(const Call& call, const db::ShopFile& shop, const std::string& path) {
  std::optional<std::string> edited;
  if (const auto file = call.option("text")) {
    auto text = read_whole(*file);
    if (!text) return text.problems();
    edited = std::move(text).value();
  }
  const auto fonts = reports::FontBook::load();
  auto document = desk::delay_letter_paper({shop, fonts, call.now}, call.words[1], edited);
  if (!document) return document.problems();
  return write_whole(path, reports::pdf_bytes(*document, fonts));
}

Exit letter(const Call& call) {
  return with_shop(call, [&](db::ShopFile& shop) {
    const auto commission = db::commission_named(shop, call.words[1], "commission");
    if (!commission) return refused(call, commission.problems());
    if (const auto path = call.option("pdf")) {
      if (auto done = print_letter(call, shop, *path); !done) return refused(call, done.problems());
      say("The letter is in " + *path + ".");
      return Exit::done;
    }
    const auto drafted = db::delay_letter_of(shop, *commission, call.now);
    if (!drafted) return refused(call, drafted.problems());
    const std::string text = commission::delay_letter(*drafted);
    if (call.has("json")) {
      say_json({{"commission", commission->number},
                {"promised", to_stored(drafted->promised)},
                {"new_day", to_stored(drafted->new_day)},
                {"text", text}});
      return Exit::done;
    }
    say(text);
    tell("A draft: edit it, send it, then keep what was said with tell_delay new_day=" +
         to_stored(drafted->new_day) + " words=...");
    return Exit::done;
  });
}

Outcome<int> year_named(const std::string& text) {
  const auto number = db::number_named(text, "YEAR");
  if (!number) return number.problem();
  if (*number < 1900 || *number > 2199)
    return Problem{"YEAR", "\"" + text + "\" is no year.", "Write it as 2026."};
  return static_cast<int>(*number);
}

Exit ledger(const Call& call) {
  const auto year = year_named(call.words[1]);
  if (!year) return refused(call, year.problems());
  return with_shop(call, [&](db::ShopFile& shop) {
    const auto settings = db::load_settings(shop);
    const auto lines = db::ledger(shop, *year, settings);
    const std::string table = db::ledger_csv(lines, settings.currency);
    if (const auto path = call.option("csv")) {
      if (auto done = write_whole(*path, table); !done) return refused(call, done.problems());
      say(std::to_string(lines.size()) + " lines of " + std::to_string(*year) + " are in " + *path +
          ".");
    } else if (call.has("json")) {
      Json totals = Json::array();
      for (const auto& total : db::year_totals(lines, settings.currency))
        totals.push_back({{"what", total.what},
                          {"currency", total.amount.currency().code()},
                          {"amount_minor", total.amount.minor()}});
      say_json({{"year", *year}, {"lines", lines.size()}, {"totals", totals}});
    } else {
      say(table);
    }
    tell("Tax rates are those you entered: ask your tax office or accountant what they mean.");
    return Exit::done;
  });
}

}  // namespace

std::vector<Word> money_words() {
  const Option json{"json", "", "one JSON object on standard output"};
  return {{"quote",
           "the quote of a commission",
           "FILE COMMISSION",
           2,
           2,
           {{"pdf", "OUT", "write the page for the buyer"}, json},
           quote},
          {"promise",
           "when a commission is ready, and whom it harms",
           "FILE COMMISSION",
           2,
           2,
           {{"rush", "", "worked on before all others"}, {"seed", "K", "for chance"}, json},
           promise},
          {"letter",
           "a letter of delay, drafted for you to edit",
           "FILE COMMISSION",
           2,
           2,
           {{"pdf", "OUT", "write it as a page"},
            {"text", "FILE", "the page in these words, as you edited them"},
            json},
           letter},
          {"ledger",
           "the money of a year, for an accountant",
           "FILE YEAR",
           2,
           2,
           {{"csv", "OUT", "write every line as a table"}, json},
           ledger}};
}

}  // namespace tangmark::command
