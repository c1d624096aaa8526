// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <optional>
#include <string>
#include <utility>

#include "db/shop_file.h"
#include "db/store/settings_store.h"
#include "gui/desk/cut_search.h"
#include "gui/desk/desk.h"
#include "gui/desk/kiln_desk.h"
#include "gui/desk/quote_desk.h"
#include "gui/desk/record_desk.h"
#include "gui/desk/sight.h"

namespace tangmark::desk {

/// The open shop and what the maker was looking at last. For the desk's own files only.
struct Desk::Inside {
  db::ShopFile shop;
  Clock clock;
  commission::ShopSettings settings;
  std::int64_t changes_seen;
  std::optional<KilnProposal> proposal{};
  KilnMemory kiln_memory{};
  std::optional<Sheet> answer{};      ///< of the question asked last, until it is put away
  std::optional<Sheet> worked_out{};  ///< on the steel desk last
  std::optional<LookedAtRecord> previewed{};  ///< until it is attached or another is looked at
  std::string quoting{};  ///< commission on the quote desk; empty when it is left
  std::optional<QuoteTyped> quote_typed{};  ///< there, since it was opened
  std::optional<SearchedCuts> cuts{};       ///< found by a longer search
  std::string beside{};  ///< "versions" or "pieces" while they are looked at
  std::map<std::string, PromiseView> promises{};  ///< as counted last, by commission

  std::optional<PromiseView> promise_of(const std::string& commission) const {
    const auto counted = promises.find(commission);
    if (counted == promises.end()) return std::nullopt;
    return counted->second;
  }
  Sight sight() const { return {shop, settings, clock()}; }
  /// What the quote being priced is made from, by commission, until anything changes.
  std::optional<std::pair<std::string, db::QuoteInputs>> priced{};

  // What a place shows, with what was looked at there last.
  PlaceView today(const std::string& id) const;
  PlaceView commissions(const std::string& id);
  PlaceView steel(const std::string& id) const;
  PlaceView kiln(const std::string& id);
  /// "board earlier", "board later" or "board now".
  void turn_board(const std::string& way);

  void look_again() {
    settings = db::load_settings(shop);
    priced.reset();
    kiln_memory.shop_changed();
  }
};

}  // namespace tangmark::desk
