// SPDX-License-Identifier: MIT
#include "db/store/lot_store.h"

#include "db/row.h"
#include "db/store/grade_store.h"
#include "domain/steel/grade.h"
#include "domain/stock/steel_match.h"

namespace tangmark::db {
namespace {

using namespace stock;

// The steel half and the handle half are read apart only to keep each readable.
void read_steel(const Query& row, Lot& lot) {
  lot.grade = row.maybe_text("grade");
  lot.section = row.maybe_word<Section>("section");
  lot.thickness = row.maybe_length("thickness_nm");
  lot.width = row.maybe_length("width_nm");
  lot.diameter = row.maybe_length("diameter_nm");
  lot.length = row.maybe_length("length_nm");
  lot.count = row.integer("count");
  lot.mass = row.maybe_mass("mass_ug");
  if (const auto density = row.maybe_integer("density_kg_m3")) lot.density = Density{*density};
  lot.condition = row.maybe_text("condition");
  lot.melt_number = row.maybe_text("melt_number");
  lot.document = row.word<SupplyDocument>("document");
  lot.mark_matched = row.yes("mark_matched");
  lot.mark_words = row.maybe_text("mark_words");
  lot.analysis = row.maybe_text("analysis");
  lot.identified_by = row.maybe_word<IdentifiedBy>("identified_by");
  lot.bought_as = row.maybe_word<BoughtAs>("bought_as");
  lot.stated_layers = row.maybe_integer("stated_layers");
  lot.stated_maker = row.maybe_text("stated_maker");
}

void read_other_material(const Query& row, Lot& lot) {
  lot.species = row.maybe_text("species");
  lot.species_latin = row.maybe_text("species_latin");
  lot.source = row.maybe_text("source");
  lot.papers = row.maybe_text("papers");
  lot.stabilised = row.yes("stabilised");
  lot.quantity = row.maybe_share("quantity_ppm");
  lot.unit = row.maybe_text("unit");
  lot.expires_on = row.maybe_date("expires_on");
  lot.floor = row.maybe_share("floor_ppm");
}

KeptLot lot_from(const Query& row) {
  Lot lot;
  lot.number = row.integer("number");
  lot.kind = row.word<LotKind>("kind");
  lot.name = row.text("name");
  lot.supplier = row.maybe_text("supplier");
  lot.invoice = row.maybe_text("invoice");
  lot.received_at = row.instant("received_at");
  lot.owner = row.maybe_id<commission::CustomerId>("owner_id");
  lot.returned_at = row.maybe_instant("returned_at");
  lot.return_note = row.maybe_text("return_note");
  read_steel(row, lot);
  read_other_material(row, lot);
  lot.price = row.money("price_minor", "currency");
  return {row.id<LotId>("id"), std::move(lot)};
}

void set_steel(Row& row, const Lot& lot) {
  row.set("grade", lot.grade);
  if (lot.section) row.set_word("section", *lot.section);
  row.set("thickness_nm", lot.thickness).set("width_nm", lot.width);
  row.set("diameter_nm", lot.diameter).set("length_nm", lot.length);
  row.set("count", lot.count).set("mass_ug", lot.mass);
  if (lot.density) row.set("density_kg_m3", lot.density->kg_per_m3);
  row.set("condition", lot.condition).set("melt_number", lot.melt_number);
  row.set_word("document", lot.document).set("mark_matched", lot.mark_matched);
  row.set("mark_words", lot.mark_words).set("analysis", lot.analysis);
  if (lot.identified_by) row.set_word("identified_by", *lot.identified_by);
  if (lot.bought_as) row.set_word("bought_as", *lot.bought_as);
  row.set("stated_layers", lot.stated_layers).set("stated_maker", lot.stated_maker);
}

void set_other_material(Row& row, const Lot& lot) {
  row.set("species", lot.species).set("species_latin", lot.species_latin);
  row.set("source", lot.source).set("papers", lot.papers).set("stabilised", lot.stabilised);
  row.set("quantity_ppm", lot.quantity).set("unit", lot.unit);
  row.set("expires_on", lot.expires_on).set("floor_ppm", lot.floor);
}

}  // namespace

std::optional<KeptLot> load_lot(const ShopFile& shop, LotId id) {
  Query query(shop, "SELECT * FROM lot WHERE id = ?");
  query.bind(id);
  return first_row(std::move(query), lot_from);
}

std::optional<KeptLot> find_lot(const ShopFile& shop, std::int64_t number) {
  Query query(shop, "SELECT * FROM lot WHERE number = ?");
  query.bind(number);
  return first_row(std::move(query), lot_from);
}

std::vector<KeptLot> list_lots(const ShopFile& shop) {
  return all_rows(Query(shop, "SELECT * FROM lot ORDER BY number DESC"), lot_from);
}

std::vector<KeptLot> list_lots(const ShopFile& shop, LotKind kind) {
  Query query(shop, "SELECT * FROM lot WHERE kind = ? ORDER BY number DESC");
  query.bind(word_of(kind));
  return all_rows(std::move(query), lot_from);
}

std::vector<KeptLot> lots_of_customer(const ShopFile& shop, commission::CustomerId owner) {
  Query query(shop, "SELECT * FROM lot WHERE owner_id = ? AND returned_at IS NULL ORDER BY number");
  query.bind(owner);
  return all_rows(std::move(query), lot_from);
}

std::optional<KeptLot> latest_lot_of_grade(const ShopFile& shop, std::string_view grade) {
  Query query(shop,
              "SELECT * FROM lot WHERE kind = 'steel' AND owner_id IS NULL AND grade IS NOT NULL "
              "AND price_minor > 0 ORDER BY received_at DESC, number DESC");
  const steel::GradeBook book = grade_book(shop);
  while (query.next())
    if (same_grade(query.text("grade"), grade, book)) return lot_from(query);
  return std::nullopt;
}

LotId insert_lot(const ShopFile& shop, const Lot& lot) {
  Row row("lot");
  row.set("number", lot.number).set_word("kind", lot.kind).set("name", lot.name);
  row.set("supplier", lot.supplier).set("invoice", lot.invoice).set("received_at", lot.received_at);
  row.set("owner_id", lot.owner).set("returned_at", lot.returned_at);
  row.set("return_note", lot.return_note);
  set_steel(row, lot);
  set_other_material(row, lot);
  row.set("price_minor", lot.price).set("currency", lot.price.currency().code());
  return LotId{row.insert(shop)};
}

void store_return_of_lot(const ShopFile& shop, LotId id, Instant at, const std::string& note) {
  Row("lot").set("returned_at", at).set("return_note", note).update(shop, id.row());
}

}  // namespace tangmark::db
