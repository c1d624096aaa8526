// SPDX-License-Identifier: MIT
#include "gui/window/firing_reason.h"

#include <wx/dcclient.h>
#include <wx/sizer.h>
#include <wx/textctrl.h>

#include <algorithm>

#include "gui/window/platform.h"
#include "gui/window/press.h"
#include "gui/window/text.h"
#include "gui/window/words.h"

namespace tangmark::window {
namespace {

constexpr int widest_px = 460;

}  // namespace

FiringReason::FiringReason(wxWindow* parent, Answers answers)
    : Surface(parent, Depth::raised), answers_(std::move(answers)) {
  const Sizes& sizes = look().sizes;
  says_ = new wxBoxSizer(wxVERTICAL);
  because_ = new Words(this, "Put it there all the same, because", Voice::text);
  why_ = new wxTextCtrl(this, wxID_ANY, wxString(), wxDefaultPosition,
                        {sizes.of(420), sizes.of(40)}, wxTE_PROCESS_ENTER);
  set_style(*why_, "tm-field");
  name_for_readers(*why_, "Put it there all the same, because");
  refusal_ = new Words(this, {}, Voice::problem);
  auto* do_it = new Press(this, "Put it there all the same", PressKind::main, "Enter");
  auto* put_back = new Press(this, "Put it back", PressKind::plain, "Esc");
  do_it_ = do_it;
  put_back_ = put_back;
  do_it->Bind(wxEVT_BUTTON, [this](wxCommandEvent&) { CallAfter([this] { answer(); }); });
  put_back->Bind(wxEVT_BUTTON,
                 [this](wxCommandEvent&) { CallAfter([this] { answers_.put_back(); }); });
  auto* row = new wxBoxSizer(wxHORIZONTAL);
  row->Add(put_back, 0, wxRIGHT, sizes.gap(2));
  row->Add(do_it, 0);
  auto* all = new wxBoxSizer(wxVERTICAL);
  const int side = wxLEFT | wxRIGHT;
  all->Add(says_, 0, wxEXPAND | side | wxTOP, sizes.gap(2));
  all->Add(because_, 0, wxEXPAND | side | wxTOP, sizes.gap(2));
  all->Add(why_, 0, wxEXPAND | side | wxTOP, sizes.gap(1));
  all->Add(refusal_, 0, wxEXPAND | side, sizes.gap(2));
  all->Add(row, 0, wxALIGN_RIGHT | wxALL, sizes.gap(2));
  SetSizer(all);
  Bind(wxEVT_PAINT, [this](wxPaintEvent&) {
    wxPaintDC dc(this);
    dc.SetPen(wxPen(colour(look().palette.ink), 2));
    dc.SetBrush(*wxTRANSPARENT_BRUSH);
    dc.DrawRectangle(1, 1, GetClientSize().x - 1, GetClientSize().y - 1);
  });
  Bind(wxEVT_CHAR_HOOK, [this](wxKeyEvent& event) {
    const int key = event.GetKeyCode();
    const bool enter = key == WXK_RETURN || key == WXK_NUMPAD_ENTER;
    const bool on_put_back = FindFocus() == put_back_;
    if (key == WXK_ESCAPE || (enter && (on_put_back || !why_->IsShown()))) {
      CallAfter([this] { answers_.put_back(); });
    } else if (enter) {
      CallAfter([this] { answer(); });
    } else {
      event.Skip();
    }
  });
  Hide();
}

void FiringReason::refill(const desk::MoveTrial& trial) {
  const Sizes& sizes = look().sizes;
  says_->Clear(true);
  auto* sentence = new Words(this, trial.sentence, Voice::strong);
  sentence->fit(sizes.of(widest_px));
  says_->Add(sentence, 0, wxEXPAND);
  for (const std::string& reason : trial.reasons) {
    auto* words = new Words(this, reason, Voice::text);
    words->fit(sizes.of(widest_px));
    says_->Add(words, 0, wxEXPAND | wxTOP, sizes.of(4));
  }
}

void FiringReason::ask(const desk::MoveTrial& trial, wxPoint near) {
  refill(trial);
  why_->ChangeValue(wxString());
  refusal_->say({});
  refusal_->Hide();
  because_->Show(trial.may_set_aside);
  why_->Show(trial.may_set_aside);
  do_it_->Show(trial.may_set_aside);
  Fit();
  const wxSize room = GetParent()->GetClientSize();
  Move(std::clamp(near.x, 0, std::max(0, room.x - GetSize().x)),
       std::clamp(near.y, 0, std::max(0, room.y - GetSize().y)));
  Show();
  Raise();
  (trial.may_set_aside ? static_cast<wxWindow*>(why_) : put_back_)->SetFocus();
}

void FiringReason::answer() {
  const std::string refusal = answers_.all_the_same(typed(why_->GetValue()));
  if (refusal.empty()) return;
  refusal_->say(refusal);
  refusal_->fit(look().sizes.of(widest_px));
  refusal_->Show();
  Fit();
  why_->SetFocus();
}

}  // namespace tangmark::window
