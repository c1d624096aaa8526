// SPDX-License-Identifier: MIT
#include "db/store/route_store.h"

#include "db/row.h"

namespace tangmark::db {
namespace {

using namespace blade;

KeptRouteStep step_from(const Query& row) {
  RouteStep step{.blade = row.id<BladeId>("blade_id")};
  step.position = row.integer("position");
  step.operation = row.text("operation");
  step.hands_on = row.duration("hands_on_s");
  step.attended = row.duration("attended_s");
  step.unattended = row.duration("unattended_s");
  step.survival = row.share("survival_ppm");
  step.temperature = row.maybe_temperature("temperature_k1800");
  step.low = row.maybe_temperature("low_k1800");
  step.high = row.maybe_temperature("high_k1800");
  step.soak = row.maybe_duration("soak_s");
  step.soak_max = row.maybe_duration("soak_max_s");
  step.medium = row.maybe_text("medium");
  step.gap_max = row.maybe_duration("gap_max_s");
  step.cool_per_h = row.maybe_difference("cool_k1800_per_h");
  step.cool_to = row.maybe_temperature("cool_to_k1800");
  step.unattended_allowed = row.yes("unattended_allowed");
  step.note = row.maybe_text("note");
  step.done_at = row.maybe_instant("done_at");
  step.skipped_why = row.maybe_text("skipped_why");
  return {row.id<RouteStepId>("id"), std::move(step)};
}

}  // namespace

std::vector<KeptRouteStep> route_of(const ShopFile& shop, BladeId blade) {
  Query query(shop, "SELECT * FROM route_step WHERE blade_id = ? ORDER BY position");
  query.bind(blade);
  std::vector<KeptRouteStep> route;
  while (query.next()) route.push_back(step_from(query));
  return route;
}

std::optional<KeptRouteStep> route_step_at(const ShopFile& shop, BladeId blade,
                                           std::int64_t position) {
  Query query(shop, "SELECT * FROM route_step WHERE blade_id = ? AND position = ?");
  query.bind(blade).bind(position);
  return first_row(std::move(query), step_from);
}

std::optional<KeptRouteStep> open_step(const ShopFile& shop, BladeId blade,
                                       std::string_view operation) {
  Query query(shop,
              "SELECT * FROM route_step WHERE blade_id = ? AND operation = ? AND done_at IS NULL "
              "AND skipped_why IS NULL ORDER BY position LIMIT 1");
  query.bind(blade).bind(operation);
  return first_row(std::move(query), step_from);
}

RouteStepId insert_route_step(const ShopFile& shop, const RouteStep& step) {
  Row row("route_step");
  row.set("blade_id", step.blade).set("position", step.position).set("operation", step.operation);
  row.set("hands_on_s", step.hands_on)
      .set("attended_s", step.attended)
      .set("unattended_s", step.unattended);
  row.set("survival_ppm", step.survival).set("temperature_k1800", step.temperature);
  row.set("low_k1800", step.low).set("high_k1800", step.high).set("soak_s", step.soak);
  row.set("soak_max_s", step.soak_max).set("medium", step.medium).set("gap_max_s", step.gap_max);
  row.set("cool_k1800_per_h", step.cool_per_h).set("cool_to_k1800", step.cool_to);
  row.set("unattended_allowed", step.unattended_allowed).set("note", step.note);
  row.set("done_at", step.done_at).set("skipped_why", step.skipped_why);
  return RouteStepId{row.insert(shop)};
}

void store_step_done(const ShopFile& shop, RouteStepId step, std::optional<Instant> done_at) {
  Row("route_step").set("done_at", done_at).update(shop, step.row());
}

void store_step_skipped(const ShopFile& shop, RouteStepId step, const std::string& why) {
  Row("route_step").set("skipped_why", why).update(shop, step.row());
}

void make_room_on_route(const ShopFile& shop, BladeId blade, std::int64_t position) {
  const std::vector<KeptRouteStep> route = route_of(shop, blade);
  // From the end, so that no two steps ever stand at one position.
  for (auto step = route.rbegin(); step != route.rend() && step->position >= position; ++step)
    Row("route_step").set("position", step->position + 1).update(shop, step->id.row());
}

}  // namespace tangmark::db
