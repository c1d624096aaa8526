// SPDX-License-Identifier: MIT
#include "gui/window/form_panel.h"

#include <wx/button.h>
#include <wx/checkbox.h>
#include <wx/choice.h>
#include <wx/filedlg.h>
#include <wx/sizer.h>
#include <wx/textctrl.h>
#include <wx/wupdlock.h>

#include <algorithm>

#include "gui/window/platform.h"
#include "gui/window/press.h"
#include "gui/window/text.h"
#include "gui/window/words.h"
#include "gui/desk/window_words.h"

namespace tangmark::window {
namespace {

constexpr int label_px = 184;
constexpr int field_px = 336;
constexpr int entry_px = 40;

}  // namespace

FormPanel::FormPanel(wxWindow* parent, Answers answers)
    : Surface(parent, Depth::window), answers_(std::move(answers)) {
  const Sizes& sizes = look().sizes;
  scroll_ = new wxScrolledWindow(this, wxID_ANY, wxDefaultPosition, wxDefaultSize,
                                 wxVSCROLL | wxTAB_TRAVERSAL | wxNO_BORDER);
  scroll_->SetScrollRate(0, sizes.gap(3));
  title_ = new Words(scroll_, {}, Voice::heading);
  under_ = new Words(scroll_, {}, Voice::grey);
  above_ = new Words(scroll_, {}, Voice::problem);
  grid_ = new wxFlexGridSizer(3, sizes.gap(1), sizes.gap(2));
  more_ = new Press(scroll_, "More fields", PressKind::quiet);
  auto* fields = new wxBoxSizer(wxVERTICAL);
  fields->Add(title_, 0, wxEXPAND);
  fields->Add(under_, 0, wxEXPAND);
  fields->Add(above_, 0, wxEXPAND | wxTOP, sizes.gap(1));
  fields->Add(grid_, 0, wxEXPAND | wxTOP, sizes.gap(2));
  fields->Add(more_, 0, wxTOP, sizes.gap(1));
  auto* inset = new wxBoxSizer(wxVERTICAL);
  inset->Add(fields, 1, wxEXPAND | wxALL, sizes.gap(2));
  scroll_->SetSizer(inset);

  submit_ = new Press(this, "Save", PressKind::main, "Enter");
  auto* leave = new Press(this, "Leave", PressKind::plain, "Esc");
  auto* foot = new wxBoxSizer(wxHORIZONTAL);
  foot->AddStretchSpacer();
  foot->Add(leave, 0, wxRIGHT, sizes.gap(2));
  foot->Add(submit_);
  auto* all = new wxBoxSizer(wxVERTICAL);
  all->Add(scroll_, 1, wxEXPAND);
  all->Add(new Rule(this, Rule::Way::across), 0, wxEXPAND);
  all->Add(foot, 0, wxEXPAND | wxALL, sizes.gap(2));
  SetSizer(all);

  more_->Bind(wxEVT_BUTTON, [this](wxCommandEvent&) { show_hidden(true); });
  submit_->Bind(wxEVT_BUTTON,
                [this](wxCommandEvent&) { CallAfter([this] { answers_.submit(); }); });
  leave->Bind(wxEVT_BUTTON, [this](wxCommandEvent&) { CallAfter([this] { answers_.leave(); }); });
  Bind(wxEVT_CHAR_HOOK, &FormPanel::on_key, this);
  scroll_->Bind(wxEVT_SIZE, [this](wxSizeEvent& event) {
    fit();
    event.Skip();
  });
}

void FormPanel::on_key(wxKeyEvent& event) {
  const int key = event.GetKeyCode();
  const wxWindow* focus = FindFocus();
  const auto* text = dynamic_cast<const wxTextCtrl*>(focus);
  const bool own_enter = dynamic_cast<const wxButton*>(focus) != nullptr ||
                         (text != nullptr && text->IsMultiLine() && !event.ControlDown());
  if (key == WXK_ESCAPE) {
    CallAfter([this] { answers_.leave(); });
  } else if ((key == WXK_RETURN || key == WXK_NUMPAD_ENTER) && !own_enter) {
    CallAfter([this] { answers_.submit(); });
  } else {
    event.Skip();
  }
}

void FormPanel::show(const desk::Form& form) {
  const wxWindowUpdateLocker still(this);
  form_ = form;
  title_->say(form.title);
  under_->say(form.under);
  under_->Show(!form.under.empty());
  above_->say({});
  above_->Hide();
  submit_->say(form.submit, "Enter");
  grid_->Clear(true);
  lines_.clear();
  for (std::size_t i = 0; i < form_.fields.size(); ++i) add_line(i);
  if (!grid_->IsColGrowable(2)) grid_->AddGrowableCol(2, 1);
  show_hidden(false);
  scroll_->Scroll(0, 0);
  Layout();
}

void FormPanel::add_line(std::size_t position) {
  const desk::FormField& field = form_.fields[position];
  const Sizes& sizes = look().sizes;
  Line line;
  line.label = new Words(scroll_, field.label, field.required ? Voice::strong : Voice::text);
  line.label->SetMinSize({sizes.of(label_px), -1});
  line.label->fit(sizes.of(label_px));
  line.label->SetMinSize({sizes.of(label_px), line.label->GetMinSize().y});
  line.control = make_control(field, line.control_sizer);
  name_for_readers(*line.control, field.label);
  line.beside = new Words(scroll_, field.help, Voice::note);
  grid_->Add(line.label, 0, wxALIGN_CENTRE_VERTICAL);
  grid_->Add(line.control_sizer, 0, wxALIGN_CENTRE_VERTICAL);
  grid_->Add(line.beside, 1, wxALIGN_CENTRE_VERTICAL | wxEXPAND);
  lines_.push_back(line);
}

wxWindow* FormPanel::make_control(const desk::FormField& field, wxSizer*& holder) {
  const int width = look().sizes.of(field_px);
  holder = new wxBoxSizer(wxHORIZONTAL);
  wxWindow* made = nullptr;
  switch (field.entry) {
    case desk::Entry::choice: {
      auto* choice = new wxChoice(scroll_, wxID_ANY);
      int chosen = wxNOT_FOUND;
      if (!field.required) choice->Append(wxString());
      for (const desk::Choice& each : field.choices) {
        const int at = choice->Append(shown(each.words));
        if (each.value == field.value) chosen = at;
      }
      choice->SetSelection(chosen);
      choice->SetMinSize({width, look().sizes.of(entry_px)});
      made = choice;
      break;
    }
    case desk::Entry::tick: {
      auto* tick = new wxCheckBox(scroll_, wxID_ANY, wxS("Yes"));
      tick->SetValue(field.value == "yes");
      made = tick;
      break;
    }
    case desk::Entry::lines: {
      made = new wxTextCtrl(scroll_, wxID_ANY, shown(field.value), wxDefaultPosition,
                            {width, look().sizes.of(88)}, wxTE_MULTILINE);
      break;
    }
    case desk::Entry::line:
    case desk::Entry::secret:
    case desk::Entry::file: {
      const long style = field.entry == desk::Entry::secret ? wxTE_PASSWORD : 0;
      auto* text = new wxTextCtrl(scroll_, wxID_ANY, shown(field.value), wxDefaultPosition,
                                  wxDefaultSize, style);
      text->SetMinSize({field.entry == desk::Entry::file ? width - look().sizes.of(104) : width,
                        look().sizes.of(entry_px)});
      made = text;
      break;
    }
  }
  set_style(*made, "tm-field");
  holder->Add(made, 0, wxALIGN_CENTRE_VERTICAL);
  if (field.entry == desk::Entry::file) {
    auto* choose = new Press(scroll_, "Choose", PressKind::plain);
    auto* text = static_cast<wxTextCtrl*>(made);
    choose->Bind(wxEVT_BUTTON, [this, text](wxCommandEvent&) {
      CallAfter([this, text] {
        wxFileDialog dialog(this, wxS("Choose a file"), wxString(), wxString(), wxS("*"),
                            wxFD_OPEN | wxFD_FILE_MUST_EXIST);
        if (dialog.ShowModal() == wxID_OK) text->SetValue(dialog.GetPath());
      });
    });
    holder->Add(choose, 0, wxLEFT | wxALIGN_CENTRE_VERTICAL, look().sizes.gap(1));
  }
  return made;
}

void FormPanel::show_hidden(bool all) {
  all_shown_ = all;
  std::size_t hidden = 0;
  for (std::size_t i = 0; i < lines_.size(); ++i) {
    const bool seen = all || !form_.fields[i].hidden;
    if (!seen) ++hidden;
    lines_[i].label->Show(seen);
    lines_[i].beside->Show(seen);
    lines_[i].control_sizer->ShowItems(seen);
  }
  more_->Show(hidden > 0);
  more_->say("More fields (" + std::to_string(hidden) + ")", {});
  fit();
}

std::string FormPanel::value_of(std::size_t position) const {
  const desk::FormField& field = form_.fields[position];
  const wxWindow* control = lines_[position].control;
  if (const auto* text = dynamic_cast<const wxTextCtrl*>(control)) return typed(text->GetValue());
  if (const auto* tick = dynamic_cast<const wxCheckBox*>(control)) {
    // Never ticked is never said; taken back is a no.
    return tick->GetValue() ? "yes" : field.value == "yes" ? "no" : "";
  }
  const auto* choice = static_cast<const wxChoice*>(control);
  const int at = choice->GetSelection() - (field.required ? 0 : 1);
  if (at < 0 || at >= static_cast<int>(field.choices.size())) return {};
  return field.choices[static_cast<std::size_t>(at)].value;
}

desk::Typed FormPanel::filled() const {
  desk::Typed values;
  for (std::size_t i = 0; i < lines_.size(); ++i) {
    if (std::string value = value_of(i); !value.empty()) {
      values[form_.fields[i].name] = std::move(value);
    }
  }
  return values;
}

void FormPanel::show_problems(const Problems& problems) {
  const wxWindowUpdateLocker still(this);
  const std::string on_top = desk::above(problems, form_);
  above_->say(on_top);
  above_->Show(!on_top.empty());
  wxWindow* first = nullptr;
  bool hidden_at_fault = false;
  for (std::size_t i = 0; i < lines_.size(); ++i) {
    const std::string said = desk::beside(problems, form_.fields[i].name);
    const bool wrong = !said.empty();
    lines_[i].beside->say(wrong ? said : form_.fields[i].help);
    lines_[i].beside->speak_as(wrong ? Voice::problem : Voice::note);
    set_style(*lines_[i].control, "tm-wrong", wrong);
    if (wrong && first == nullptr) first = lines_[i].control;
    if (wrong && form_.fields[i].hidden) hidden_at_fault = true;
  }
  if (desk::may_be_set_aside(problems)) {
    for (desk::FormField& field : form_.fields) {
      if (field.name == "override") field.hidden = false;
    }
  }
  show_hidden(all_shown_ || hidden_at_fault);
  scroll_->Scroll(0, 0);
  if (first != nullptr) first->SetFocus();
}

void FormPanel::focus_first() {
  for (std::size_t i = 0; i < lines_.size(); ++i) {
    if (form_.fields[i].hidden ||
        (!value_of(i).empty() && form_.fields[i].entry != desk::Entry::line)) {
      continue;
    }
    if (!value_of(i).empty()) continue;
    lines_[i].control->SetFocus();
    return;
  }
  submit_->SetFocus();
}

void FormPanel::fit() {
  const Sizes& sizes = look().sizes;
  const int width = scroll_->GetClientSize().x - sizes.gap(5);
  if (width < 80) return;
  for (Words* text : {title_, under_, above_}) text->fit(width);
  const int beside = std::max(sizes.of(160), width - sizes.of(label_px + field_px) - sizes.gap(5));
  for (const Line& line : lines_) line.beside->fit(beside);
  scroll_->FitInside();
  scroll_->Layout();
}

}  // namespace tangmark::window
