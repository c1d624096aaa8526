// SPDX-License-Identifier: MIT
#include "gui/desk/questions_desk.h"

#include "db/store/next_steps.h"
#include "db/store/questions.h"
#include "gui/desk/forms.h"
#include "gui/desk/window_words.h"

namespace tangmark::desk {
namespace {

const db::Question* question_numbered(const std::string& number) {
  for (const db::Question& question : db::all_questions()) {
    if (std::to_string(question.number) == number) return &question;
  }
  return nullptr;
}

// What an answer leads to, as a target: the form of it, filled as far as the answer knows.
Offer offer_of(const db::NextStep& step) {
  const Typed filled(step.fields.begin(), step.fields.end());
  const std::string form = step.action == "ledger" ? "desk.ledger" : step.action;
  return {step.label, OpenForm{form, filled}, "", ""};
}

bool must_be_told(const db::Question& question) {
  for (const db::Field& field : question.fields) {
    if (field.required) return true;
  }
  return false;
}

}  // namespace

Section questions_section() {
  Section section;
  section.title = "Questions of the week";
  section.table.columns = {{"", Align::right}, {""}};
  for (const db::Question& question : db::all_questions()) {
    const std::string number = std::to_string(question.number);
    Deed deed = PlaceWork{"ask", number};
    if (must_be_told(question)) deed = OpenForm{"desk.ask", {{"question", number}}};
    section.table.rows.push_back(
        {{number, std::string(question.words)}, false, {{"Ask", std::move(deed), "", ""}}});
  }
  return section;
}

Form question_form(const Sight& sight, const std::string& number, const Typed& filled) {
  Form form;
  form.action = "desk.ask";
  form.submit = "Ask";
  const db::Question* question = question_numbered(number);
  if (question == nullptr) {
    form.title = "There is no question " + number + ".";
    return form;
  }
  form.title = std::string(question->words);
  form.fields = form_fields(question->fields, sight, filled);
  FormField kept;
  kept.name = "question";
  kept.label = "Question";
  kept.value = number;
  kept.hidden = true;
  form.fields.push_back(std::move(kept));
  return form;
}

Outcome<Sheet> answer_sheet(const Sight& sight, const std::string& number, const Typed& typed) {
  const db::Question* question = question_numbered(number);
  if (question == nullptr) return Problem{"question", "There is no question " + number + ".", ""};
  db::Given given(typed.begin(), typed.end());
  given.erase("question");
  const auto answer = db::ask(sight.shop, question->number, given, sight.now);
  if (!answer) return answer.problems();
  Sheet sheet;
  sheet.title = answer->title;
  sheet.under = std::string(question->words);
  Section section;
  for (const std::string& sentence : answer->sentences)
    section.paragraphs.push_back(in_window_words(sentence));
  for (const std::string& column : answer->columns) section.table.columns.push_back({column});
  for (const std::vector<std::string>& row : answer->rows)
    section.table.rows.push_back({row, false, {}});
  for (const db::NextStep& step : db::next_steps(sight.shop, question->number, given, sight.now))
    section.offers.push_back(offer_of(step));
  if (section.paragraphs.empty() && section.table.rows.empty())
    section.paragraphs = {"Nothing is on record for it."};
  sheet.sections = {std::move(section)};
  return sheet;
}

}  // namespace tangmark::desk
