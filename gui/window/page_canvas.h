// SPDX-License-Identifier: MIT
#pragma once

#include <memory>

#include "gui/window/canvas.h"

namespace tangmark::reports {
struct Document;
struct Page;
}

namespace tangmark::window {

/// Draws a document on the screen: the very page that is printed, element by element. Page Up and
/// Page Down turn pages; plus and minus make it larger and smaller.
class PageCanvas final : public Canvas {
 public:
  explicit PageCanvas(wxWindow* parent);
  void show(std::shared_ptr<const reports::Document> document);

 private:
  void draw(wxGraphicsContext& gc, wxSize size) override;
  void on_key(wxKeyEvent& event);
  void on_wheel(wxMouseEvent& event);
  void turn(int pages);
  double scale(wxSize size) const;
  std::shared_ptr<const reports::Document> document_;
  std::size_t page_ = 0;
  double zoom_ = 1;   // 1 fits the whole page
  double down_ = 0;   // scrolled, in pixels
};

}  // namespace tangmark::window
