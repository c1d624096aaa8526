// SPDX-License-Identifier: MIT
#include "db/actions/asked.h"
#include "db/actions/billet_work.h"
#include "db/actions/stock_action_list.h"
#include "db/store/billet_store.h"

namespace tangmark::db {
namespace {

using namespace stock;

Outcome<ActionResult> run_weld_stage(Work& work, Form& form) {
  const auto billet = asked(work, form, "billet", billet_named);
  StageWish wish;
  wish.operation = form.word<StageWork>("operation", StageWork::weld);
  wish.pieces = form.maybe_whole("pieces", 2, 100);
  wish.mass_in = form.maybe_mass("mass_in");
  wish.mass_out = form.mass("mass_out");
  wish.crop = form.maybe_mass("crop").value_or(Mass());
  wish.scale = form.maybe_mass("scale").value_or(Mass());
  wish.swarf = form.maybe_mass("swarf").value_or(Mass());
  wish.thickness = form.maybe_length("thickness");
  wish.temperature = form.maybe_temperature("temperature");
  wish.flux = form.maybe_text("flux");
  wish.who = form.maybe_text("who");
  wish.hands_on = form.duration("hands_on");
  wish.note = form.maybe_text("note");
  if (wish.operation == StageWork::cut && !wish.pieces)
    form.add({"pieces", "A cut stacks so many pieces again.", "Give the number of pieces."});
  if (wish.operation != StageWork::cut && wish.pieces)
    form.add({"pieces", "Only a cut is into pieces.", "Leave it empty, or use operation cut."});
  if (form.has("mass_out") && wish.mass_out <= Mass())
    form.add({"mass_out", "Nothing is left.", "Weigh the billet and give its mass."});
  if (billet) check_open(form, *billet, work.at());
  if (form.refused()) return form.problems();
  return log_stage(work, *billet, wish);
}

}  // namespace

const Action weld_stage{
    "weld_stage",
    "Log one stage of making a billet, with the masses before and after.",
    {{"billet", "Billet", FieldKind::billet, true, "4"},
     {"operation", "Stage", FieldKind::choice, true, "weld", "weld", choices_of<StageWork>()},
     {"pieces", "Cut into pieces", FieldKind::number, false, "3"},
     {"mass_in", "Mass before", FieldKind::mass, false, "what it weighed last, when not given"},
     {"mass_out", "Mass after", FieldKind::mass, true, "1.42 kg"},
     {"crop", "Cropped off", FieldKind::mass, false, "60 g"},
     {"scale", "Scale", FieldKind::mass, false, "40 g"},
     {"swarf", "Ground off", FieldKind::mass, false, "30 g"},
     {"thickness", "Thickness now", FieldKind::length, false, "18 mm"},
     {"temperature", "Welding heat", FieldKind::temperature, false, "1150 C"},
     {"flux", "Flux or can", FieldKind::text, false, "borax; dry in a can"},
     {"who", "By whom", FieldKind::text, false, "when not you"},
     {"hands_on", "Hands on", FieldKind::duration, false, "50 min", "0 min"},
     {"note", "Note", FieldKind::long_text}},
    run_weld_stage};

}  // namespace tangmark::db
