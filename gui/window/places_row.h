// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <functional>
#include <string>

#include "gui/desk/place.h"
#include "gui/window/surface.h"

class wxButton;

namespace tangmark::window {

class Words;

/// The row of seven places with their keys, and the name of the shop at its end.
class PlacesRow final : public Surface {
 public:
  PlacesRow(wxWindow* parent, std::function<void(desk::Place)> chosen);
  void here(desk::Place place);
  void shop_name(const std::string& name);
  void set_open(bool shop_is_open);
  void dress() override;

 private:
  void label_places();
  std::function<void(desk::Place)> chosen_;
  std::array<wxButton*, desk::all_places.size()> places_{};
  Words* shop_ = nullptr;
  desk::Place here_ = desk::Place::today;
};

}  // namespace tangmark::window
