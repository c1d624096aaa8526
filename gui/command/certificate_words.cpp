// SPDX-License-Identifier: MIT
// Words about certificates: issue, revoke, wording, verify.
#include <algorithm>
#include <array>

#include "db/actions/action.h"
#include "db/store/blade_store.h"
#include "db/store/certificate_store.h"
#include "db/store/dossier_reader.h"
#include "domain/certificate/certificate_record.h"
#include "domain/certificate/compose.h"
#include "gui/command/json_text.h"
#include "gui/command/shop_of.h"
#include "gui/command/word_list.h"
#include "gui/desk/paper/certificate_check.h"
#include "gui/desk/paper/paper.h"
#include "reports/pdf.h"

namespace tangmark::command {
namespace {

namespace cert = certificate;

std::string level_of(const cert::Statement& s) {
  return {static_cast<char>(std::toupper(cert::letter(s.level)))};
}

Json draft_json(const cert::CertificateDraft& draft) {
  Json statements = Json::array(), missing = Json::array(), disclosures = Json::array(),
       blocks = Json::array();
  for (const auto& s : draft.statements) {
    Json evidence = Json::array();
    for (const auto& e : s.evidence) evidence.push_back(cert::evidence_text(e));
    statements.push_back({{"claim", cert::claim_id(s.claim)},
                          {"text", s.text},
                          {"level", level_of(s)},
                          {"evidence", evidence}});
  }
  for (const auto& m : draft.missing)
    missing.push_back({{"claim", cert::claim_id(m.claim)}, {"needs", cert::needs_text(m)}});
  for (const auto& d : draft.disclosures) disclosures.push_back(d.text);
  for (const auto& b : draft.blocks)
    blocks.push_back({{"problem", b.sentence}, {"remedy", b.remedy}});
  Json names = Json::array(), words = Json::array();
  for (const auto& n : draft.names) names.push_back(n.name);
  for (const auto& w : draft.words)
    words.push_back({{"where", w.where},
                     {"word", w.hit.word},
                     {"lacking", w.hit.lacking},
                     {"truthful", w.hit.truthful}});
  return {{"statements", statements},
          {"missing", missing},
          {"disclosures", disclosures},
          {"blocks", blocks},
          {"name", draft.name},
          {"names", names},
          {"words", words}};
}

void say_draft(const cert::CertificateDraft& draft) {
  say("Called: " + draft.name + ".");
  for (const auto& n : draft.names)
    if (n.name != draft.name) say("    or: " + n.name);
  for (const auto& s : draft.statements)
    say(std::string(cert::claim_head(s.claim)) + ". " + s.text + "\n    " +
        cert::level_line(s.evidence));
  for (const auto& a : draft.absences) say(std::string(cert::claim_head(a.claim)) + ". " + a.text);
  for (const auto& d : draft.disclosures) say("Told openly: " + d.text);
  for (const auto& m : draft.missing)
    say("MISSING for " + std::string(cert::claim_id(m.claim)) + ": " + cert::needs_text(m));
  for (const auto& w : draft.words) {
    say("WORD \"" + w.hit.word + "\" in " + w.where + " is not borne by the record.");
    for (const auto& truthful : w.hit.truthful) say("    true would be: " + truthful);
  }
  for (const auto& b : draft.blocks) say("STOPPED: " + b.sentence + " " + b.remedy);
}

// What a certificate says apart from its number and day: two of the same text need no new issue.
bool same_statements(const std::string& old_record, const cert::Dossier& dossier,
                     const cert::CertificateDraft& draft) {
  const auto old = cert::read_record(old_record);
  if (!old) return false;
  const cert::IssueFacts facts{old->number, old->issue, old->issued,  {},
                               {},          old->paper, old->contact, old->fonts};
  cert::CertificateSheet now = cert::certificate_sheet(dossier, draft, facts);
  now.replaces = old->replaces;
  return now == *old;
}

Exit draft_only(const Call& call, const db::ShopFile& shop, const cert::Dossier& dossier,
                const cert::CertificateDraft& draft) {
  if (const auto path = call.option("pdf")) {
    const auto fonts = reports::FontBook::load();
    auto document = desk::draft_paper({shop, fonts, call.now}, dossier, draft);
    if (!document) return refused(call, document.problems());
    if (auto done = write_whole(*path, reports::pdf_bytes(*document, fonts)); !done)
      return refused(call, done.problems());
  }
  if (call.has("json")) {
    Json json = draft_json(draft);
    json["issued"] = false;
    json["number"] = nullptr;
    say_json(json);
  } else {
    say_draft(draft);
  }
  return draft.may_issue() ? Exit::done : Exit::answer_is_no;
}

Exit write_issue(const Call& call, const db::ShopFile& shop, const db::IssuedCertificate& issued,
                 const cert::CertificateDraft& draft, const std::vector<std::string>& warnings) {
  if (const auto path = call.option("pdf"))
    if (auto done = write_whole(*path, db::certificate_pdf(shop, issued.id)); !done)
      return refused(call, done.problems());
  if (call.has("json")) {
    Json json = draft_json(draft);
    json["issued"] = true;
    json["number"] = std::to_string(issued.number);
    json["issue"] = issued.issue;
    json["digest"] = issued.digest;
    json["warnings"] = warnings;
    say_json(json);
  } else {
    say("Certificate " + std::to_string(issued.number) + ", issue " + std::to_string(issued.issue) +
        ".");
    for (const auto& warning : warnings) tell(warning);
  }
  return Exit::done;
}

Exit certificate(const Call& call) {
  return with_shop(call, [&](db::ShopFile& shop) {
    const auto dossier = db::read_dossier(shop, call.words[1]);
    if (!dossier) return refused(call, dossier.problems());
    const auto draft = cert::compose(*dossier);
    if (call.has("draft")) return draft_only(call, shop, *dossier, draft);
    const auto kept = db::blade_named(shop, call.words[1], "blade");
    if (!kept) return refused(call, kept.problems());
    auto earlier = db::certificates_of(shop, kept->id);
    // A reprint gives the same bytes: only a changed record makes a new issue.
    if (!earlier.empty() && !call.has("reason") && !earlier.front().revoked_at &&
        same_statements(db::certificate_record(shop, earlier.front().id), *dossier, draft))
      return write_issue(call, shop, earlier.front(), draft, {});
    db::Given given{{"blade", call.words[1]}};
    for (const auto& [option, field] : {std::pair{"reason", "reason"},
                                        {"key-file", "key_file"},
                                        {"passphrase-file", "passphrase_file"}})
      if (const auto value = call.option(option)) given[field] = *value;
    if (call.has("unsigned")) given["unsigned"] = "yes";
    auto done = db::perform(shop, "issue_certificate", given, call.now);
    if (!done) {
      for (const Problem& p : done.problems()) tell(p.sentence + " " + p.remedy);
      if (call.has("json")) {
        Json json = draft_json(draft);
        json["issued"] = false;
        json["number"] = nullptr;
        Json problems = Json::array();
        for (const Problem& p : done.problems())
          problems.push_back({{"field", p.field}, {"problem", p.sentence}, {"remedy", p.remedy}});
        json["problems"] = problems;
        say_json(json);
      }
      static constexpr std::array input{"reason", "key_file", "passphrase", "passphrase_file"};
      return std::ranges::find(input, done.problem().field) != input.end() ? Exit::refused
                                                                           : Exit::answer_is_no;
    }
    earlier = db::certificates_of(shop, kept->id);
    return write_issue(call, shop, earlier.front(), draft, done->warnings);
  });
}

Exit revoke(const Call& call) {
  if (!call.has("reason")) {
    tell("tangmark revoke needs --reason TEXT.");
    return Exit::usage;
  }
  return with_shop(call, [&](db::ShopFile& shop) {
    auto done =
        db::perform(shop, "revoke_certificate",
                    {{"certificate", call.words[1]}, {"reason", *call.option("reason")}}, call.now);
    if (!done) return refused(call, done.problems());
    say("Certificate " + done->number + " is revoked.");
    return Exit::done;
  });
}

Exit public_list_word(const Call& call) {
  return with_shop(call, [&](db::ShopFile& shop) {
    const auto list = desk::public_list({shop, reports::FontBook::load(), call.now});
    const std::string csv = reports::public_list_csv(list);
    for (const auto& [option, bytes] :
         {std::pair{"csv", csv}, {"html", reports::public_list_html(list)}})
      if (const auto path = call.option(option))
        if (auto done = write_whole(*path, bytes); !done) return refused(call, done.problems());
    if (!call.has("csv") && !call.has("html")) say(csv);
    return Exit::done;
  });
}

Exit wording_word(const Call& call) {
  return with_shop(call, [&](db::ShopFile& shop) {
    const auto dossier = db::read_dossier(shop, call.words[1]);
    if (!dossier) return refused(call, dossier.problems());
    const auto hits = cert::wording(*dossier, call.words[2]);
    bool all_proven = true;
    Json list = Json::array();
    for (const auto& hit : hits) {
      all_proven = all_proven && hit.proven;
      const Json needs = hit.needs ? Json(cert::claim_id(*hit.needs)) : Json(nullptr);
      list.push_back({{"word", hit.word},
                      {"at", hit.at},
                      {"needs", needs},
                      {"proven", hit.proven},
                      {"lacking", hit.lacking},
                      {"truthful", hit.truthful}});
      if (call.has("json")) continue;
      say(hit.word + (hit.proven ? ": proven." : ": not proven."));
      for (const auto& lacking : hit.lacking) say("  lacks " + lacking);
      for (const auto& truthful : hit.truthful) say("  true would be: " + truthful);
    }
    if (call.has("json"))
      say_json({{"hits", list}});
    else if (hits.empty())
      say("Nothing in this text claims anything.");
    return all_proven ? Exit::done : Exit::answer_is_no;
  });
}

Json signer_json(const desk::CertificateCheck& check) {
  if (!check.signer) return nullptr;
  return {{"owner", check.signer->key.owner},
          {"fingerprint", check.signer->key.fingerprint},
          {"at", to_stored(check.signer->at)}};
}

Exit verify(const Call& call) {
  const auto bytes = read_whole(call.words[0]);
  if (!bytes) return refused(call, bytes.problems());
  auto check = desk::check_certificate(*bytes, reports::FontBook::load());
  if (const auto path = call.option("shop")) {
    auto shop = db::ShopFile::open(*path, call.now);
    if (!shop) return refused(call, shop.problems());
    desk::compare_with_shop(check, *bytes, *shop);
  }
  if (call.has("json")) {
    say_json({{"valid", check.valid()},
              {"signature", check.signature},
              {"record", check.record},
              {"visible", check.visible},
              {"same_page", check.same_page},
              {"signer", signer_json(check)},
              {"problems", check.problems},
              {"remarks", check.remarks}});
  } else {
    if (check.valid())
      say("The certificate is whole: signature, record and visible words agree, to the last byte.");
    for (const auto& problem : check.problems) say(problem);
    for (const auto& remark : check.remarks) say(remark);
  }
  return check.valid() ? Exit::done : Exit::answer_is_no;
}

}  // namespace

std::vector<Word> certificate_words() {
  const Option json{"json", "", "one JSON object on standard output"};
  const std::vector<Option> issuing = {
      {"pdf", "OUT", "write the page"},
      {"draft", "", "issue nothing"},
      {"reason", "TEXT", "why a new issue is needed"},
      {"key-file", "F", "key to sign with"},
      {"passphrase-file", "F", "passphrase of the key"},
      {"unsigned", "", "without a seal, though the shop has a key"},
      json};
  return {
      {"certificate", "the certificate of a blade, or what stops it", "FILE BLADE", 2, 2, issuing,
       certificate},
      {"certificates",
       "every issue and key as a list for the maker's site",
       "FILE",
       1,
       1,
       {{"csv", "OUT", "as a table"}, {"html", "OUT", "as a page"}},
       public_list_word},
      {"revoke",
       "revoke an issued certificate",
       "FILE CERTIFICATE",
       2,
       2,
       {{"reason", "TEXT", "why"}},
       revoke},
      {"wording",
       "words in TEXT whose evidence is missing, and what would be true",
       "FILE BLADE TEXT",
       3,
       3,
       {json},
       wording_word},
      {"verify",
       "whether a certificate is whole: signature, record, visible words",
       "CERT.pdf",
       1,
       1,
       {{"shop", "FILE", "the shop that issued it, to compare with as well"}, json},
       verify},
  };
}

}  // namespace tangmark::command
