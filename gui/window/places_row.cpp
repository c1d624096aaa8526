// SPDX-License-Identifier: MIT
#include "gui/window/places_row.h"

#include <wx/button.h>
#include <wx/sizer.h>

#include "gui/window/platform.h"
#include "gui/window/text.h"
#include "gui/window/words.h"

namespace tangmark::window {

PlacesRow::PlacesRow(wxWindow* parent, std::function<void(desk::Place)> chosen)
    : Surface(parent, Depth::window), chosen_(std::move(chosen)) {
  auto* row = new wxBoxSizer(wxHORIZONTAL);
  row->AddSpacer(look().sizes.gap(3));
  for (std::size_t i = 0; i < places_.size(); ++i) {
    const desk::Place place = desk::all_places[i];
    auto* button = new wxButton(this, wxID_ANY, shown(desk::name(place)), wxDefaultPosition,
                                wxDefaultSize, wxBORDER_NONE);
    set_style(*button, "tm-place");
    button->Bind(wxEVT_BUTTON, [this, place](wxCommandEvent&) { chosen_(place); });
    row->Add(button, 0, wxEXPAND);
    places_[i] = button;
  }
  row->AddStretchSpacer();
  shop_ = new Words(this, {}, Voice::grey);
  row->Add(shop_, 0, wxALIGN_CENTRE_VERTICAL | wxRIGHT, look().sizes.gap(3));
  SetSizer(row);
  label_places();
}

void PlacesRow::label_places() {
  for (std::size_t i = 0; i < places_.size(); ++i) {
    const std::string name{desk::name(desk::all_places[i])};
    label_button(*places_[i], name, std::to_string(i + 1), look().sizes.text());
    name_for_readers(*places_[i], name);
    set_style(*places_[i], "tm-here", desk::all_places[i] == here_);
    places_[i]->SetMinSize({label_width(*places_[i]) + look().sizes.gap(4), look().sizes.of(48)});
  }
}

void PlacesRow::here(desk::Place place) {
  here_ = place;
  label_places();
  Layout();
}

void PlacesRow::shop_name(const std::string& name) {
  shop_->say(name);
  shop_->SetMinSize(shop_->GetBestSize());
  Layout();
}

void PlacesRow::set_open(bool shop_is_open) {
  for (wxButton* place : places_) place->Enable(shop_is_open);
}

void PlacesRow::dress() {
  Surface::dress();
  if (shop_ != nullptr) label_places();
}

}  // namespace tangmark::window
