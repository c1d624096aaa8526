// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <vector>

#include "gui/desk/quote_view.h"
#include "gui/window/canvas.h"

namespace tangmark::window {

/// The promise date: the day offered, how often it is met, and the curve of all days.
class OddsCanvas final : public Canvas {
 public:
  explicit OddsCanvas(wxWindow* parent);
  /// While `ready` is false the runs are still being counted, and it says so.
  void show(desk::PromiseView promise, bool ready);

 private:
  void draw(wxGraphicsContext& gc, wxSize size) override;
  double draw_wrapped(wxGraphicsContext& gc, const std::string& text, double y, double width,
                      const Pen& pen);
  void draw_curve(wxGraphicsContext& gc, double top, double bottom, double width);
  std::vector<double> label_centres(wxGraphicsContext& gc,
                                    const std::function<double(double)>& x_of, double left,
                                    double right) const;
  desk::PromiseView promise_;
  bool ready_ = false;
};

}  // namespace tangmark::window
