// SPDX-License-Identifier: MIT
#include "domain/certificate/record_text.h"

#include <nlohmann/json.hpp>

#include "domain/certificate/dossier_words.h"

namespace tangmark::certificate {
namespace {

using Json = nlohmann::ordered_json;

template <class T, class F>
Json maybe(const std::optional<T>& value, F write) {
  return value ? Json(write(*value)) : Json(nullptr);
}

Json text(const std::optional<std::string>& value) { return maybe(value, [](const auto& t) { return t; }); }
Json instant(const std::optional<Instant>& value) { return maybe(value, [](Instant at) { return to_stored(at); }); }
Json counts(const std::optional<Temperature>& value) { return maybe(value, [](Temperature t) { return t.counts(); }); }
Json seconds(const std::optional<Duration>& value) { return maybe(value, [](Duration d) { return d.count(); }); }

Json hand(const Hand& hand) {
  switch (hand.whose) {
    case Whose::maker: return "maker";
    case Whose::shop_hand: return "in this shop: " + hand.name;
    case Whose::outside: return "outside: " + hand.name;
  }
  return nullptr;
}

Json statements(const CertificateDraft& draft) {
  Json all = Json::array();
  for (const Statement& s : draft.statements) {
    Json evidence = Json::array();
    for (const Evidence& e : s.evidence) evidence.push_back(evidence_text(e));
    all.push_back({{"claim", claim_id(s.claim)}, {"text", s.text}, {"level", std::string(1, letter(s.level))}, {"evidence", evidence}});
  }
  for (const Absence& a : draft.absences) all.push_back({{"not_claimed", claim_id(a.claim)}, {"text", a.text}});
  return all;
}

Json lots(const SteelTrail& steel) {
  Json all = Json::array();
  for (const Lot& lot : steel.lots) {
    Json analysis = nullptr;
    if (lot.analysis) {
      analysis = Json::object();
      for (const auto& [element, share] : *lot.analysis) analysis[element] = share.millionths();
    }
    all.push_back({{"lot", lot.tag.text}, {"supplier", lot.supplier}, {"grade", text(lot.grade)}, {"document", word_of(lot.document)},
                   {"melt_number", text(lot.melt_number)}, {"mark_matched", lot.mark == BarMark::matched}, {"analysis_ppm", analysis},
                   {"customers_own", lot.owner == Owner::customer}});
  }
  return all;
}

struct Origin {
  std::string operator()(const LotTag& tag) const { return "lot " + tag.text; }
  std::string operator()(const BilletTag& tag) const { return "billet " + tag.text; }
  std::string operator()(const MeltTag& tag) const { return "melt " + tag.text; }
  std::string operator()(const PieceTag& tag) const { return "piece " + tag.text; }
};

Json pieces(const SteelTrail& steel) {
  Json all = Json::array();
  for (const Piece& piece : steel.pieces)
    all.push_back({{"piece", piece.tag.text}, {"from", std::visit(Origin{}, piece.from)}, {"identity_gap", piece.identity == Identity::gap},
                   {"mass_ug", maybe(piece.mass, [](Mass m) { return m.micrograms(); })}});
  return all;
}

Json billets(const SteelTrail& steel) {
  Json all = Json::array();
  for (const Billet& billet : steel.billets) {
    Json stages = Json::array();
    for (const WeldStage& stage : billet.stages) {
      Json parts = Json::array();
      for (const StackPart& part : stage.parts)
        parts.push_back({{"piece", part.piece.text}, {"count", part.count}, {"role", word_of(part.role)}});
      stages.push_back({{"work", word_of(stage.work)}, {"pieces", stage.pieces}, {"at", instant(stage.at)}, {"by", hand(stage.hand)},
                        {"entered_later", stage.logged == Logged::later}, {"parts", parts}});
    }
    all.push_back({{"billet", billet.tag.text}, {"stages", stages}});
  }
  for (const Melt& melt : steel.melts)
    all.push_back({{"melt", melt.tag.text}, {"lining", text(melt.lining)}, {"peak_k1800", counts(melt.peak)}, {"at_heat_s", seconds(melt.time)},
                   {"ingot_ug", maybe(melt.ingot_mass, [](Mass m) { return m.micrograms(); })}, {"by", hand(melt.hand)}});
  return all;
}

Json log(const Dossier& dossier) {
  Json all = Json::array();
  for (const BenchEntry& e : dossier.log) {
    Json entry{{"number", e.number}, {"operation", e.operation == Operation::other ? e.own_word : std::string(word_of(e.operation))},
               {"from", instant(e.from)}, {"to", instant(e.to)}, {"entered_later", e.logged == Logged::later}, {"by", hand(e.hand)}};
    if (e.superseded) entry["superseded"] = true;
    if (e.heat) {
      entry["set_k1800"] = counts(e.heat->set);
      entry["read_k1800"] = counts(e.heat->read);
      entry["hold_s"] = seconds(e.heat->hold);
      entry["recorded"] = e.heat->record.has_value();
    }
    if (e.quench) {
      entry["medium"] = e.quench->medium;
      entry["bath_k1800"] = counts(e.quench->bath);
    }
    if (e.temper) entry["temper"] = e.temper->number;
    all.push_back(std::move(entry));
  }
  return all;
}

Json readings(const Dossier& dossier) {
  Json all = Json::array();
  for (const HardnessReading& r : dossier.hardness)
    all.push_back({{"scale", word_of(r.scale)}, {"tenths", r.tenths}, {"place", r.place}, {"tester", r.tester}, {"at", instant(r.taken)},
                   {"block_checked", r.block.has_value()}, {"on_coupon", r.on == MeasuredOn::coupon}, {"void", r.superseded}});
  return all;
}

Json findings(const Dossier& dossier) {
  Json all = Json::array();
  for (const Finding& f : dossier.findings)
    all.push_back({{"finding", f.number}, {"kind", word_of(f.kind)}, {"words", f.what}, {"place", f.place}, {"seen", instant(f.seen)},
                   {"decision", word_of(f.decision)}, {"how", f.how}});
  return all;
}

}  // namespace

std::string record_text(const Dossier& dossier, const CertificateDraft& draft, const IssueHead& head) {
  Json told = Json::array();
  for (const Disclosure& d : draft.disclosures) told.push_back(d.text);
  Json photos = Json::array();
  for (const Photo& p : dossier.photos) photos.push_back({{"photo", p.number}, {"sha256", p.sha256}});
  const Json record{{"format", "tangmark-certificate-1"}, {"certificate", head.number}, {"issue", head.issue},
                    {"issued", to_stored(head.issued)}, {"shop", dossier.shop}, {"maker", dossier.maker}, {"blade", dossier.blade},
                    {"name", draft.name}, {"statements", statements(draft)}, {"told_openly", told}, {"lots", lots(dossier.steel)},
                    {"pieces", pieces(dossier.steel)}, {"billets", billets(dossier.steel)}, {"log", log(dossier)},
                    {"hardness", readings(dossier)}, {"findings", findings(dossier)}, {"photos", photos}};
  return record.dump(1) + "\n";
}

}  // namespace tangmark::certificate
