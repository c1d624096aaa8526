// SPDX-License-Identifier: MIT
#include "db/store/promise_record.h"

#include <algorithm>
#include <cmath>

#include "db/row.h"
#include "db/store/quote_item.h"
#include "domain/costing/learning.h"
#include "domain/costing/quantile.h"

namespace tangmark::db {
namespace {

using commission::Spread;
constexpr double usual_quarter_factor = 1.25;
constexpr Duration day = std::chrono::hours(24);

// Sorts, so that the ends and the middle may be read off; never below nothing.
Spread by_record(std::vector<double> seconds, Spread guess) {
  if (seconds.size() < 3) return guess;
  for (double& one : seconds) one = std::max(0.0, one);
  const auto at = [&](double part) {
    return Duration(std::llround(costing::quantile(seconds, part)));
  };
  return Spread::between(at(0), at(0.5), at(1));
}

// Days between two columns of what is over, in seconds.
std::vector<double> spans(const ShopFile& shop, const std::string& query_text) {
  Query query(shop, query_text);
  std::vector<double> all;
  while (query.next()) all.push_back(static_cast<double>(query.integer("days")) * 86'400.0);
  return all;
}

// Logged and planned seconds of the newest finished blades.
std::vector<double> ratios_on_record(const ShopFile& shop) {
  Query query(shop, R"(
SELECT (SELECT sum(hands_on_s + attended_s) FROM log_entry AS entry
    WHERE entry.blade_id = blade.id AND operation <> 'struck out'
    AND NOT EXISTS(SELECT 1 FROM log_entry AS later WHERE later.supersedes_id = entry.id)) AS took,
  coalesce((SELECT sum(hands_on_s + attended_s) FROM model_step WHERE model_id = blade.model_id),
    (SELECT sum(hands_on_s + attended_s) FROM route_step WHERE blade_id = blade.id
     AND skipped_why IS NULL)) AS planned
FROM blade WHERE finished_at IS NOT NULL AND scrapped_at IS NULL
ORDER BY finished_at DESC, id DESC LIMIT 30)");
  std::vector<double> all;
  while (query.next()) {
    if (query.is_null("took") || query.is_null("planned") || query.integer("planned") <= 0)
      continue;
    all.push_back(static_cast<double>(query.integer("took")) /
                  static_cast<double>(query.integer("planned")));
  }
  return all;
}

}  // namespace

PaceOnRecord pace_on_record(const ShopFile& shop) {
  const auto ratios = ratios_on_record(shop);
  PaceOnRecord record{{}, ratios.size()};
  if (ratios.size() < 3) return record;
  record.pace.median = std::max(0.1, costing::estimate(1.0, ratios).figure);
  const double quarter = costing::quantile(ratios, 0.75) / costing::quantile(ratios, 0.5);
  record.pace.quarter_factor =
      1 + std::max(0.0, quarter - 1) / std::sqrt(static_cast<double>(ratios.size()));
  return record;
}

double quarter_factor_of(const ShopFile& shop, std::optional<commission::ModelId> model,
                         std::string_view operation) {
  if (!model) return usual_quarter_factor;
  const auto hours = hours_on_record(shop, *model, operation);
  if (hours.size() < 4) return usual_quarter_factor;
  const double median = costing::quantile(hours, 0.5);
  return median <= 0 ? usual_quarter_factor
                     : std::max(1.0, costing::quantile(hours, 0.75) / median);
}

Spread outside_lateness(const ShopFile& shop) {
  return by_record(spans(shop,
                         "SELECT CAST(julianday(substr(back_at, 1, 10)) - julianday(due_back) "
                         "AS INTEGER) AS days FROM outside_work "
                         "WHERE back_at IS NOT NULL AND due_back IS NOT NULL"),
                   Spread::between(Duration{}, day, 7 * day));
}

Spread outside_duration(const ShopFile& shop) {
  return by_record(spans(shop,
                         "SELECT CAST(julianday(back_at) - julianday(sent_at) AS INTEGER) "
                         "AS days FROM outside_work WHERE back_at IS NOT NULL"),
                   Spread::between(7 * day, 21 * day, 42 * day));
}

Spread hold_duration(const ShopFile& shop) {
  return by_record(spans(shop,
                         "SELECT CAST(julianday(ended_at) - julianday(since) AS INTEGER) "
                         "AS days FROM hold WHERE ended_at IS NOT NULL"),
                   Spread::between(2 * day, 7 * day, 21 * day));
}

std::optional<Duration> logged_a_week(const ShopFile& shop, Instant now) {
  Query query(shop, R"(
SELECT sum(hands_on_s + attended_s) AS seconds, min(started_at) AS first FROM log_entry AS entry
WHERE operation <> 'struck out' AND started_at >= ?1 AND started_at < ?2
  AND NOT EXISTS(SELECT 1 FROM log_entry AS later WHERE later.supersedes_id = entry.id))");
  query.bind(now - 56 * day).bind(now);
  if (!query.next() || query.is_null("seconds")) return std::nullopt;
  const auto weeks = std::clamp<std::int64_t>(
      (now - query.instant("first") + 6 * day).count() / (7 * day).count(), 1, 8);
  return Duration(query.integer("seconds") / weeks);
}

}  // namespace tangmark::db
