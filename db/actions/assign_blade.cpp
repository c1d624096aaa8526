// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "db/actions/asked.h"
#include "db/actions/blade_action_list.h"
#include "db/actions/item_catches.h"
#include "db/store/blade_store.h"
#include "db/store/family_tree.h"
#include "db/store/model_store.h"
#include "db/store/operation_store.h"
#include "db/store/piece_store.h"
#include "db/store/promise_store.h"
#include "db/store/reservation_store.h"
#include "db/store/route_store.h"
#include "domain/stock/piece_in_hand.h"

namespace tangmark::db {
namespace {

using namespace blade;

// What the maker named; each may be left out.
struct Named {
  std::optional<commission::KeptItem> item;
  std::optional<commission::KeptModel> model;
  std::optional<stock::KeptPiece> piece;
};

template <class T>
std::optional<T> first_of(std::initializer_list<std::optional<T>> values) {
  for (const auto& value : values)
    if (value) return value;
  return std::nullopt;
}

Named read_named(Work& work, Form& form) {
  Named named{asked(work, form, "item", item_named), asked(work, form, "model", model_named),
              asked(work, form, "piece", piece_named)};
  if (!named.model && named.item && named.item->model)
    named.model = load_model(work.shop(), *named.item->model);
  return named;
}

std::optional<std::string> grade_of_piece(Work& work, const Named& named) {
  if (!named.piece) return std::nullopt;
  const auto grades = grades_of(work.shop(), named.piece->id);
  if (grades.empty() || !grades.front()) return std::nullopt;
  std::string text = *grades.front();
  for (std::size_t i = 1; i < grades.size(); ++i) text += "/" + grades[i].value_or("unknown");
  return text;
}

// From the field itself, then the item, then the model, then the piece.
Blade read_blade(Work& work, Form& form, const Named& named) {
  Blade blade;
  using Text = std::optional<std::string>;
  const auto of_item = [&](auto member) {
    return named.item ? std::optional((*named.item).*member) : std::nullopt;
  };
  const auto title =
      first_of<std::string>({form.maybe_text("title"), of_item(&commission::Item::title),
                             named.model ? Text(named.model->name) : Text()});
  if (!title) form.add({"title", "The blade has no name.", "Give title, item or model."});
  const auto length =
      first_of<Length>({form.maybe_length("length"), of_item(&commission::Item::blade_length),
                        named.model ? std::optional(named.model->blade_length) : std::nullopt});
  if (!length)
    form.add({"length", "The blade has no length.", "Give length, item or model."});
  else if (*length == Length())
    form.add({"length", "A blade has a length.", "Give its length, such as 210 mm."});
  blade.title = title.value_or("");
  blade.length = length.value_or(Length());
  blade.grade = first_of<std::string>(
      {form.maybe_text("grade"), named.item ? named.item->grade : Text(),
       named.model ? named.model->grade : Text(), grade_of_piece(work, named)});
  blade.width = first_of<Length>(
      {form.maybe_length("width"), named.piece ? named.piece->width : std::nullopt});
  blade.thickness = first_of<Length>(
      {form.maybe_length("thickness"), named.piece ? named.piece->thickness : std::nullopt});
  blade.hardness_aim = first_of<std::string>({form.maybe_text("hardness_aim"),
                                              named.item ? named.item->hardness_aim : Text(),
                                              named.model ? named.model->hardness_aim : Text()});
  const auto construction = form.maybe_word<commission::Construction>("construction");
  blade.construction = first_of<commission::Construction>(
                           {construction, of_item(&commission::Item::construction),
                            named.model ? std::optional(named.model->construction) : std::nullopt})
                           .value_or(commission::Construction::monosteel);
  blade.due = form.maybe_date("due");
  if (!blade.due && named.item && named.item->commission)
    if (const auto promise = standing_promise(work.shop(), *named.item->commission))
      blade.due = promise->day;
  blade.started_at = work.at();
  return blade;
}

std::vector<std::string> read_route(Work& work, Form& form) {
  std::vector<std::string> route;
  for (const std::string& word : form.list("route")) {
    const auto operation = operation_named(work.shop(), word, "route");
    if (operation)
      route.push_back(operation->name);
    else
      form.add(operation.problem());
  }
  return route;
}

RouteStep step_of_model(BladeId blade, const commission::ModelStep& usual, std::int64_t position) {
  RouteStep step{.blade = blade};
  step.position = position;
  step.operation = usual.operation;
  step.hands_on = usual.hands_on;
  step.attended = usual.attended;
  step.unattended = usual.unattended;
  step.survival = usual.survival;
  step.temperature = usual.temperature;
  step.low = usual.low;
  step.high = usual.high;
  step.soak = usual.soak;
  step.soak_max = usual.soak_max;
  step.medium = usual.medium;
  step.gap_max = usual.gap_max;
  step.cool_per_h = usual.cool_per_h;
  step.cool_to = usual.cool_to;
  step.unattended_allowed = usual.unattended_allowed;
  step.note = usual.note;
  return step;
}

// A list names the operations; what the model knows of each (times, temperatures) comes with it.
void store_route(Work& work, BladeId blade, const Named& named,
                 const std::vector<std::string>& list) {
  auto usual = named.model ? steps_of_model(work.shop(), named.model->id)
                           : std::vector<commission::KeptModelStep>{};
  std::int64_t position = 0;
  if (list.empty())
    for (const auto& step : usual)
      insert_route_step(work.shop(), step_of_model(blade, step, ++position));
  for (const std::string& operation : list) {
    const auto known = std::find_if(usual.begin(), usual.end(),
                                    [&](const auto& s) { return s.operation == operation; });
    commission::ModelStep plain{.model = commission::ModelId{0}};
    plain.operation = operation;
    insert_route_step(work.shop(),
                      step_of_model(blade, known == usual.end() ? plain : *known, ++position));
    if (known != usual.end()) usual.erase(known);
  }
}

bool take_piece(Work& work, const Named& named, const Blade& blade) {
  if (!named.piece) return true;
  // Without an item the job is what this blade is meant to be.
  commission::KeptItem job =
      named.item.value_or(commission::KeptItem(commission::ItemId{0}, commission::Item{}));
  job.grade = blade.grade;
  bool goes_on = work.passes(piece_catches(work, job, *named.piece));
  if (named.piece->length) {
    const auto free = available_length(work.shop(), *named.piece, Length());
    auto promised = stock::cut_into_promise(
        *named.piece, free, *named.piece->length,
        named.item ? std::optional(named.item->id) : std::nullopt, work.settings().length_unit);
    if (promised) promised->field = "piece";
    goes_on = work.passes(promised) && goes_on;
  }
  if (!goes_on) return false;
  store_piece_state(work.shop(), named.piece->id, stock::PieceState::blank);
  for (const auto& reservation : reservations_of_piece(work.shop(), named.piece->id))
    store_release(work.shop(), reservation.id, work.at());
  return true;
}

bool begin_item(Work& work, const Named& named, Problems& problems) {
  if (!named.item) return true;
  if (!work.passes(catches_before_work(work, *named.item))) {
    problems = work.problems();
    return false;
  }
  const auto begun = begin_work(work, *named.item, "item");
  if (!begun) {
    problems = begun.problems();
    return false;
  }
  for (const KeptBlade& other : blades_of_item(work.shop(), named.item->id))
    if (!other.scrapped_at)
      work.warn(fmt::format("Blade {} is for this item already.", other.number));
  return true;
}

Outcome<ActionResult> assign(Work& work, Form& form) {
  const Named named = read_named(work, form);
  Blade blade = read_blade(work, form, named);
  const std::vector<std::string> route = read_route(work, form);
  if (form.refused()) return form.problems();
  Problems problems;
  if (!begin_item(work, named, problems)) return problems;
  if (!take_piece(work, named, blade)) return work.problems();
  if (named.item) blade.item = named.item->id;
  if (named.model) blade.model = named.model->id;
  if (named.piece) blade.piece = named.piece->id;
  blade.number = work.next_number("blade");
  store_route(work, insert_blade(work.shop(), blade), named, route);
  if (!named.piece)
    work.warn("The blade has no piece: its steel cannot be traced, and a certificate will say so.");
  return work.done(std::to_string(blade.number));
}

}  // namespace

const Action assign_blade{
    "assign_blade",
    "Begin a blade: it gets a number for its tang and its route.",
    {{"item", "Item", FieldKind::item, false,
      "the knife it is for; empty when made without an order"},
     {"model", "Model", FieldKind::model, false, "its usual route is copied"},
     {"piece", "Piece", FieldKind::piece, false, "tag of the blank; empty for an unlisted bar"},
     {"title", "Title", FieldKind::text, false, "chef's knife 210"},
     {"grade", "Grade", FieldKind::text, false, "80CrV2"},
     {"construction",
      "Construction",
      FieldKind::choice,
      false,
      "as the item or model says",
      {},
      choices_of<commission::Construction>()},
     {"length", "Blade length", FieldKind::length, false, "210 mm"},
     {"width", "Width", FieldKind::length, false, "48 mm"},
     {"thickness", "Thickness", FieldKind::length, false, "2.4 mm"},
     {"hardness_aim", "Hardness aimed at", FieldKind::text, false, "60-61 HRC"},
     {"due", "Due", FieldKind::date, false, "as promised when empty"},
     {"route", "Route", FieldKind::text, false,
      "profile,drill,mark,harden,temper,temper,finish grind"}},
    assign};

}  // namespace tangmark::db
