// SPDX-License-Identifier: MIT
#include "db/actions/asked.h"
#include "db/actions/billet_work.h"
#include "db/actions/stock_action_list.h"
#include "db/store/billet_store.h"

namespace tangmark::db {
namespace {

using namespace stock;

Outcome<ActionResult> run_crop(Work& work, Form& form) {
  const auto billet = asked(work, form, "billet", billet_named);
  StageWish wish;
  wish.operation = StageWork::crop;
  wish.crop = form.mass("crop");
  const auto mass_out = form.maybe_mass("mass_out");
  wish.note = form.maybe_text("note");
  wish.hands_on = form.duration("hands_on");
  if (billet) {
    check_open(form, *billet, work.at());
    const Mass before = mass_of_billet(work.shop(), billet->id);
    if (form.has("crop") && (wish.crop <= Mass() || wish.crop >= before))
      form.add({"crop", "The billet weighs " + to_text(before, work.settings().mass_unit) + ".",
                "Give a crop above zero and below that."});
    wish.mass_out = mass_out.value_or(before - wish.crop);
  }
  if (form.refused()) return form.problems();
  return log_stage(work, *billet, wish);
}

}  // namespace

const Action crop{"crop",
                  "Log that faulty or distorted ends of a billet were cut off.",
                  {{"billet", "Billet", FieldKind::billet, true, "4"},
                   {"crop", "Cropped off", FieldKind::mass, true, "85 g"},
                   {"mass_out", "Mass after, weighed", FieldKind::mass, false, "1.33 kg"},
                   {"hands_on", "Hands on", FieldKind::duration, false, "10 min", "0 min"},
                   {"note", "Note", FieldKind::long_text, false, "cold shut at one end"}},
                  run_crop};

}  // namespace tangmark::db
