// SPDX-License-Identifier: MIT
#include "db/store/learning_store.h"

#include <fmt/format.h>

#include <cmath>
#include <set>

#include "db/row.h"
#include "db/store/model_store.h"

namespace tangmark::db {
namespace {

using namespace commission;

constexpr double per_hour = 3600.0;

// One figure for each finished blade, corrections applied; `column` of its log, summed.
std::vector<double> log_sums(const ShopFile& shop, ModelId model, std::string_view operation,
                             const std::string& column) {
  Query query(shop, "SELECT sum(entry." + column + ") AS figure FROM log_entry AS entry " + R"(
JOIN blade ON blade.id = entry.blade_id
WHERE blade.model_id = ? AND (? = '' OR entry.operation = ?) AND entry.operation <> 'struck out'
  AND blade.finished_at IS NOT NULL AND blade.scrapped_at IS NULL
  AND NOT EXISTS(SELECT 1 FROM log_entry AS later WHERE later.supersedes_id = entry.id)
GROUP BY blade.id HAVING figure > 0 ORDER BY blade.id)");
  query.bind(model).bind(operation).bind(operation);
  std::vector<double> all;
  while (query.next()) all.push_back(static_cast<double>(query.integer("figure")));
  return all;
}

// What was noted as used of a thing, by blade.
std::vector<double> noted_uses(const ShopFile& shop, ModelId model, const ModelUse& use) {
  Query query(shop, R"(
SELECT sum(consumable_use.quantity_ppm) AS figure FROM consumable_use
JOIN lot ON lot.id = consumable_use.lot_id JOIN blade ON blade.id = consumable_use.blade_id
WHERE blade.model_id = ? AND lot.name = ? AND lot.unit = ? AND blade.finished_at IS NOT NULL
  AND blade.scrapped_at IS NULL GROUP BY blade.id ORDER BY blade.id)");
  query.bind(model).bind(use.text).bind(use.unit);
  std::vector<double> all;
  while (query.next()) all.push_back(static_cast<double>(query.integer("figure")) / 1e6);
  return all;
}

std::vector<double> uses_on_record(const ShopFile& shop, ModelId model, const ModelUse& use) {
  auto noted = noted_uses(shop, model, use);
  if (!noted.empty()) return noted;
  const bool gas = use.kind == UseKind::gas && use.unit == "kg";
  const bool belts = use.unit.starts_with("belt") || use.text.find("belt") != std::string::npos;
  if (!gas && !belts) return {};
  auto logged = log_sums(shop, model, "", gas ? "gas_ug" : "belts_ppm");
  for (double& figure : logged) figure /= gas ? 1e9 : 1e6;
  return logged;
}

// Half of the record lies between.
std::string spread_of(const costing::Estimate& estimate) {
  if (!estimate.record) return "";
  return fmt::format("{:.2f} to {:.2f}", estimate.record->low_quarter,
                     estimate.record->high_quarter);
}

std::string short_words_of(const costing::LossRate& rate) {
  return fmt::format("{}, {:.1f} to {:.1f} %", rate.counts(), 100 * rate.low, 100 * rate.high);
}

struct Route {
  std::vector<KeptModelStep> steps;
  std::size_t count(const std::string& operation) const {
    std::size_t n = 0;
    for (const auto& step : steps) n += step.operation == operation ? 1 : 0;
    return n;
  }
};

void add_time(const ShopFile& shop, const KeptModel& model, const Route& route,
              const KeptModelStep& step, Learns what, std::vector<ModelProposal>& all) {
  const bool hands = what == Learns::hands_on;
  const Duration now = hands ? step.hands_on : step.attended;
  if (now <= Duration()) return;
  auto actuals = log_sums(shop, model.id, step.operation, hands ? "hands_on_s" : "attended_s");
  const auto times = static_cast<double>(route.count(step.operation));
  for (double& actual : actuals) actual /= per_hour * times;
  const std::int64_t guess =
      guess_before_learning(shop, model.id, what, step.operation).value_or(now.count());
  const auto estimate = costing::estimate(static_cast<double>(guess) / per_hour, actuals);
  const double held = static_cast<double>(now.count()) / per_hour;
  if (actuals.size() < 3 || std::abs(estimate.figure - held) <= 0.05 * held) return;
  all.push_back({model, what, step.operation, "h", held, estimate.figure, estimate.n,
                 estimate.why(), spread_of(estimate), guess, now.count(),
                 std::llround(estimate.figure * per_hour)});
}

std::string words_of(const costing::LossRate& rate) {
  return fmt::format("{} lost; the true rate lies between {:.1f} and {:.1f} %, 95 times of 100.",
                     rate.counts(), 100 * rate.low, 100 * rate.high);
}

// The record knows how many blades an operation cost in all; a step that stands on the route more
// than once has its part of that each time.
Share to_the_power(Share survival, double power) {
  return Share::millionths(std::llround(1e6 * std::pow(survival.fraction(), power)));
}
Share in_all(Share each_time, std::size_t times) {
  return times > 1 ? to_the_power(each_time, static_cast<double>(times)) : each_time;
}
Share each_time(Share in_all, std::size_t times) {
  return times > 1 ? to_the_power(in_all, 1.0 / static_cast<double>(times)) : in_all;
}

void add_loss(const ShopFile& shop, const KeptModel& model, const Route& route,
              const KeptModelStep& step, std::vector<ModelProposal>& all) {
  const auto record = losses_on_record(shop, model.id, step.operation);
  const auto rate = costing::loss_rate(record);
  if (!rate || record.of < 3) return;
  const std::int64_t guess = guess_before_learning(shop, model.id, Learns::survival, step.operation)
                                 .value_or(step.survival.millionths());
  const std::size_t times = route.count(step.operation);
  const Share proposed = each_time(
      costing::survival_estimate(in_all(Share::millionths(guess), times), record), times);
  if (std::llabs(proposed.millionths() - step.survival.millionths()) <= 5'000) return;
  all.push_back({model, Learns::survival, step.operation, "%", 100 * step.survival.fraction(),
                 100 * proposed.fraction(), static_cast<std::size_t>(record.of), words_of(*rate),
                 short_words_of(*rate), guess, step.survival.millionths(), proposed.millionths()});
}

void add_use(const ShopFile& shop, const KeptModel& model, const KeptModelUse& use,
             std::vector<ModelProposal>& all) {
  const auto actuals = uses_on_record(shop, model.id, use);
  if (actuals.size() < 3 || use.quantity <= Share()) return;
  const std::int64_t guess = guess_before_learning(shop, model.id, Learns::use, use.text)
                                 .value_or(use.quantity.millionths());
  const auto estimate = costing::estimate(static_cast<double>(guess) / 1e6, actuals);
  const double held = use.quantity.fraction();
  if (std::abs(estimate.figure - held) <= 0.05 * held) return;
  all.push_back({model, Learns::use, use.text, use.unit, held, estimate.figure, estimate.n,
                 estimate.why(), spread_of(estimate), guess, use.quantity.millionths(),
                 std::llround(estimate.figure * 1e6)});
}

void add_model(const ShopFile& shop, const KeptModel& model, std::vector<ModelProposal>& all) {
  const Route route{steps_of_model(shop, model.id)};
  std::set<std::string> seen;
  for (const KeptModelStep& step : route.steps) {
    if (!seen.insert(step.operation).second) continue;
    add_time(shop, model, route, step, Learns::hands_on, all);
    add_time(shop, model, route, step, Learns::attended, all);
    add_loss(shop, model, route, step, all);
  }
  for (const KeptModelUse& use : uses_of_model(shop, model.id)) add_use(shop, model, use, all);
}

}  // namespace

std::vector<ModelProposal> model_proposals(const ShopFile& shop, std::optional<ModelId> model) {
  std::vector<ModelProposal> all;
  for (const KeptModel& one : list_models(shop))
    if (!model || one.id == *model) add_model(shop, one, all);
  return all;
}

void accept_proposal(const ShopFile& shop, const ModelProposal& proposal, Instant at) {
  Row("learnt")
      .set("model_id", proposal.model.id)
      .set_word("what", proposal.what)
      .set("of", proposal.of)
      .set("guess", proposal.guess_stored)
      .set("before", proposal.now_stored)
      .set("figure", proposal.proposed_stored)
      .set("n", static_cast<std::int64_t>(proposal.n))
      .set("at", at)
      .insert(shop);
  if (proposal.what == Learns::use) {
    for (const KeptModelUse& use : uses_of_model(shop, proposal.model.id))
      if (use.text == proposal.of)
        Row("model_use").set("quantity_ppm", proposal.proposed_stored).update(shop, use.id.row());
    return;
  }
  const char* column = proposal.what == Learns::hands_on   ? "hands_on_s"
                       : proposal.what == Learns::attended ? "attended_s"
                                                           : "survival_ppm";
  for (const KeptModelStep& step : steps_of_model(shop, proposal.model.id))
    if (step.operation == proposal.of)
      Row("model_step").set(column, proposal.proposed_stored).update(shop, step.id.row());
}

std::optional<std::int64_t> guess_before_learning(const ShopFile& shop, ModelId model, Learns what,
                                                  std::string_view of) {
  Query query(
      shop,
      "SELECT guess FROM learnt WHERE model_id = ? AND what = ? AND of = ? ORDER BY id LIMIT 1");
  query.bind(model).bind(word_of(what)).bind(of);
  if (!query.next()) return std::nullopt;
  return query.integer("guess");
}

costing::LossRecord losses_on_record(const ShopFile& shop, ModelId model,
                                     std::string_view operation) {
  // Entry by entry of each blade, by its index: a list of all that stands would be made anew for
  // every question, and a quote asks one for each operation.
  Query query(shop, R"(
SELECT count(*) AS through,
  coalesce(sum(blade.scrapped_at IS NOT NULL AND (SELECT last.operation FROM log_entry AS last
    WHERE last.blade_id = blade.id AND last.operation <> 'struck out'
      AND NOT EXISTS(SELECT 1 FROM log_entry AS later WHERE later.supersedes_id = last.id)
    ORDER BY last.started_at DESC, last.id DESC LIMIT 1) = ?1), 0) AS lost
FROM blade WHERE blade.model_id = ?2
  AND EXISTS(SELECT 1 FROM log_entry AS entry WHERE entry.blade_id = blade.id
    AND entry.operation = ?1
    AND NOT EXISTS(SELECT 1 FROM log_entry AS later WHERE later.supersedes_id = entry.id)))");
  query.bind(operation).bind(model);
  query.next();
  return {query.integer("lost"), query.integer("through")};
}

}  // namespace tangmark::db
