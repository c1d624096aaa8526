// SPDX-License-Identifier: MIT
#pragma once

#include <wx/brush.h>
#include <wx/pen.h>

#include <string>
#include <vector>

#include "gui/window/surface.h"

class wxGraphicsContext;

namespace tangmark::window {

/// Where a drawn text stands to its point: begins, is centred, or ends there.
enum class Anchor { begin, centre, end };

/// A text drawn on a canvas. Sizes are those of the window: note, text or heading.
struct Pen {
  int size_px = 15;
  bool strong = false;
  desk::Rgb colour;
};

/// Draws text with its top at y; returns its width.
double draw_text(wxGraphicsContext& gc, const std::string& text, double x, double y, const Pen& pen,
                 Anchor anchor = Anchor::begin);
double text_width(wxGraphicsContext& gc, const std::string& text, const Pen& pen);
/// The text cut with an ellipsis so that it takes no more than a width.
std::string shortened(wxGraphicsContext& gc, const std::string& text, const Pen& pen, double width);
/// The text broken at its spaces into lines no wider than that; a longer word stands alone.
std::vector<std::string> wrapped(wxGraphicsContext& gc, const std::string& text, const Pen& pen,
                                 double width);
/// A blade number as it is stamped: white, ink border, everywhere the same. Returns its width.
double draw_tag(wxGraphicsContext& gc, const std::string& number, double x, double y);
double tag_width(wxGraphicsContext& gc, const std::string& number);
int tag_height();

/// A drawn part of a place: flicker-free, in the colours of the look, with a frame when it has the
/// keyboard, and a summary in words for screen readers.
class Canvas : public Surface {
 public:
  Canvas(wxWindow* parent, Depth depth);
  void dress() override;
  bool AcceptsFocus() const override { return takes_keys_; }
  /// The picture itself takes the keys, also when fields stand on it; a panel would pass them on.
  void SetFocus() override;
  void SetCanFocus(bool can) override;

 protected:
  virtual void draw(wxGraphicsContext& gc, wxSize size) = 0;
  void takes_keys();
  void says(const std::string& summary);

 private:
  bool takes_keys_ = false;
};

}  // namespace tangmark::window
