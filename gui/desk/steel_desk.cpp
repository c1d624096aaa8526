// SPDX-License-Identifier: MIT
#include "gui/desk/steel_desk.h"

#include <algorithm>

#include "db/listing/stock_rows.h"
#include "db/store/billet_store.h"
#include "db/store/grade_store.h"
#include "db/store/step_advice_reader.h"
#include "gui/desk/calc_desk.h"
#include "gui/desk/cut_search.h"
#include "gui/desk/family.h"
#include "gui/desk/grade_sheet.h"
#include "gui/desk/further_work.h"

namespace tangmark::desk {
namespace {

std::string document_words(const db::LotRow& lot) {
  if (lot.document == "none") return "no paper";
  if (lot.document == "word") return "supplier's word";
  if (lot.document == "label") return "supplier's label";
  std::string text = "document " + lot.document;
  if (!lot.melt_number.empty()) text += ", melt number " + lot.melt_number;
  text += lot.mark_matched ? ", matched to the mark" : ", not matched to a mark";
  return text;
}

std::string quantity_words(Share millionths, const std::string& unit) {
  const double amount = millionths.fraction();
  std::string text = std::to_string(amount);
  text.erase(text.find_last_not_of('0') + 1);
  if (text.ends_with(".")) text.pop_back();
  return unit.empty() ? text : text + " " + unit;
}

bool is_used_up(const db::LotRow& lot) {
  return lot.bought.has_value();
}

Share left_of(const db::LotRow& lot) {
  return lot.bought.value_or(Share()) - lot.used.value_or(Share());
}

std::string lot_under(const Sight& sight, const db::LotRow& lot) {
  if (lot.returned) return "given back to " + lot.owner;
  std::string text;
  if (is_used_up(lot)) {
    text = quantity_words(left_of(lot), lot.unit) + " left";
    if (lot.floor && left_of(lot) < *lot.floor) text += ", below its floor";
  } else {
    text = std::to_string(lot.pieces_on_hand) +
           (lot.pieces_on_hand == 1 ? " piece, " : " pieces, ") + words(sight, lot.on_hand);
  }
  if (!lot.owner.empty()) text += ", belongs to " + lot.owner;
  return text;
}

std::string size_words(const Sight& sight, const db::PieceRow& piece) {
  std::string text;
  const auto add = [&](const std::optional<Length>& length) {
    if (!length) return;
    text += (text.empty() ? "" : " × ") + words(sight, *length);
  };
  add(piece.length);
  add(piece.width);
  add(piece.thickness);
  if (piece.diameter) text += " round " + words(sight, *piece.diameter);
  return text;
}

Section pieces_section(const Sight& sight, const std::vector<db::PieceRow>& pieces) {
  Section section;
  section.title = "Pieces";
  section.table.columns = {{"Tag"},
                           {"Size"},
                           {"Mass", Align::right},
                           {"Promised", Align::right},
                           {"Free", Align::right},
                           {"Mark"},
                           {"State"},
                           {"For"}};
  for (const db::PieceRow& piece : pieces) {
    TableRow row;
    std::string free;
    if (piece.length && piece.state == "on hand") {
      free = words(sight, *piece.length - piece.reserved.value_or(Length()));
    }
    row.cells = {piece.tag,
                 size_words(sight, piece),
                 words(sight, piece.mass),
                 piece.reserved ? words(sight, *piece.reserved) : "",
                 free,
                 piece.mark,
                 piece.state,
                 piece.blade.empty() ? piece.reserved_for : "blade " + piece.blade};
    row.offers = {{"See", GoTo{Place::steel, "piece " + piece.tag}, "", ""}};
    section.table.rows.push_back(std::move(row));
  }
  return section;
}

Section lot_facts(const Sight& sight, const db::LotRow& lot) {
  const std::string number = std::to_string(lot.number);
  Section facts;
  facts.facts = {
      {"Supplier", lot.supplier.empty() ? "not stated" : lot.supplier, "",
       when(sight, lot.received_at)},
      {"Grade", lot.grade.empty() ? "steel not identified" : lot.grade, "", document_words(lot)},
      {"Price", amount_text(lot.price), lot.price.currency().code(), ""}};
  if (lot.kind != "steel") facts.facts[1] = {"Kind", lot.kind, "", lot.species};
  if (is_used_up(lot)) {
    facts.facts.push_back({"Left", quantity_words(left_of(lot), lot.unit), "",
                           lot.floor ? "floor " + quantity_words(*lot.floor, lot.unit) : ""});
  } else {
    facts.facts.push_back(
        {"On hand", words(sight, lot.length_on_hand), "", words(sight, lot.on_hand)});
    facts.facts.push_back({"Promised", words(sight, lot.length_reserved), "", ""});
    facts.facts.push_back({"Available", words(sight, lot.length_on_hand - lot.length_reserved), "",
                           "on hand less what is promised"});
  }
  if (lot.expires_on) {
    facts.facts.push_back(
        {"Use by", day(sight, *lot.expires_on), "", days_away(sight, *lot.expires_on)});
  }
  facts.offers = {{"Label", ShowDocument{"lot-label", number}, "", ""},
                  {"Start a billet", OpenForm{"start_billet", {}}, "", ""}};
  if (!lot.owner.empty() && !lot.returned) {
    facts.offers.push_back(
        {"Give it back", OpenForm{"return_material", {{"lot", number}}}, "", ""});
  }
  for (Offer& offer : further_at_lot(lot)) facts.offers.push_back(std::move(offer));
  return facts;
}

PlaceView lot_view(const Sight& sight, const db::LotRow& lot,
                   const std::optional<SearchedCuts>& searched) {
  const std::string number = std::to_string(lot.number);
  PlaceView view;
  view.next.sentence = "Lot " + number + ": " + lot.name;
  view.next.why = document_words(lot) + ". " + sentence_case(lot_under(sight, lot)) + ".";
  view.next.offers = {{"Receive a lot", OpenForm{"receive_lot", {}}, "Enter", ""}};
  view.sheet.title = "Lot " + number;
  view.sheet.under = lot.name;
  view.sheet.sections = {lot_facts(sight, lot), analysis_section(sight, lot.grade, lot.analysis),
                         pieces_section(sight, db::pieces_of_lot(sight.shop, lot.number))};
  view.picture = family_of(sight, {"lot", number});
  if (auto proposal = cut_proposal(sight, number, searched)) {
    // What the queue waits for comes first.
    if (!proposal->section.offers.empty()) {
      view.next.offers.front().key = "Ctrl Enter";
      Offer cut = proposal->section.offers.front();
      cut.key = "Enter";
      view.next.offers.insert(view.next.offers.begin(), std::move(cut));
    }
    view.sheet.sections.insert(view.sheet.sections.begin(), std::move(proposal->section));
    view.picture = std::move(proposal->drawing);
  }
  return view;
}

PlaceView piece_view(const Sight& sight, const db::PieceRow& piece) {
  PlaceView view;
  view.next.sentence =
      "Piece " + piece.tag + ": " + (piece.grade.empty() ? "steel not identified" : piece.grade);
  view.next.why =
      size_words(sight, piece) + ". " + sentence_case(piece.state) + ", " + piece.mark + ".";
  if (piece.state == "on hand") {
    view.next.offers = {{"Cut it", OpenForm{"cut_piece", {{"piece", piece.tag}}}, "Enter", ""},
                        {"Start a billet of it", OpenForm{"start_billet", {{"pieces", piece.tag}}},
                         "Ctrl Enter", ""}};
  } else {
    view.next.offers = {{"Receive a lot", OpenForm{"receive_lot", {}}, "Enter", ""}};
  }
  Section facts;
  facts.facts = {
      {"Mass", words(sight, piece.mass), "", ""},
      {"Promised to", piece.reserved_for.empty() ? "nothing" : piece.reserved_for, "",
       piece.reserved ? words(sight, *piece.reserved) : ""},
      {"Where it lies", piece.place.empty() ? "not recorded" : piece.place, "", piece.note}};
  if (!piece.blade.empty())
    facts.offers.push_back({"To blade " + piece.blade, GoTo{Place::blades, piece.blade}, "", ""});
  facts.offers.push_back({"Label", ShowDocument{"piece-label", piece.tag}, "", ""});
  if (piece.lot)
    facts.offers.push_back(
        {"To its lot", GoTo{Place::steel, "lot " + std::to_string(*piece.lot)}, "", ""});
  for (Offer& offer : further_at_piece(piece)) facts.offers.push_back(std::move(offer));
  view.sheet.title = "Piece " + piece.tag;
  view.sheet.under = size_words(sight, piece);
  view.sheet.sections = {facts};
  view.picture = family_of(sight, {"piece", piece.tag});
  return view;
}

// What the desk says about the last hot stage, each sentence with its source.
Section heat_section(const Sight& sight, std::int64_t number) {
  const auto billet = db::find_billet(sight.shop, number);
  if (!billet) return {};
  const auto stages = db::stages_of_billet(sight.shop, billet->id);
  for (auto stage = stages.rbegin(); stage != stages.rend(); ++stage) {
    auto advice = db::advice_on(sight.shop, *billet, *stage, sight.settings.temperature_unit);
    if (!advice.empty())
      return advice_section("On stage " + std::to_string(stage->number), std::move(advice));
  }
  return {};
}

Section stages_section(const Sight& sight, std::int64_t billet) {
  Section stages;
  stages.title = "Stages";
  stages.table.columns = {{"Stage"},
                          {"When"},
                          {"Work"},
                          {"In", Align::right},
                          {"Out", Align::right},
                          {"Crop", Align::right},
                          {"Unexplained", Align::right},
                          {"Note"}};
  for (const db::StageRow& stage : db::stage_rows(sight.shop, billet)) {
    stages.table.rows.push_back(
        {{std::to_string(stage.number), when(sight, stage.at), stage.operation,
          words(sight, stage.mass_in), words(sight, stage.mass_out), words(sight, stage.crop),
          words(sight, stage.gap), stage.note},
         false,
         {}});
  }
  return stages;
}

PlaceView billet_view(const Sight& sight, const db::BilletRow& billet) {
  const std::string number = std::to_string(billet.number);
  PlaceView view;
  view.next.sentence = "Billet " + number + ": " + billet.kind;
  view.next.why =
      billet.layers ? std::to_string(*billet.layers) + " layers by count of stacking. " : "";
  view.next.why += billet.scrapped ? "Scrapped." : billet.finished ? "Finished." : "In work.";
  if (billet.finished || billet.scrapped) {
    view.next.offers = {{"Start another billet", OpenForm{"start_billet", {}}, "Enter", ""},
                        {"Log a melt", OpenForm{"melt_ingot", {}}, "Ctrl Enter", ""}};
  } else {
    view.next.offers = {{"Log a stage", OpenForm{"weld_stage", {{"billet", number}}}, "Enter", ""},
                        {"Crop it", OpenForm{"crop", {{"billet", number}}}, "Ctrl Enter", ""}};
  }
  Section facts;
  facts.facts = {
      {"Made by", billet.made_by, "", when(sight, billet.started_at)},
      {"Pattern", billet.pattern.empty() ? "not recorded" : billet.pattern, "", billet.name}};
  facts.offers = further_at_billet(billet);
  view.sheet.title = "Billet " + number;
  view.sheet.under = billet.name;
  view.sheet.sections = {facts, stages_section(sight, billet.number),
                         heat_section(sight, billet.number)};
  view.picture = family_of(sight, {"billet", number});
  return view;
}

PlaceView desk_view() {
  PlaceView view;
  view.next = {
      "The steel desk",
      "Each answer names its source and where it is valid; estimates are labelled.",
      {{"What hardness to expect", OpenForm{"desk.calc", {{"calculation", "expect"}}}, "Enter", ""},
       {"Add a grade", OpenForm{"add_grade", {}}, "Ctrl Enter", ""}}};
  view.sheet.title = "Steel desk";
  view.sheet.under = "Every answer with its source and where it is valid";
  view.sheet.sections = {calculations_section()};
  return view;
}

}  // namespace

PlaceList steel_list(const Sight& sight) {
  std::vector<Row> rows;
  for (const db::LotRow& lot : db::lot_rows(sight.shop)) {
    const std::string number = std::to_string(lot.number);
    rows.push_back({"lot " + number, number, lot.name, sentence_case(lot_under(sight, lot)),
                    lot.grade + " " + lot.supplier + " " + lot.melt_number + " " + lot.kind + " " +
                        lot.species});
  }
  for (const db::BilletRow& billet : db::billet_rows(sight.shop)) {
    const std::string number = std::to_string(billet.number);
    rows.push_back({"billet " + number, number,
                    "Billet: " + (billet.name.empty() ? billet.kind : billet.name),
                    sentence_case(billet.kind) +
                        (billet.layers ? ", " + std::to_string(*billet.layers) + " layers" : ""),
                    billet.pattern});
  }
  for (const db::PieceRow& piece : db::all_pieces(sight.shop)) {
    rows.push_back({"piece " + piece.tag, piece.tag,
                    (piece.grade.empty() ? std::string("Not identified") : piece.grade) + ", " +
                        size_words(sight, piece),
                    sentence_case(piece.state) + ", " + piece.mark +
                        (piece.place.empty() ? "" : ", " + piece.place),
                    piece.reserved_for});
  }
  rows.push_back({"desk", "", "Steel desk", "Work something out: hardness, tempers, billets, baths",
                  "calc compute"});
  const steel::GradeBook book = db::grade_book(sight.shop);
  for (const steel::Grade& grade : book.grades()) {
    std::string others;
    for (const std::string& other : grade.also) others += other + " ";
    rows.push_back({"grade " + grade.name, "", "Grade " + grade.name, grade_line(grade), others});
  }
  return {"Steel and stock", "Find a lot, grade, tag or species", List(std::move(rows))};
}

PlaceView steel_view(const Sight& sight, const std::string& id,
                     const std::optional<SearchedCuts>& searched) {
  for (const db::LotRow& lot : db::lot_rows(sight.shop)) {
    if (id == "lot " + std::to_string(lot.number)) return lot_view(sight, lot, searched);
  }
  for (const db::BilletRow& billet : db::billet_rows(sight.shop)) {
    if (id == "billet " + std::to_string(billet.number)) return billet_view(sight, billet);
  }
  for (const db::PieceRow& piece : db::all_pieces(sight.shop)) {
    if (id == "piece " + piece.tag) return piece_view(sight, piece);
  }
  if (id == "desk") return desk_view();
  const steel::GradeBook book = db::grade_book(sight.shop);
  if (const steel::Grade* grade = id.starts_with("grade ") ? book.find(id.substr(6)) : nullptr)
    return grade_view(sight, *grade);
  PlaceView view;
  view.next = {"No steel yet",
               "A lot is one purchase of one material. It can be entered later, too.",
               {{"Receive a lot", OpenForm{"receive_lot", {}}, "Enter", ""}}};
  return view;
}

}  // namespace tangmark::desk
