// SPDX-License-Identifier: MIT
#include "db/actions/asked.h"
#include "db/actions/stock_action_list.h"
#include "db/store/bath_store.h"
#include "db/store/lot_store.h"

namespace tangmark::db {
namespace {

using namespace stock;

void refuse_idle_constant(Form& form, const std::optional<Duration>& cooling) {
  if (cooling && *cooling < std::chrono::minutes(1))
    form.add({"cooling_time_constant", "A bath takes longer than that to cool.",
              "Give a minute at least, or leave it empty."});
}

Outcome<ActionResult> run_add_bath(Work& work, Form& form) {
  Bath bath;
  bath.name = form.text("name");
  bath.medium = form.text("medium");
  bath.use = form.word<BathUse>("use", BathUse::quench);
  const auto lot = asked(work, form, "lot", lot_named);
  if (lot) bath.lot = lot->id;
  bath.depth = form.maybe_length("depth");
  bath.volume = form.maybe_volume("volume");
  bath.low = form.maybe_temperature("low");
  bath.high = form.maybe_temperature("high");
  bath.cooling = form.maybe_duration("cooling_time_constant");
  bath.check_days = form.maybe_whole("check_days", 1, 3650);
  bath.strength = form.maybe_share("strength");
  bath.filled_at = work.at();
  bath.checked_at = work.at();
  if (bath.low && bath.high && *bath.high < *bath.low)
    form.add({"high", "The band ends below its beginning.", "Give the higher temperature here."});
  refuse_idle_constant(form, bath.cooling);
  if (form.refused()) return form.problems();
  if (find_bath(work.shop(), bath.name))
    return Problem{"name", "There is a bath of this name already.", "Choose another name."};
  insert_bath(work.shop(), bath);
  return work.done(bath.name);
}

Outcome<ActionResult> check(Work& work, Form& form) {
  auto bath = asked(work, form, "bath", bath_named);
  const auto lot = asked(work, form, "lot", lot_named);
  const auto strength = form.maybe_share("strength");
  const auto depth = form.maybe_length("depth");
  const auto volume = form.maybe_volume("volume");
  const auto cooling = form.maybe_duration("cooling_time_constant");
  refuse_idle_constant(form, cooling);
  const bool filled = form.yes("filled");
  const bool retired = form.yes("retired");
  if (bath && bath->retired_at) form.add({"bath", "This bath is out of use.", "Choose another."});
  if (bath && bath->checked_at && work.at() < *bath->checked_at)
    form.add({"at", "It was checked later than that already.", "Give the time of this check."});
  if (form.refused()) return form.problems();
  bath->checked_at = work.at();
  if (filled) bath->filled_at = work.at();
  if (lot) bath->lot = lot->id;
  if (strength) bath->strength = strength;
  if (depth) bath->depth = depth;
  if (volume) bath->volume = volume;
  if (cooling) bath->cooling = cooling;
  if (retired) bath->retired_at = work.at();
  store_bath(work.shop(), *bath);
  return work.done(bath->name);
}

}  // namespace

const Action add_bath{
    "add_bath",
    "Add a tank or tray: quench oil, brine, plates, etchant.",
    {{"name", "Name", FieldKind::text, true, "long oil tank"},
     {"medium", "Medium", FieldKind::text, true, "medium oil"},
     {"use", "Used to", FieldKind::choice, true, "quench", "quench", choices_of<BathUse>()},
     {"lot", "Filled from lot", FieldKind::lot, false, "11"},
     {"depth", "Depth", FieldKind::length, false, "450 mm"},
     {"volume", "Volume", FieldKind::volume, false, "15 l"},
     {"low", "Used from", FieldKind::temperature, false, "40 C"},
     {"high", "Used up to", FieldKind::temperature, false, "70 C"},
     {"cooling_time_constant", "Cooling time constant", FieldKind::duration, false,
      "45 min, until two thirds of the heat are gone"},
     {"check_days", "Check every days", FieldKind::number, false, "180"},
     {"strength", "Strength", FieldKind::share, false, "20 %, of an etchant or brine"}},
    run_add_bath};

const Action check_bath{
    "check_bath",
    "Note that a bath was checked, topped up, changed or taken out of use.",
    {{"bath", "Bath", FieldKind::bath, true, "long oil tank"},
     {"filled", "Filled anew", FieldKind::yes_no, false, "no", "no"},
     {"lot", "From lot", FieldKind::lot, false, "11"},
     {"strength", "Strength", FieldKind::share, false, "20 %"},
     {"depth", "Depth", FieldKind::length, false, "450 mm"},
     {"volume", "Volume", FieldKind::volume, false, "15 l"},
     {"cooling_time_constant", "Cooling time constant", FieldKind::duration, false, "45 min"},
     {"retired", "Out of use", FieldKind::yes_no, false, "no", "no"}},
    check};

}  // namespace tangmark::db
