// SPDX-License-Identifier: MIT
#include "db/store/commission_store.h"
#include "db/store/lot_store.h"
#include "db/store/named.h"
#include "db/store/question_list.h"
#include "db/store/settings_store.h"
#include "domain/stock/species_watch.h"

namespace tangmark::db {
namespace {

using namespace stock;

// The handle of an item with its destination, or a species typed with a country.
Outcome<HandleAbroad> read_handle(const ShopFile& shop, const Given& given) {
  HandleAbroad handle{given_text(given, "species").value_or(""), "", "",
                      load_settings(shop).country, given_text(given, "country").value_or("")};
  if (given_text(given, "item")) {
    const auto item = given_thing(shop, given, "item", item_named);
    if (!item) return item.problems();
    if (handle.species.empty()) handle.species = item->handle.value_or("");
    if (const auto lot = item->handle_lot ? load_lot(shop, *item->handle_lot) : std::nullopt) {
      handle.species = lot->species.value_or(lot->name);
      handle.latin = lot->species_latin.value_or("");
      handle.papers = lot->papers.value_or("");
    }
    const auto commission =
        item->commission ? load_commission(shop, *item->commission) : std::nullopt;
    if (handle.destination.empty() && commission)
      handle.destination = commission->destination.value_or("");
  }
  if (handle.species.empty() && handle.latin.empty())
    return Problem{"item", "No handle material is named.", "Write item=7, or species=cocobolo."};
  if (handle.destination.empty())
    return Problem{"country", "No country is named.", "Write country=Canada."};
  return handle;
}

Outcome<Answer> answer_19(const ShopFile& shop, const Given& given, Instant) {
  const auto handle = read_handle(shop, given);
  if (!handle) return handle.problems();
  Answer answer{
      "May this handle go to " + handle->destination + "?", {}, {"Fact", "On record"}, {}};
  answer.rows = {{"species", handle->species},
                 {"Latin name", handle->latin},
                 {"papers on file", handle->papers.empty() ? "none" : handle->papers},
                 {"watch list of", to_stored(watch_list_day())}};
  if (const auto caught = watched_species_abroad(*handle)) {
    answer.sentences = {caught->sentence, caught->remedy};
  } else if (!goes_abroad(handle->home, handle->destination)) {
    answer.sentences.push_back(
        "It stays in the country; rules of your own country may still hold.");
  } else {
    answer.sentences.push_back(
        "It is not on the watch list; the list is short and may be out of date.");
    answer.sentences.push_back("Verify with your authority and the buyer's before it is promised.");
  }
  if (handle->latin.empty())
    answer.sentences.push_back("No Latin name is on record, and customs go by Latin names.");
  return answer;
}

}  // namespace

const Question question_19{
    19,
    "May this handle go to that country, and what papers do I hold?",
    {{"item", "Item", FieldKind::item, false, "7"},
     {"species", "Or species", FieldKind::text, false, "cocobolo"},
     {"country", "Country", FieldKind::text, false, "Canada; the commission's when not given"}},
    answer_19};

}  // namespace tangmark::db
