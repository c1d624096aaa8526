// SPDX-License-Identifier: MIT
#include "gui/desk/kiln_desk.h"

#include <algorithm>

#include "db/listing/blade_rows.h"
#include "db/store/firing_reasons.h"
#include "db/store/firing_report.h"
#include "db/store/kiln_fit_store.h"
#include "db/store/kiln_store.h"
#include "domain/steel/figure_text.h"
#include "gui/desk/blades_desk.h"
#include "gui/desk/kiln_board_of.h"

namespace tangmark::desk {
namespace {

std::string blade_names(const db::FiringRow& firing) {
  std::vector<std::string> names;
  for (const auto& member : firing.members) names.push_back(std::to_string(member.blade));
  return listed(names);
}

std::vector<db::FiringRow> ahead(const Sight& sight) {
  std::vector<db::FiringRow> firings = db::firing_rows(
      sight.shop, sight.now - std::chrono::hours{24}, sight.now + std::chrono::hours{24 * 28});
  std::erase_if(firings, [](const db::FiringRow& f) { return f.state == "done"; });
  return firings;
}

// Newest first: their records come out of the logger days later.
std::vector<db::FiringRow> done_lately(const Sight& sight) {
  constexpr std::chrono::hours lately{24 * 365};
  std::vector<db::FiringRow> firings =
      db::firing_rows(sight.shop, sight.now - lately, sight.now);
  std::erase_if(firings, [](const db::FiringRow& f) { return f.state != "done"; });
  std::stable_sort(firings.begin(), firings.end(), [](const auto& a, const auto& b) {
    return a.starts_at > b.starts_at;
  });
  return firings;
}

bool waits_for_kiln(const db::BladeRow& blade) {
  return !blade.scrapped && !blade.delivered && blade.next_temperature.has_value();
}

Section proposal_section(const Sight& sight, const KilnProposal& proposal) {
  Section section;
  section.proposed = true;
  section.title = proposal.title;
  section.paragraphs = proposal.sentences;
  section.table.columns = {{"Change"},           {"Kiln"},   {"Load"}, {"Out"},
                           {"At", Align::right}, {"Blades"}, {"Why"}};
  for (const ProposedFiring& change : proposal.firings) {
    const std::string what = change.dropped ? "dropped, " + std::to_string(*change.number)
                             : change.stays ? "stays, other load, " + std::to_string(*change.number)
                             : change.number ? "moved, " + std::to_string(*change.number)
                                             : "added";
    section.table.rows.push_back(
        {{what, change.firing.kiln, when(sight, change.firing.starts_at),
          when(sight, change.firing.ends_at), words(sight, change.firing.set),
          blade_names(change.firing), change.why},
         false,
         {}});
  }
  for (const Fact& figure : proposal.figures) {
    section.facts.push_back({figure.label, figure.value, "", "as proposed " + figure.note});
  }
  if (!proposal.firings.empty()) {
    section.offers = {{"Accept the change", PlaceWork{"accept plan", {}}, "", ""},
                      {"Keep it as it is", PlaceWork{"keep plan", {}}, "", ""}};
  } else {
    section.offers = {{"Good", PlaceWork{"keep plan", {}}, "", ""}};
  }
  return section;
}

// What the drift against a check thermocouple suggests, for the maker to apply or to change.
Typed correction_of(const Sight& sight, const std::string& number) {
  Typed filled{{"firing", number}};
  const auto report = db::firing_report(sight.shop, number, "firing");
  const auto by = report ? db::suggested_correction(*report) : std::nullopt;
  if (!by) return filled;
  filled["by"] = steel::rounded_text(by->kelvins(), 1) + " C";
  filled["why"] = "check thermocouple in firing " + number;
  return filled;
}

Section firing_section(const Sight& sight, const db::FiringRow& firing) {
  const std::string number = std::to_string(firing.number);
  Section section;
  section.title = "Firing " + number + ": " + caption_of(sight, firing) + " in the " + firing.kiln;
  section.facts = {
      {"Switch on", when(sight, firing.heat_from), "", ""},
      {"Load", when(sight, firing.starts_at), "", ""},
      {"Soak", to_text(firing.soak), "", ""},
      {"Out", when(sight, firing.ends_at), "", firing.locked ? "kept in place by you" : ""},
      {"Blades", blade_names(firing), "",
       firing.kind == "harden" ? "in the order of the quench" : ""}};
  section.paragraphs = db::set_aside_for_firing(sight.shop, firing.number);
  for (std::string& reason : section.paragraphs) reason = "Set aside, because " + reason;
  const bool movable = firing.state == "booked" && !firing.locked;
  if (movable) {
    section.offers = {{"15 min earlier", PlaceWork{"earlier", number}, "Shift Left", ""},
                      {"15 min later", PlaceWork{"later", number}, "Shift Right", ""},
                      {"Move to ...", OpenForm{"move_firing", {{"firing", number}}}, "", ""},
                      {"Keep it in place", DoNow{"lock_firing", {{"firing", number}}}, "L", ""},
                      {"Cancel it", OpenForm{"cancel_firing", {{"firing", number}}}, "", ""}};
  } else if (firing.locked) {
    section.offers = {{"Let it move", DoNow{"unlock_firing", {{"firing", number}}}, "L", ""}};
  }
  section.offers.push_back({"Firing sheet", ShowDocument{"firing-sheet", number}, "", ""});
  if (db::has_record(sight.shop, firing.number)) {
    section.offers.push_back({"See its record", ShowDocument{"record", number}, "", ""});
    section.offers.push_back(
        {"Set its record right", OpenForm{"correct_record", correction_of(sight, number)}, "", ""});
  }
  section.offers.push_back(
      {"Look at a record first", OpenForm{"desk.record", {{"firing", number}}}, "", ""});
  section.offers.push_back(
      {"Attach its record", OpenForm{"attach_record", {{"firing", number}}}, "", ""});
  return section;
}

// What its record shows, where there is one; the curve is a page of its own.
Section record_section(const Sight& sight, const db::FiringRow& firing) {
  Section section;
  if (!db::has_record(sight.shop, firing.number)) return section;
  const auto report = db::firing_report(sight.shop, std::to_string(firing.number), "firing");
  section.title = "As recorded";
  if (!report) {
    section.paragraphs = {report.problem().sentence};
    return section;
  }
  const TemperatureUnit unit = sight.settings.temperature_unit;
  section.paragraphs = db::report_sentences(*report, sight.zone(), unit);
  for (const std::string& head : db::report_heads()) section.table.columns.push_back({head});
  for (auto& row : db::report_rows(*report, sight.zone(), unit))
    section.table.rows.push_back({std::move(row), false, {}});
  return section;
}

// What is booked and does not fit any more, in words.
Section conflict_section(const KilnBoard& board) {
  Section section;
  std::vector<std::string> said;
  for (const BoardLane& lane : board.lanes)
    for (const BoardConflict& conflict : lane.conflicts) {
      std::string sentence =
          "Firing " + conflict.firing + ", " + lane.name + ": " + conflict.sentence;
      if (std::find(said.begin(), said.end(), sentence) == said.end())
        said.push_back(std::move(sentence));
    }
  if (said.empty()) return section;
  section.title = "Does not fit as booked";
  section.paragraphs = std::move(said);
  section.offers = {{"Plan the kilns", PlaceWork{"plan", {}}, "", ""}};
  return section;
}

// How each kiln's values are known, and where the board stands.
Section kilns_section(const Sight& sight, const KilnBoard& board) {
  Section section;
  section.title = "The kilns";
  for (const kiln::KeptKiln& k : db::all_kilns(sight.shop)) {
    if (k.out_of_use_on && *k.out_of_use_on <= sight.today()) continue;
    section.paragraphs.push_back(
        db::values_in_words(sight.shop, k, sight.settings.temperature_unit));
  }
  section.paragraphs.push_back("Shown: " + board.range + ".");
  section.offers = {{"Earlier", PlaceWork{"board earlier", {}}, "Page Up", ""},
                    {"Later", PlaceWork{"board later", {}}, "Page Down", ""},
                    {"Around now", PlaceWork{"board now", {}}, "Home", ""},
                    {"Fit a kiln to its records", OpenForm{"fit_kiln", {}}, "", ""}};
  return section;
}

NextLine next_firing_line(const Sight& sight, const db::FiringRow& firing) {
  const std::string number = std::to_string(firing.number);
  NextLine next;
  if (firing.state == "done" || firing.state == "cancelled") {
    next.sentence = "Firing " + number + " is " + firing.state;
    next.why = caption_of(sight, firing) + " in the " + firing.kiln + ", " +
               when(sight, firing.starts_at) + ".";
    next.offers = {
        {"Attach its record", OpenForm{"attach_record", {{"firing", number}}}, "Enter", ""}};
  } else if (firing.starts_at <= sight.now) {
    next.sentence = "Next: log firing " + number + ", " + caption_of(sight, firing);
    next.why =
        "With " + blade_names(firing) + ", planned until " + when(sight, firing.ends_at) + ".";
    next.offers = {{"Log it", OpenForm{"run_firing", {{"firing", number}}}, "Enter", ""}};
  } else {
    next.sentence = "Next: " + blade_names(firing) + " into the " + firing.kiln + ", " +
                    when(sight, firing.starts_at);
    next.why = caption_of(sight, firing) + ". Switch on " + when(sight, firing.heat_from) +
               "; out " + when(sight, firing.ends_at) + ".";
    next.offers = {{"Firing sheet", ShowDocument{"firing-sheet", number}, "Enter", ""}};
  }
  next.offers.push_back({"Plan the kilns", PlaceWork{"plan", {}}, "Ctrl Enter", ""});
  return next;
}

NextLine next_blade_line(const Sight& sight, const db::BladeRow& blade) {
  const std::string number = std::to_string(blade.number);
  return {"Next: " + blade.next_operation + " " + number + " at " +
              words(sight, *blade.next_temperature),
          sentence_case(standing(sight, blade)) + ". " + blade.title + ".",
          {blade.next_operation == "temper"
               ? temper_offer(sight, blade)
               : Offer{"Log " + blade.next_operation,
                       OpenForm{log_action_for(blade.next_operation), next_step_filled(blade)},
                       "Enter", ""},
           {"Plan the kilns", PlaceWork{"plan", {}}, "Ctrl Enter", ""}}};
}

NextLine next_line(const Sight& sight, const std::string& id,
                   const std::optional<db::FiringRow>& firing) {
  for (const db::BladeRow& blade : db::blades_in_shop(sight.shop))
    if (id == "blade " + std::to_string(blade.number) && waits_for_kiln(blade))
      return next_blade_line(sight, blade);
  if (firing) return next_firing_line(sight, *firing);
  if (db::kiln_rows(sight.shop).empty())
    return {"No kiln yet",
            "Give its real limits: the planner keeps to them, and a quote knows its energy.",
            {{"Add a kiln or oven", OpenForm{"add_kiln", {}}, "Enter", ""}}};
  return {"No firing is booked",
          "Planning books what waits: it keeps your hours, the kilns' limits and every wait.",
          {{"Plan the kilns", PlaceWork{"plan", {}}, "Enter", ""},
           {"Book one by hand", OpenForm{"book_firing", {}}, "Ctrl Enter", ""}}};
}

// Never on Enter alone: no one accepts a plan by accident.
void ask_about(const KilnProposal& proposal, NextLine& next) {
  if (proposal.firings.empty()) return;
  next.offers = {{"Accept the change", PlaceWork{"accept plan", {}}, "Ctrl Enter", ""},
                 {"Keep it as it is", PlaceWork{"keep plan", {}}, "Esc", ""}};
  next.sentence = proposal.title;
  next.why = proposal.sentences.empty() ? "" : proposal.sentences.front();
}

}  // namespace

PlaceList kiln_list(const Sight& sight) {
  std::vector<Row> rows;
  std::vector<db::BladeRow> blades = db::blades_in_shop(sight.shop);
  std::erase_if(blades, [](const db::BladeRow& b) { return !waits_for_kiln(b); });
  std::stable_sort(blades.begin(), blades.end(), [](const db::BladeRow& a, const db::BladeRow& b) {
    const auto rank = [](const db::BladeRow& row) {
      return !row.quenched_at ? 2 : row.tempers_since_quench > 0 ? 1 : 0;
    };
    return rank(a) < rank(b);
  });
  const auto is_hot_wait = [](const db::BladeRow& b) { return b.quenched_at.has_value(); };
  const auto add = [&](const db::BladeRow& blade) {
    const std::string number = std::to_string(blade.number);
    rows.push_back({"blade " + number, number, sentence_case(standing(sight, blade)),
                    sentence_case(blade.next_operation) + " at " +
                        words(sight, *blade.next_temperature) + ". " + blade.title,
                    blade.grade + " " + blade.buyer});
  };
  for (const db::BladeRow& blade : blades) {
    if (is_hot_wait(blade)) add(blade);
  }
  const auto add_firing = [&](const db::FiringRow& firing, const std::string& before) {
    const std::string number = std::to_string(firing.number);
    rows.push_back({number, "F" + number,
                    before + when(sight, firing.starts_at) + ", " + firing.kiln,
                    caption_of(sight, firing) + ": " + blade_names(firing), firing.kind});
  };
  for (const db::FiringRow& firing : ahead(sight)) add_firing(firing, "");
  for (const db::BladeRow& blade : blades) {
    if (!is_hot_wait(blade)) add(blade);
  }
  for (const db::FiringRow& firing : done_lately(sight)) add_firing(firing, "Done ");
  return {"Waiting, ahead and done", "Find a blade, kiln or steel", List(std::move(rows))};
}

PlaceView kiln_view(const Sight& sight, const std::string& id,
                    const std::optional<KilnProposal>& proposal, KilnMemory& memory) {
  PlaceView view;
  const auto number = number_of(id);
  const auto firing = number ? db::firing_row(sight.shop, *number) : std::nullopt;
  KilnBoard board = board_of(sight, id, proposal, memory);
  view.next = next_line(sight, id, firing);
  std::vector<Section>& sections = view.sheet.sections;
  if (proposal) {
    sections.push_back(proposal_section(sight, *proposal));
    ask_about(*proposal, view.next);
  } else {
    sections.push_back(conflict_section(board));
    if (firing) {
      sections.push_back(firing_section(sight, *firing));
      sections.push_back(record_section(sight, *firing));
    }
    Section more;
    more.offers = {{"To the bench", PlaceWork{"bench", {}}, "F9", ""},
                   {"Plan the kilns", PlaceWork{"plan", {}}, "", ""},
                   {"Book a firing by hand", OpenForm{"book_firing", {}}, "", ""}};
    sections.push_back(more);
    sections.push_back(kilns_section(sight, board));
  }
  view.picture = std::move(board);
  return view;
}

}  // namespace tangmark::desk
