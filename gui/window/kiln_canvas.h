// SPDX-License-Identifier: MIT
#pragma once

#include <wx/geometry.h>

#include <functional>
#include <optional>
#include <string>

#include "gui/desk/kiln_board.h"
#include "gui/desk/offer.h"
#include "gui/window/canvas.h"

namespace tangmark::window {

class FiringReason;

/// The kilns along real time. A firing is dragged to another place, or held with the keys: Shift
/// and the arrows move it by a quarter of an hour or to another kiln, Ctrl and Shift by five
/// minutes; Enter lets it go there, Escape puts it back. While it is held the desk says whether it
/// may stand there, and why not. Let go where a rule breaks, it stays there until the maker says
/// why or puts it back. Arrows choose a firing, L keeps it in place, Page Up and Page Down go along
/// time.
class KilnCanvas final : public Canvas {
 public:
  struct Answers {
    std::function<void(const std::string& firing)> selected;
    std::function<desk::MoveTrial(const std::string& firing, const std::string& kiln,
                                  Instant start)>
        trial;
    /// The maker lets go where it may stand.
    std::function<void(const std::string& firing, const std::string& kiln, Instant start)> dropped;
    /// The maker lets go where a rule breaks and says why; empty when done, else why not.
    std::function<std::string(const std::string& firing, const std::string& kiln, Instant start,
                              const std::string& why)>
        all_the_same;
    std::function<void(const desk::Deed&)> perform;
  };
  KilnCanvas(wxWindow* parent, Answers answers);
  void show(desk::KilnBoard board);

 private:
  struct Hit {
    std::size_t lane = 0, firing = 0;
  };
  void draw(wxGraphicsContext& gc, wxSize size) override;
  void draw_ground(wxGraphicsContext& gc);
  void draw_hours(wxGraphicsContext& gc);
  void draw_name(wxGraphicsContext& gc, std::size_t lane);
  void draw_lane(wxGraphicsContext& gc, std::size_t lane);
  void draw_firing(wxGraphicsContext& gc, const desk::BoardFiring& firing, std::size_t lane);
  void draw_glow(wxGraphicsContext& gc, const desk::BoardFiring& firing, std::size_t lane);
  struct Taken {  // how far captions and tags of a lane reach already
    double caption = 0, tags = 0;
  };
  /// `room_to`: where the next firing of the lane begins.
  void draw_caption(wxGraphicsContext& gc, Hit of, double room_to, Taken& taken);
  void draw_tags(wxGraphicsContext& gc, Hit of, double room_to, Taken& taken);
  /// Returns where the box of numbers ends.
  double draw_numbers(wxGraphicsContext& gc, const desk::BoardFiring& firing, double x, double foot,
                      double room, int rows);
  void draw_trial(wxGraphicsContext& gc);
  void stroke_trial(wxGraphicsContext& gc);
  void draw_key(wxGraphicsContext& gc);
  void stroke(wxGraphicsContext& gc, const desk::BoardCurve& curve, std::size_t lane);

  double x_of(Instant at) const;
  Instant time_at(double x) const;
  double y_of(double celsius, std::size_t lane) const;
  double lane_top(std::size_t lane) const;
  double lane_height() const;
  bool lanes_are_low() const;
  double lane_gap() const;
  double curve_height() const;
  static constexpr int caption_px = 20;  ///< above each curve
  static constexpr int inset_px = 8;     ///< keeps words off the frame that shows the focus
  static constexpr int foot_px = 32;     ///< the key of colours
  static Pen note_pen();
  static Pen text_pen(bool strong);
  double lanes_room() const;
  double left() const;
  std::optional<Hit> hit(wxPoint at) const;
  const desk::BoardFiring* selected() const;
  std::optional<Hit> find(const std::string& id) const;
  void on_key(wxKeyEvent& event);
  void on_down(wxMouseEvent& event);
  void on_motion(wxMouseEvent& event);
  void on_up(wxMouseEvent& event);
  void on_wheel(wxMouseEvent& event);
  void step_selection(int by);
  void step_lane(int by);
  /// Holds the selected firing somewhere else; the first time from where it is.
  void hold(Duration by, int lanes);
  void try_held();
  void let_go();
  void put_back();
  void keep_or_release();
  void draw_conflicts(wxGraphicsContext& gc, std::size_t lane);
  void hatch(wxGraphicsContext& gc, const desk::BoardConflict& conflict, std::size_t lane);
  bool say_conflict(wxGraphicsContext& gc, const desk::BoardConflict& conflict, std::size_t lane);
  void see_selected();

  Answers answers_;
  desk::KilnBoard board_;
  struct TagPlace {
    Hit of;
    wxRect2DDouble where;
  };
  std::vector<TagPlace> tag_places_;  ///< as drawn last: a blade's tag takes its firing with it
  struct Drag {
    Hit from;
    int grabbed_x = 0;
    bool moved = false;
    std::string kiln;
    Instant start;
  };
  std::optional<Drag> drag_;
  /// A firing held by the keys, or let go where a rule breaks.
  struct Held {
    std::string firing;
    std::size_t lane = 0;
    Instant start;
  };
  std::optional<Held> held_;
  std::optional<desk::MoveTrial> trial_;
  std::size_t trial_lane_ = 0;
  double scrolled_ = 0;  ///< lanes above the board, in pixels
  FiringReason* reason_;
};

}  // namespace tangmark::window
