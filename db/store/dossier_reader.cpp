// SPDX-License-Identifier: MIT
#include "db/store/dossier_reader.h"

#include <algorithm>
#include <cstdio>

#include "db/digest.h"
#include "db/row.h"
#include "db/store/certificate_words_store.h"
#include "db/store/correction_reader.h"
#include "db/store/dossier_log.h"
#include "db/store/settings_store.h"
#include "db/store/trail_reader.h"
#include "domain/certificate/dossier_words.h"
#include "domain/stock/species_watch.h"

namespace tangmark::db {
namespace {

namespace cert = certificate;

cert::Manner manner_of(const commission::ShopSettings& s) {
  return {s.temperature_unit, s.length_unit, s.mass_unit, s.zone};
}

// "60-61 HRC" as tenths of HRC; nothing when the aim is written otherwise.
void read_aim(const std::string& aim, cert::OrderCompared& order) {
  int low = 0, high = 0;
  if (std::sscanf(aim.c_str(), "%d-%d HRC", &low, &high) == 2 && low > 0 && high >= low &&
      high < 80) {
    order.aim_low_tenths = low * 10;
    order.aim_high_tenths = high * 10;
  }
}

cert::OutsideKind outside_kind(const std::string& operation) {
  if (const auto known = of_word<cert::OutsideKind>(operation, "operation")) return *known;
  if (operation == "harden" || operation == "temper") return cert::OutsideKind::heat_treatment;
  if (operation == "finish grind" || operation == "rough grind") return cert::OutsideKind::grinding;
  return cert::OutsideKind::other;
}

class DossierGatherer {
 public:
  DossierGatherer(const ShopFile& shop, const Query& blade)
      : shop_(shop), blade_(blade), settings_(load_settings(shop)) {}

  cert::Dossier gather() {
    const blade::BladeId id = blade_.id<blade::BladeId>("id");
    made_.blade = static_cast<int>(blade_.integer("number"));
    made_.title = blade_.text("title");
    made_.item = blade_.text("item_title");
    made_.maker = settings_.maker_name;
    made_.shop = settings_.shop_name;
    made_.manner = manner_of(settings_);
    if (const auto piece = blade_.maybe_id<stock::PieceId>("piece_id"))
      made_.steel = read_trail(shop_, *piece);
    made_.log = dossier_log(shop_, id);
    made_.hardness = dossier_hardness(shop_, id);
    made_.findings = dossier_findings(shop_, id);
    made_.size = {blade_.length("length_nm"),
                  blade_.maybe_length("width_nm"),
                  blade_.maybe_length("thickness_nm"),
                  {},
                  {}};
    add_route(id);
    add_handle();
    add_outside(id);
    add_order();
    add_photos(id);
    add_own_words(id);
    made_.corrections = corrections_of(shop_, id, made_);
    return std::move(made_);
  }

 private:
  void add_route(blade::BladeId id) {
    Query q(shop_,
            "SELECT operation, done_at, skipped_why FROM route_step WHERE blade_id = ? ORDER BY "
            "position");
    q.bind(id);
    int tempers = 0;
    while (q.next()) {
      if (q.text("operation") == "temper" && q.is_null("skipped_why")) ++tempers;
      if (!q.is_null("done_at") || !q.is_null("skipped_why")) continue;
      if (const auto operation = of_word<cert::Operation>(q.text("operation"), "operation"))
        made_.route_still_open.push_back(*operation);
    }
    if (tempers > 0) made_.tempers_planned = tempers;
  }

  void add_handle() {
    if (blade_.is_null("handle_lot_id")) {
      if (blade_.is_null("handle")) return;
      cert::HandleMaterial handle;
      handle.part = "handle";
      handle.material = blade_.text("handle");
      made_.handle.push_back(std::move(handle));
      return;
    }
    Query q(shop_,
            "SELECT name, species, species_latin, source, papers, stabilised, document, supplier "
            "FROM lot WHERE id = ?");
    q.bind(blade_.integer("handle_lot_id"));
    if (!q.next()) return;
    cert::HandleMaterial handle;
    handle.part = "handle";
    handle.material = q.is_null("species") ? q.text("name") : q.text("species");
    handle.natural = !q.is_null("species") || !q.is_null("species_latin");
    handle.species = q.maybe_text("species_latin");
    handle.source = q.is_null("source") ? q.maybe_text("supplier") : q.maybe_text("source");
    if (!q.is_null("papers")) handle.papers.push_back(q.text("papers"));
    handle.evidence = !q.is_null("papers")            ? cert::SpeciesEvidence::document
                      : q.text("document") == "label" ? cert::SpeciesEvidence::label
                      : q.is_null("supplier")         ? cert::SpeciesEvidence::not_known
                                                      : cert::SpeciesEvidence::suppliers_word;
    if (q.yes("stabilised")) handle.treatments.push_back("stabilised with resin");
    watch_species(handle);
    made_.handle.push_back(std::move(handle));
  }

  void add_outside(blade::BladeId id) {
    Query q(shop_,
            "SELECT operation, who, sent_at, back_at, their_words FROM outside_work WHERE blade_id "
            "= ?1 "
            "OR (?2 IS NOT NULL AND item_id = ?2) ORDER BY id");
    q.bind(id);
    q.bind(blade_.is_null("item_id") ? std::int64_t{-1} : blade_.integer("item_id"));
    while (q.next()) {
      cert::OutsideWork work;
      work.kind = outside_kind(q.text("operation"));
      work.what = q.text("operation");
      work.by = q.text("who");
      work.sent = settings_.zone.date_of(q.instant("sent_at"));
      if (const auto back = q.maybe_instant("back_at")) work.back = settings_.zone.date_of(*back);
      work.their_words = q.text("their_words");
      work.slip_on_file = !work.their_words.empty();
      made_.outside.push_back(std::move(work));
    }
  }

  void add_order() {
    if (!blade_.is_null("item_grade") && !is_made_of(blade_.text("item_grade")))
      made_.order.ordered_grade = blade_.text("item_grade");
    read_aim(blade_.is_null("hardness_aim") ? blade_.text("item_aim") : blade_.text("hardness_aim"),
             made_.order);
    if (settings_.country.size() == 2) made_.home_country = settings_.country;
    if (blade_.text("destination").size() == 2)
      made_.destination_country = blade_.text("destination");
  }

  // "1084/15N20" was made as ordered when each of its steels is in the blade.
  bool is_made_of(const std::string& ordered) const {
    std::size_t from = 0;
    while (from <= ordered.size()) {
      const auto slash = std::min(ordered.find('/', from), ordered.size());
      const std::string grade = ordered.substr(from, slash - from);
      const auto& lots = made_.steel.lots;
      if (std::none_of(lots.begin(), lots.end(),
                       [&](const cert::Lot& lot) { return lot.grade == grade; }))
        return false;
      from = slash + 1;
    }
    return true;
  }

  void add_photos(blade::BladeId id) {
    Query q(shop_,
            "SELECT id, caption, bytes FROM attachment WHERE kind = 'photo' AND subject = 'blade' "
            "AND subject_id = ? ORDER BY id");
    q.bind(id);
    while (q.next())
      made_.photos.push_back(
          {static_cast<int>(q.integer("id")), q.text("caption"), sha256_hex(q.text("bytes"))});
  }

  void add_own_words(blade::BladeId id) {
    const CertificateWords words = certificate_words(shop_, id);
    made_.chosen_name = words.name;
    made_.buyer = words.made_for;
    for (const std::string& line : lines_of(words.notes))
      made_.free_texts.push_back({"notes", line});
    for (const std::string& line : lines_of(words.care)) made_.free_texts.push_back({"care", line});
    made_.finish = lines_of(words.finish);
    made_.order.differences = lines_of(words.differs);
    if (!made_.handle.empty()) made_.handle.front().health_notes = lines_of(words.health);
    made_.size.knife_mass = words.knife;
    made_.size.behind_edge = words.behind_edge;
    std::string_view rest = words.claims ? std::string_view(*words.claims) : std::string_view();
    while (!rest.empty()) {
      const std::size_t end = std::min(rest.find(','), rest.size());
      if (const auto claim = cert::claim_of(rest.substr(0, end))) made_.requested.push_back(*claim);
      rest.remove_prefix(std::min(end + 1, rest.size()));
    }
  }

  static void watch_species(cert::HandleMaterial& handle) {
    const stock::WatchedSpecies* watched =
        stock::find_watched(handle.material, handle.species.value_or(""));
    if (!watched) return;
    handle.watch_list_date = stock::watch_list_day();
    switch (watched->listing) {
      case stock::Listing::appendix_1:
        handle.watch = cert::TreatyWatch::appendix_1;
        break;
      case stock::Listing::appendix_2:
        handle.watch = cert::TreatyWatch::appendix_2;
        break;
      case stock::Listing::appendix_3:
        handle.watch = cert::TreatyWatch::appendix_3;
        break;
      case stock::Listing::look_alike:
        handle.watch = cert::TreatyWatch::look_alike;
        break;
      case stock::Listing::origin_rules:
        break;
    }
  }

  const ShopFile& shop_;
  const Query& blade_;
  commission::ShopSettings settings_;
  cert::Dossier made_;
};

}  // namespace

Outcome<cert::Dossier> read_dossier(const ShopFile& shop, std::string_view blade_number) {
  Query q(shop,
          "SELECT b.*, i.title AS item_title, i.grade AS item_grade, i.hardness_aim AS item_aim, "
          "i.handle, "
          "i.handle_lot_id, c.destination FROM blade b LEFT JOIN item i ON i.id = b.item_id "
          "LEFT JOIN commission c ON c.id = i.commission_id WHERE CAST(b.number AS TEXT) = ?");
  q.bind(blade_number);
  if (!q.next())
    return Problem{"blade", "There is no blade " + std::string(blade_number) + ".",
                   "Check its number."};
  return DossierGatherer(shop, q).gather();
}

}  // namespace tangmark::db
