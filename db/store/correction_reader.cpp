// SPDX-License-Identifier: MIT
#include "db/store/correction_reader.h"

#include <array>

#include "db/row.h"
#include "db/store/settings_store.h"
#include "domain/certificate/dossier_words.h"

namespace tangmark::db {
namespace {

namespace cert = certificate;

enum class As { text, length, yes_no };

/// A column whose value a certificate prints, by the words it has there.
struct Printed {
  const char* table;
  const char* column;
  const char* words;
  As as = As::text;
};

constexpr std::array printed{
    Printed{"blade", "title", "title"},
    Printed{"blade", "length_nm", "length", As::length},
    Printed{"blade", "width_nm", "height", As::length},
    Printed{"blade", "thickness_nm", "thickness", As::length},
    Printed{"lot", "supplier", "supplier"},
    Printed{"lot", "grade", "grade"},
    Printed{"lot", "melt_number", "melt number"},
    Printed{"lot", "mark_words", "mark on the bar"},
    Printed{"lot", "name", "name"},
    Printed{"lot", "species", "species"},
    Printed{"lot", "species_latin", "Latin name"},
    Printed{"lot", "source", "source"},
    Printed{"lot", "papers", "papers"},
    Printed{"finding", "words", "words"},
    Printed{"finding", "place", "place"},
    Printed{"finding", "side", "side"},
    Printed{"finding", "size_nm", "size", As::length},
    Printed{"finding", "affects", "whether it affects the blade", As::yes_no},
    Printed{"item", "title", "what it is"},
    Printed{"item", "handle", "handle"},
};

class CorrectionGatherer {
 public:
  CorrectionGatherer(const ShopFile& shop, std::vector<cert::Correction>& all)
      : shop_(shop), settings_(load_settings(shop)), all_(all) {}

  void of_row(const std::string& table, std::int64_t row, const std::string& name) {
    for (const Printed& one : printed)
      if (table == one.table) of_column(one, row, name);
  }

  void of_readings(blade::BladeId blade) {
    Query q(shop_,
            "SELECT r.tenths, r.scale, r.place, r.void_why, h.at FROM hardness_reading r JOIN "
            "history h "
            "ON h.subject = 'hardness_reading' AND h.row = r.id AND json_extract(h.old, "
            "'$.void_why') IS NULL "
            "AND json_extract(h.new, '$.void_why') IS NOT NULL WHERE r.blade_id = ? AND h.old IS "
            "NOT NULL ORDER BY h.id");
    q.bind(blade);
    while (q.next()) {
      const auto tenths = q.integer("tenths");
      const std::string figure =
          std::to_string(tenths / 10) + (tenths % 10 ? "." + std::to_string(tenths % 10) : "");
      all_.push_back({"a reading of " + figure + " " + q.text("scale") + " at " + q.text("place"),
                      "", true, settings_.zone.date_of(q.instant("at")), q.text("void_why")});
    }
  }

 private:
  void of_column(const Printed& one, std::int64_t row, const std::string& name) {
    const std::string path = std::string("'$.") + one.column + "'";
    Query q(shop_, "SELECT at, reason, json_extract(old, " + path +
                       ") AS was FROM history WHERE subject = ? AND row = ? "
                       "AND action = 'correct' AND json_extract(old, " +
                       path + ") IS NOT json_extract(new, " + path + ") ORDER BY id");
    q.bind(std::string(one.table)).bind(row);
    while (q.next())
      all_.push_back({std::string(one.words) + " of " + name, was_words(q, one.as), false,
                      settings_.zone.date_of(q.instant("at")), q.text("reason")});
  }

  std::string was_words(const Query& q, As as) const {
    if (q.is_null("was")) return {};
    switch (as) {
      case As::length:
        return to_text(q.length("was"), settings_.length_unit);
      case As::yes_no:
        return q.yes("was") ? "yes" : "no";
      case As::text:
        break;
    }
    return q.text("was");
  }

  const ShopFile& shop_;
  commission::ShopSettings settings_;
  std::vector<cert::Correction>& all_;
};

}  // namespace

std::vector<cert::Correction> corrections_of(const ShopFile& shop, blade::BladeId blade,
                                             const cert::Dossier& dossier) {
  std::vector<cert::Correction> all;
  CorrectionGatherer gather(shop, all);
  Query of_blade(shop,
                 "SELECT b.item_id, i.handle_lot_id, l.number AS handle_lot FROM blade b LEFT JOIN "
                 "item i ON i.id = b.item_id "
                 "LEFT JOIN lot l ON l.id = i.handle_lot_id WHERE b.id = ?");
  of_blade.bind(blade);
  if (!of_blade.next()) return all;
  gather.of_row("blade", blade.row(), "this blade");
  if (const auto item = of_blade.maybe_integer("item_id"))
    gather.of_row("item", *item, "this knife");
  for (const cert::Lot& lot : dossier.steel.lots) {
    Query q(shop, "SELECT id FROM lot WHERE number = ?");
    q.bind(lot.tag.text);
    if (q.next()) gather.of_row("lot", q.integer("id"), "lot " + lot.tag.text);
  }
  if (const auto handle = of_blade.maybe_integer("handle_lot_id"))
    gather.of_row("lot", *handle, "handle lot " + of_blade.text("handle_lot"));
  for (const cert::Finding& finding : dossier.findings) {
    Query q(shop, "SELECT id FROM finding WHERE number = ?");
    q.bind(finding.number);
    if (q.next())
      gather.of_row("finding", q.integer("id"), "finding " + std::to_string(finding.number));
  }
  gather.of_readings(blade);
  return all;
}

}  // namespace tangmark::db
