// SPDX-License-Identifier: MIT
#include "db/check.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <fmt/format.h>

#include "db/digest.h"
#include "db/history.h"
#include "db/row.h"

namespace tangmark::db {
namespace {

// One balance: a statement that gives a sentence for every row that does not balance.
struct Balance {
  const char* what;
  const char* sql;
};

constexpr Balance balances[] = {
    {"Cost lines of every quote sum to its cost.",
     "SELECT 'Quote version ' || q.version || ' of commission ' || c.number || "
     "': its cost lines do not sum to its cost.' AS sentence FROM quote q "
     "JOIN commission c ON c.id = q.commission_id WHERE q.cost_minor <> "
     "(SELECT coalesce(sum(amount_minor), 0) FROM quote_line WHERE quote_id = q.id AND side = "
     "'cost')"},
    {"No commission has given back more than it took.",
     "SELECT 'Commission ' || c.number || ': more was given back than was taken.' AS sentence "
     "FROM commission c WHERE (SELECT coalesce(sum(amount_minor), 0) FROM payment "
     "WHERE commission_id = c.id) < 0"},
    {"Mass before every cut is mass after, swarf and the gap shown.",
     "SELECT 'The cut of piece ' || p.tag || ' on ' || substr(k.at, 1, 10) || "
     "' does not balance.' AS sentence FROM cut k JOIN piece p ON p.id = k.piece_id "
     "WHERE k.mass_before_ug <> k.mass_after_ug + k.swarf_ug + k.gap_ug"},
    {"Mass into every stage of a billet is mass out, crop, scale, swarf and the gap shown.",
     "SELECT 'Stage ' || s.number || ' of billet ' || b.number || ' does not balance.' AS sentence "
     "FROM weld_stage s JOIN billet b ON b.id = s.billet_id WHERE s.mass_in_ug <> "
     "s.mass_out_ug + s.crop_ug + s.scale_ug + s.swarf_ug + s.gap_ug"},
    {"No piece is promised beyond its length.",
     "SELECT 'Piece ' || p.tag || ' is promised beyond its length.' AS sentence FROM piece p "
     "WHERE p.length_nm < (SELECT coalesce(sum(length_nm), 0) FROM reservation "
     "WHERE piece_id = p.id AND released_at IS NULL)"},
    {"Every piece in a billet is out of the rack.",
     "SELECT 'Piece ' || p.tag || ' is in a billet and on the rack at once.' AS sentence "
     "FROM piece p JOIN billet_part b ON b.piece_id = p.id WHERE p.state = 'on hand'"},
    {"No blank became two blades that are both alive.",
     "SELECT 'Piece ' || p.tag || ' became more than one blade.' AS sentence FROM piece p "
     "JOIN blade b ON b.piece_id = p.id AND b.scrapped_at IS NULL GROUP BY p.id HAVING count(*) > "
     "1"},
};

void look_at_soundness(const ShopFile& shop, CheckReport& report) {
  SQLite::Statement pages(shop.database(), "PRAGMA integrity_check(20)");
  while (pages.executeStep())
    if (const std::string line = pages.getColumn(0).getString(); line != "ok")
      report.wrong.push_back("The file is damaged: " + line + ".");
  SQLite::Statement keys(shop.database(), "PRAGMA foreign_key_check");
  while (keys.executeStep())
    report.wrong.push_back(fmt::format("Row {} of {} names something of {} that is not there.",
                                       keys.getColumn(1).getInt64(), keys.getColumn(0).getString(),
                                       keys.getColumn(2).getString()));
  report.looked_at.push_back("File: every page read.");
}

void look_at_certificates(const ShopFile& shop, CheckReport& report) {
  Query query(shop, "SELECT number, issue, record, digest FROM certificate ORDER BY number, issue");
  int count = 0;
  while (query.next()) {
    ++count;
    if (sha256_hex(query.text("record")) != query.text("digest"))
      report.wrong.push_back(
          fmt::format("Certificate {} issue {}: its record is not the one that was issued.",
                      query.integer("number"), query.integer("issue")));
  }
  report.looked_at.push_back(fmt::format("Certificates: {} records against their digests.", count));
}

}  // namespace

CheckReport check_shop(const ShopFile& shop) {
  CheckReport report;
  look_at_soundness(shop, report);
  for (std::string& sentence : check_history(shop)) report.wrong.push_back(std::move(sentence));
  Query changes(shop, "SELECT count(*) AS n FROM history");
  changes.next();
  report.looked_at.push_back(fmt::format("History: {} changes followed.", changes.integer("n")));
  for (const Balance& balance : balances) {
    Query query(shop, balance.sql);
    while (query.next()) report.wrong.push_back(query.text("sentence"));
    report.looked_at.push_back(std::string("Balance: ") + balance.what);
  }
  look_at_certificates(shop, report);
  return report;
}

}  // namespace tangmark::db
