// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <tuple>

#include "db/row.h"
#include "db/store/bench_time_store.h"
#include "db/store/commission_store.h"
#include "db/store/consumable_store.h"
#include "db/store/cutting_case.h"
#include "db/store/item_store.h"
#include "db/store/lot_store.h"
#include "db/store/model_store.h"
#include "db/store/promise_reader.h"
#include "db/store/promise_store.h"
#include "db/store/question_list.h"
#include "db/store/quote_item.h"
#include "db/store/reservation_store.h"
#include "db/store/settings_store.h"

namespace tangmark::db {
namespace {

using namespace commission;

// An item of the queue that has no blade yet, and the day its work should begin: the bench hours of
// everything before it, at the week's average.
struct Waiting {
  KeptItem item;
  KeptModel model;
  CalendarDate begins;
};

Duration bench_left(const QueuedBlade& blade) {
  Duration all{};
  for (std::size_t i = blade.next; i < blade.route.size(); ++i)
    all += blade.route[i].bench.quantile(0.5);
  return all;
}

double hours_a_day(const ShopFile& shop) {
  const BenchTime bench = load_bench_time(shop);
  Duration week{};
  for (unsigned day = 1; day <= 7; ++day) week += bench.on(date::weekday(day % 7));
  return std::max(0.1, static_cast<double>(week.count()) / 3600.0 / 7.0);
}

std::vector<Waiting> waiting_items(const ShopFile& shop, const ShopSettings& settings,
                                   Instant now) {
  const PromiseQueue queue = read_promise_queue(shop, now, std::nullopt);
  const double a_day = hours_a_day(shop);
  std::vector<Waiting> all;
  double before_h = 0;
  for (const QueuedBlade& blade : queue.blades) {
    // Odd keys are items without a blade, even ones blades (promise_reader.cpp).
    if (blade.key % 2 == 1) {
      const auto item = load_item(shop, ItemId{static_cast<std::int64_t>(blade.key / 2)});
      const auto model = item && item->model ? load_model(shop, *item->model) : std::nullopt;
      if (model) {
        const auto days = date::days(static_cast<int>(before_h / a_day));
        all.push_back(
            {*item, *model, CalendarDate(date::sys_days(settings.zone.date_of(now)) + days)});
      }
    }
    before_h += static_cast<double>(bench_left(blade).count()) / 3600.0;
  }
  return all;
}

struct Need {
  std::vector<Length> blanks;
  CalendarDate by;
  std::string items;
};
using Section = std::tuple<std::string, Length, Length>;  // grade, width, thickness

std::map<Section, Need> steel_needs(const ShopFile& shop, const std::vector<Waiting>& waiting) {
  std::map<Section, Need> needs;
  for (const Waiting& one : waiting) {
    bool has_steel = false;
    for (const auto& kept : reservations_of_item(shop, one.item.id))
      has_steel |= kept.piece.has_value();
    const auto grade = one.item.grade ? one.item.grade : one.model.grade;
    if (has_steel || !grade) continue;
    Need& need = needs[{*grade, one.model.blank_width, one.model.blank_thickness}];
    if (need.blanks.empty() || one.begins < need.by) need.by = one.begins;
    need.blanks.push_back(one.model.blank_length +
                          (one.item.blade_length - one.model.blade_length));
    need.items += (need.items.empty() ? "" : ", ") + std::to_string(one.item.id.row());
  }
  return needs;
}

// Free lengths of a section on the rack; a blank must come from one of them whole.
std::vector<Length> free_lengths(const ShopFile& shop, const Section& section) {
  const auto& [grade, width, thickness] = section;
  Query query(shop, R"(
SELECT piece.length_nm FROM piece JOIN lot ON lot.id = piece.lot_id
WHERE piece.state = 'on hand' AND piece.length_nm IS NOT NULL AND lot.owner_id IS NULL
  AND lot.grade = ? AND lot.thickness_nm = ? AND coalesce(piece.width_nm, lot.width_nm) >= ?
  AND NOT EXISTS(SELECT 1 FROM reservation WHERE piece_id = piece.id AND released_at IS NULL)
ORDER BY piece.length_nm)");
  query.bind(grade).bind(thickness).bind(width);
  std::vector<Length> all;
  while (query.next()) all.push_back(query.length("length_nm"));
  return all;
}

// The longest blanks first, each from the shortest bar that holds it: what no bar holds is bought.
std::vector<Length> not_on_the_rack(std::vector<Length> blanks, std::vector<Length> bars,
                                    Length kerf) {
  std::sort(blanks.rbegin(), blanks.rend());
  std::vector<Length> missing;
  for (const Length blank : blanks) {
    std::sort(bars.begin(), bars.end());
    const auto bar = std::find_if(bars.begin(), bars.end(), [&](Length l) { return l >= blank; });
    if (bar == bars.end()) {
      missing.push_back(blank);
      continue;
    }
    *bar = *bar > blank + kerf ? *bar - blank - kerf : Length();
  }
  return missing;
}

void add_steel(const ShopFile& shop, const std::vector<Waiting>& waiting,
               const ShopSettings& settings, Answer& answer) {
  for (const auto& [section, need] : steel_needs(shop, waiting)) {
    const auto missing = not_on_the_rack(need.blanks, free_lengths(shop, section), settings.kerf);
    if (missing.empty()) continue;
    Length sum;
    for (const Length length : missing) sum = sum + length + settings.kerf;
    const auto& [grade, width, thickness] = section;
    const auto text = [&](Length l) { return to_text(l, settings.length_unit); };
    answer.rows.push_back(
        {grade, text(width) + " x " + text(thickness), text(sum),
         fmt::format("{} {}, the longest {}", missing.size(),
                     missing.size() == 1 ? "blank" : "blanks", text(missing.front())),
         to_stored(need.by),
         (need.items.find(',') == std::string::npos ? "item " : "items ") + need.items});
  }
}

void add_consumables(const ShopFile& shop, const std::vector<Waiting>& waiting, Answer& answer) {
  struct Wanted {
    std::int64_t quantity = 0;
    CalendarDate by;
  };
  std::map<std::pair<std::string, std::string>, Wanted> wanted;
  for (const Waiting& one : waiting)
    for (const auto& use : uses_of_model(shop, one.model.id)) {
      if (use.kind == UseKind::made_elsewhere) continue;
      Wanted& sum = wanted[{use.text, use.unit}];
      if (sum.quantity == 0 || one.begins < sum.by) sum.by = one.begins;
      sum.quantity += use.quantity.millionths();
    }
  for (const auto& level : consumable_levels(shop)) {
    const auto found = wanted.find({level.name, level.unit});
    const std::int64_t queue = found == wanted.end() ? 0 : found->second.quantity;
    const std::int64_t floor = level.floor ? level.floor->millionths() : 0;
    const std::int64_t short_by = queue + floor - level.left.millionths();
    if (short_by <= 0) continue;
    answer.rows.push_back({level.name, std::string(word_of(level.kind)),
                           quantity_text(Share::millionths(short_by)) + " " + level.unit,
                           quantity_text(level.left) + " left, " +
                               quantity_text(Share::millionths(queue)) + " for the queue, floor " +
                               quantity_text(Share::millionths(floor)),
                           found == wanted.end() ? "" : to_stored(found->second.by), ""});
  }
}

Outcome<Answer> answer_36(const ShopFile& shop, const Given&, Instant now) {
  const auto settings = load_settings(shop);
  const auto waiting = waiting_items(shop, settings, now);
  Answer answer{"What must I buy for the queue?",
                {},
                {"What", "Section or kind", "Buy", "Because", "By", "For"},
                {}};
  add_steel(shop, waiting, settings, answer);
  add_consumables(shop, waiting, answer);
  answer.sentences.push_back(
      waiting.size() == 1
          ? "1 item of the queue has no blade yet."
          : fmt::format("{} items of the queue have no blade yet.", waiting.size()));
  answer.sentences.push_back(
      answer.rows.empty() ? "The rack and the shelves hold what they need."
                          : "The day is when work on the first of them should begin by the bench "
                            "hours of what stands before it; the supplier's time comes off it.");
  return answer;
}

}  // namespace

const Question question_36{
    36, "What must I buy for the queue, how much, and by when?", {}, answer_36};

}  // namespace tangmark::db
