// SPDX-License-Identifier: MIT
#include "gui/desk/certificates_desk.h"

#include <algorithm>
#include <map>

#include "db/listing/blade_rows.h"
#include "db/listing/certificate_rows.h"
#include "db/store/blade_store.h"
#include "db/store/certificate_words_store.h"
#include "gui/desk/blades_desk.h"
#include "gui/desk/papers.h"

namespace tangmark::desk {
namespace {

std::map<std::int64_t, db::CertificateRow> newest_by_blade(const Sight& sight) {
  std::map<std::int64_t, db::CertificateRow> newest;
  for (const db::CertificateRow& row : db::certificate_rows(sight.shop))
    newest.try_emplace(row.blade, row);
  return newest;
}

std::string issued_words(const Sight& sight, const db::CertificateRow& row) {
  std::string text = "certificate " + std::to_string(row.number) + ", issue " +
                     std::to_string(row.issue) + ", " + when(sight, row.issued_at);
  if (!row.revoked_why.empty()) text += ", revoked: " + row.revoked_why;
  return text;
}

Section issues_section(const Sight& sight, std::int64_t blade) {
  Section section;
  section.title = "Issued";
  section.table.columns = {{"Number"}, {"Issue"}, {"When"}, {"Why"}, {"State"}};
  for (const db::CertificateRow& row : db::certificate_rows(sight.shop)) {
    if (row.blade != blade) continue;
    section.table.rows.push_back(
        {{std::to_string(row.number), std::to_string(row.issue), when(sight, row.issued_at),
          row.why, row.revoked_why.empty() ? "stands" : "revoked: " + row.revoked_why},
         false,
         {}});
    if (!row.revoked_why.empty()) continue;
    section.table.rows.back().offers = {
        {"Revoke",
         OpenForm{"revoke_certificate", {{"certificate", std::to_string(row.number)}}},
         "",
         ""}};
  }
  return section;
}

// Issuing would only be refused: what is missing is done at the blade.
void lead_to_the_blade(PlaceView& view, const std::string& number) {
  view.next.sentence = "The certificate of " + number + " must wait";
  view.next.offers = {
      {"To the blade", GoTo{Place::blades, number}, "Enter", ""},
      {"Print a draft",
       OpenForm{"desk.print", {{"kind", "certificate"}, {"id", number}}},
       "Ctrl Enter",
       ""}};
}

// The maker chooses among what the record bears, and never beyond.
Section names_section(const certificate::CertificateDraft& draft, const std::string& number) {
  Section section;
  section.title = "What it is called";
  for (const certificate::TruthfulName& one : draft.names) {
    TableRow row{
        {one.name, one.name == draft.name ? "on the page" : ""}, one.name == draft.name, {}};
    if (one.name != draft.name)
      row.offers = {{"Call it so",
                     DoNow{"name_certificate", {{"blade", number}, {"name", one.name}}}, "", ""}};
    section.table.rows.push_back(std::move(row));
  }
  section.table.columns = {{"Name"}, {""}};
  for (const std::string& sentence : draft.explanations) section.paragraphs.push_back(sentence);
  return section;
}

// Each word that the record does not bear: where it stands, what it lacks, what would be true.
Section words_section(const certificate::CertificateDraft& draft) {
  Section section;
  section.title = "Words that the record does not bear";
  section.table.columns = {{"Word"}, {"Where"}, {"It lacks"}, {"True would be"}};
  for (const certificate::RefusedWord& word : draft.words) {
    std::string lacks, instead;
    for (const std::string& one : word.hit.lacking) lacks += (lacks.empty() ? "" : "; ") + one;
    for (const std::string& one : word.hit.truthful) instead += (instead.empty() ? "" : "; ") + one;
    section.table.rows.push_back(
        {{word.hit.word, word.where, lacks, instead.empty() ? "leave it out" : instead},
         false,
         {}});
  }
  return section;
}

Section own_words_section(const Sight& sight, const std::string& number) {
  Section section;
  section.title = "Your own words";
  const auto kept = db::blade_named(sight.shop, number, "blade");
  if (!kept) return section;
  const db::CertificateWords words = db::certificate_words(sight.shop, kept->id);
  Typed filled{{"blade", number}};
  const auto add = [&](const char* field, const char* label,
                       const std::optional<std::string>& text) {
    if (!text || text->empty()) return;
    filled[field] = *text;
    section.facts.push_back({label, *text, "", ""});
  };
  add("notes", "Notes", words.notes);
  add("care", "Care", words.care);
  add("made_for", "Made for", words.made_for);
  add("finish", "Finish", words.finish);
  add("health", "Health risks", words.health);
  add("differs", "Other than ordered", words.differs);
  add("claims", "Asked for", words.claims);
  if (words.knife) add("knife_mass", "Knife", to_text(*words.knife, sight.settings.mass_unit));
  if (words.behind_edge)
    add("behind_edge", "Behind the edge", to_text(*words.behind_edge, sight.settings.length_unit));
  if (section.facts.empty())
    section.paragraphs = {"None. What the record shows is printed without them."};
  section.offers = {{"Write them", OpenForm{"word_certificate", std::move(filled)}, "", ""}};
  return section;
}

void add_what_is_said(PlaceView& view, const certificate::CertificateDraft& draft) {
  for (const certificate::Statement& statement : draft.statements) {
    Section states;
    states.title = std::string(certificate::claim_head(statement.claim)) + ", level " +
                   certificate::letter(statement.level);
    states.paragraphs = {statement.text, certificate::level_line(statement.evidence)};
    view.sheet.sections.push_back(std::move(states));
  }
  Section absent;
  absent.title = "Said openly not to be so";
  for (const certificate::Absence& absence : draft.absences)
    absent.paragraphs.push_back(absence.text);
  Section told;
  told.title = "Told openly";
  for (const certificate::Disclosure& disclosure : draft.disclosures)
    told.paragraphs.push_back(disclosure.text);
  Section warnings;
  warnings.title = "To look at";
  warnings.paragraphs = draft.warnings;
  view.sheet.sections.insert(view.sheet.sections.end(), {absent, told, warnings});
}

void add_paper(PlaceView& view, const Sight& sight, const std::string& number, bool stands) {
  auto drafted = draft_certificate(sight, number);
  if (!drafted) {
    Section why;
    why.title = "No page can be set";
    for (const Problem& problem : drafted.problems())
      why.paragraphs.push_back(problem.sentence + " " + problem.remedy);
    view.sheet.sections.push_back(why);
    return;
  }
  const certificate::CertificateDraft& draft = drafted->draft;
  view.sheet.sections.push_back(names_section(draft, number));
  Section missing;
  missing.paragraphs = missing_words(draft);
  if (!missing.paragraphs.empty()) missing.title = "Missing";
  const std::size_t lacks = missing.paragraphs.size();
  view.sheet.sections.push_back(std::move(missing));
  view.sheet.sections.push_back(words_section(draft));
  view.sheet.sections.push_back(own_words_section(sight, number));
  add_what_is_said(view, draft);
  if (lacks > 0) {
    view.next.why = std::to_string(lacks) + (lacks == 1 ? " thing is" : " things are") +
                    " missing; see at the right.";
    if (!stands) lead_to_the_blade(view, number);
  }
  view.picture = std::move(drafted).value().paper;
}

}  // namespace

PlaceList certificates_list(const Sight& sight) {
  const auto newest = newest_by_blade(sight);
  std::vector<Row> rows;
  std::vector<db::BladeRow> blades = db::blade_rows(sight.shop);
  // What is finished and has none yet comes first.
  std::stable_partition(blades.begin(), blades.end(), [&](const db::BladeRow& b) {
    return b.finished && !b.delivered && !b.scrapped && newest.find(b.number) == newest.end();
  });
  for (const db::BladeRow& blade : blades) {
    const auto issued = newest.find(blade.number);
    if (blade.scrapped && issued == newest.end()) continue;
    const std::string number = std::to_string(blade.number);
    rows.push_back({number, number, blade.title,
                    sentence_case(issued == newest.end() ? "none issued, " + standing(sight, blade)
                                                         : issued_words(sight, issued->second)),
                    blade.buyer + " " + blade.grade});
  }
  return {"Certificates", "Find a blade or buyer", List(std::move(rows))};
}

PlaceView certificate_view(const Sight& sight, const std::string& number) {
  PlaceView view;
  const auto wanted = number_of(number);
  const auto blade = wanted ? db::blade_row(sight.shop, *wanted) : std::nullopt;
  if (!blade) {
    view.next = {"No blade yet", "A certificate is computed from what is on record for a blade.",
                 {{"Begin a blade", OpenForm{"assign_blade", {}}, "Enter", ""}}};
    return view;
  }
  const auto newest = newest_by_blade(sight);
  const auto issued = newest.find(blade->number);
  const bool stands = issued != newest.end() && issued->second.revoked_why.empty();
  view.next.sentence =
      stands ? "Blade " + number + " has its certificate" : "Next: the certificate of " + number;
  view.next.why =
      sentence_case(stands ? issued_words(sight, issued->second) : standing(sight, *blade)) + ".";
  view.next.offers = {{"Print it",
                       OpenForm{"desk.print", {{"kind", "certificate"}, {"id", number}}},
                       "Ctrl Enter", ""}};
  if (!stands) {
    view.next.offers.insert(
        view.next.offers.begin(),
        {"Issue it", OpenForm{"issue_certificate", {{"blade", number}}}, "Enter", ""});
  } else {
    view.next.offers.front().key = "Enter";
    view.next.offers.push_back(
        {"Issue it anew", OpenForm{"issue_certificate", {{"blade", number}}}, "Ctrl Enter", ""});
  }
  view.sheet.title = "Blade " + number;
  view.sheet.under = blade->title;
  add_paper(view, sight, number, stands);
  view.sheet.sections.push_back(issues_section(sight, blade->number));
  Section more;
  more.offers = {{"To the blade", GoTo{Place::blades, number}, "", ""}};
  view.sheet.sections.push_back(more);
  return view;
}

}  // namespace tangmark::desk
