// SPDX-License-Identifier: MIT
#include <algorithm>

#include "db/row.h"
#include "db/store/label_stock_store.h"
#include "db/store/settings_store.h"
#include "gui/desk/paper/letterhead.h"
#include "gui/desk/paper/paper.h"
#include "reports/label_sheet.h"

namespace tangmark::desk {
namespace {

std::string document_words(const std::string& document) {
  if (document == "none") return "no document";
  if (document == "word") return "supplier's word";
  if (document == "label") return "supplier's label";
  if (document == "2.1") return "declaration of compliance 2.1";
  if (document == "2.2") return "test report 2.2";
  return "inspection certificate " + document;
}

std::string owner_words(const db::Query& q) {
  return q.is_null("owner_id") ? std::string() : "customer " + q.text("owner_id");
}

// Asks one statement for each named number, or once for all.
template <class Label, class Read>
Outcome<std::vector<Label>> gather(const Press& press, const std::string& sql,
                                   const std::string& by, const std::string& all,
                                   const std::vector<std::string>& numbers, Read read) {
  std::vector<Label> labels;
  if (numbers.empty()) {
    db::Query q(press.shop, sql + all);
    while (q.next()) labels.push_back(read(q));
  }
  for (const std::string& number : numbers) {
    db::Query q(press.shop, sql + by);
    q.bind(number);
    if (!q.next())
      return Problem{"number", "There is nothing of this kind with the number " + number + ".",
                     "Check the number."};
    labels.push_back(read(q));
  }
  if (labels.empty())
    return Problem{"number", "There is nothing to print a label for.", "Name the numbers."};
  return labels;
}

Outcome<reports::Document> lots(const Press& press, const std::vector<std::string>& numbers,
                                const commission::ShopSettings& s) {
  const auto labels = gather<reports::LotLabel>(
      press, "SELECT * FROM lot ", "WHERE CAST(number AS TEXT) = ?",
      "WHERE returned_at IS NULL ORDER BY number", numbers, [&](const db::Query& q) {
        return reports::LotLabel{
            q.text("number"),
            q.is_null("grade") ? q.text("name") : q.text("grade"),
            section_text(q.maybe_length("width_nm"), q.maybe_length("thickness_nm"),
                         q.maybe_length("diameter_nm"), s.length_unit),
            q.text("supplier"),
            q.text("melt_number"),
            document_words(q.text("document")),
            s.zone.date_of(q.instant("received_at")),
            owner_words(q),
            "TANGMARK LOT " + q.text("number"),
            q.text("kind") == "steel"};
      });
  if (!labels) return labels.problems();
  return reports::lot_labels(*labels, press.now, look_of(s), press.fonts,
                             db::label_stock(press.shop));
}

Outcome<reports::Document> pieces(const Press& press, const std::vector<std::string>& numbers,
                                  const commission::ShopSettings& s) {
  const auto labels = gather<reports::PieceLabel>(
      press,
      "SELECT p.*, l.grade, l.melt_number, l.owner_id, up.tag AS parent, b.number AS billet FROM "
      "piece p "
      "LEFT JOIN lot l ON l.id = p.lot_id LEFT JOIN piece up ON up.id = p.parent_id LEFT JOIN "
      "billet b ON b.id = p.billet_id ",
      "WHERE p.tag = ?", "WHERE p.state = 'on hand' ORDER BY p.id", numbers,
      [](const db::Query& q) {
        std::string grade = q.text("grade");
        if (grade.empty())
          grade = q.is_null("billet") ? "steel not identified" : "billet " + q.text("billet");
        return reports::PieceLabel{q.text("tag"),
                                   grade,
                                   q.maybe_length("length_nm"),
                                   q.maybe_length("width_nm"),
                                   q.maybe_length("thickness_nm"),
                                   q.maybe_mass("mass_ug"),
                                   q.text("melt_number"),
                                   q.text("parent"),
                                   owner_words(q),
                                   q.text("mark") == "carries the mark",
                                   "TANGMARK PIECE " + q.text("tag")};
      });
  if (!labels) return labels.problems();
  return reports::piece_labels(*labels, press.now, look_of(s), press.fonts,
                               db::label_stock(press.shop));
}

Outcome<reports::Document> blades(const Press& press, const std::vector<std::string>& numbers,
                                  const commission::ShopSettings& s) {
  const auto labels = gather<reports::BladeLabel>(
      press,
      "SELECT b.*, c.number AS commission FROM blade b LEFT JOIN item i ON i.id = b.item_id LEFT "
      "JOIN commission c ON c.id = i.commission_id ",
      "WHERE CAST(b.number AS TEXT) = ?",
      "WHERE b.scrapped_at IS NULL AND b.delivered_at IS NULL ORDER BY b.number", numbers,
      [](const db::Query& q) {
        return reports::BladeLabel{
            q.text("number"), q.is_null("commission") ? "stock" : "job " + q.text("commission"),
            q.text("title"), q.is_null("grade") ? "not identified" : q.text("grade"),
            "TANGMARK BLADE " + q.text("number")};
      });
  if (!labels) return labels.problems();
  return reports::blade_labels(*labels, press.now, look_of(s), press.fonts,
                               db::label_stock(press.shop));
}

}  // namespace

Outcome<reports::Document> label_paper(const Press& press, std::string_view kind,
                                       const std::vector<std::string>& numbers) {
  const auto settings = db::load_settings(press.shop);
  if (kind == "lots") return lots(press, numbers, settings);
  if (kind == "pieces") return pieces(press, numbers, settings);
  if (kind == "blades") return blades(press, numbers, settings);
  return Problem{"kind", "There are no labels for \"" + std::string(kind) + "\".",
                 "Use lots, pieces or blades."};
}

}  // namespace tangmark::desk
