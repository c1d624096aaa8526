// SPDX-License-Identifier: MIT
#include "db/actions/certificate_action_list.h"
#include "db/actions/form.h"
#include "db/actions/work.h"
#include "db/store/blade_store.h"
#include "db/store/certificate_words_store.h"
#include "db/store/dossier_reader.h"
#include "domain/certificate/compose.h"

namespace tangmark::db {
namespace {

namespace cert = certificate;

std::string offered(const std::vector<cert::TruthfulName>& names) {
  std::string text;
  for (const cert::TruthfulName& one : names) text += (text.empty() ? "" : "; ") + one.name;
  return text;
}

Outcome<ActionResult> name(Work& work, Form& form) {
  const auto kept = blade_named(work.shop(), form.text("blade"), "blade");
  const auto wanted = form.maybe_text("name");
  if (!kept) form.add(kept.problem());
  if (form.refused()) return form.problems();
  auto dossier = read_dossier(work.shop(), std::to_string(kept->number));
  if (!dossier) return dossier.problems();
  dossier->chosen_name.reset();
  const auto names = cert::compose(*dossier).names;
  const bool truthful =
      !wanted || std::any_of(names.begin(), names.end(),
                             [&](const cert::TruthfulName& one) { return one.name == *wanted; });
  if (!truthful)
    return Problem{"name",
                   "\"" + *wanted + "\" is none of the names that the record of this blade bears.",
                   "Choose one of: " + offered(names) + "."};
  CertificateWords words = certificate_words(work.shop(), kept->id);
  words.name = wanted;
  store_certificate_words(work.shop(), kept->id, words);
  return work.done(std::to_string(kept->number));
}

void read_claims(Form& form, CertificateWords& words) {
  for (const std::string& id : form.list("claims")) {
    if (!cert::claim_of(id))
      form.add({"claims", "\"" + id + "\" is no claim that a certificate knows.",
                "Use such as grade, hamon, forged, sub_zero or sole_author."});
    words.claims = (words.claims ? *words.claims + "," : std::string()) + id;
  }
}

// What the record does not bear yet is kept and said: it stops the issue until it is borne or taken
// out.
void warn_of_words(Work& work, const cert::Dossier& dossier) {
  for (const cert::RefusedWord& word : cert::compose(dossier).words) {
    std::string text = "\"" + word.hit.word + "\" in " + word.where + " is not borne by the record";
    for (std::size_t i = 0; i < word.hit.lacking.size(); ++i)
      text += (i ? "; " : ": it lacks ") + word.hit.lacking[i];
    text += ".";
    if (!word.hit.truthful.empty()) text += " True would be: " + word.hit.truthful.front() + ".";
    work.warn(text);
  }
}

Outcome<ActionResult> word(Work& work, Form& form) {
  const auto kept = blade_named(work.shop(), form.text("blade"), "blade");
  if (!kept) form.add(kept.problem());
  CertificateWords words;
  words.notes = form.maybe_text("notes");
  words.care = form.maybe_text("care");
  words.made_for = form.maybe_text("made_for");
  words.finish = form.maybe_text("finish");
  words.health = form.maybe_text("health");
  words.differs = form.maybe_text("differs");
  words.knife = form.maybe_mass("knife_mass");
  words.behind_edge = form.maybe_length("behind_edge");
  read_claims(form, words);
  if (form.refused()) return form.problems();
  words.name = certificate_words(work.shop(), kept->id).name;
  store_certificate_words(work.shop(), kept->id, words);
  const auto dossier = read_dossier(work.shop(), std::to_string(kept->number));
  if (!dossier) return dossier.problems();
  if (words.health && dossier->handle.empty())
    return Problem{"health", "The knife has no handle on record.",
                   "Enter the handle of the item first."};
  warn_of_words(work, *dossier);
  if (words.made_for)
    work.warn(
        "A name that was issued stays on that certificate, also when the person's data are erased: "
        "ask first.");
  return work.done(std::to_string(kept->number));
}

}  // namespace

const Action name_certificate{
    "name_certificate",
    "Choose what a blade is called on its certificate, among the names its record bears.",
    {{"blade", "Blade", FieldKind::blade, true, "41"},
     {"name", "Name", FieldKind::text, false,
      "one of those offered; the plainest when none is given"}},
    name};
const Action word_certificate{
    "word_certificate",
    "Write your own words for a certificate; they take the place of those before.",
    {{"blade", "Blade", FieldKind::blade, true, "41"},
     {"notes", "Notes", FieldKind::long_text, false,
      "a paragraph to a line; read against the record"},
     {"care", "Care", FieldKind::long_text, false, "instead of the usual words on care"},
     {"made_for", "Made for", FieldKind::text, false,
      "the buyer's name, when the buyer asks for it"},
     {"finish", "Finish", FieldKind::long_text, false, "oil, patina, coating; one to a line"},
     {"health", "Health risks in the handle", FieldKind::long_text, false,
      "contains beryllium; one to a line"},
     {"differs", "Other than ordered", FieldKind::long_text, false,
      "4 mm shorter than drawn, agreed 3 May; one to a line"},
     {"knife_mass", "Mass of the knife", FieldKind::mass, false, "187 g"},
     {"behind_edge", "Thickness behind the edge", FieldKind::length, false, "0.15 mm"},
     {"claims", "Claims asked for", FieldKind::text, false,
      "sub_zero, sole_author; refused until proven"}},
    word};

}  // namespace tangmark::db
