// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <optional>

#include "gui/desk/quote_view.h"
#include "gui/window/canvas.h"

class wxTextCtrl;

namespace tangmark::window {

/// The lines of a cost, in groups with their sums. Arrows go from figure to figure; Enter, a letter
/// or a click opens a figure for typing in its place, Delete puts it back to what the models say.
/// Scrolls when the lines are more than fit. Below them stands what they were worked from.
class CostCanvas final : public Canvas {
 public:
  /// Told with every letter typed into a figure; an empty one puts the row back.
  using Changed = std::function<void(const desk::QuoteRow& row, desk::QuoteCell cell,
                                     const std::string& figure)>;
  CostCanvas(wxWindow* parent, Changed changed);

  /// A desk that begins: from the top.
  void show(const desk::QuoteView& view);
  /// The same desk after something was typed: it stays where it is.
  void show_rows(std::vector<desk::QuoteRow> rows);
  /// What is typed cannot be read.
  void mark_wrong(bool wrong);

 private:
  struct Place {
    std::size_t row = 0;
    desk::QuoteCell cell = desk::QuoteCell::how_much;
  };
  struct Columns {
    double right, each, unit, much;
  };

  void draw(wxGraphicsContext& gc, wxSize size) override;
  void draw_row(wxGraphicsContext& gc, const desk::QuoteRow& row, double y, wxSize size);
  void draw_place(wxGraphicsContext& gc, wxSize size);
  double draw_notes(wxGraphicsContext& gc, double y, double width);
  void move(int by_px);
  int row_height() const;
  Columns columns() const;
  wxRect box_of(const Place& place) const;
  bool key(wxKeyEvent& event);
  void step(int rows);
  void step_across(int cells);
  void select(const Place& place);
  void open(const std::string& first);
  void close(bool keep);
  void click(wxPoint at);

  Changed changed_;
  std::vector<desk::QuoteRow> rows_;
  std::vector<std::string> notes_;
  std::string commission_, currency_;
  std::optional<Place> place_;
  wxTextCtrl* editor_;
  desk::QuoteRow edited_;   ///< the row as it was when its figure was opened
  bool opening_ = false;
  int down_ = 0;
  int all_px_ = 0;  ///< height of everything, as drawn last
};

}  // namespace tangmark::window
