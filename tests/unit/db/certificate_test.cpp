// SPDX-License-Identifier: MIT
#include "db/actions/certificate_seal.h"
#include "db/store/certificate_store.h"
#include "db/store/dossier_reader.h"
#include "tests/unit/db/maker.h"

using namespace tangmark;
using namespace tangmark::test;

namespace {

// A blade cut from a traced bar, hardened, tempered twice and measured.
struct FinishedBlade : Maker {
  std::string blade;
  FinishedBlade() {
    db::set_certificate_printer([](const db::CertificateToPrint& print) -> Outcome<db::PrintedCertificate> {
      return db::PrintedCertificate{"page of issue " + std::to_string(print.sheet.issue), ""};
    });
    lot("80CrV2");
    did("add_bath", {{"name", "medium oil"}, {"medium", "medium oil"}, {"use", "quench"}});
    const auto blank = did("cut_piece", {{"piece", "1-1"}, {"length", "300 mm"}, {"mark", "rest"}});
    blade = did("assign_blade", {{"title", "chef's knife"}, {"grade", "80CrV2"}, {"length", "210 mm"}, {"piece", blank}, {"route", "profile,harden,temper,temper"}});
    step("1 h", "log_step", {{"operation", "profile"}, {"hands_on", "40 min"}});
    step("1 h", "log_quench", {{"bath", "medium oil"}, {"set", "830 C"}, {"hold", "10 min"}, {"hands_on", "20 min"}});
    temper("no");
    temper("yes");
    step("1 h", "log_hardness", {{"readings", "60.5,61"}, {"place", "edge"}, {"tester", "bench tester"}, {"block", "61.2"}, {"block_read", "61.0"}});
  }
  void step(const std::string&, const std::string& action, db::Given given) {
    now += std::chrono::hours(1);
    given["blade"] = blade;
    did(action, given);
  }
  void temper(const std::string& cold) {
    now += std::chrono::minutes(130);
    did("log_temper", {{"blade", blade}, {"set", "195 C"}, {"hold", "2 h"}, {"cooled_to_room", cold}, {"hands_on", "5 min"}});
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

TEST_CASE("an issued certificate is frozen, a reissue names the old one, a revoked one stays on record") {
  FinishedBlade made;
  const auto number = made.did("issue_certificate", {{"blade", made.blade}});
  const auto first = db::find_certificate(made.shop, number, "certificate");
  REQUIRE(first);
  const std::string page = db::certificate_pdf(made.shop, first->id), record = db::certificate_record(made.shop, first->id);
  CHECK_FALSE(made.tries("issue_certificate", {{"blade", made.blade}}));
  made.did("issue_certificate", {{"blade", made.blade}, {"reason", "title was mistyped"}});
  const auto second = db::find_certificate(made.shop, number, "certificate");
  REQUIRE(second);
  CHECK(second->issue == 2);
  CHECK(second->replaces_issue == 1);
  CHECK(db::certificate_pdf(made.shop, first->id) == page);
  CHECK(db::certificate_record(made.shop, first->id) == record);
  made.did("revoke_certificate", {{"certificate", number + "/2"}, {"reason", "came back"}});
  CHECK(db::find_certificate(made.shop, number + "/2", "certificate")->revoked_at);
  CHECK_FALSE(made.tries("revoke_certificate", {{"certificate", number + "/2"}, {"reason", "again"}}));
}

TEST_CASE("an open finding stops the certificate until it is decided, and is then told") {
  FinishedBlade made;
  const auto finding = made.did("log_finding", {{"blade", made.blade}, {"kind", "delamination"}, {"words", "closed line of 4 mm at the heel"}});
  const std::string before = content_of(made.shop);
  CHECK_FALSE(made.tries("issue_certificate", {{"blade", made.blade}}));
  CHECK(content_of(made.shop) == before);
  made.did("settle_finding", {{"finding", finding}, {"decision", "disclose"}, {"words", "closed, away from the edge"}});
  const auto number = made.did("issue_certificate", {{"blade", made.blade}});
  const auto issued = db::find_certificate(made.shop, number, "certificate");
  CHECK(db::certificate_record(made.shop, issued->id).find("closed line of 4 mm") != std::string::npos);
}
