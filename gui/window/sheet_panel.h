// SPDX-License-Identifier: MIT
#pragma once

#include <wx/scrolwin.h>

#include <functional>
#include <vector>

#include "gui/desk/sheet.h"
#include "gui/window/press.h"
#include "gui/window/surface.h"

class wxSizer;

namespace tangmark::window {

class Words;

/// Draws a desk's sheet with native texts and targets, so that a screen reader reads all of it.
class SheetPanel final : public Surface {
 public:
  SheetPanel(wxWindow* parent, std::function<void(const desk::Deed&)> perform);
  void show(const desk::Sheet& sheet);

 private:
  void add_section(const desk::Section& section);
  wxSizer* facts(wxWindow* on, const desk::Section& section);
  wxSizer* table(wxWindow* on, const desk::Table& table);
  wxSizer* offers(wxWindow* on, const std::vector<desk::Offer>& offers, PressKind kind);
  Words* words(wxWindow* on, const std::string& text, bool breaks, int less = 0);
  void fit();

  struct Breaking {  // a text that breaks over lines, and how much narrower than the sheet it is
    Words* text;
    int less;
  };
  std::function<void(const desk::Deed&)> perform_;
  wxScrolledWindow* scroll_;
  wxSizer* parts_;
  std::vector<Breaking> breaking_;
  int fitted_ = 0;
};

}  // namespace tangmark::window
