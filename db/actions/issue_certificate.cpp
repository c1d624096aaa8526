// SPDX-License-Identifier: MIT
#include "db/actions/certificate_action_list.h"
#include "db/actions/certificate_seal.h"
#include "db/actions/form.h"
#include "db/actions/work.h"
#include "db/digest.h"
#include "db/row.h"
#include "db/store/blade_state.h"
#include "db/store/blade_store.h"
#include "db/store/certificate_sheet_reader.h"
#include "db/store/certificate_store.h"
#include "db/store/dossier_reader.h"
#include "domain/certificate/certificate_record.h"

namespace tangmark::db {
namespace {

// Everything that stops an issue, each as a problem of its own.
Problems refusals(const certificate::CertificateDraft& draft) {
  Problems problems;
  for (const certificate::Refusal& block : draft.blocks)
    problems.push_back({"blade", block.sentence, block.remedy});
  for (const certificate::Missing& missing : draft.missing)
    problems.push_back(
        {std::string(certificate::claim_id(missing.claim)),
         "The record does not bear the claim " + std::string(certificate::claim_id(missing.claim)) +
             ".",
         "It needs " + certificate::needs_text(missing) + "; or leave the claim out."});
  return problems;
}

struct Head {
  std::int64_t number = 0, issue = 1;
  std::optional<CertificateId> replaces;
  std::optional<std::string> old_issue;  ///< "issue 1 of 24 Nov 2026"
};

Head head_of(Work& work, blade::BladeId blade) {
  const auto earlier = certificates_of(work.shop(), blade);
  if (earlier.empty()) return {work.next_number("certificate"), 1, {}, {}};
  const IssuedCertificate& last = earlier.front();
  // Without the day of the week.
  const std::string day = to_text(work.settings().zone.date_of(last.issued_at)).substr(4);
  return {last.number, last.issue + 1, last.id,
          "issue " + std::to_string(last.issue) + " of " + day};
}

// The reason for a new issue is printed, so it is read against the record like any other text.
certificate::CertificateDraft draft_of(const certificate::Dossier& dossier,
                                       const std::optional<std::string>& why) {
  certificate::Dossier read = dossier;
  if (why) read.free_texts.push_back({"the reason for the new issue", *why});
  return certificate::compose(read);
}

void store_issue(Work& work, blade::BladeId blade, const Head& head, const std::string& record,
                 const PrintedCertificate& printed, const std::optional<std::string>& why) {
  Row row("certificate");
  row.set("number", head.number)
      .set("blade_id", blade)
      .set("issue", head.issue)
      .set("issued_at", work.now())
      .set("record", record)
      .set("digest", sha256_hex(record))
      .set_bytes("pdf", printed.pdf)
      .set("replaces_id", head.replaces)
      .set("why", why);
  if (!printed.signed_by.empty()) row.set("signed_by", printed.signed_by);
  row.insert(work.shop());
}

certificate::IssueFacts facts_of(Work& work, const Head& head,
                                 const std::optional<std::string>& why) {
  certificate::IssueFacts facts = issue_facts(work.shop());
  facts.number = std::to_string(head.number);
  facts.issue = static_cast<int>(head.issue);
  facts.issued = work.now();
  facts.replaces = head.old_issue;
  facts.why = why.value_or("");
  facts.fonts = certificate_printer().fonts();
  return facts;
}

Outcome<ActionResult> issue(Work& work, Form& form) {
  const auto kept = blade_named(work.shop(), form.text("blade"), "blade");
  const auto why = form.maybe_text("reason");
  if (!kept) form.add(kept.problem());
  const auto seal = seal_asked(work, form);
  if (form.refused()) return form.problems();
  if (!work.passes(blocks(work.shop(), *kept, blade::Stage::certificate, work.now())))
    return work.problems();
  const auto dossier = read_dossier(work.shop(), std::to_string(kept->number));
  if (!dossier) return dossier.problems();
  const auto draft = draft_of(*dossier, why);
  if (Problems stopped = refusals(draft); !stopped.empty()) return stopped;
  const auto earlier = certificates_of(work.shop(), kept->id);
  if (!earlier.empty() && !why)
    return Problem{"reason",
                   "Blade " + std::to_string(kept->number) + " has certificate " +
                       std::to_string(earlier.front().number) + " already.",
                   "Say why a new issue is needed; the old one stays on record."};
  if (!certificate_printer().print)
    return Problem{"blade", "This program was started without a printer of pages.",
                   "Issue it from the window or the terminal."};
  const Head head = head_of(work, kept->id);
  const auto sheet = certificate::certificate_sheet(*dossier, draft, facts_of(work, head, why));
  const std::string record = certificate::record_text(sheet);
  const auto printed =
      certificate_printer().print({sheet, shown_photo(work.shop(), *dossier), seal});
  if (!printed) return printed.problems();
  store_issue(work, kept->id, head, record, *printed, why);
  for (const std::string& warning : draft.warnings) work.warn(warning);
  return work.done(std::to_string(head.number));
}

Outcome<ActionResult> revoke(Work& work, Form& form) {
  const auto found = find_certificate(work.shop(), form.text("certificate"), "certificate");
  const auto why = form.text("reason");
  if (!found) form.add(found.problem());
  if (form.refused()) return form.problems();
  if (found->revoked_at)
    return Problem{"certificate",
                   "Certificate " + std::to_string(found->number) + " is revoked already.",
                   "Nothing is left to do."};
  Row("certificate")
      .set("revoked_at", work.now())
      .set("revoked_why", why)
      .update(work.shop(), found->id.row());
  return work.done(std::to_string(found->number));
}

}  // namespace

const Action issue_certificate{
    "issue_certificate",
    "Issue the certificate of a blade; it says only what the record shows.",
    {{"blade", "Blade", FieldKind::blade, true, "41"},
     {"reason", "Why a new issue", FieldKind::text, false, "length was mistyped"},
     {"passphrase", "Passphrase of the key", FieldKind::secret, false,
      "seals it with the shop's key"},
     {"key_file", "Key file", FieldKind::file, false, "a key that is kept outside the shop file"},
     {"passphrase_file", "Passphrase in a file", FieldKind::file, false, "instead of typing it"},
     {"unsigned", "Issue without a seal", FieldKind::yes_no, false, "though the shop has a key"}},
    issue};
const Action revoke_certificate{
    "revoke_certificate",
    "Revoke an issued certificate; it stays on record as revoked.",
    {{"certificate", "Certificate", FieldKind::certificate, true, "12 or 12/1"},
     {"reason", "Why", FieldKind::text, true, "the blade came back and was hardened anew"}},
    revoke};

}  // namespace tangmark::db
