// SPDX-License-Identifier: MIT
#include "domain/measure/when.h"

#include <cassert>
#include <stdexcept>

#include "domain/measure/figure.h"

namespace tangmark {
namespace {

date::local_seconds local_of(CalendarDate day, std::chrono::seconds since_midnight) {
  assert(day.ok() && "a calendar date is a day that its month has");
  return date::local_days{day} + since_midnight;
}

}  // namespace

Outcome<Zone> Zone::of(std::string_view name, std::string_view field) {
  try {
    return Zone(date::locate_zone(std::string(figures::trimmed(name))));
  } catch (const std::runtime_error&) {  // how the tz library says that there is no such zone
    return Problem{std::string(field), figures::quoted(name) + " is not a time zone.",
                   "Write an IANA zone such as Europe/Berlin or America/New_York."};
  }
}

Zone::Zone() : zone_(date::locate_zone("Etc/UTC")) {}

std::string Zone::name() const {
  return zone_->name();
}

CalendarDate Zone::date_of(Instant at) const {
  return CalendarDate{date::floor<date::days>(zone_->to_local(at))};
}

std::chrono::minutes Zone::clock_of(Instant at) const {
  const auto local = zone_->to_local(at);
  return date::floor<std::chrono::minutes>(local - date::floor<date::days>(local));
}

date::weekday Zone::weekday_of(Instant at) const {
  return date::weekday{date::floor<date::days>(zone_->to_local(at))};
}

Instant Zone::at(CalendarDate day, std::chrono::seconds since_midnight) const {
  const auto local = local_of(day, since_midnight);
  const date::local_info info = zone_->get_info(local);
  if (info.result == date::local_info::nonexistent) return info.first.end;
  return Instant{local.time_since_epoch() - info.first.offset};
}

bool Zone::happens_twice(CalendarDate day, std::chrono::seconds since_midnight) const {
  return zone_->get_info(local_of(day, since_midnight)).result == date::local_info::ambiguous;
}

}  // namespace tangmark
