// SPDX-License-Identifier: MIT
#pragma once

#include <wx/geometry.h>
#include <wx/timer.h>

#include <functional>

#include "gui/desk/bench.h"
#include "gui/window/canvas.h"

namespace tangmark::window {

/// The bench while blades are quenched: dark, read at two metres, one target that Space or a foot
/// switch presses. Nothing on it is smaller than 22 at full size.
class BenchCanvas final : public Canvas {
 public:
  struct Answers {
    /// Asked every second, with the blades that were put off.
    std::function<desk::BenchView(const std::vector<std::string>& put_off)> look;
    std::function<void(const desk::Deed&)> perform;
    std::function<void()> leave;
  };
  BenchCanvas(wxWindow* parent, Answers answers);
  void begin();
  void end();
  void dress() override;

 private:
  void draw(wxGraphicsContext& gc, wxSize size) override;
  void draw_turn(wxGraphicsContext& gc, double width);
  void draw_tiles(wxGraphicsContext& gc, double width);
  void draw_targets(wxGraphicsContext& gc, double width);
  void draw_order(wxGraphicsContext& gc, double left, double width);
  void draw_wait(wxGraphicsContext& gc, double left, double width);
  void box(wxGraphicsContext& gc, const wxRect2DDouble& where, desk::Rgb fill);
  double text(wxGraphicsContext& gc, const std::string& words, double x, double y, int px,
              bool strong, desk::Rgb ink, double room = 0);
  double at(double px) const { return px * scale_; }
  void look_again();
  void record();
  void trouble();
  void put_off();
  void undo();
  wxRect2DDouble lesser_target(wxGraphicsContext& gc, int place, double width,
                               const std::string& words);
  void on_key(wxKeyEvent& event);

  Answers answers_;
  desk::BenchView view_;
  wxTimer timer_;
  double scale_ = 1;
  std::vector<std::string> put_off_;
  wxRect2DDouble target_, put_off_target_, trouble_, undo_target_, leave_;
};

}  // namespace tangmark::window
