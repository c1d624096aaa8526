// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "db/actions/asked.h"
#include "db/actions/bench_fields.h"
#include "db/actions/blade_action_list.h"
#include "db/row.h"
#include "db/store/finding_store.h"
#include "domain/blade/finding_kind.h"
#include "domain/measure/utf8.h"

namespace tangmark::db {
namespace {

using namespace blade;

std::vector<std::string_view> kinds() {
  std::vector<std::string_view> words;
  for (const KnownFinding& known : known_findings()) words.push_back(known.kind);
  return words;
}

std::string read_kind(Form& form) {
  std::string kind = folded(form.text("kind"));
  if (kind == "hamon") kind = "hamon seen";
  const auto all = kinds();
  if (kind.empty() || std::find(all.begin(), all.end(), kind) != all.end()) return kind;
  std::string known;
  for (const std::string_view word : all) known += (known.empty() ? "" : ", ") + std::string(word);
  form.add(
      {"kind", "\"" + kind + "\" is no kind of finding known here.", "Use one of: " + known + "."});
  return kind;
}

Outcome<ActionResult> log(Work& work, Form& form) {
  const auto blade = asked_blade(work, form);
  Finding finding{.number = 0, .blade = blade ? blade->id : BladeId{0}};
  finding.at = work.at();
  finding.kind = read_kind(form);
  finding.words = form.text("words");
  finding.place = form.maybe_text("place");
  finding.side = form.maybe_text("side");
  finding.size = form.maybe_length("size");
  finding.affects = form.maybe_yes("affects").value_or(!is_result(finding.kind));
  const bool reaches_edge = form.yes("reaches_edge");
  if (form.refused()) return form.problems();
  if (finding.at < blade->started_at)
    return Problem{"at", "That is before the blade was begun.", "Check the time and its date."};
  finding.number = work.next_number("finding");
  const FindingId id = insert_finding(work.shop(), finding);
  if (reaches_edge) Row("finding").set("reaches_edge", true).update(work.shop(), id.row());
  if (waits_for_decision(finding))
    work.warn(fmt::format(
        "Finding {} stops handle, certificate and delivery until settle_finding decides it.",
        finding.number));
  return work.done(std::to_string(finding.number));
}

Outcome<ActionResult> settle(Work& work, Form& form) {
  std::optional<KeptFinding> finding;
  const std::string number = form.text("finding");
  if (!number.empty()) {
    auto found = finding_named(work.shop(), number, "finding");
    if (found)
      finding = std::move(found).value();
    else
      form.add(found.problem());
  }
  const auto decision = form.word<Decision>("decision", Decision::open);
  const std::string words = form.text("words");
  if (decision == Decision::open && form.has("decision"))
    form.add({"decision", "Open is no decision.", "Choose what becomes of it."});
  if (form.refused()) return form.problems();
  if (work.at() < finding->at)
    return Problem{"at", "It cannot be decided before it was found.",
                   "Check the time and its date."};
  if (finding->decision != Decision::open)
    work.warn(fmt::format("It was decided before as \"{}\"; history keeps that.",
                          word_of(finding->decision)));
  finding->decision = decision;
  finding->decided_at = work.at();
  finding->decided_words = words;
  store_finding(work.shop(), *finding);
  if (decision == Decision::scrap)
    work.warn("Scrap the blade with scrap_blade and say who bears its cost.");
  return work.done(std::to_string(finding->number));
}

std::vector<std::string_view> decisions() {
  auto words = choices_of<Decision>();
  words.erase(std::find(words.begin(), words.end(), word_of(Decision::open)));
  return words;
}

}  // namespace

const Action log_finding{
    "log_finding",
    "Log something seen on a blade: a fault, or the pattern or hamon that came out.",
    {blade_field(),
     {"kind", "Kind", FieldKind::choice, true, "crack", {}, kinds()},
     {"words", "What is seen", FieldKind::long_text, true,
      "hairline at the heel, seen after etching"},
     {"place", "Place", FieldKind::text, false, "11 mm from the heel"},
     {"side", "Side", FieldKind::text, false, "left"},
     {"size", "Size", FieldKind::length, false, "3 mm"},
     {"affects", "Affects worth or use", FieldKind::yes_no, false,
      "yes for a fault unless you say no"},
     {"reaches_edge", "Reaches the edge", FieldKind::yes_no, false,
      "a soft area or crack that does is told as such"}},
    log};

const Action settle_finding{
    "settle_finding",
    "Decide what becomes of a finding.",
    {{"finding", "Finding", FieldKind::finding, true, "its number"},
     {"decision", "Decision", FieldKind::choice, true, "fix and disclose", {}, decisions()},
     {"words", "What was done or agreed", FieldKind::long_text, true,
      "ground out; buyer told by letter of 3 May"}},
    settle};

}  // namespace tangmark::db
