// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <cstdlib>

#include "db/actions/bench_fields.h"
#include "db/actions/blade_action_list.h"
#include "db/store/blade_state.h"
#include "db/store/reading_store.h"
#include "domain/blade/reading_rules.h"

namespace tangmark::db {
namespace {

using namespace blade;

// Half a point of HRC between block and reading is usual; more than one wants a look at the tester.
constexpr std::int64_t tester_off_tenths = 10;

std::optional<std::int64_t> one_figure(Form& form, std::string_view field,
                                       const std::string& scale) {
  const auto text = form.maybe_text(field);
  if (!text) return std::nullopt;
  const auto figures = parse_hardness(*text, scale == "file" ? "HRC" : scale, field);
  if (!figures) {
    form.add(figures.problem());
    return std::nullopt;
  }
  return figures->front().tenths;
}

std::vector<std::string> read_places(Form& form, std::size_t readings) {
  std::vector<std::string> places = form.list("place");
  if (places.empty()) places.emplace_back("not noted");
  if (places.size() == 1) places.resize(readings, places.front());
  if (places.size() != readings)
    form.add({"place", fmt::format("There are {} readings and {} places.", readings, places.size()),
              "Give one place for all, or one for each."});
  return places;
}

HardnessReading read_common(Work& work, Form& form, BladeId blade, const std::string& scale) {
  HardnessReading reading{.blade = blade};
  reading.at = work.at();
  reading.entered_at = work.now();
  reading.scale = scale;
  reading.along = form.maybe_share("along");
  reading.up = form.maybe_share("up");
  reading.tester = form.maybe_text("tester");
  reading.block_nominal_tenths = one_figure(form, "block", scale);
  reading.block_read_tenths = one_figure(form, "block_read", scale);
  reading.on_coupon = form.yes("coupon");
  if (reading.block_nominal_tenths.has_value() != reading.block_read_tenths.has_value())
    form.add(
        {"block_read", "A check on a block has two figures.", "Give both block and block_read."});
  return reading;
}

void look_at_block(Work& work, const HardnessReading& reading) {
  if (!reading.block_nominal_tenths || !reading.block_read_tenths) return;
  if (std::llabs(*reading.block_nominal_tenths - *reading.block_read_tenths) > tester_off_tenths)
    work.warn(
        "The tester reads its block wrong by more than a point: look at it before you trust these "
        "figures.");
}

Outcome<ActionResult> run_log_hardness(Work& work, Form& form) {
  const auto blade = asked_blade(work, form);
  const std::string scale = form.text("scale");
  const auto figures = form.take(parse_hardness(form.text("readings"), scale, "readings"));
  const std::vector<std::string> places = read_places(form, figures.size());
  HardnessReading reading = read_common(work, form, blade ? blade->id : BladeId{0}, scale);
  if (form.refused()) return form.problems();
  const Catch before_heat = reading.on_coupon
                                ? Catch()
                                : reading_before_heat(blade->number, work.at(),
                                                      load_state(work.shop(), *blade).last_heat_at);
  work.passes(before_heat);
  if (before_heat) reading.void_why = "taken before the last heat";
  look_at_block(work, reading);
  std::string numbers;
  for (std::size_t i = 0; i < figures.size(); ++i) {
    reading.place = places[i];
    reading.tenths = figures[i].tenths;
    reading.tenths_to = figures[i].tenths_to;
    const ReadingId id = insert_reading(work.shop(), reading);
    numbers += (numbers.empty() ? "" : ",") + std::to_string(id.row());
  }
  return work.done(numbers);
}

}  // namespace

const Action log_hardness{
    "log_hardness",
    "Log hardness readings of a blade or of its coupon.",
    {blade_field(),
     {"readings", "Readings", FieldKind::text, true, "61.5,61,61.5, or 60-62 for a file set"},
     {"place", "Place", FieldKind::text, false,
      "edge 40 mm from the heel; one for all or one for each"},
     {"scale",
      "Scale",
      FieldKind::choice,
      false,
      "of the tester",
      "HRC",
      {"HRC", "HRA", "HV", "file"}},
     {"tester", "Tester", FieldKind::text, false, "bench tester, files"},
     {"block", "Block", FieldKind::number, false, "figure on the test block: 60.2"},
     {"block_read", "Block read", FieldKind::number, false, "what the tester showed on it: 60.0"},
     {"coupon", "On a coupon", FieldKind::yes_no, false, "yes when not on the blade itself"},
     {"along", "Along the blade", FieldKind::share, false, "from heel to tip: 40 %"},
     {"up", "Up from the edge", FieldKind::share, false, "from edge to spine: 10 %"}},
    run_log_hardness};

}  // namespace tangmark::db
