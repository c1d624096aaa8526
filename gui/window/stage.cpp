// SPDX-License-Identifier: MIT
#include "gui/window/stage.h"

#include <wx/sizer.h>
#include <wx/wupdlock.h>

#include <algorithm>

#include "gui/window/cut_canvas.h"
#include "gui/window/family_canvas.h"
#include "gui/window/kiln_canvas.h"
#include "gui/window/life_canvas.h"
#include "gui/window/page_canvas.h"
#include "gui/window/quote_panel.h"
#include "gui/window/sheet_panel.h"

namespace tangmark::window {

Stage::Stage(wxWindow* parent, Answers answers) : Surface(parent, Depth::window) {
  kiln_ =
      new KilnCanvas(this, {answers.firing_selected, answers.firing_trial, answers.firing_dropped,
                            answers.firing_all_the_same, answers.perform});
  life_ = new LifeCanvas(this);
  family_ = new FamilyCanvas(this, answers.perform);
  cuts_ = new CutCanvas(this);
  page_ = new PageCanvas(this);
  quote_ = new QuotePanel(this, {answers.quote, answers.perform});
  between_ = new Rule(this, Rule::Way::down);
  sheet_ = new SheetPanel(this, answers.perform);
  for (wxWindow* part :
       std::initializer_list<wxWindow*>{kiln_, life_, family_, cuts_, page_, quote_, between_}) {
    part->Hide();
  }
}

void Stage::lay_out(const desk::Picture& picture) {
  if (laid_out_ == picture.index()) return;
  laid_out_ = picture.index();
  const Sizes& sizes = look().sizes;
  wxWindow* above = nullptr;
  int above_share = 0;
  wxWindow* at_left = nullptr;
  bool alone = false;
  if (std::holds_alternative<desk::KilnBoard>(picture)) {
    above = kiln_;
    above_share = 5;
  } else if (std::holds_alternative<desk::LifeLine>(picture)) {
    above = life_;
  } else if (std::holds_alternative<desk::FamilyTree>(picture)) {
    above = family_;
  } else if (std::holds_alternative<desk::CutDrawing>(picture)) {
    above = cuts_;
  } else if (std::holds_alternative<desk::Paper>(picture)) {
    at_left = page_;
  } else if (std::holds_alternative<desk::QuoteView>(picture)) {
    above = quote_;
    alone = true;
  }
  for (wxWindow* part :
       std::initializer_list<wxWindow*>{kiln_, life_, family_, cuts_, page_, quote_}) {
    part->Show(part == above || part == at_left);
  }
  between_->Show(at_left != nullptr);
  sheet_->Show(!alone);
  SetSizer(nullptr, true);  // the parts leave the old arrangement before they enter the new one
  auto* all = new wxBoxSizer(at_left != nullptr ? wxHORIZONTAL : wxVERTICAL);
  if (at_left != nullptr) {
    all->Add(at_left, 11, wxEXPAND | wxLEFT | wxBOTTOM, sizes.gap(2));
    all->Add(between_, 0, wxEXPAND);
    all->Add(sheet_, 10, wxEXPAND);
  } else {
    if (above != nullptr)
      all->Add(above, alone ? 1 : above_share,
               alone ? wxEXPAND : wxEXPAND | wxLEFT | wxRIGHT | wxTOP, sizes.gap(2));
    if (!alone) all->Add(sheet_, 2, wxEXPAND);
  }
  SetSizer(all);
}

void Stage::show(const desk::PlaceView& view) {
  const wxWindowUpdateLocker still(this);
  lay_out(view.picture);
  Layout();
  sheet_->show(view.sheet);
  if (const auto* board = std::get_if<desk::KilnBoard>(&view.picture)) kiln_->show(*board);
  if (const auto* life = std::get_if<desk::LifeLine>(&view.picture)) life_->show(*life);
  if (const auto* tree = std::get_if<desk::FamilyTree>(&view.picture)) family_->show(*tree);
  if (const auto* cuts = std::get_if<desk::CutDrawing>(&view.picture)) cuts_->show(*cuts);
  if (const auto* paper = std::get_if<desk::Paper>(&view.picture)) page_->show(paper->document);
  if (const auto* quote = std::get_if<desk::QuoteView>(&view.picture)) quote_->show(*quote);
  Layout();
}

void Stage::focus_other_part() {
  if (quote_->IsShown()) quote_->focus_other();
}

void Stage::focus_picture() {
  if (kiln_->IsShown()) kiln_->SetFocus();
  if (page_->IsShown()) page_->SetFocus();
  if (family_->IsShown()) family_->SetFocus();
  if (quote_->IsShown()) quote_->focus_price();
}

}  // namespace tangmark::window
