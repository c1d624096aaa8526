// SPDX-License-Identifier: MIT
// Words that print: cards, sheets, lists, labels, the calendar.
#include "db/store/settings_store.h"
#include "gui/command/json_text.h"
#include "gui/command/shop_of.h"
#include "gui/command/word_list.h"
#include "gui/desk/paper/paper.h"
#include "reports/pdf.h"

namespace tangmark::command {
namespace {

using MakePaper = std::function<Outcome<reports::Document>(const desk::Press&)>;

Exit print(const Call& call, const MakePaper& make) {
  const auto path = call.option("pdf");
  if (!path) {
    tell("This word needs --pdf OUT.");
    return Exit::usage;
  }
  return with_shop(call, [&](db::ShopFile& shop) {
    const auto fonts = reports::FontBook::load();
    auto document = make({shop, fonts, call.now});
    if (!document) return refused(call, document.problems());
    if (auto done = write_whole(*path, reports::pdf_bytes(*document, fonts)); !done)
      return refused(call, done.problems());
    say("Printed to " + *path + ".");
    return Exit::done;
  });
}

Exit traveller(const Call& call) {
  return print(
      call, [&](const desk::Press& press) { return desk::traveller_paper(press, call.words[1]); });
}

Exit firing_sheet(const Call& call) {
  return print(call, [&](const desk::Press& press) {
    return desk::firing_sheet_paper(press, call.words[1]);
  });
}

Exit day_list(const Call& call) {
  return print(call, [&](const desk::Press& press) -> Outcome<reports::Document> {
    const auto day = parse_date(call.words[1], "DATE");
    if (!day) return day.problems();
    return desk::day_list_paper(press, *day);
  });
}

Exit labels(const Call& call) {
  return print(call, [&](const desk::Press& press) {
    return desk::label_paper(press, call.words[1], {call.words.begin() + 2, call.words.end()});
  });
}

Exit numbered(const Call& call,
              Outcome<reports::Document> (*make)(const desk::Press&, std::string_view)) {
  return print(call, [&](const desk::Press& press) { return make(press, call.words[1]); });
}

Exit calendar(const Call& call) {
  const auto path = call.option("ics");
  if (!path) {
    tell("tangmark calendar needs --ics OUT.");
    return Exit::usage;
  }
  return with_shop(call, [&](db::ShopFile& shop) {
    const auto fonts = reports::FontBook::load();
    auto text = desk::calendar_file({shop, fonts, call.now});
    if (!text) return refused(call, text.problems());
    if (auto done = write_whole(*path, *text); !done) return refused(call, done.problems());
    say("Written to " + *path + ".");
    return Exit::done;
  });
}

}  // namespace

std::vector<Word> paper_words() {
  const Option pdf{"pdf", "OUT", "write the pages"};
  return {
      {"invoice",
       "the balance invoice of a commission",
       "FILE COMMISSION",
       2,
       2,
       {pdf},
       [](const Call& call) { return numbered(call, desk::invoice_paper); }},
      {"receipt",
       "the receipt of its deposit",
       "FILE COMMISSION",
       2,
       2,
       {pdf},
       [](const Call& call) { return numbered(call, desk::receipt_paper); }},
      {"traveller", "the card that goes with a blade", "FILE BLADE", 2, 2, {pdf}, traveller},
      {"firing-sheet", "the sheet by the kiln", "FILE FIRING", 2, 2, {pdf}, firing_sheet},
      {"record-sheet",
       "the records of a firing, their curves and what they show",
       "FILE FIRING",
       2,
       2,
       {pdf},
       [](const Call& call) { return numbered(call, desk::record_paper); }},
      {"trial-sheet",
       "a trial, plotted, and what it shows",
       "FILE TRIAL",
       2,
       2,
       {pdf},
       [](const Call& call) { return numbered(call, desk::trial_paper); }},
      {"day-list", "what needs hands on a day", "FILE DATE", 2, 2, {pdf}, day_list},
      {"labels",
       "labels of lots, pieces or blades",
       "FILE lots|pieces|blades [NUMBER...]",
       2,
       -1,
       {pdf},
       labels},
      {"calendar",
       "firings and promises as a calendar file",
       "FILE",
       1,
       1,
       {{"ics", "OUT", "write the calendar"}},
       calendar},
  };
}

}  // namespace tangmark::command
