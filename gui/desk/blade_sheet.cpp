// SPDX-License-Identifier: MIT
#include "gui/desk/blade_sheet.h"

#include <algorithm>
#include <utility>

#include "db/store/blade_store.h"
#include "db/store/hardness_record.h"
#include "db/store/step_advice_reader.h"
#include "domain/steel/figure_text.h"
#include "gui/desk/blades_desk.h"
#include "gui/desk/timer_offers.h"
#include "gui/desk/grade_sheet.h"
#include "gui/desk/further_work.h"

namespace tangmark::desk {
namespace {

// What the desk says about the next heats of the route, with what is safe to do in them.
Section route_advice(const Sight& sight, std::int64_t number) {
  const auto blade = db::find_blade(sight.shop, number);
  if (!blade || !blade->in_work()) return {};
  const db::BladeOnRecord record = db::load_record(sight.shop, *blade);
  std::vector<steel::Advice> all;
  for (const auto& step : record.route) {
    if (!step.open() || !step.temperature) continue;
    for (steel::Advice& one :
         db::advice_on(sight.shop, record, step, sight.settings.temperature_unit)) {
      const bool said = std::any_of(all.begin(), all.end(), [&](const auto& other) {
        return other.sentence == one.sentence;
      });
      if (!said) all.push_back(std::move(one));
    }
  }
  return advice_section("On the heats ahead", all);
}

Section now_section(const Sight& sight, const db::BladeRow& blade) {
  const std::string number = std::to_string(blade.number);
  Section section;
  section.facts.push_back({"Now", sentence_case(standing(sight, blade)), "", ""});
  section.facts.push_back(
      {"Steel", blade.grade.empty() ? "not identified" : blade.grade, "", blade.construction});
  section.facts.push_back({"Blade length", words(sight, blade.length), "", ""});
  if (blade.commission) {
    section.facts.push_back({"Commission", std::to_string(*blade.commission), "",
                             blade.buyer.empty() ? "" : "for " + blade.buyer});
  } else {
    section.facts.push_back({"Commission", "none", "", "a stock knife"});
  }
  if (blade.due) {
    section.facts.push_back({"Due", day(sight, *blade.due), "", days_away(sight, *blade.due)});
  }
  if (blade.scrapped || blade.delivered) return section;
  const Typed filled{{"blade", number}};
  section.offers = {
      {"Log a finding", OpenForm{"log_finding", filled}, "", ""},
      {"Log a hardness reading", OpenForm{"log_hardness", filled}, "", ""},
      {"Attach a photo", OpenForm{"attach_photo", filled}, "", ""},
      {"Start a trial with it", OpenForm{"start_trial", {{"blades", number}}}, "", ""},
      {"Traveller", ShowDocument{"traveller", number}, "", ""},
      {"Scrap it", OpenForm{"scrap_blade", filled}, "", ""}};
  if (blade.commission) {
    section.offers.insert(
        section.offers.begin(),
        {"To its commission", GoTo{Place::commissions, std::to_string(*blade.commission)}, "", ""});
  }
  return section;
}

std::string how(const db::LogRow& entry) {
  if (entry.recorded) return "as recorded";
  if (entry.set && entry.read) return "set and read";
  if (entry.set) return "as set, not recorded";
  return entry.how_timed == "live" ? "" : entry.how_timed;
}

std::string temperature_of(const Sight& sight, const db::LogRow& entry) {
  if (entry.read) return words(sight, *entry.read);
  if (entry.set) return words(sight, *entry.set);
  return {};
}

Section log_section(const Sight& sight, const std::vector<db::LogRow>& log) {
  Section section;
  section.title = "Bench log";
  section.table.columns = {{"When"},
                           {"Step"},
                           {"Temperature", Align::right},
                           {"Held", Align::right},
                           {"Into"},
                           {"How known"},
                           {"What was seen"}};
  for (const db::LogRow& entry : log) {
    TableRow row;
    std::string into = entry.medium;
    if (entry.bath_at) into += " " + words(sight, *entry.bath_at);
    std::string seen = entry.result;
    if (!entry.note.empty()) seen += (seen.empty() ? "" : ". ") + entry.note;
    row.cells = {when(sight, entry.started_at),
                 sentence_case(entry.operation),
                 temperature_of(sight, entry),
                 entry.hold ? to_text(*entry.hold) : "",
                 into,
                 how(entry),
                 seen};
    row.offers = {
        {"Correct",
         OpenForm{"correct", {{"subject", "log_entry"}, {"id", std::to_string(entry.id)}}}, "",
         ""}};
    section.table.rows.push_back(std::move(row));
  }
  return section;
}

std::string decision_words(const db::FindingRow& finding) {
  if (finding.decision != "open") return finding.decision;
  return finding.waits ? "not decided" : "came out so";
}

Section findings_section(const Sight& sight, const std::vector<db::FindingRow>& findings) {
  Section section;
  section.title = "Found";
  section.table.columns = {{"When"}, {"What"}, {"Where"}, {"Decision"}};
  for (const db::FindingRow& finding : findings) {
    TableRow row;
    row.cells = {when(sight, finding.at), sentence_case(finding.kind) + ": " + finding.words,
                 finding.place, decision_words(finding)};
    row.strong = finding.waits;
    if (finding.waits) {
      row.offers = {{"Settle",
                     OpenForm{"settle_finding", {{"finding", std::to_string(finding.number)}}}, "",
                     ""}};
    }
    section.table.rows.push_back(std::move(row));
  }
  return section;
}

Section hardness_section(const Sight& sight, const std::vector<db::HardnessRow>& readings) {
  Section section;
  section.title = "Hardness read";
  section.table.columns = {{"When"}, {"Where"}, {"Reading", Align::right}, {"Scale"}, {"Remark"}};
  for (const db::HardnessRow& reading : readings) {
    std::string remark = reading.on_coupon ? "on a coupon" : "";
    if (!reading.void_why.empty()) remark = "void: " + reading.void_why;
    section.table.rows.push_back(
        {{when(sight, reading.at), reading.place,
          std::to_string(reading.tenths / 10) + "." + std::to_string(reading.tenths % 10),
          reading.scale, remark},
         false,
         {}});
  }
  return section;
}

// What a published table lets one expect after its tempers, beside what was read.
Section expected_section(const Sight& sight, std::int64_t number) {
  Section section;
  const auto blade = db::find_blade(sight.shop, number);
  const auto record = blade ? std::optional(db::load_record(sight.shop, *blade)) : std::nullopt;
  if (!record || record->state.tempers_done == 0) return section;
  const db::HardnessRecord hardness = db::hardness_record_of(sight.shop, *record);
  section.title = "Hardness expected";
  if (!hardness.expected) {
    section.paragraphs = {"No hardness is foretold. " + hardness.why_not};
    return section;
  }
  std::string sources;
  for (const std::string& source : hardness.expected->sources)
    sources += (sources.empty() ? "" : "; ") + source;
  section.facts = {{"By estimate",
                    steel::rounded_text(hardness.expected->low.points, 0) + " to " +
                        steel::rounded_text(hardness.expected->high.points, 0),
                    "HRC", hardness.expected->band}};
  if (hardness.measured_hrc)
    section.facts.push_back({"Measured", steel::rounded_text(*hardness.measured_hrc, 1), "HRC",
                             "mean after the last heat"});
  section.paragraphs = {"Source: " + sources + "."};
  for (const db::KilnBias& bias : db::biases_of(db::hardness_records(sight.shop, hardness.grade)))
    section.paragraphs.push_back(db::bias_sentence(bias));
  return section;
}

Section photos_section(const Sight& sight, std::int64_t blade) {
  Section section;
  section.title = "Photos";
  section.table.columns = {{"When"}, {"Shows"}};
  for (const db::PhotoRow& photo : db::photo_rows(sight.shop, blade)) {
    section.table.rows.push_back(
        {{when(sight, photo.taken_at.value_or(photo.added_at)),
          photo.caption.empty() ? photo.name : photo.caption},
         false,
         {{"See", ShowDocument{"photo", std::to_string(photo.id)}, "", ""}}});
  }
  return section;
}

Section route_section(const Sight& sight, std::int64_t blade) {
  Section section;
  section.title = "Still ahead";
  section.table.columns = {{"Step"},
                           {"Temperature", Align::right},
                           {"Hands-on h", Align::right},
                           {"Wait h", Align::right},
                           {"When"}};
  for (const db::StepRow& step : db::step_rows(sight.shop, blade)) {
    if (step.done || !step.skipped_why.empty()) continue;
    std::string booked;
    if (step.booked_for) booked = when(sight, *step.booked_for) + ", " + step.booked_kiln;
    section.table.rows.push_back(
        {{sentence_case(step.operation), step.temperature ? words(sight, *step.temperature) : "",
          hours_text(step.hands_on), hours_text(step.attended + step.unattended), booked},
         false,
         {{"Leave out",
           OpenForm{"skip_step",
                    {{"blade", std::to_string(blade)}, {"step", std::to_string(step.position)}}},
           "", ""}}});
  }
  return section;
}

LifeEvent event_of(const Sight& sight, const db::LogRow& entry) {
  LifeEvent event;
  event.title = sentence_case(entry.operation);
  event.when = when(sight, entry.started_at);
  event.note = temperature_of(sight, entry);
  if (!entry.medium.empty()) event.note += (event.note.empty() ? "" : ", ") + entry.medium;
  if (event.note.empty()) event.note = entry.result;
  if (entry.read) {
    event.celsius = entry.read->in_celsius();
  } else if (entry.set) {
    event.celsius = entry.set->in_celsius();
  }
  event.done = true;
  return event;
}

}  // namespace

Sheet blade_sheet(const Sight& sight, const db::BladeRow& blade) {
  Sheet sheet;
  sheet.title = "Blade " + std::to_string(blade.number);
  sheet.under = blade.title;
  sheet.sections = {now_section(sight, blade),
                    timer_section(sight, blade),
                    findings_section(sight, db::finding_rows(sight.shop, blade.number)),
                    log_section(sight, db::log_rows(sight.shop, blade.number)),
                    hardness_section(sight, db::hardness_rows(sight.shop, blade.number)),
                    expected_section(sight, blade.number),
                    photos_section(sight, blade.number),
                    route_advice(sight, blade.number),
                    route_section(sight, blade.number),
                    further_at_blade(blade)};
  return sheet;
}

LifeLine life_of(const Sight& sight, const db::BladeRow& blade) {
  std::vector<std::pair<Instant, LifeEvent>> past;
  for (const db::LogRow& entry : db::log_rows(sight.shop, blade.number)) {
    past.emplace_back(entry.started_at, event_of(sight, entry));
  }
  for (const db::FindingRow& finding : db::finding_rows(sight.shop, blade.number)) {
    past.emplace_back(finding.at, LifeEvent{sentence_case(finding.kind),
                                            when(sight, finding.at),
                                            decision_words(finding),
                                            {},
                                            true,
                                            true});
  }
  std::stable_sort(past.begin(), past.end(),
                   [](const auto& a, const auto& b) { return a.first < b.first; });
  LifeLine life;
  for (auto& [at, event] : past) life.events.push_back(std::move(event));
  for (const db::StepRow& step : db::step_rows(sight.shop, blade.number)) {
    if (step.done || !step.skipped_why.empty()) continue;
    LifeEvent event;
    event.title = sentence_case(step.operation);
    event.when = step.booked_for ? when(sight, *step.booked_for) : "planned";
    if (step.temperature) {
      event.note = words(sight, *step.temperature);
      event.celsius = step.temperature->in_celsius();
    } else {
      event.note = "about " + to_text(step.hands_on);
    }
    life.events.push_back(std::move(event));
  }
  return life;
}

Typed open_finding_filled(const Sight& sight, std::int64_t blade_number) {
  for (const db::FindingRow& finding : db::finding_rows(sight.shop, blade_number)) {
    if (finding.waits) return {{"finding", std::to_string(finding.number)}};
  }
  return {};
}

}  // namespace tangmark::desk
