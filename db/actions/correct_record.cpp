// SPDX-License-Identifier: MIT
#include <algorithm>

#include "db/actions/form.h"
#include "db/actions/kiln_action_list.h"
#include "db/actions/work.h"
#include "db/store/kiln_store.h"
#include "db/store/record_store.h"

namespace tangmark::db {
namespace {

constexpr auto most_correction = TemperatureDifference::celsius(100);
constexpr auto least_correction = TemperatureDifference::celsius(-100);

// The record of a firing that is meant, and which of its sensors. A sensor set right already is
// named as corrected, so its name is compared by how it begins.
struct Meant {
  std::int64_t record = 0;
  std::size_t sensor = 0;
  std::string name;
};

Outcome<Meant> meant(Work& work, kiln::FiringId firing, bool independent,
                     const std::string& sensor) {
  std::string names;
  const auto records = records_of_firing(work.shop(), firing);
  for (auto record = records.rbegin(); record != records.rend(); ++record) {
    if (record->independent != independent) continue;
    const auto& sensors = record->record.shape.sensors;
    for (std::size_t i = 0; i < sensors.size(); ++i) {
      if (sensor.empty() || sensors[i].name.starts_with(sensor))
        return Meant{record->id, i, sensors[i].name};
      names += (names.empty() ? "" : ", ") + sensors[i].name;
    }
  }
  if (names.empty())
    return Problem{"firing", "This firing has no such record attached.",
                   "Attach it with attach_record."};
  return Problem{"sensor", "The record has no sensor \"" + sensor + "\".",
                 "It has: " + names + "."};
}

Outcome<ActionResult> run_correct_record(Work& work, Form& form) {
  const auto firing = find_firing(work.shop(), form.text("firing"), "firing");
  const bool independent = form.yes("independent");
  const std::string sensor = form.maybe_text("sensor").value_or("");
  const auto by = form.maybe_temperature_step("by");
  const bool withdraw = form.yes("withdraw");
  const std::string why = form.text("why");
  if (!firing) form.add(firing.problem());
  if (!withdraw && !by && !form.refused())
    form.add({"by", "By how much is not said.", "Give degrees such as \"-4 C\", or withdraw=yes."});
  if (by && (*by > most_correction || *by < least_correction))
    form.add({"by", "A correction of more than 100 C is no drift.", "Check the sensor instead."});
  if (form.refused()) return form.problems();
  const auto found = meant(work, firing->id, independent, sensor);
  if (!found) return found.problems();
  // A correction takes the place of the one before.
  withdraw_corrections(work.shop(), found->record, found->sensor, work.at());
  if (!withdraw)
    insert_correction(work.shop(), found->record, {0, found->sensor, *by, why, work.at()});
  return work.done(std::to_string(firing->number));
}

}  // namespace

const Action correct_record{
    "correct_record",
    "Set one sensor of a firing's record right by what a check thermocouple showed; the file "
    "stays.",
    {{"firing", "Firing", FieldKind::firing, true, "12"},
     {"by", "Its readings are to go up by", FieldKind::temperature_step, false,
      "-4 C when it reads 4 C too high"},
     {"why", "How that was found", FieldKind::text, true, "check thermocouple of 25 Nov"},
     {"sensor", "Sensor", FieldKind::text, false, "head of its column; the judged one when empty"},
     {"independent", "Of the thermocouple's own record", FieldKind::yes_no, false, "no", "no"},
     {"withdraw", "Take the correction back", FieldKind::yes_no, false, "no", "no"}},
    run_correct_record};

}  // namespace tangmark::db
