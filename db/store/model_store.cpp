// SPDX-License-Identifier: MIT
#include "db/store/model_store.h"

#include "db/row.h"

namespace tangmark::db {
namespace {

using namespace commission;

KeptModel model_from(const Query& row) {
  Model model;
  model.name = row.text("name");
  model.description = row.maybe_text("description");
  model.construction = row.word<Construction>("construction");
  model.grade = row.maybe_text("grade");
  model.blade_length = row.length("blade_length_nm");
  model.blank_length = row.length("blank_length_nm");
  model.blank_width = row.length("blank_width_nm");
  model.blank_thickness = row.length("blank_thickness_nm");
  model.yield = row.share("yield_ppm");
  model.price = row.maybe_money("price_minor", "currency");
  model.price_per_mm = row.maybe_money("price_per_mm_minor", "currency");
  model.currency = row.currency("currency");
  model.hardness_aim = row.maybe_text("hardness_aim");
  model.retired_on = row.maybe_date("retired_on");
  return {row.id<ModelId>("id"), std::move(model)};
}

KeptModelStep step_from(const Query& row) {
  ModelStep step{.model = row.id<ModelId>("model_id")};
  step.position = row.integer("position");
  step.operation = row.text("operation");
  step.hands_on = row.duration("hands_on_s");
  step.attended = row.duration("attended_s");
  step.unattended = row.duration("unattended_s");
  step.survival = row.share("survival_ppm");
  step.temperature = row.maybe_temperature("temperature_k1800");
  step.low = row.maybe_temperature("low_k1800");
  step.high = row.maybe_temperature("high_k1800");
  step.soak = row.maybe_duration("soak_s");
  step.soak_max = row.maybe_duration("soak_max_s");
  step.medium = row.maybe_text("medium");
  step.gap_max = row.maybe_duration("gap_max_s");
  step.cool_per_h = row.maybe_difference("cool_k1800_per_h");
  step.cool_to = row.maybe_temperature("cool_to_k1800");
  step.unattended_allowed = row.yes("unattended_allowed");
  step.note = row.maybe_text("note");
  return {row.id<ModelStepId>("id"), std::move(step)};
}

}  // namespace

std::optional<KeptModel> load_model(const ShopFile& shop, ModelId id) {
  Query query(shop, "SELECT * FROM model WHERE id = ?");
  query.bind(id);
  return first_row(std::move(query), model_from);
}

std::optional<KeptModel> find_model(const ShopFile& shop, std::string_view name) {
  Query query(shop, "SELECT * FROM model WHERE name = ? COLLATE NOCASE");
  query.bind(name);
  return first_row(std::move(query), model_from);
}

std::vector<KeptModel> list_models(const ShopFile& shop) {
  Query query(shop, "SELECT * FROM model WHERE retired_on IS NULL ORDER BY name");
  std::vector<KeptModel> models;
  while (query.next()) models.push_back(model_from(query));
  return models;
}

std::vector<KeptModelStep> steps_of_model(const ShopFile& shop, ModelId model) {
  Query query(shop, "SELECT * FROM model_step WHERE model_id = ? ORDER BY position");
  query.bind(model);
  std::vector<KeptModelStep> steps;
  while (query.next()) steps.push_back(step_from(query));
  return steps;
}

std::vector<KeptModelUse> uses_of_model(const ShopFile& shop, ModelId model) {
  Query query(shop,
              "SELECT model_use.*, model.currency AS currency FROM model_use JOIN model "
              "ON model.id = model_use.model_id WHERE model_id = ? ORDER BY position");
  query.bind(model);
  std::vector<KeptModelUse> uses;
  while (query.next())
    uses.push_back(
        {query.id<ModelUseId>("id"), ModelUse{.model = model,
                                              .position = query.integer("position"),
                                              .kind = query.word<UseKind>("kind"),
                                              .text = query.text("text"),
                                              .quantity = query.share("quantity_ppm"),
                                              .unit = query.text("unit"),
                                              .each = query.money("each_minor", "currency"),
                                              .low = query.maybe_share("low_ppm"),
                                              .high = query.maybe_share("high_ppm")}});
  return uses;
}

ModelId insert_model(const ShopFile& shop, const Model& model) {
  Row row("model");
  row.set("name", model.name).set("description", model.description);
  row.set_word("construction", model.construction).set("grade", model.grade);
  row.set("blade_length_nm", model.blade_length).set("blank_length_nm", model.blank_length);
  row.set("blank_width_nm", model.blank_width).set("blank_thickness_nm", model.blank_thickness);
  row.set("yield_ppm", model.yield).set("price_minor", model.price);
  row.set("currency", model.currency.code()).set("price_per_mm_minor", model.price_per_mm);
  row.set("hardness_aim", model.hardness_aim).set("retired_on", model.retired_on);
  return ModelId{row.insert(shop)};
}

ModelStepId insert_model_step(const ShopFile& shop, const ModelStep& step) {
  Row row("model_step");
  row.set("model_id", step.model).set("position", step.position).set("operation", step.operation);
  row.set("hands_on_s", step.hands_on).set("attended_s", step.attended);
  row.set("unattended_s", step.unattended).set("survival_ppm", step.survival);
  row.set("temperature_k1800", step.temperature)
      .set("low_k1800", step.low)
      .set("high_k1800", step.high);
  row.set("soak_s", step.soak).set("soak_max_s", step.soak_max).set("medium", step.medium);
  row.set("gap_max_s", step.gap_max).set("cool_k1800_per_h", step.cool_per_h);
  row.set("cool_to_k1800", step.cool_to).set("unattended_allowed", step.unattended_allowed);
  row.set("note", step.note);
  return ModelStepId{row.insert(shop)};
}

ModelUseId insert_model_use(const ShopFile& shop, const ModelUse& use) {
  Row row("model_use");
  row.set("model_id", use.model).set("position", use.position).set_word("kind", use.kind);
  row.set("text", use.text).set("quantity_ppm", use.quantity).set("unit", use.unit);
  row.set("each_minor", use.each).set("low_ppm", use.low).set("high_ppm", use.high);
  return ModelUseId{row.insert(shop)};
}

}  // namespace tangmark::db
