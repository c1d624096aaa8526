// SPDX-License-Identifier: MIT
#include <algorithm>
#include <filesystem>

#include "db/actions/certificate_seal.h"
#include "db/history.h"
#include "db/row.h"
#include "db/store/certificate_store.h"
#include "db/store/dossier_reader.h"
#include "db/store/label_stock_store.h"
#include "db/store/signing_key_store.h"
#include "domain/certificate/compose.h"
#include "domain/measure/utf8.h"
#include "tests/scratch.h"
#include "tests/unit/db/maker.h"

using namespace tangmark;
using namespace tangmark::test;

namespace {

// A blade cut from a traced bar, hardened, tempered twice and measured.
struct FinishedBlade : Maker {
  std::string blade;
  FinishedBlade() {
    db::set_certificate_printer(
        {[](const db::CertificateToPrint& print) -> Outcome<db::PrintedCertificate> {
           return db::PrintedCertificate{"page of issue " + std::to_string(print.sheet.issue), ""};
         },
         [] { return std::string("0123456789abcdef"); }});
    lot("80CrV2");
    did("add_bath", {{"name", "medium oil"}, {"medium", "medium oil"}, {"use", "quench"}});
    const auto blank = did("cut_piece", {{"piece", "1-1"}, {"length", "300 mm"}, {"mark", "rest"}});
    blade = did("assign_blade", {{"title", "chef's knife"},
                                 {"grade", "80CrV2"},
                                 {"length", "210 mm"},
                                 {"piece", blank},
                                 {"route", "profile,harden,temper,temper"}});
    step("1 h", "log_step", {{"operation", "profile"}, {"hands_on", "40 min"}});
    step("1 h", "log_quench",
         {{"bath", "medium oil"}, {"set", "830 C"}, {"hold", "10 min"}, {"hands_on", "20 min"}});
    temper("no");
    temper("yes");
    step("1 h", "log_hardness",
         {{"readings", "60.5,61"},
          {"place", "edge"},
          {"tester", "bench tester"},
          {"block", "61.2"},
          {"block_read", "61.0"}});
  }
  void step(const std::string&, const std::string& action, db::Given given) {
    now += std::chrono::hours(1);
    given["blade"] = blade;
    did(action, given);
  }
  void temper(const std::string& cold) {
    now += std::chrono::minutes(130);
    did("log_temper", {{"blade", blade},
                       {"set", "195 C"},
                       {"hold", "2 h"},
                       {"cooled_to_room", cold},
                       {"hands_on", "5 min"}});
  }
};

}  // namespace

TEST_CASE("the dossier follows the blade back to its lot") {
  FinishedBlade made;
  const auto dossier = db::read_dossier(made.shop, made.blade);
  REQUIRE(dossier);
  REQUIRE(dossier->steel.lots.size() == 1);
  CHECK(dossier->steel.lots[0].melt_number == "4711");
  CHECK(dossier->steel.lots[0].mark == certificate::BarMark::matched);
  CHECK(dossier->steel.pieces.size() == 2);
  CHECK(dossier->hardness.size() == 2);
  CHECK_FALSE(db::read_dossier(made.shop, "9999"));
}

TEST_CASE(
    "an issued certificate is frozen, a reissue names the old one, a revoked one stays on record") {
  FinishedBlade made;
  const auto number = made.did("issue_certificate", {{"blade", made.blade}});
  const auto first = db::find_certificate(made.shop, number, "certificate");
  REQUIRE(first);
  const std::string page = db::certificate_pdf(made.shop, first->id),
                    record = db::certificate_record(made.shop, first->id);
  CHECK_FALSE(made.tries("issue_certificate", {{"blade", made.blade}}));
  CHECK_FALSE(made.tries("issue_certificate",
                         {{"blade", made.blade}, {"reason", "it is wootz, I looked again"}}));
  made.did("issue_certificate", {{"blade", made.blade}, {"reason", "title was mistyped"}});
  const auto second = db::find_certificate(made.shop, number, "certificate");
  REQUIRE(second);
  CHECK(second->issue == 2);
  CHECK(second->replaces_issue == 1);
  CHECK(db::certificate_pdf(made.shop, first->id) == page);
  CHECK(db::certificate_record(made.shop, first->id) == record);
  made.did("revoke_certificate", {{"certificate", number + "/2"}, {"reason", "came back"}});
  CHECK(db::find_certificate(made.shop, number + "/2", "certificate")->revoked_at);
  CHECK_FALSE(
      made.tries("revoke_certificate", {{"certificate", number + "/2"}, {"reason", "again"}}));
}

TEST_CASE("an open finding stops the certificate until it is decided, and is then told") {
  FinishedBlade made;
  const auto finding = made.did("log_finding", {{"blade", made.blade},
                                                {"kind", "delamination"},
                                                {"words", "closed line of 4 mm at the heel"}});
  const std::string before = content_of(made.shop);
  CHECK_FALSE(made.tries("issue_certificate", {{"blade", made.blade}}));
  CHECK(content_of(made.shop) == before);
  made.did(
      "settle_finding",
      {{"finding", finding}, {"decision", "disclose"}, {"words", "closed, away from the edge"}});
  const auto number = made.did("issue_certificate", {{"blade", made.blade}});
  const auto issued = db::find_certificate(made.shop, number, "certificate");
  CHECK(db::certificate_record(made.shop, issued->id).find("closed line of 4 mm") !=
        std::string::npos);
}

TEST_CASE("the maker chooses among the names that the record bears, and no other is kept") {
  FinishedBlade made;
  const auto before = content_of(made.shop);
  CHECK_FALSE(
      made.tries("name_certificate", {{"blade", made.blade}, {"name", "Damascus of 300 layers"}}));
  CHECK(content_of(made.shop) == before);
  made.did("name_certificate", {{"blade", made.blade}, {"name", "80CrV2, one steel throughout"}});
  const auto dossier = db::read_dossier(made.shop, made.blade);
  REQUIRE(dossier);
  CHECK(certificate::compose(*dossier).name == "80CrV2, one steel throughout");
  made.did("issue_certificate", {{"blade", made.blade}});
  made.did("name_certificate", {{"blade", made.blade}});
  CHECK(certificate::compose(*db::read_dossier(made.shop, made.blade)).name == "one steel");
}

TEST_CASE("whom a certificate is made for goes with the person's data, out of history as well") {
  FinishedBlade made;
  const auto buyer = made.buyer("M. Tidewell");
  made.did("word_certificate", {{"blade", made.blade}, {"made_for", "M. Tidewell"}});
  made.did("word_certificate", {{"blade", made.blade}, {"made_for", "m. tidewell"}});
  CHECK(db::read_dossier(made.shop, made.blade)->buyer == "m. tidewell");
  CHECK(db::check_history(made.shop).empty());
  SECTION("where none was issued nothing is left of it") {
    const auto erased = made.tries("erase_customer", {{"customer", buyer}});
    REQUIRE(erased.ok());
    CHECK(erased->warnings.empty());
    CHECK_FALSE(db::read_dossier(made.shop, made.blade)->buyer);
    CHECK(tangmark::folded(content_of(made.shop)).find("tidewell") == std::string::npos);
    CHECK(db::check_history(made.shop).empty());
  }
  SECTION("issued certificates are frozen, and the maker is told which") {
    made.did("issue_certificate", {{"blade", made.blade}});
    const auto erased = made.tries("erase_customer", {{"customer", buyer}});
    REQUIRE(erased.ok());
    CHECK(warns(erased, "issued certificates are frozen: certificate 1, issue 1."));
    CHECK_FALSE(db::read_dossier(made.shop, made.blade)->buyer);
    const auto issued = db::find_certificate(made.shop, "1", "certificate");
    CHECK(db::certificate_record(made.shop, issued->id).find("m. tidewell") != std::string::npos);
    made.did("issue_certificate", {{"blade", made.blade}, {"reason", "the name was taken off"}});
    const auto anew = db::find_certificate(made.shop, "1", "certificate");
    CHECK(db::certificate_record(made.shop, anew->id).find("tidewell") == std::string::npos);
    CHECK(db::check_history(made.shop).empty());
  }
  SECTION("the words of another buyer's blade stay") {
    made.did("word_certificate", {{"blade", made.blade}, {"made_for", "Ida Holm"}});
    made.did("erase_customer", {{"customer", buyer}});
    CHECK(db::read_dossier(made.shop, made.blade)->buyer == "Ida Holm");
  }
}

TEST_CASE("the name goes with its buyer too where it was written otherwise") {
  FinishedBlade made;
  const auto order = made.order();
  made.now += std::chrono::hours(1);
  const auto blade = made.did("assign_blade", {{"item", order.item}, {"title", "chef's knife"},
                                               {"grade", "80CrV2"}, {"length", "240 mm"},
                                               {"route", "profile"}});
  made.did("word_certificate", {{"blade", blade}, {"made_for", "the Holms of the mill"}});
  made.did("cancel_commission", {{"commission", order.commission}, {"why", "moved away"}});
  made.did("erase_customer", {{"customer", "Ida Holm"}});
  CHECK_FALSE(db::read_dossier(made.shop, blade)->buyer);
  CHECK(content_of(made.shop).find("Holms") == std::string::npos);
}

TEST_CASE(
    "the maker's own words are printed where the record bears them, and stop the issue where not") {
  FinishedBlade made;
  made.did("word_certificate", {{"blade", made.blade},
                                {"notes", "The first of a pair.\nMade in a wet autumn."},
                                {"care", "Oil it with camellia oil."},
                                {"made_for", "M. Tidewell"},
                                {"finish", "forced patina"},
                                {"differs", "2 mm shorter than drawn"},
                                {"knife_mass", "187 g"},
                                {"behind_edge", "0.15 mm"}});
  const auto dossier = db::read_dossier(made.shop, made.blade);
  REQUIRE(dossier);
  CHECK(dossier->buyer == "M. Tidewell");
  CHECK(dossier->free_texts.size() == 3);
  CHECK(certificate::compose(*dossier).may_issue());
  const auto number = made.did("issue_certificate", {{"blade", made.blade}});
  const auto record =
      db::certificate_record(made.shop, db::find_certificate(made.shop, number, "certificate")->id);
  for (const char* words : {"Made in a wet autumn.", "camellia", "M. Tidewell", "forced patina",
                            "2 mm shorter than drawn", "187 g", "0.15 mm"})
    CHECK(record.find(words) != std::string::npos);
  CHECK(record.find("never dry-grind") ==
        std::string::npos);  // the maker's care takes the place of the usual
  made.did("word_certificate", {{"blade", made.blade}, {"notes", "Hand-forged from damascus."}});
  CHECK_FALSE(made.tries("issue_certificate", {{"blade", made.blade}, {"reason", "new notes"}}));
  CHECK_FALSE(made.tries("word_certificate", {{"blade", made.blade}, {"claims", "magic"}}));
  made.did("word_certificate", {{"blade", made.blade}, {"claims", "sub_zero"}});
  CHECK_FALSE(made.tries("issue_certificate", {{"blade", made.blade}, {"reason", "a claim"}}));
  made.did("word_certificate", {{"blade", made.blade}, {"claims", "stock_removal"}});
  made.did("issue_certificate", {{"blade", made.blade}, {"reason", "a claim"}});
}

TEST_CASE("a corrected entry is told on the certificate, with what stood there first and why") {
  FinishedBlade made;
  const auto told = [&] {
    std::string all;
    for (const auto& one :
         certificate::compose(*db::read_dossier(made.shop, made.blade)).disclosures)
      all += one.text + "\n";
    return all;
  };
  CHECK(told().find("Corrected on") == std::string::npos);
  db::Query entry(made.shop, "SELECT id FROM log_entry WHERE operation = 'harden'");
  REQUIRE(entry.next());
  made.did("correct", {{"subject", "log_entry"},
                       {"id", std::to_string(entry.integer("id"))},
                       {"field", "hold"},
                       {"value", "12 min"},
                       {"reason", "read the wrong line of the card"}});
  CHECK(told().find(
            "harden, hold: first written as 10 min. Reason: read the wrong line of the card.") !=
        std::string::npos);
  made.did("correct", {{"subject", "blade"},
                       {"id", made.blade},
                       {"field", "length"},
                       {"value", "208 mm"},
                       {"reason", "measured again"}});
  CHECK(told().find("length of this blade: first written as 210 mm. Reason: measured again.") !=
        std::string::npos);
  db::Query reading(made.shop, "SELECT id FROM hardness_reading ORDER BY id");
  REQUIRE(reading.next());
  made.did("correct", {{"subject", "reading"},
                       {"id", std::to_string(reading.integer("id"))},
                       {"field", "void"},
                       {"reason", "on scale"}});
  CHECK(told().find("a reading of 60.5 HRC at edge") != std::string::npos);
  CHECK(told().find("on scale") != std::string::npos);
}

TEST_CASE("a finding that reaches the edge is told as such") {
  FinishedBlade made;
  const auto finding = made.did("log_finding", {{"blade", made.blade},
                                                {"kind", "soft area"},
                                                {"words", "soft at the heel"},
                                                {"reaches_edge", "yes"}});
  made.did("settle_finding",
           {{"finding", finding}, {"decision", "buyer accepts"}, {"words", "for the wall"}});
  const auto draft = certificate::compose(*db::read_dossier(made.shop, made.blade));
  CHECK(std::any_of(draft.disclosures.begin(), draft.disclosures.end(), [](const auto& one) {
    return one.text.find("It reaches the edge: not for use as a cutting tool.") !=
           std::string::npos;
  }));
}

TEST_CASE(
    "a key file is whole and the maker's alone before the shop names it, and gone when the shop "
    "does not keep it") {
  FinishedBlade made;
  const Scratch scratch;
  db::KeySmith smith;
  smith.make = [](const std::string&, const std::string&, const std::string&, Instant from,
                  Instant to) {
    return db::MadeKey{"locked key", std::string(64, 'a'), "a maker", from, to};
  };
  db::set_key_smith(smith);
  const std::string place = (scratch / "shop.key").string();
  const db::Given given{{"passphrase", "a long sentence"}, {"file", place}};
  {
    db::Batch undone(made.shop);
    made.did("make_key", given);
    CHECK(std::filesystem::exists(place));
  }
  CHECK_FALSE(std::filesystem::exists(place));
  CHECK_FALSE(db::present_key(made.shop));
  made.did("make_key", given);
  CHECK(std::filesystem::file_size(place) == 10);
  CHECK((std::filesystem::status(place).permissions() & std::filesystem::perms::all) ==
        (std::filesystem::perms::owner_read | std::filesystem::perms::owner_write));
  made.did("retire_key", {{"key", std::string(8, 'a')}, {"reason", "lost"}});
  CHECK_FALSE(made.tries("make_key", given));  // a file that is there is never written over
  CHECK(std::filesystem::file_size(place) == 10);
}

TEST_CASE(
    "a sheet of labels is chosen by name or by its measures, and one that cannot be is refused") {
  FinishedBlade made;
  CHECK_FALSE(db::label_stock(made.shop));
  made.did("use_label_sheet", {{"name", "A4, 18 labels of 63.5 x 46.6 mm"}});
  CHECK(db::label_stock(made.shop)->down == 6);
  made.did("use_label_sheet", {{"name", "A4, 18 labels of 63.5 x 46.6 mm"}, {"top", "8.8 mm"}});
  CHECK(db::label_stock(made.shop)->top == Length::nanometres(8'800'000));
  CHECK_FALSE(made.tries("use_label_sheet", {{"name", "mine"}, {"across", "2"}}));
  CHECK_FALSE(made.tries("use_label_sheet",
                         {{"name", "A4, 18 labels of 63.5 x 46.6 mm"}, {"pitch_across", "60 mm"}}));
}
