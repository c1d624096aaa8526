// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "db/shop_file.h"
#include "domain/commission/model.h"
#include "domain/commission/shop_settings.h"
#include "domain/costing/learning.h"
#include "domain/costing/loss_rate.h"
#include "domain/measure/trade_word.h"

namespace tangmark::db {

/// Which figure of a model the record speaks about. Times are in seconds in the file, the rest in
/// millionths.
enum class Learns { hands_on, attended, survival, use };

/// A figure of a model that the record would change. Nothing changes until the maker accepts it.
struct ModelProposal {
  commission::KeptModel model;
  Learns what = Learns::hands_on;
  std::string of;       ///< the operation, or what is used
  std::string unit;     ///< of the figures below: "h", "belts", "%"
  double now = 0;       ///< what the model holds today
  double proposed = 0;  ///< the guess drawn toward the record
  std::size_t n = 0;    ///< pieces on record
  std::string why;      ///< spread and counts, in words
  std::string spread;   ///< the same, short: "0.78 to 0.98", "0 of 10, 0.0 to 30.8 %"
  std::int64_t guess_stored = 0, now_stored = 0, proposed_stored = 0;
};

/// Every proposal, by model and in the order of its route. Hours and uses: three finished pieces or
/// more, and 5 % off. Losses: drawn from ten blades' worth of guess, with the exact band; when the
/// model's survival lies more than half a point away.
std::vector<ModelProposal> model_proposals(const ShopFile& shop,
                                           std::optional<commission::ModelId> model);

/// The load of one kind of firing, by the firings that are done; taken with expect_load.
struct LoadProposal {
  std::string kind;  ///< "harden"
  std::int64_t now = 0, proposed = 0;
  std::size_t n = 0;  ///< firings on record
  std::string why, spread;
};

/// How many blades the maker expects in a firing of a kind ("harden", "soak", "anneal"); none where
/// the shop's usual load holds.
std::optional<std::int64_t> expected_load(const ShopFile& shop, std::string_view kind);
void store_expected_load(const ShopFile& shop, std::string_view kind, std::int64_t blades);

/// Three firings of a kind or more, and a whole blade off what a quote shares by today.
std::vector<LoadProposal> load_proposals(const ShopFile& shop,
                                         const commission::ShopSettings& settings);

/// Puts a proposal into the model; what it was and why stays on record.
void accept_proposal(const ShopFile& shop, const ModelProposal& proposal, Instant at);

/// What a figure was before the model ever learned; none when it never did.
std::optional<std::int64_t> guess_before_learning(const ShopFile& shop, commission::ModelId model,
                                                  Learns what, std::string_view of);

/// How many blades of a model came to an operation, and how many were lost there: scrapped with it
/// as the last thing in their log.
costing::LossRecord losses_on_record(const ShopFile& shop, commission::ModelId model,
                                     std::string_view operation);

}  // namespace tangmark::db

namespace tangmark {
template <>
inline constexpr auto trade_words<db::Learns> =
    std::array{std::pair{db::Learns::hands_on, std::string_view{"hands-on"}},
               std::pair{db::Learns::attended, std::string_view{"attended"}},
               std::pair{db::Learns::survival, std::string_view{"survival"}},
               std::pair{db::Learns::use, std::string_view{"use"}}};
}  // namespace tangmark
