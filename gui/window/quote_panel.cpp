// SPDX-License-Identifier: MIT
#include "gui/window/quote_panel.h"

#include <wx/choice.h>
#include <wx/sizer.h>
#include <wx/textctrl.h>

#include "gui/window/bar_canvas.h"
#include "gui/window/cost_canvas.h"
#include "gui/window/odds_canvas.h"
#include "gui/window/platform.h"
#include "gui/window/press.h"
#include "gui/window/text.h"
#include "gui/window/words.h"

namespace tangmark::window {
namespace {

constexpr int right_px = 384;
constexpr int answer_px = 116;
constexpr std::size_t most_offers = 4;

// In the order of desk::PriceBy.
wxArrayString ways() {
  wxArrayString all;
  for (const char* way : {"by hand", "by the price list", "by margin", "by mark-up"})
    all.Add(shown(way));
  return all;
}

// What stands there already is left alone, so that a hand that types is not disturbed.
void put(wxTextCtrl& field, const std::string& text) {
  if (typed(field.GetValue()) != text) field.ChangeValue(shown(text));
}

}  // namespace

QuotePanel::QuotePanel(wxWindow* parent, Answers answers)
    : Surface(parent, Depth::window), answers_(std::move(answers)) {
  const Sizes& sizes = look().sizes;
  cost_ = new CostCanvas(this, [this](const desk::QuoteRow& row, desk::QuoteCell cell,
                                      const std::string& figure) {
    work_out(desk::with_figure(typed_, row, cell, figure), true);
  });
  bar_ = new BarCanvas(this);
  odds_ = new OddsCanvas(this);
  auto* left = new wxBoxSizer(wxVERTICAL);
  left->Add(cost_, 1, wxEXPAND);
  build_offers(left);
  auto* right = new wxBoxSizer(wxVERTICAL);
  build_price(right);
  auto* facts = new wxFlexGridSizer(3, sizes.of(4), sizes.gap(1));
  facts->AddGrowableCol(0, 1);
  fact(facts, "Margin", margin_, margin_note_);
  fact(facts, "Earned per hour", earned_, earned_note_);
  fact(facts, "Floor price", floor_, floor_note_);
  fact(facts, "Deposit", deposit_, deposit_note_);
  fact(facts, "Buyer pays", total_, total_note_);
  right->Add(facts, 0, wxEXPAND | wxTOP, sizes.gap(1));
  sentence_ = new Words(this, {}, Voice::text);
  right->Add(sentence_, 0, wxEXPAND | wxTOP, sizes.gap(1));
  right->Add(odds_, 1, wxEXPAND | wxTOP, sizes.gap(1));
  right->SetMinSize({sizes.of(right_px), -1});
  auto* row = new wxBoxSizer(wxHORIZONTAL);
  row->Add(left, 5, wxEXPAND | wxALL, sizes.gap(2));
  row->Add(new Rule(this, Rule::Way::down), 0, wxEXPAND);
  row->Add(bar_, 4, wxEXPAND | wxALL, sizes.gap(2));
  row->Add(right, 0, wxEXPAND | wxALL, sizes.gap(2));
  SetSizer(row);
}

void QuotePanel::build_price(wxBoxSizer* right) {
  const Sizes& sizes = look().sizes;
  price_ = new wxTextCtrl(this, wxID_ANY, wxString(), wxDefaultPosition,
                          {sizes.of(220), sizes.of(56)}, wxTE_RIGHT);
  price_->SetMinSize({sizes.of(220), sizes.of(56)});
  set_style(*price_, "tm-field");
  set_style(*price_, "tm-price");
  name_for_readers(*price_, "Price");
  currency_ = new Words(this, {}, Voice::grey);
  auto* price_row = new wxBoxSizer(wxHORIZONTAL);
  price_row->Add(new Words(this, "Price", Voice::heading), 0, wxALIGN_CENTRE_VERTICAL);
  price_row->Add(currency_, 0, wxALIGN_CENTRE_VERTICAL | wxLEFT, sizes.gap(1));
  price_row->AddStretchSpacer();
  price_row->Add(price_, 0, wxALIGN_CENTRE_VERTICAL);
  way_ = new wxChoice(this, wxID_ANY, wxDefaultPosition, wxDefaultSize, ways());
  set_style(*way_, "tm-field");
  name_for_readers(*way_, "How the price comes about");
  share_ = new wxTextCtrl(this, wxID_ANY, wxString(), wxDefaultPosition, {sizes.of(88), -1},
                          wxTE_RIGHT);
  set_style(*share_, "tm-field");
  name_for_readers(*share_, "Margin or mark-up in per cent");
  share_unit_ = new Words(this, "%", Voice::grey);
  auto* way_row = new wxBoxSizer(wxHORIZONTAL);
  way_row->Add(way_, 0, wxALIGN_CENTRE_VERTICAL);
  way_row->AddStretchSpacer();
  way_row->Add(share_, 0, wxALIGN_CENTRE_VERTICAL | wxRESERVE_SPACE_EVEN_IF_HIDDEN);
  way_row->Add(share_unit_, 0,
               wxALIGN_CENTRE_VERTICAL | wxLEFT | wxRESERVE_SPACE_EVEN_IF_HIDDEN, sizes.of(4));
  right->Add(price_row, 0, wxEXPAND);
  right->Add(way_row, 0, wxEXPAND | wxTOP, sizes.gap(1));
  price_->Bind(wxEVT_TEXT, [this](wxCommandEvent&) { price_typed(); });
  share_->Bind(wxEVT_TEXT, [this](wxCommandEvent&) { share_typed(); });
  way_->Bind(wxEVT_CHOICE, [this](wxCommandEvent&) { way_chosen(); });
}

// The targets are there from the start, so that nothing moves when one appears.
void QuotePanel::build_offers(wxBoxSizer* left) {
  auto* row = new wxBoxSizer(wxHORIZONTAL);
  for (std::size_t i = 0; i < most_offers; ++i) {
    auto* press = new Press(this, " ", PressKind::quiet);
    press->Bind(wxEVT_BUTTON, [this, i](wxCommandEvent&) {
      if (i < offers_.size()) answers_.perform(desk::Deed(offers_[i].deed));
    });
    presses_.push_back(press);
    row->Add(press, 0, wxRIGHT, look().sizes.of(4));
  }
  left->Add(row, 0, wxTOP, look().sizes.of(4));
}

void QuotePanel::fact(wxFlexGridSizer* grid, const std::string& label, Words*& value,
                      Words*& note) {
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
  typed_ = view.typed;
  list_words_ = view.list_words;
  cost_->show(view);
  odds_->show(view.promise, view.promise_ready);
  currency_->say(view.currency);
  bar_->show_movers(view.live.movers, view.currency);
  show_offers(view.offers);
  put(*share_, typed_.share);
  put(*price_, typed_.price_by == desk::PriceBy::hand ? typed_.price : view.live.price);
  show_ways();
  show_answer(view.live.answer);
  Layout();
}

void QuotePanel::focus_other() { cost_->HasFocus() ? focus_price() : cost_->SetFocus(); }

void QuotePanel::focus_price() {
  price_->SetFocus();
  price_->SelectAll();
}

// A price that is typed is a price by hand, whatever it came from before.
void QuotePanel::price_typed() {
  desk::QuoteTyped next = typed_;
  next.price_by = desk::PriceBy::hand;
  next.price = typed(price_->GetValue());
  work_out(next, false);
  show_ways();
}

void QuotePanel::share_typed() {
  desk::QuoteTyped next = typed_;
  next.share = typed(share_->GetValue());
  work_out(next, true);
}

void QuotePanel::way_chosen() {
  desk::QuoteTyped next = typed_;
  next.price_by = static_cast<desk::PriceBy>(way_->GetSelection());
  if (next.price_by == desk::PriceBy::hand) next.price = typed(price_->GetValue());
  work_out(next, next.price_by != desk::PriceBy::hand);
  show_ways();
}

void QuotePanel::work_out(const desk::QuoteTyped& next, bool price_follows) {
  typed_ = next;
  const auto live = answers_.live(typed_);
  const bool by_hand = typed_.price_by == desk::PriceBy::hand;
  const std::string field = live ? "" : live.problem().field;
  set_style(*price_, "tm-wrong", field == "price");
  set_style(*share_, "tm-wrong", field == "share");
  cost_->mark_wrong(!live && field != "price" && field != "share");
  if (!live) {
    sentence_->say(live.problem().sentence + " " + live.problem().remedy);
    sentence_->fit(look().sizes.of(right_px));
    return;
  }
  if (price_follows && !by_hand) price_->ChangeValue(shown(live->price));
  show_live(*live);
}

void QuotePanel::show_live(const desk::QuoteLive& live) {
  cost_->show_rows(live.rows);
  bar_->show_movers(live.movers, typed(currency_->GetLabel()));
  show_answer(live.answer);
}

void QuotePanel::show_ways() {
  way_->SetSelection(static_cast<int>(typed_.price_by));
  const bool share = typed_.price_by == desk::PriceBy::margin ||
                     typed_.price_by == desk::PriceBy::markup;
  share_->Show(share);
  share_unit_->Show(share);
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
  const bool list = typed_.price_by == desk::PriceBy::list && !list_words_.empty();
  sentence_->say(answer.sentence + (list ? " " + list_words_ + "." : ""));
  sentence_->fit(look().sizes.of(right_px));
  bar_->show_parts(answer.parts);
}

void QuotePanel::show_offers(const std::vector<desk::Offer>& offers) {
  offers_ = offers;
  for (std::size_t i = 0; i < presses_.size(); ++i) {
    if (i < offers.size()) presses_[i]->say(offers[i].label, "");
    presses_[i]->Show(i < offers.size());
  }
}

}  // namespace tangmark::window
