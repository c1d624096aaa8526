// SPDX-License-Identifier: MIT
#include "gui/desk/choices.h"

#include "db/listing/blade_rows.h"
#include "db/listing/commission_rows.h"
#include "db/listing/kiln_rows.h"
#include "db/listing/name_rows.h"
#include "db/listing/stock_rows.h"
#include "db/store/operation_store.h"

namespace tangmark::desk {
namespace {

constexpr std::size_t most = 400;  // beyond this a choice is slower than typing the number

std::vector<Choice> commissions(const Sight& sight) {
  std::vector<Choice> made;
  for (const db::CommissionRow& row : db::commission_rows(sight.shop)) {
    const std::string number = std::to_string(row.number);
    made.push_back({number, number + "  " + row.buyer + ", " + row.items + " (" + row.state + ")"});
  }
  return made;
}

std::vector<Choice> blades(const Sight& sight) {
  std::vector<Choice> made;
  for (const db::BladeRow& row : db::blades_in_shop(sight.shop)) {
    if (row.delivered || row.scrapped) continue;
    const std::string number = std::to_string(row.number);
    made.push_back({number, number + "  " + row.title});
  }
  return made;
}

std::vector<Choice> lots(const Sight& sight) {
  std::vector<Choice> made;
  for (const db::LotRow& row : db::lot_rows(sight.shop)) {
    const std::string number = std::to_string(row.number);
    made.push_back({number, number + "  " + row.name});
  }
  return made;
}

std::vector<Choice> pieces(const Sight& sight) {
  std::vector<Choice> made;
  for (const db::PieceRow& row : db::all_pieces(sight.shop)) {
    if (row.state != "on hand" && row.state != "blank") continue;
    std::string words = row.tag + "  " + (row.grade.empty() ? "not identified" : row.grade);
    if (row.length) words += ", " + desk::words(sight, *row.length);
    made.push_back({row.tag, words + ", " + row.state});
  }
  return made;
}

std::vector<Choice> billets(const Sight& sight) {
  std::vector<Choice> made;
  for (const db::BilletRow& row : db::billet_rows(sight.shop)) {
    if (row.scrapped) continue;
    const std::string number = std::to_string(row.number);
    made.push_back({number, number + "  " + (row.name.empty() ? row.kind : row.name)});
  }
  return made;
}

std::vector<Choice> kilns(const Sight& sight) {
  std::vector<Choice> made;
  for (const db::KilnRow& row : db::kiln_rows(sight.shop)) made.push_back({row.name, row.name});
  return made;
}

std::vector<Choice> firings(const Sight& sight) {
  std::vector<Choice> made;
  for (const db::FiringRow& row : db::all_firings(sight.shop)) {
    if (row.state != "booked" && row.state != "running") continue;
    const std::string number = std::to_string(row.number);
    made.push_back({number, number + "  " + row.kiln + ", " + words(sight, row.set) + ", " +
                                when(sight, row.starts_at)});
  }
  return made;
}

std::vector<Choice> operations(const Sight& sight) {
  std::vector<Choice> made;
  for (const db::ShopOperation& operation : db::all_operations(sight.shop)) {
    made.push_back({operation.name, sentence_case(operation.name)});
  }
  return made;
}

std::vector<Choice> named(std::vector<db::NamedRow> rows) {
  std::vector<Choice> made;
  for (const db::NamedRow& row : rows) {
    made.push_back({row.name, row.words.empty() ? row.name : row.name + "  " + row.words});
  }
  return made;
}

std::vector<Choice> all(db::FieldKind kind, const Sight& sight) {
  switch (kind) {
    case db::FieldKind::commission: return commissions(sight);
    case db::FieldKind::blade: return blades(sight);
    case db::FieldKind::lot: return lots(sight);
    case db::FieldKind::piece: return pieces(sight);
    case db::FieldKind::billet: return billets(sight);
    case db::FieldKind::kiln: return kilns(sight);
    case db::FieldKind::firing: return firings(sight);
    case db::FieldKind::bath: return named(db::bath_names(sight.shop));
    case db::FieldKind::item: return named(db::item_names(sight.shop));
    case db::FieldKind::model: return named(db::model_names(sight.shop));
    case db::FieldKind::customer: return named(db::customer_names(sight.shop));
    case db::FieldKind::finding: return named(db::finding_names(sight.shop));
    case db::FieldKind::operation: return operations(sight);
    case db::FieldKind::certificate: return named(db::certificate_names(sight.shop));
    default: return {};
  }
}

}  // namespace

std::vector<Choice> choices_of(db::FieldKind kind, const Sight& sight) {
  std::vector<Choice> made = all(kind, sight);
  if (made.size() > most) made.clear();
  return made;
}

}  // namespace tangmark::desk
