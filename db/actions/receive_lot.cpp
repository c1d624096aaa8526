// SPDX-License-Identifier: MIT
#include "db/actions/asked.h"
#include "db/actions/lot_bars.h"
#include "db/actions/lot_file.h"
#include "db/actions/stock_action_list.h"
#include "db/store/grade_store.h"
#include "db/store/lot_store.h"
#include "domain/steel/analysis_check.h"

namespace tangmark::db {
namespace {

using namespace stock;

void read_steel(Form& form, Lot& lot) {
  lot.grade = form.maybe_text("grade");
  lot.section = form.maybe_word<Section>("section");
  lot.thickness = form.maybe_length("thickness");
  lot.width = form.maybe_length("width");
  lot.diameter = form.maybe_length("diameter");
  lot.length = form.maybe_length("length");
  lot.count = form.whole("count", 1, 500);
  lot.mass = form.maybe_mass("mass");
  if (const auto density = form.maybe_whole("density", 500, 25'000))
    lot.density = Density{*density};
  lot.condition = form.maybe_text("condition");
  lot.melt_number = form.maybe_text("melt_number");
  lot.document = form.word<SupplyDocument>("document", SupplyDocument::none);
  lot.mark_matched = form.yes("mark_matched");
  lot.mark_words = form.maybe_text("mark_words");
  if (const auto analysis = form.maybe_text("analysis"))
    lot.analysis = steel::to_text(form.take(steel::parse_composition(*analysis, "analysis")));
  lot.identified_by = form.maybe_word<IdentifiedBy>("identified_by");
  lot.bought_as = form.maybe_word<BoughtAs>("bought_as");
  lot.stated_layers = form.maybe_whole("stated_layers", 1, 1'000'000'000);
  lot.stated_maker = form.maybe_text("stated_maker");
}

void read_other_material(Form& form, Lot& lot) {
  lot.species = form.maybe_text("species");
  lot.species_latin = form.maybe_text("species_latin");
  lot.source = form.maybe_text("source");
  lot.papers = form.maybe_text("papers");
  lot.stabilised = form.yes("stabilised");
  lot.quantity = form.maybe_quantity("quantity");
  lot.unit = form.maybe_text("unit");
  lot.expires_on = form.maybe_date("expires_on");
  lot.floor = form.maybe_quantity("floor");
}

// A melt number that nobody has a document for cannot have been matched to one.
void check_identity(Form& form, const Lot& lot) {
  if (lot.mark_matched && !lot.melt_number)
    form.add({"melt_number", "The mark was matched, but to which melt number is not said.",
              "Give the number on the document."});
  if (lot.mark_matched && lot.document > SupplyDocument::type_2_1)
    form.add({"document", "A mark can only be matched to a document with a melt number.",
              "Give the document's type, or mark_matched=no."});
  if ((lot.stated_layers || lot.stated_maker) &&
      lot.bought_as.value_or(BoughtAs::one_steel) == BoughtAs::one_steel)
    form.add({"bought_as", "Layers or their maker are stated for one steel.",
              "Say bought_as: pattern-welded or laminated."});
  if (lot.kind != LotKind::steel && !lot.quantity)
    form.add(
        {"quantity", "How much came is needed.", "Give quantity and unit, for example 5 and l."});
}

void remark_on_steel(Work& work, const Lot& lot) {
  if (lot.document == SupplyDocument::none && lot.grade)
    work.warn("No paper says that this is " + *lot.grade +
              "; ask for a document now, later is usually too late.");
  if (!lot.grade || !lot.analysis) return;
  const steel::GradeBook book = grade_book(work.shop());
  const steel::Grade* grade = book.find(*lot.grade);
  if (!grade) return;
  for (const std::string& remark :
       steel::check_analysis(steel::parse_composition(*lot.analysis, "analysis").value_or({}),
                             *grade)
           .remarks)
    work.warn(remark);
}

Outcome<ActionResult> run_receive_lot(Work& work, Form& form) {
  Lot lot;
  lot.kind = form.word<LotKind>("kind", LotKind::steel);
  lot.name = form.text("name");
  lot.supplier = form.maybe_text("supplier");
  lot.invoice = form.maybe_text("invoice");
  lot.received_at = work.at();
  lot.price = form.maybe_money("price").value_or(Money(0, work.settings().currency));
  const auto owner = asked(work, form, "owner", customer_named);
  if (owner) lot.owner = owner->id;
  read_steel(form, lot);
  read_other_material(form, lot);
  const auto files = read_lot_files(form);
  check_identity(form, lot);
  if (lot.kind == LotKind::steel) check_bars(form, lot);
  if (!owner && !form.has("owner") && !form.has("price"))
    form.add({"price", "What the lot cost is needed.", "Give price, 0 when it was a gift."});
  if (lot.expires_on && *lot.expires_on < work.today()) work.warn("It is out of date already.");
  if (form.refused()) return form.problems();

  lot.number = work.next_number("lot");
  const LotId id = insert_lot(work.shop(), lot);
  keep_lot_files(work, files, id);
  if (lot.kind == LotKind::steel) {
    insert_bars(work.shop(), {id, lot});
    remark_on_steel(work, lot);
  }
  return work.done(std::to_string(lot.number));
}

}  // namespace

const Action receive_lot{
    "receive_lot",
    "Receive one purchase of one material, or a customer's own material.",
    {{"kind", "Kind", FieldKind::choice, true, "steel", "steel", choices_of<LotKind>()},
     {"name", "Name", FieldKind::text, true, "80CrV2 flat 50 x 4"},
     {"supplier", "Supplier", FieldKind::text, false, "the mill's agent"},
     {"invoice", "Their invoice", FieldKind::text, false, "2026-118"},
     {"price", "Price of all of it", FieldKind::money, false, "64.00"},
     {"owner", "Belongs to customer", FieldKind::customer, false,
      "4, for a customer's own material"},
     {"grade", "Grade", FieldKind::text, false, "80CrV2; leave empty when nobody knows"},
     {"section", "Section", FieldKind::choice, false, "flat", {}, choices_of<Section>()},
     {"thickness", "Thickness", FieldKind::length, false, "4 mm"},
     {"width", "Width", FieldKind::length, false, "50 mm"},
     {"diameter", "Diameter", FieldKind::length, false, "25 mm, of a round bar"},
     {"length", "Length of one bar", FieldKind::length, false, "1000 mm"},
     {"count", "Bars", FieldKind::number, false, "2", "1"},
     {"mass", "Mass of all bars, weighed", FieldKind::mass, false, "3.14 kg"},
     {"density", "Density in kg/m3", FieldKind::number, false, "7850"},
     {"condition", "Condition", FieldKind::text, false, "annealed"},
     {"melt_number", "Melt number", FieldKind::text, false, "as on the document"},
     {"document", "Document", FieldKind::choice, true, "3.1", "none", choices_of<SupplyDocument>()},
     {"mark_matched", "Melt number found on the bar", FieldKind::yes_no, false, "no", "no"},
     {"mark_words", "What the mark says", FieldKind::text, false, "blue paint, 4711"},
     {"analysis", "Analysis in %", FieldKind::text, false, "C:0.82,Mn:0.45,Cr:0.55,V:0.18"},
     {"identified_by",
      "Identified by",
      FieldKind::choice,
      false,
      "document",
      {},
      choices_of<IdentifiedBy>()},
     {"bought_as", "Bought as", FieldKind::choice, false, "one steel", {}, choices_of<BoughtAs>()},
     {"stated_layers", "Layers, as stated", FieldKind::number, false, "120"},
     {"stated_maker", "Welded by, as stated", FieldKind::text, false, "a smith in the north"},
     {"species", "Species", FieldKind::text, false, "walnut"},
     {"species_latin", "Latin name", FieldKind::text, false, "Juglans regia"},
     {"source", "Where it grew or came from", FieldKind::text, false, "orchard near the town"},
     {"papers", "Papers on file", FieldKind::text, false, "import permit 1234"},
     {"stabilised", "Stabilised", FieldKind::yes_no, false, "no", "no"},
     {"quantity", "How much", FieldKind::number, false, "10"},
     {"unit", "Unit", FieldKind::text, false, "belt, l, kg, block"},
     {"expires_on", "Good until", FieldKind::date, false, "2027-06-30"},
     {"floor", "Keep at least", FieldKind::number, false, "4"},
     {"photo", "Photo of the mark", FieldKind::file, false, "mark.jpg"},
     {"document_file", "Scanned document", FieldKind::file, false, "certificate.pdf"}},
    run_receive_lot};

}  // namespace tangmark::db
