// SPDX-License-Identifier: MIT
#include "gui/window/surface.h"

#include <wx/settings.h>

#include "gui/window/platform.h"

namespace tangmark::window {
namespace {

Look& current() {
  static Look now{desk::Ground::light, desk::palette(desk::Ground::light), {}};
  return now;
}

}  // namespace

const Look& look() { return current(); }

void use_look(double text_size) {
  const bool dark = wxSystemSettings::GetAppearance().IsDark();
  Look& now = current();
  now.ground = dark ? desk::Ground::dark : desk::Ground::light;
  now.palette = desk::palette(now.ground);
  now.sizes.text_size = text_size;
  use_style_sheet(style_sheet(now.palette, now.sizes));
}

wxColour colour(desk::Rgb rgb) { return {rgb.r, rgb.g, rgb.b}; }

Surface::Surface(wxWindow* parent, Depth depth)
    : wxPanel(parent, wxID_ANY, wxDefaultPosition, wxDefaultSize, wxTAB_TRAVERSAL | wxNO_BORDER),
      depth_(depth) {
  Surface::dress();
}

void Surface::dress() {
  const desk::Palette& p = look().palette;
  switch (depth_) {
    case Depth::window: SetBackgroundColour(colour(p.window)); break;
    case Depth::panel: SetBackgroundColour(colour(p.panel)); break;
    case Depth::raised: SetBackgroundColour(colour(p.raised)); break;
  }
  Refresh();
}

void dress_all(wxWindow& root) {
  if (auto* surface = dynamic_cast<Surface*>(&root)) surface->dress();
  for (wxWindow* child : root.GetChildren()) dress_all(*child);
}

Rule::Rule(wxWindow* parent, Way way) : Surface(parent, Depth::window) {
  SetMinSize(way == Way::across ? wxSize(-1, 1) : wxSize(1, -1));
  SetCanFocus(false);
  Rule::dress();
}

void Rule::dress() {
  SetBackgroundColour(colour(look().palette.line));
  Refresh();
}

}  // namespace tangmark::window
