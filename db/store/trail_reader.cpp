// SPDX-License-Identifier: MIT
#include "db/store/trail_reader.h"

#include <algorithm>
#include <set>

#include "db/row.h"
#include "db/store/dossier_reader.h"
#include "db/store/grade_store.h"
#include "domain/certificate/dossier_words.h"
#include "domain/steel/composition.h"
#include "domain/stock/lot.h"

namespace tangmark::db {
namespace {

namespace cert = certificate;

constexpr std::string_view outside_prefix = "outside: ";

Share share_of_percent(double percent) {
  return Share::millionths(
      static_cast<std::int64_t>(percent * 10'000 + (percent < 0 ? -0.5 : 0.5)));
}

std::optional<cert::Analysis> analysis_of(const std::optional<std::string>& text) {
  if (!text) return std::nullopt;
  cert::Analysis analysis;
  std::size_t from = 0;
  while (from < text->size()) {
    const auto comma = std::min(text->find(',', from), text->size());
    const std::string part = text->substr(from, comma - from);
    const auto colon = part.find(':');
    if (colon != std::string::npos)
      if (const auto percent = parse_share(part.substr(colon + 1) + " %", "analysis"))
        analysis[part.substr(0, colon)] = *percent;
    from = comma + 1;
  }
  return analysis;
}

std::optional<cert::HardensIn> hardens_in(const steel::Grade& grade) {
  const steel::HeatTreatWindow* window = grade.window_for("harden");
  if (!window) return std::nullopt;
  const std::string& medium = window->cooling;
  if (medium.find("water") != std::string::npos || medium.find("brine") != std::string::npos)
    return cert::HardensIn::water;
  if (medium.find("oil") != std::string::npos) return cert::HardensIn::oil;
  if (medium.find("air") != std::string::npos || medium.find("plate") != std::string::npos)
    return cert::HardensIn::air;
  return std::nullopt;
}

std::optional<cert::GradeFacts> facts_of(const ShopFile& shop,
                                         const std::optional<std::string>& name) {
  if (!name) return std::nullopt;
  const steel::GradeBook book = grade_book(shop);
  const steel::Grade* grade = book.find(*name);
  if (!grade) return std::nullopt;
  cert::GradeFacts facts;
  facts.source = grade->origin == steel::GradeOrigin::entered_by_shop ? "entered by the shop"
                                                                      : grade->designation;
  facts.hardens_in = hardens_in(*grade);
  for (const steel::ElementLimit& limit : grade->limits) {
    cert::ElementLimits ends;
    if (limit.least_percent) ends.lo = share_of_percent(*limit.least_percent);
    if (limit.most_percent) ends.hi = share_of_percent(*limit.most_percent);
    if (limit.nominal_percent && !ends.lo && !ends.hi) {
      ends.lo = ends.hi = share_of_percent(*limit.nominal_percent);
      facts.nominal = true;
    }
    facts.limits[std::string(steel::symbol(limit.element))] = ends;
  }
  return facts;
}

cert::BarMark bar_mark(const Query& q) {
  if (q.yes("mark_matched")) return cert::BarMark::matched;
  const auto words = q.maybe_text("mark_words");
  if (!words) return cert::BarMark::not_looked_for;
  if (*words == "none") return cert::BarMark::none_on_bar;
  return q.maybe_text("melt_number") && words->find(q.text("melt_number")) == std::string::npos
             ? cert::BarMark::differs
             : cert::BarMark::none_on_bar;
}

cert::Lot read_lot(const ShopFile& shop, const Query& q) {
  cert::Lot lot;
  lot.tag = {q.text("number")};
  lot.supplier = q.text("supplier");
  lot.grade = q.maybe_text("grade");
  lot.owner = q.is_null("owner_id") ? cert::Owner::shop : cert::Owner::customer;
  lot.document = q.word<cert::SupplyDocument>("document");
  const bool numbered = lot.document != cert::SupplyDocument::none &&
                        lot.document != cert::SupplyDocument::suppliers_word &&
                        lot.document != cert::SupplyDocument::label;
  if (numbered) {
    lot.document_grade = lot.grade;
    lot.document_melt_number = q.maybe_text("melt_number");
  }
  lot.melt_number = q.maybe_text("melt_number");
  lot.mark = bar_mark(q);
  lot.analysis = analysis_of(q.maybe_text("analysis"));
  // Figures that nobody says a laboratory measured are those of the paper, whatever paper there is.
  const auto identified = q.maybe_word<stock::IdentifiedBy>("identified_by");
  if (identified == stock::IdentifiedBy::x_ray)
    lot.analysis_source = cert::AnalysisSource::handheld_xray;
  if (identified == stock::IdentifiedBy::laboratory)
    lot.analysis_source = cert::AnalysisSource::laboratory;
  lot.facts = facts_of(shop, lot.grade);
  const std::string bought_as = q.text("bought_as");
  if (bought_as == "pattern-welded") lot.sold_as = cert::SoldAs::pattern_welded;
  if (bought_as == "laminated") lot.sold_as = cert::SoldAs::laminated;
  if (const auto layers = q.maybe_integer("stated_layers"))
    lot.stated_layers = static_cast<int>(*layers);
  lot.stated_maker = q.maybe_text("stated_maker");
  if (!lot.grade) lot.recycled_from = q.maybe_text("name");
  if (identified == stock::IdentifiedBy::x_ray || identified == stock::IdentifiedBy::spark ||
      identified == stock::IdentifiedBy::coupon)
    lot.own_tests.emplace_back(word_of(*identified));
  return lot;
}

// "From the charge, not measured" says the contrary.
bool says_measured(const std::string& how) {
  for (const char* denied : {"not measured", "unmeasured", "estimat", "from the charge"})
    if (how.find(denied) != std::string::npos) return false;
  return how.find("measured") != std::string::npos;
}

class TrailReader {
 public:
  explicit TrailReader(const ShopFile& shop) : shop_(shop) {}

  cert::SteelTrail read(stock::PieceId id) {
    add_piece(id.row());
    trail_.blade_piece = trail_.pieces.front().tag;
    return std::move(trail_);
  }

 private:
  void add_piece(std::int64_t id) {
    if (!pieces_.insert(id).second) return;
    Query q(
        shop_,
        "SELECT p.*, l.number AS lot, b.number AS billet, b.kind AS billet_kind, up.tag AS parent "
        "FROM piece p LEFT JOIN lot l ON l.id = p.lot_id LEFT JOIN billet b ON b.id = p.billet_id "
        "LEFT JOIN piece up ON up.id = p.parent_id WHERE p.id = ?");
    q.bind(id);
    if (!q.next()) return;
    cert::Piece piece;
    piece.tag = {q.text("tag")};
    piece.mass = q.mass("mass_ug");
    if (q.text("mark") == "identity gap") {
      piece.identity = cert::Identity::gap;
      piece.identity_note = q.maybe_text("note");
    }
    const bool melted = q.text("billet_kind") == "ingot" || q.text("billet_kind") == "smelted";
    if (!q.is_null("parent"))
      piece.from = cert::PieceTag{q.text("parent")};
    else if (!q.is_null("billet") && melted)
      piece.from = cert::MeltTag{q.text("billet")};
    else if (!q.is_null("billet"))
      piece.from = cert::BilletTag{q.text("billet")};
    else
      piece.from = cert::LotTag{q.text("lot")};
    trail_.pieces.push_back(std::move(piece));
    if (!q.is_null("parent_id")) return add_piece(q.integer("parent_id"));
    if (!q.is_null("billet_id"))
      return melted ? add_melt(q.integer("billet_id")) : add_billet(q.integer("billet_id"));
    if (!q.is_null("lot_id")) add_lot(q.integer("lot_id"));
  }

  void add_lot(std::int64_t id) {
    if (!lots_.insert(id).second) return;
    Query q(shop_, "SELECT * FROM lot WHERE id = ?");
    q.bind(id);
    if (q.next()) trail_.lots.push_back(read_lot(shop_, q));
  }

  std::vector<cert::StackPart> parts_of(std::int64_t billet) {
    Query q(
        shop_,
        "SELECT b.role, b.layers, p.tag, p.id FROM billet_part b JOIN piece p ON p.id = b.piece_id "
        "WHERE b.billet_id = ? ORDER BY b.position");
    q.bind(billet);
    std::vector<cert::StackPart> parts;
    while (q.next()) {
      const auto role = q.text("role") == "core"       ? cert::Role::core
                        : q.text("role") == "cladding" ? cert::Role::cladding
                                                       : cert::Role::layer;
      parts.push_back({{q.text("tag")}, static_cast<int>(q.integer("layers")), role});
      add_piece(q.integer("id"));
    }
    return parts;
  }

  void add_billet(std::int64_t id) {
    if (!billets_.insert(id).second) return;
    Query q(shop_, "SELECT number, pattern, made_by FROM billet WHERE id = ?");
    q.bind(id);
    if (!q.next()) return;
    cert::Billet billet;
    billet.tag = {q.text("number")};
    billet.pattern_name = q.maybe_text("pattern");
    billet.photos = photo_numbers(shop_, "billet", id);
    const cert::Hand maker =
        hand_of(q.text("made_by") == "this shop" ? std::nullopt : q.maybe_text("made_by"));
    auto parts = parts_of(id);
    Query stages(shop_, "SELECT * FROM weld_stage WHERE billet_id = ? ORDER BY number");
    stages.bind(id);
    while (stages.next()) billet.stages.push_back(read_stage(stages, maker));
    // A weld entry behind a stack, fold or cut says that this stage was closed by it.
    for (std::size_t i = 0; i + 1 < billet.stages.size(); ++i)
      if (billet.stages[i + 1].work == cert::StageWork::weld) billet.stages[i].welded = true;
    const auto stack =
        std::find_if(billet.stages.begin(), billet.stages.end(),
                     [](const cert::WeldStage& s) { return s.work == cert::StageWork::stack; });
    if (stack != billet.stages.end()) {
      stack->parts = std::move(parts);
    } else if (!parts.empty()) {
      cert::WeldStage first;
      first.work = cert::StageWork::stack;
      first.parts = std::move(parts);
      first.welded = !billet.stages.empty() && billet.stages.front().work == cert::StageWork::weld;
      first.hand = maker;
      billet.stages.insert(billet.stages.begin(), std::move(first));
    }
    trail_.billets.push_back(std::move(billet));
  }

  static cert::WeldStage read_stage(const Query& q, const cert::Hand& maker) {
    cert::WeldStage stage;
    stage.work = q.word<cert::StageWork>("operation");
    stage.pieces = static_cast<int>(q.integer("pieces"));
    stage.at = q.instant("at");
    const bool late = q.instant("entered_at") - q.instant("at") > std::chrono::hours(24);
    stage.logged = late ? cert::Logged::later : cert::Logged::at_the_time;
    stage.hand = q.is_null("who") ? maker : hand_of(q.maybe_text("who"));
    stage.mass_after = q.mass("mass_out_ug");
    stage.note = q.text("note");
    return stage;
  }

  void add_melt(std::int64_t id) {
    if (!billets_.insert(id).second) return;
    Query q(shop_,
            "SELECT m.*, b.number, b.kind, b.made_by FROM billet b JOIN melt m ON m.billet_id = "
            "b.id WHERE b.id = ?");
    q.bind(id);
    if (!q.next()) return;
    cert::Melt melt;
    melt.tag = {q.text("number")};
    melt.kind = q.text("kind") == "smelted" ? cert::MeltKind::bloomery : cert::MeltKind::crucible;
    melt.day = CalendarDate(std::chrono::floor<date::days>(q.instant("at")));
    melt.hand =
        hand_of(q.is_null("who") && q.text("made_by") != "this shop" ? q.maybe_text("made_by")
                                                                     : q.maybe_text("who"));
    const bool late = q.instant("entered_at") - q.instant("at") > std::chrono::hours(24);
    melt.logged = late ? cert::Logged::later : cert::Logged::at_the_time;
    melt.charge.push_back({q.text("charge"), q.mass("charge_ug")});
    melt.lining = q.maybe_text("lining");
    melt.peak = q.temperature("peak_k1800");
    melt.time = q.duration("at_peak_s");
    melt.ingot_mass = q.mass("ingot_ug");
    const auto carbon = q.maybe_share("carbon_ppm");
    if (carbon && says_measured(q.text("carbon_how"))) {
      melt.analysis = cert::Analysis{{"C", *carbon}};
      melt.measured_how = q.text("carbon_how");
    } else
      melt.carbon_from_charge = carbon;
    melt.photos = photo_numbers(shop_, "billet", id);
    trail_.melts.push_back(std::move(melt));
    static_cast<void>(parts_of(id));
  }

  const ShopFile& shop_;
  cert::SteelTrail trail_;
  std::set<std::int64_t> pieces_, lots_, billets_;
};

}  // namespace

cert::Hand hand_of(const std::optional<std::string>& who) {
  if (!who || who->empty()) return {};
  if (who->starts_with(outside_prefix))
    return {cert::Whose::outside, who->substr(outside_prefix.size())};
  return {cert::Whose::shop_hand, *who};
}

std::vector<int> photo_numbers(const ShopFile& shop, std::string_view subject, std::int64_t id) {
  Query q(shop,
          "SELECT id FROM attachment WHERE kind = 'photo' AND subject = ? AND subject_id = ? ORDER "
          "BY id");
  q.bind(subject).bind(id);
  std::vector<int> numbers;
  while (q.next()) numbers.push_back(static_cast<int>(q.integer("id")));
  return numbers;
}

cert::SteelTrail read_trail(const ShopFile& shop, stock::PieceId blade_piece) {
  return TrailReader(shop).read(blade_piece);
}

}  // namespace tangmark::db
