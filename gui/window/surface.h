// SPDX-License-Identifier: MIT
#pragma once

#include <wx/panel.h>

#include "gui/desk/palette.h"
#include "gui/window/style_sheet.h"

namespace tangmark::window {

/// How the window looks now: what every panel and canvas draws with.
struct Look {
  desk::Ground ground = desk::Ground::light;
  desk::Palette palette;
  Sizes sizes;
};
/// The look of the running program; changed only by use_look.
const Look& look();
/// Follows the desktop's light or dark and the asked text size, and restyles all controls.
void use_look(double text_size);

wxColour colour(desk::Rgb rgb);

enum class Depth { window, panel, raised };

/// A plain ground that follows the look. All panels of the window are surfaces.
class Surface : public wxPanel {
 public:
  Surface(wxWindow* parent, Depth depth);
  /// Takes the colours of the look again; a canvas also draws again.
  virtual void dress();

 private:
  Depth depth_;
};

/// Dresses every surface below a window.
void dress_all(wxWindow& root);

/// A thin line between two parts.
class Rule final : public Surface {
 public:
  enum class Way { across, down };
  Rule(wxWindow* parent, Way way);
  void dress() override;
};

}  // namespace tangmark::window
