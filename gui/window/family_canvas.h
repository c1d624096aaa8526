// SPDX-License-Identifier: MIT
#pragma once

#include <functional>

#include "gui/desk/family_tree.h"
#include <wx/geometry.h>

#include "gui/window/canvas.h"

namespace tangmark::window {

/// Where a piece came from and what came of it. A press on a member goes there; the arrows do too.
class FamilyCanvas final : public Canvas {
 public:
  FamilyCanvas(wxWindow* parent, std::function<void(const desk::Deed&)> perform);
  void show(desk::FamilyTree tree);

 private:
  void draw(wxGraphicsContext& gc, wxSize size) override;
  wxRect2DDouble box_of(const desk::FamilyMember& member) const;
  void on_key(wxKeyEvent& event);
  std::function<void(const desk::Deed&)> perform_;
  desk::FamilyTree tree_;
};

}  // namespace tangmark::window
