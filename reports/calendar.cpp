// SPDX-License-Identifier: MIT
#include "reports/calendar.h"

#include <set>

#include "domain/measure/utf8.h"

namespace tangmark::reports {

namespace {

constexpr std::size_t octets_in_line = 75;

// One content line, folded: RFC 5545 3.1. A fold never cuts a character, as some readers join late.
void put_line(std::string& out, const std::string& line) {
  std::size_t room = octets_in_line;
  std::string_view rest = line;
  while (!rest.empty()) {
    std::string_view after = rest;
    take_code_point(after);
    const std::size_t octets = rest.size() - after.size();
    if (octets > room) {
      out += "\r\n ";
      room = octets_in_line - 1;
    }
    out += rest.substr(0, octets);
    room -= octets;
    rest = after;
  }
  out += "\r\n";
}

// TEXT: RFC 5545 3.3.11. Control characters have no place in it and are left out.
std::string escaped(std::string_view text) {
  std::string out;
  for (const char c : text) {
    if (c == '\\' || c == ';' || c == ',') {
      out += '\\';
      out += c;
    } else if (c == '\n') {
      out += "\\n";
    } else if (static_cast<unsigned char>(c) >= 0x20 && c != 0x7F) {
      out += c;
    }
  }
  return out;
}

// "20261124T110000Z" and "20261124".
std::string compact(const std::string& stored) {
  std::string out;
  for (const char c : stored) {
    if (c != '-' && c != ':') out += c;
  }
  return out;
}

Problem refused(std::string field, std::string sentence, std::string remedy) {
  return {std::move(field), std::move(sentence), std::move(remedy)};
}

void check(const CalendarEvent& event, std::set<std::string>& seen, Problems& problems) {
  if (event.uid.empty()) {
    problems.push_back(refused("uid", "An entry of the calendar has no name of its own.",
                               "Give each entry a uid that stays the same."));
  } else if (!seen.insert(event.uid).second) {
    problems.push_back(refused("uid",
                               "Two entries of the calendar are both named " + event.uid + ".",
                               "Give each entry its own uid."));
  }
  if (event.end && *event.end < event.start) {
    problems.push_back(refused("end", "“" + event.summary + "” ends before it starts.",
                               "Correct its start or its end."));
  }
  for (const std::string* text :
       {&event.uid, &event.summary, &event.description, &event.location}) {
    if (!is_valid_utf8(*text)) {
      problems.push_back(refused("text", "A text of the calendar is not UTF-8.", "Type it again."));
    }
  }
}

void put_times(std::string& out, const CalendarEvent& event) {
  if (event.all_day) {
    const date::sys_days next = date::sys_days(*event.all_day) + date::days(1);
    put_line(out, "DTSTART;VALUE=DATE:" + compact(to_stored(*event.all_day)));
    put_line(out, "DTEND;VALUE=DATE:" + compact(to_stored(CalendarDate(next))));
    return;
  }
  put_line(out, "DTSTART:" + compact(to_stored(event.start)));
  if (event.end) put_line(out, "DTEND:" + compact(to_stored(*event.end)));
}

void put_alarm(std::string& out, const CalendarEvent& event) {
  if (!event.remind_before) return;
  put_line(out, "BEGIN:VALARM");
  put_line(out, "ACTION:DISPLAY");
  put_line(out, "DESCRIPTION:" + escaped(event.summary));
  put_line(out, "TRIGGER:-PT" + std::to_string(event.remind_before->count() / 60) + "M");
  put_line(out, "END:VALARM");
}

void put_event(std::string& out, const CalendarEvent& event, Instant stamp) {
  put_line(out, "BEGIN:VEVENT");
  put_line(out, "UID:" + escaped(event.uid));
  put_line(out, "DTSTAMP:" + compact(to_stored(stamp)));
  put_times(out, event);
  put_line(out, "SEQUENCE:" + std::to_string(event.sequence));
  put_line(out, "SUMMARY:" + escaped(event.summary));
  if (!event.description.empty()) put_line(out, "DESCRIPTION:" + escaped(event.description));
  if (!event.location.empty()) put_line(out, "LOCATION:" + escaped(event.location));
  put_alarm(out, event);
  put_line(out, "END:VEVENT");
}

}  // namespace

Outcome<std::string> calendar_text(const std::vector<CalendarEvent>& events, Instant stamp,
                                   std::string_view calendar_name) {
  Problems problems;
  std::set<std::string> seen;
  for (const CalendarEvent& event : events) check(event, seen, problems);
  if (!problems.empty()) return problems;
  std::string out;
  put_line(out, "BEGIN:VCALENDAR");
  put_line(out, "VERSION:2.0");
  put_line(out, "PRODID:-//Tangmark//Tangmark//EN");
  put_line(out, "CALSCALE:GREGORIAN");
  put_line(out, "X-WR-CALNAME:" + escaped(calendar_name));
  for (const CalendarEvent& event : events) put_event(out, event, stamp);
  put_line(out, "END:VCALENDAR");
  return out;
}

}  // namespace tangmark::reports
