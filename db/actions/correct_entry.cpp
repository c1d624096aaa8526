// SPDX-License-Identifier: MIT
#include "db/actions/correct_entry.h"

#include <algorithm>
#include <functional>
#include <vector>

#include "db/store/blade_store.h"
#include "db/store/log_store.h"
#include "db/store/route_store.h"
#include "domain/blade/log_rules.h"

namespace tangmark::db {
namespace {

using namespace blade;
using Read = std::function<Problems(LogEntry&, const std::string&, const Work&)>;

struct EntryField {
  std::string_view name;
  Read read;
};

template <class Place, class T>
Problems into(Place& place, Outcome<T> value) {
  if (!value) return value.problems();
  place = std::move(value).value();
  return {};
}

EntryField text(std::string_view name, std::optional<std::string> LogEntry::*member) {
  return {name, [member](LogEntry& e, const std::string& t, const Work&) {
            e.*member = t.empty() ? std::nullopt : std::optional(t);
            return Problems{};
          }};
}

template <class Member>
EntryField temperature(std::string_view name, Member member) {
  return {name, [member](LogEntry& e, const std::string& t, const Work& w) {
            return into(e.*member, parse_temperature(t, w.settings().temperature_unit, "value"));
          }};
}

template <class Member>
EntryField duration(std::string_view name, Member member) {
  return {name, [member](LogEntry& e, const std::string& t, const Work&) {
            return into(e.*member, parse_duration(t, "value"));
          }};
}

template <class Member>
EntryField instant(std::string_view name, Member member) {
  return {name, [member](LogEntry& e, const std::string& t, const Work& w) {
            return into(e.*member, parse_instant(t, w.settings().zone, w.now(), "value"));
          }};
}

template <class Member>
EntryField length(std::string_view name, Member member) {
  return {name, [member](LogEntry& e, const std::string& t, const Work& w) {
            return into(e.*member, parse_length(t, w.settings().length_unit, "value"));
          }};
}

template <class Member>
EntryField mass(std::string_view name, Member member) {
  return {name, [member](LogEntry& e, const std::string& t, const Work& w) {
            return into(e.*member, parse_mass(t, w.settings().mass_unit, "value"));
          }};
}

template <class Member>
EntryField yes_no(std::string_view name, Member member) {
  return {name, [member](LogEntry& e, const std::string& t, const Work&) -> Problems {
            if (t != "yes" && t != "no")
              return {{"value", "\"" + t + "\" is neither yes nor no.", "Write yes or no."}};
            e.*member = t == "yes";
            return {};
          }};
}

const std::vector<EntryField>& entry_fields() {
  static const std::vector<EntryField> fields{
      instant("started", &LogEntry::started_at),
      instant("ended", &LogEntry::ended_at),
      instant("time_in", &LogEntry::time_in),
      instant("time_out", &LogEntry::time_out),
      duration("hands_on", &LogEntry::hands_on),
      duration("attended", &LogEntry::attended),
      duration("hold", &LogEntry::hold),
      temperature("set", &LogEntry::set),
      temperature("read", &LogEntry::read),
      temperature("bath_temperature", &LogEntry::bath_temperature),
      text("medium", &LogEntry::medium),
      text("cooling", &LogEntry::cooling),
      text("protection", &LogEntry::protection),
      yes_no("clay", &LogEntry::clay),
      yes_no("edge_only", &LogEntry::edge_only),
      yes_no("cooled_to_room", &LogEntry::cooled_to_room),
      length("warp", &LogEntry::warp),
      length("edge", &LogEntry::edge),
      text("grit", &LogEntry::grit),
      {"belts", [](LogEntry& e, const std::string& t,
                   const Work&) { return into(e.belts, parse_quantity(t, "value")); }},
      text("etchant", &LogEntry::etchant),
      {"strength", [](LogEntry& e, const std::string& t,
                      const Work&) { return into(e.strength, parse_share(t, "value")); }},
      yes_no("resist", &LogEntry::resist),
      {"purpose", [](LogEntry& e, const std::string& t,
                     const Work&) { return into(e.etch_for, of_word<EtchFor>(t, "value")); }},
      {"contrast",
       [](LogEntry& e, const std::string& t, const Work&) -> Problems {
         if (t.size() != 1 || t[0] < '0' || t[0] > '5')
           return {
               {"value", "A contrast is a whole number from 0 to 5.", "Write, for example, 4."}};
         e.contrast = t[0] - '0';
         return {};
       }},
      mass("mass_in", &LogEntry::mass_in),
      mass("mass_out", &LogEntry::mass_out),
      mass("gas", &LogEntry::gas),
      text("who", &LogEntry::who),
      text("result", &LogEntry::result),
      text("note", &LogEntry::note),
  };
  return fields;
}

// The step was ticked by this entry alone, or by another that still counts.
void open_its_step(Work& work, const KeptLogEntry& entry) {
  if (!entry.step) return;
  const auto log = log_of(work.shop(), entry.blade);
  const bool ticked = std::any_of(log.begin(), log.end(),
                                  [&](const KeptLogEntry& e) { return e.step == entry.step; });
  if (!ticked) store_step_done(work.shop(), *entry.step, std::nullopt);
}

Outcome<LogEntryId> strike_out(Work& work, const KeptLogEntry& entry, const std::string& reason) {
  LogEntry struck{.blade = entry.blade};
  struck.operation = "struck out";
  struck.started_at = entry.started_at;
  struck.entered_at = work.now();
  struck.how_timed = entry.how_timed;
  struck.supersedes = entry.id;
  struck.why = reason;
  const LogEntryId id = insert_log_entry(work.shop(), struck);
  open_its_step(work, entry);
  return id;
}

Problems problems_of(Work& work, const KeptLogEntry& old, const LogEntry& entry) {
  const auto blade = load_blade(work.shop(), entry.blade);
  auto log = log_of(work.shop(), entry.blade);
  std::erase_if(log, [&](const KeptLogEntry& e) { return e.id == old.id; });
  Catches caught = times_out_of_order(entry);
  for (Caught& one : out_of_order_with_log(entry, log, blade->started_at, work.settings().zone))
    caught.push_back(std::move(one));
  if (auto too_long = span_too_long(entry, work.settings().timer_limit))
    caught.push_back(std::move(*too_long));
  if (work.passes(caught)) return {};
  return work.problems();
}

}  // namespace

Outcome<LogEntryId> correct_log_entry(Work& work, const KeptLogEntry& old, std::string_view field,
                                      const std::string& value, const std::string& reason) {
  if (field == "all") return strike_out(work, old, reason);
  const auto& fields = entry_fields();
  const auto known = std::find_if(fields.begin(), fields.end(),
                                  [&](const EntryField& f) { return f.name == field; });
  if (known == fields.end())
    return Problem{
        "field", "\"" + std::string(field) + "\" is no field of a log entry that can be corrected.",
        "Use one of: " + correctable_entry_fields() + "; or all, to strike the entry out."};
  LogEntry entry = old;
  if (Problems problems = known->read(entry, value, work); !problems.empty()) return problems;
  entry.supersedes = old.id;
  entry.why = reason;
  entry.entered_at = work.now();
  if (Problems problems = problems_of(work, old, entry); !problems.empty()) return problems;
  return insert_log_entry(work.shop(), entry);
}

std::string correctable_entry_fields() {
  std::string text;
  for (const EntryField& field : entry_fields())
    text += (text.empty() ? "" : ", ") + std::string(field.name);
  return text;
}

}  // namespace tangmark::db
