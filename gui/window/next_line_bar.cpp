// SPDX-License-Identifier: MIT
#include "gui/window/next_line_bar.h"

#include <wx/sizer.h>

#include <algorithm>

#include "gui/window/press.h"
#include "gui/window/words.h"

namespace tangmark::window {

NextLineBar::NextLineBar(wxWindow* parent, std::function<void(const desk::Deed&)> perform)
    : Surface(parent, Depth::panel), perform_(std::move(perform)) {
  const Sizes& sizes = look().sizes;
  sentence_ = new Words(this, {}, Voice::heading);
  why_ = new Words(this, {}, Voice::grey);
  auto* says = new wxBoxSizer(wxVERTICAL);
  says->Add(sentence_, 0, wxEXPAND);
  says->Add(why_, 0, wxEXPAND);
  offers_ = new wxBoxSizer(wxHORIZONTAL);
  auto* row = new wxBoxSizer(wxHORIZONTAL);
  row->Add(says, 1, wxALIGN_CENTRE_VERTICAL | wxLEFT, sizes.gap(3));
  row->Add(offers_, 0, wxALIGN_CENTRE_VERTICAL | wxLEFT | wxRIGHT, sizes.gap(3));
  SetSizer(row);
  SetMinSize({-1, sizes.of(72)});
  Bind(wxEVT_SIZE, [this](wxSizeEvent& event) {
    fit();
    event.Skip();
  });
}

void NextLineBar::show(const desk::NextLine& next) {
  // What is on its way is told again and again: targets under a finger are not made anew for that.
  const bool same_targets =
      !next.offers.empty() &&
      std::equal(next.offers.begin(), next.offers.end(), next_.offers.begin(), next_.offers.end(),
                 [](const desk::Offer& a, const desk::Offer& b) {
                   return a.label == b.label && a.key == b.key && a.why_not == b.why_not;
                 });
  next_ = next;
  sentence_->say(next.sentence);
  std::string why = next.why;
  for (const desk::Offer& offer : next.offers) {
    if (!offer.why_not.empty()) why += " " + offer.label + ": " + offer.why_not;
  }
  why_->say(why);
  if (same_targets) {
    fit();
    Layout();
    return;
  }
  offers_->Clear(true);
  // The first offer is the one Enter does, so it stands last, at the edge the eye ends on.
  for (std::size_t i = std::min<std::size_t>(next.offers.size(), 3); i-- > 0;) {
    const desk::Offer& offer = next_.offers[i];
    auto* press =
        new Press(this, offer.label, i == 0 ? PressKind::main : PressKind::plain, offer.key);
    press->Enable(offer.why_not.empty());
    press->Bind(wxEVT_BUTTON, [this, i](wxCommandEvent&) {
      CallAfter([this, i] { perform_offer(i); });  // the bar may be filled anew meanwhile
    });
    offers_->Add(press, 0, wxLEFT, look().sizes.gap(2));
  }
  fit();
  Layout();
}

void NextLineBar::step_back(bool back) {
  offers_->ShowItems(!back);
  Layout();
}

bool NextLineBar::perform_key(std::string_view key) {
  for (std::size_t i = 0; i < next_.offers.size(); ++i) {
    if (next_.offers[i].key != key || !next_.offers[i].why_not.empty()) continue;
    perform_offer(i);
    return true;
  }
  return false;
}

void NextLineBar::perform_offer(std::size_t position) {
  if (position >= next_.offers.size()) return;
  const desk::Deed deed = next_.offers[position].deed;
  perform_(deed);
}

void NextLineBar::fit() {
  const int width = GetClientSize().x - offers_->GetMinSize().x - look().sizes.gap(9);
  if (width < 100) return;
  sentence_->fit(width);
  why_->fit(width);
  const int needed = sentence_->GetMinSize().y + why_->GetMinSize().y + look().sizes.gap(2);
  const int height = std::max(look().sizes.of(72), needed);
  if (GetMinSize().y != height) {
    SetMinSize({-1, height});
    GetParent()->Layout();
  }
}

}  // namespace tangmark::window
