// SPDX-License-Identifier: MIT
#include "gui/desk/family.h"

#include <algorithm>
#include <map>
#include <set>

#include "db/listing/stock_rows.h"

namespace tangmark::desk {
namespace {

struct Step {
  StockName from, to;
};

std::vector<Step> steps_of(const Sight& sight) {
  std::vector<Step> steps;
  for (const db::FamilyRow& row : db::family_rows(sight.shop)) {
    steps.push_back({{row.kind, row.from}, {row.to_kind, row.to}});
  }
  return steps;
}

// Everything reached from `start` along the steps, forward or backward, `start` itself too.
std::set<StockName> reached(const std::vector<Step>& steps, const StockName& start, bool forward) {
  std::set<StockName> found{start};
  std::vector<StockName> open{start};
  while (!open.empty()) {
    const StockName at = open.back();
    open.pop_back();
    for (const Step& step : steps) {
      const StockName& near = forward ? step.from : step.to;
      const StockName& far = forward ? step.to : step.from;
      if (near == at && found.insert(far).second) open.push_back(far);
    }
  }
  return found;
}

// The column of each member: one further right than anything it came from.
std::map<StockName, int> columns_of(const std::vector<Step>& steps,
                                    const std::set<StockName>& members) {
  std::map<StockName, int> column;
  for (const StockName& member : members) column[member] = 0;
  for (std::size_t round = 0; round < members.size(); ++round) {
    bool moved = false;
    for (const Step& step : steps) {
      if (column[step.to] > column[step.from]) continue;
      column[step.to] = column[step.from] + 1;
      moved = true;
    }
    if (!moved) break;
  }
  return column;
}

FamilyMember member_of(const Sight& sight, const StockName& name) {
  FamilyMember member;
  member.title = name.kind + " " + name.name;
  member.title.front() = static_cast<char>(member.title.front() - 'a' + 'A');
  member.go = name.kind == "blade" ? GoTo{Place::blades, name.name}
                                   : GoTo{Place::steel, name.kind + " " + name.name};
  if (name.kind == "piece") {
    for (const db::PieceRow& piece : db::all_pieces(sight.shop)) {
      if (piece.tag != name.name) continue;
      member.under = piece.state;
      if (piece.length) member.under = words(sight, *piece.length) + ", " + piece.state;
      member.gone = piece.state != "on hand" && piece.state != "blank";
    }
  }
  if (name.kind == "lot") {
    for (const db::LotRow& lot : db::lot_rows(sight.shop)) {
      if (std::to_string(lot.number) == name.name)
        member.under = lot.grade.empty() ? lot.name : lot.grade;
    }
  }
  if (name.kind == "billet") {
    for (const db::BilletRow& billet : db::billet_rows(sight.shop)) {
      if (std::to_string(billet.number) != name.name) continue;
      member.under = billet.layers ? std::to_string(*billet.layers) + " layers" : billet.kind;
      member.gone = billet.scrapped;
    }
  }
  return member;
}

}  // namespace

FamilyTree family_of(const Sight& sight, const StockName& name) {
  std::vector<Step> steps = steps_of(sight);
  std::set<StockName> members = reached(steps, name, false);
  members.merge(reached(steps, name, true));
  std::erase_if(
      steps, [&](const Step& s) { return !members.contains(s.from) || !members.contains(s.to); });
  const std::map<StockName, int> columns = columns_of(steps, members);

  FamilyTree tree;
  std::map<StockName, std::size_t> place;
  std::map<int, int> next_row;
  for (const StockName& each : members) {
    FamilyMember member = member_of(sight, each);
    member.column = columns.at(each);
    member.row = next_row[member.column]++;
    member.selected = each == name;
    place[each] = tree.members.size();
    tree.members.push_back(std::move(member));
  }
  for (const Step& step : steps) tree.links.push_back({place.at(step.from), place.at(step.to)});
  return tree;
}

}  // namespace tangmark::desk
