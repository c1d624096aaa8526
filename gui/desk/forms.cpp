// SPDX-License-Identifier: MIT
#include "gui/desk/forms.h"

#include <array>

#include "gui/desk/choices.h"

namespace tangmark::desk {
namespace {

using db::FieldKind;

// The words on the target of the actions a maker does most; the others say "Save".
constexpr std::array submits{
    std::pair{"accept_quote", "Accept the quote"},
    std::pair{"add_item", "Add the item"},
    std::pair{"assign_blade", "Begin the blade"},
    std::pair{"book_firing", "Book the firing"},
    std::pair{"correct", "Correct it"},
    std::pair{"crop", "Log the crop"},
    std::pair{"cut_piece", "Cut it"},
    std::pair{"deliver", "Deliver"},
    std::pair{"issue_certificate", "Issue the certificate"},
    std::pair{"log_finding", "Log the finding"},
    std::pair{"log_hardness", "Log the reading"},
    std::pair{"log_quench", "Log the quench"},
    std::pair{"log_step", "Log it"},
    std::pair{"log_temper", "Log the temper"},
    std::pair{"make_key", "Make the key"},
    std::pair{"make_quote", "Make the quote"},
    std::pair{"melt_ingot", "Log the melt"},
    std::pair{"name_certificate", "Call it so"},
    std::pair{"new_commission", "Open the commission"},
    std::pair{"new_customer", "Add the customer"},
    std::pair{"promise_date", "Promise it"},
    std::pair{"renew_key", "Renew the key"},
    std::pair{"retire_key", "Retire the key"},
    std::pair{"receive_lot", "Receive the lot"},
    std::pair{"run_firing", "Log the firing"},
    std::pair{"scrap_blade", "Scrap the blade"},
    std::pair{"send_quote", "Mark as sent"},
    std::pair{"settle_finding", "Settle it"},
    std::pair{"start_billet", "Start the billet"},
    std::pair{"start_timer", "Start the clock"},
    std::pair{"stop_timer", "Stop and log it"},
    std::pair{"take_cuts", "Cut it so"},
    std::pair{"take_balance", "Take the balance"},
    std::pair{"take_deposit", "Take the deposit"},
    std::pair{"tell_delay", "Log that they were told"},
    std::pair{"weld_stage", "Log the stage"},
    std::pair{"word_certificate", "Keep the words"},
};

const char* usual_help(FieldKind kind) {
  switch (kind) {
    case FieldKind::yes_no:
      return "";
    case FieldKind::share:
      return "a share: 40 % or 0.4";
    case FieldKind::money:
      return "an amount: 12.50";
    case FieldKind::date:
      return "a day: 2026-11-25 or 25 Nov 2026";
    case FieldKind::instant:
      return "07:51 today, or 2026-11-25 07:51";
    case FieldKind::duration:
      return "90 min, 1:30 or 2 h";
    case FieldKind::temperature:
      return "802 C or 1475 F";
    case FieldKind::temperature_step:
      return "28 C or 50 F";
    case FieldKind::length:
      return "3.2 mm or 1/8 in";
    case FieldKind::mass:
      return "235 g or 8 oz";
    case FieldKind::volume:
      return "250 ml or 15 l";
    case FieldKind::file:
      return "where the file is";
    default:
      return "";
  }
}

Entry entry_for(const db::Field& field, const std::vector<Choice>& choices) {
  switch (field.kind) {
    case FieldKind::yes_no:
      return Entry::tick;
    case FieldKind::long_text:
      return Entry::lines;
    case FieldKind::secret:
      return Entry::secret;
    case FieldKind::file:
      return Entry::file;
    case FieldKind::choice:
      return Entry::choice;
    default:
      return choices.empty() ? Entry::line : Entry::choice;
  }
}

FormField field_of(const db::Field& field, const Sight& sight, const Typed& filled) {
  FormField made;
  made.name = field.name;
  made.label = field.label;
  made.required = field.required;
  for (std::string_view word : field.choices) {
    made.choices.push_back({std::string(word), sentence_case(std::string(word))});
  }
  if (made.choices.empty()) made.choices = choices_of(field.kind, sight);
  made.entry = entry_for(field, made.choices);
  made.help = field.help.empty() ? usual_help(field.kind) : std::string(field.help);
  made.value = std::string(field.fallback);
  if (const auto given = filled.find(made.name); given != filled.end()) made.value = given->second;
  // A choice that is no longer offered (a blade delivered since) still shows what was filled in.
  if (made.entry == Entry::choice && !made.value.empty() && made.choices.size() > 0) {
    bool offered = false;
    for (const Choice& choice : made.choices) offered = offered || choice.value == made.value;
    if (!offered) made.choices.push_back({made.value, made.value});
  }
  return made;
}

FormField common_field(const char* name, const char* label, const char* help, const Typed& filled) {
  FormField made;
  made.name = name;
  made.label = label;
  made.help = help;
  made.hidden = true;
  if (const auto given = filled.find(name); given != filled.end()) made.value = given->second;
  return made;
}

// A form of many optional fields begins with those that are needed or already known.
void hide_the_many(std::vector<FormField>& fields) {
  constexpr std::size_t seen_at_once = 9;
  if (fields.size() <= seen_at_once) return;
  std::size_t seen = 0;
  for (FormField& field : fields) {
    const bool wanted = field.required || !field.value.empty();
    if (wanted) ++seen;
  }
  for (FormField& field : fields) {
    if (field.required || !field.value.empty()) continue;
    if (seen < seen_at_once) {
      ++seen;
    } else {
      field.hidden = true;
    }
  }
}

}  // namespace

std::string submit_words(const std::string& action) {
  for (const auto& [name, words] : submits) {
    if (action == name) return words;
  }
  return "Save";
}

std::vector<FormField> form_fields(const std::vector<db::Field>& fields, const Sight& sight,
                                   const Typed& filled) {
  std::vector<FormField> made;
  for (const db::Field& field : fields) made.push_back(field_of(field, sight, filled));
  hide_the_many(made);
  return made;
}

Form form_of(const std::string& name, const Sight& sight, const Typed& filled) {
  Form form;
  form.action = name;
  form.submit = submit_words(name);
  const db::Action* action = db::find_action(name);
  if (action == nullptr) {
    form.title = "There is no action " + name + ".";
    return form;
  }
  form.title = std::string(action->summary);
  if (form.title.ends_with(".")) form.title.pop_back();
  // First, so that it stands in sight when it is asked for; hidden until then.
  form.fields = {common_field("override", "Set aside because",
                              "only when a caution is to be set aside; the reason is kept",
                              filled)};
  for (FormField& field : form_fields(action->fields, sight, filled)) {
    form.fields.push_back(std::move(field));
  }
  form.fields.push_back(common_field(
      "at", "When it happened", "now, unless said otherwise; late entries are marked so", filled));
  form.fields.push_back(common_field("note_why", "Reason, for the history", "", filled));
  return form;
}

}  // namespace tangmark::desk
