// SPDX-License-Identifier: MIT
#include "gui/window/quote_panel.h"

#include <wx/sizer.h>
#include <wx/textctrl.h>

#include "gui/window/bar_canvas.h"
#include "gui/window/cost_canvas.h"
#include "gui/window/odds_canvas.h"
#include "gui/window/platform.h"
#include "gui/window/text.h"
#include "gui/window/words.h"

namespace tangmark::window {
namespace {

constexpr int right_px = 384;
constexpr int answer_px = 116;

}  // namespace

QuotePanel::QuotePanel(wxWindow* parent, AskPrice ask)
    : Surface(parent, Depth::window), ask_(std::move(ask)) {
  const Sizes& sizes = look().sizes;
  cost_ = new CostCanvas(this);
  bar_ = new BarCanvas(this);
  odds_ = new OddsCanvas(this);
  price_ = new wxTextCtrl(this, wxID_ANY, wxString(), wxDefaultPosition, {sizes.of(220), sizes.of(56)},
                          wxTE_RIGHT);
  price_->SetMinSize({sizes.of(220), sizes.of(56)});
  set_style(*price_, "tm-field");
  set_style(*price_, "tm-price");
  name_for_readers(*price_, "Price");
  currency_ = new Words(this, {}, Voice::grey);
  sentence_ = new Words(this, {}, Voice::text);

  auto* price_row = new wxBoxSizer(wxHORIZONTAL);
  price_row->Add(new Words(this, "Price", Voice::heading), 0, wxALIGN_CENTRE_VERTICAL);
  price_row->Add(currency_, 0, wxALIGN_CENTRE_VERTICAL | wxLEFT, sizes.gap(1));
  price_row->AddStretchSpacer();
  price_row->Add(price_, 0, wxALIGN_CENTRE_VERTICAL);
  auto* facts = new wxFlexGridSizer(3, sizes.of(6), sizes.gap(1));
  facts->AddGrowableCol(0, 1);
  fact(facts, "Margin", margin_, margin_note_);
  fact(facts, "Earned per hour", earned_, earned_note_);
  fact(facts, "Floor price", floor_, floor_note_);
  fact(facts, "Deposit", deposit_, deposit_note_);
  fact(facts, "Buyer pays", total_, total_note_);
  auto* right = new wxBoxSizer(wxVERTICAL);
  right->Add(price_row, 0, wxEXPAND);
  right->Add(facts, 0, wxEXPAND | wxTOP, sizes.gap(1));
  right->Add(sentence_, 0, wxEXPAND | wxTOP, sizes.gap(1));
  right->Add(odds_, 1, wxEXPAND | wxTOP, sizes.gap(1));
  right->SetMinSize({sizes.of(right_px), -1});

  auto* row = new wxBoxSizer(wxHORIZONTAL);
  row->Add(cost_, 5, wxEXPAND | wxALL, sizes.gap(2));
  row->Add(new Rule(this, Rule::Way::down), 0, wxEXPAND);
  row->Add(bar_, 4, wxEXPAND | wxALL, sizes.gap(2));
  row->Add(right, 0, wxEXPAND | wxALL, sizes.gap(2));
  SetSizer(row);
  price_->Bind(wxEVT_TEXT, [this](wxCommandEvent&) { price_changed(); });
}

void QuotePanel::fact(wxFlexGridSizer* grid, const std::string& label, Words*& value, Words*& note) {
  const Sizes& sizes = look().sizes;
  grid->Add(new Words(this, label, Voice::text), 0, wxALIGN_CENTRE_VERTICAL);
  value = new Words(this, {}, Voice::heading);
  value->SetMinSize({sizes.of(answer_px), sizes.of(30)});
  value->right_aligned();
  grid->Add(value, 0, wxALIGN_CENTRE_VERTICAL);
  note = new Words(this, {}, Voice::grey);
  note->SetMinSize({sizes.of(answer_px), sizes.of(20)});
  grid->Add(note, 0, wxALIGN_CENTRE_VERTICAL);
}

void QuotePanel::show(const desk::QuoteView& view) {
  cost_->show(view);
  bar_->show_movers(view.movers, view.currency);
  odds_->show(view.promise, view.promise_ready);
  currency_->say(view.currency);
  // A price being typed stays when the same desk is shown anew, as when the odds have been counted.
  const bool anew = view.commission != shown_for_;
  shown_for_ = view.commission;
  if (anew) price_->ChangeValue(shown(view.price));
  show_answer(view.answer);
  if (!anew && price() != view.price) price_changed();
  Layout();
}

void QuotePanel::leave() { shown_for_.clear(); }

std::string QuotePanel::price() const { return typed(price_->GetValue()); }

void QuotePanel::focus_price() {
  price_->SetFocus();
  price_->SelectAll();
}

void QuotePanel::price_changed() {
  const auto answer = ask_(price());
  set_style(*price_, "tm-wrong", !answer.ok());
  if (answer) {
    show_answer(*answer);
  } else {
    sentence_->say(answer.problem().sentence + " " + answer.problem().remedy);
    sentence_->fit(look().sizes.of(right_px));
  }
}

void QuotePanel::show_answer(const desk::PriceAnswer& answer) {
  margin_->say(answer.margin);
  margin_note_->say(answer.margin_share);
  earned_->say(answer.earned_per_hour);
  earned_note_->say(answer.aim_per_hour);
  floor_->say(answer.floor);
  floor_note_->say("hours paid");
  deposit_->say(answer.deposit);
  deposit_note_->say(answer.deposit_note);
  total_->say(answer.total);
  total_note_->say(answer.tax);
  sentence_->say(answer.sentence);
  sentence_->fit(look().sizes.of(right_px));
  bar_->show_parts(answer.parts);
}

}  // namespace tangmark::window
