// SPDX-License-Identifier: MIT
#include "db/store/billet_store.h"

#include "db/row.h"
#include "domain/steel/layer_count.h"

namespace tangmark::db {
namespace {

using namespace stock;

KeptBillet billet_from(const Query& row) {
  Billet billet;
  billet.number = row.integer("number");
  billet.kind = row.word<BilletKind>("kind");
  billet.name = row.maybe_text("name");
  billet.made_by = row.text("made_by");
  billet.started_at = row.instant("started_at");
  billet.finished_at = row.maybe_instant("finished_at");
  billet.layers = row.maybe_integer("layers");
  billet.pattern = row.maybe_text("pattern");
  billet.scrapped_at = row.maybe_instant("scrapped_at");
  billet.note = row.maybe_text("note");
  return {row.id<BilletId>("id"), std::move(billet)};
}

KeptWeldStage stage_from(const Query& row) {
  WeldStage stage{.billet = row.id<BilletId>("billet_id"),
                  .number = row.integer("number"),
                  .at = row.instant("at"),
                  .entered_at = row.instant("entered_at"),
                  .operation = row.word<StageWork>("operation"),
                  .pieces = row.integer("pieces"),
                  .mass_in = row.mass("mass_in_ug"),
                  .mass_out = row.mass("mass_out_ug"),
                  .crop = row.mass("crop_ug"),
                  .scale = row.mass("scale_ug"),
                  .swarf = row.mass("swarf_ug"),
                  .gap = row.mass("gap_ug"),
                  .thickness = row.maybe_length("thickness_nm"),
                  .temperature = row.maybe_temperature("temperature_k1800"),
                  .flux = row.maybe_text("flux"),
                  .who = row.maybe_text("who"),
                  .hands_on = row.duration("hands_on_s"),
                  .note = row.maybe_text("note")};
  return {row.id<WeldStageId>("id"), std::move(stage)};
}

}  // namespace

std::optional<KeptBillet> load_billet(const ShopFile& shop, BilletId id) {
  Query query(shop, "SELECT * FROM billet WHERE id = ?");
  query.bind(id);
  return first_row(std::move(query), billet_from);
}

std::optional<KeptBillet> find_billet(const ShopFile& shop, std::int64_t number) {
  Query query(shop, "SELECT * FROM billet WHERE number = ?");
  query.bind(number);
  return first_row(std::move(query), billet_from);
}

std::vector<KeptBillet> list_billets(const ShopFile& shop) {
  Query query(shop, "SELECT * FROM billet ORDER BY number DESC");
  std::vector<KeptBillet> billets;
  while (query.next()) billets.push_back(billet_from(query));
  return billets;
}

std::vector<KeptBilletPart> parts_of_billet(const ShopFile& shop, BilletId billet) {
  Query query(shop, "SELECT * FROM billet_part WHERE billet_id = ? ORDER BY position, id");
  query.bind(billet);
  std::vector<KeptBilletPart> parts;
  while (query.next())
    parts.push_back(
        {query.id<BilletPartId>("id"), BilletPart{.billet = billet,
                                                  .position = query.integer("position"),
                                                  .piece = query.id<PieceId>("piece_id"),
                                                  .role = query.word<BilletRole>("role"),
                                                  .layers = query.integer("layers"),
                                                  .mass = query.mass("mass_ug")}});
  return parts;
}

std::vector<KeptWeldStage> stages_of_billet(const ShopFile& shop, BilletId billet) {
  Query query(shop, "SELECT * FROM weld_stage WHERE billet_id = ? ORDER BY number");
  query.bind(billet);
  std::vector<KeptWeldStage> stages;
  while (query.next()) stages.push_back(stage_from(query));
  return stages;
}

std::optional<KeptMelt> melt_of_billet(const ShopFile& shop, BilletId billet) {
  Query query(shop, "SELECT * FROM melt WHERE billet_id = ?");
  query.bind(billet);
  if (!query.next()) return std::nullopt;
  return KeptMelt{query.id<MeltId>("id"), Melt{.billet = billet,
                                               .at = query.instant("at"),
                                               .entered_at = query.instant("entered_at"),
                                               .charge = query.text("charge"),
                                               .charge_mass = query.mass("charge_ug"),
                                               .lining = query.text("lining"),
                                               .peak = query.temperature("peak_k1800"),
                                               .at_peak = query.duration("at_peak_s"),
                                               .cooled = query.maybe_text("cooled"),
                                               .ingot_mass = query.mass("ingot_ug"),
                                               .carbon = query.maybe_share("carbon_ppm"),
                                               .carbon_how = query.maybe_text("carbon_how"),
                                               .who = query.maybe_text("who")}};
}

BilletId insert_billet(const ShopFile& shop, const Billet& billet) {
  Row row("billet");
  row.set("number", billet.number).set_word("kind", billet.kind).set("name", billet.name);
  row.set("made_by", billet.made_by).set("started_at", billet.started_at);
  row.set("finished_at", billet.finished_at).set("layers", billet.layers);
  row.set("pattern", billet.pattern)
      .set("scrapped_at", billet.scrapped_at)
      .set("note", billet.note);
  return BilletId{row.insert(shop)};
}

BilletPartId insert_billet_part(const ShopFile& shop, const BilletPart& part) {
  Row row("billet_part");
  row.set("billet_id", part.billet).set("position", part.position).set("piece_id", part.piece);
  row.set_word("role", part.role).set("layers", part.layers).set("mass_ug", part.mass);
  return BilletPartId{row.insert(shop)};
}

WeldStageId insert_weld_stage(const ShopFile& shop, const WeldStage& stage) {
  Row row("weld_stage");
  row.set("billet_id", stage.billet).set("number", stage.number).set("at", stage.at);
  row.set("entered_at", stage.entered_at).set_word("operation", stage.operation);
  row.set("pieces", stage.pieces)
      .set("mass_in_ug", stage.mass_in)
      .set("mass_out_ug", stage.mass_out);
  row.set("crop_ug", stage.crop).set("scale_ug", stage.scale).set("swarf_ug", stage.swarf);
  row.set("gap_ug", stage.gap).set("thickness_nm", stage.thickness);
  row.set("temperature_k1800", stage.temperature).set("flux", stage.flux).set("who", stage.who);
  row.set("hands_on_s", stage.hands_on).set("note", stage.note);
  return WeldStageId{row.insert(shop)};
}

MeltId insert_melt(const ShopFile& shop, const Melt& melt) {
  Row row("melt");
  row.set("billet_id", melt.billet).set("at", melt.at).set("entered_at", melt.entered_at);
  row.set("charge", melt.charge).set("charge_ug", melt.charge_mass).set("lining", melt.lining);
  row.set("peak_k1800", melt.peak).set("at_peak_s", melt.at_peak).set("cooled", melt.cooled);
  row.set("ingot_ug", melt.ingot_mass).set("carbon_ppm", melt.carbon);
  row.set("carbon_how", melt.carbon_how).set("who", melt.who);
  return MeltId{row.insert(shop)};
}

void store_billet_layers(const ShopFile& shop, BilletId id, std::int64_t layers) {
  Row("billet").set("layers", layers).update(shop, id.row());
}

void store_billet_finish(const ShopFile& shop, BilletId id, Instant at,
                         const std::optional<std::string>& pattern) {
  Row row("billet");
  row.set("finished_at", at);
  if (pattern) row.set("pattern", pattern);
  row.update(shop, id.row());
}

Mass mass_of_billet(const ShopFile& shop, BilletId billet) {
  const auto stages = stages_of_billet(shop, billet);
  if (!stages.empty()) return stages.back().mass_out;
  if (const auto melt = melt_of_billet(shop, billet)) return melt->ingot_mass;
  Mass sum;
  for (const KeptBilletPart& part : parts_of_billet(shop, billet)) sum = sum + part.mass;
  return sum;
}

std::optional<std::int64_t> layers_by_stages(const ShopFile& shop, const KeptBillet& billet) {
  if (billet.kind == BilletKind::ingot || billet.kind == BilletKind::smelted) return std::nullopt;
  std::int64_t start = 0;
  for (const KeptBilletPart& part : parts_of_billet(shop, billet.id))
    if (part.role != BilletRole::charge) start += part.layers;
  std::vector<steel::Restack> restacks;
  for (const KeptWeldStage& stage : stages_of_billet(shop, billet.id)) {
    if (stage.operation == StageWork::fold) restacks.push_back({2});
    if (stage.operation == StageWork::cut && stage.pieces > 1) restacks.push_back({stage.pieces});
  }
  const auto layers = steel::nominal_layers(start, restacks);
  if (!layers) return std::nullopt;
  return *layers;
}

}  // namespace tangmark::db
