// SPDX-License-Identifier: MIT
#include "gui/window/canvas.h"

#include <wx/dcbuffer.h>
#include <wx/graphics.h>
#include <wx/settings.h>

#include <memory>
#include <sstream>

#include "gui/window/platform.h"
#include "gui/window/text.h"

namespace tangmark::window {
namespace {

void use_pen(wxGraphicsContext& gc, const Pen& pen) {
  wxFont font = wxSystemSettings::GetFont(wxSYS_DEFAULT_GUI_FONT);
  // Sizes are of the em, as the style sheet counts them; wx's pixel sizes are of the whole line.
  font.SetFractionalPointSize(pen.size_px * 72.0 / 96.0);
  font.SetWeight(pen.strong ? wxFONTWEIGHT_BOLD : wxFONTWEIGHT_NORMAL);
  gc.SetFont(font, colour(pen.colour));
}

constexpr desk::Rgb tag_ink{0x1E, 0x24, 0x26};

Pen tag_pen() {
  return {look().sizes.text(), true, tag_ink};
}

}  // namespace

double text_width(wxGraphicsContext& gc, const std::string& text, const Pen& pen) {
  use_pen(gc, pen);
  double width = 0, height = 0;
  gc.GetTextExtent(shown(text), &width, &height);
  return width;
}

double draw_text(wxGraphicsContext& gc, const std::string& text, double x, double y, const Pen& pen,
                 Anchor anchor) {
  const double width = text_width(gc, text, pen);
  if (anchor == Anchor::centre) x -= width / 2;
  if (anchor == Anchor::end) x -= width;
  gc.DrawText(shown(text), x, y);
  return width;
}

std::string shortened(wxGraphicsContext& gc, const std::string& text, const Pen& pen,
                      double width) {
  if (text_width(gc, text, pen) <= width) return text;
  const wxString whole = shown(text);
  std::size_t low = 0, high = whole.length();
  while (low + 1 < high) {  // the longest beginning that fits with its ellipsis
    const std::size_t middle = (low + high) / 2;
    const std::string attempt = typed(whole.Left(middle).Trim() + wxUniChar(0x2026));
    (text_width(gc, attempt, pen) <= width ? low : high) = middle;
  }
  return typed(whole.Left(low).Trim() + wxUniChar(0x2026));
}

std::vector<std::string> wrapped(wxGraphicsContext& gc, const std::string& text, const Pen& pen,
                                 double width) {
  std::vector<std::string> lines;
  std::string line;
  std::istringstream words(text);
  for (std::string word; words >> word;) {
    const std::string longer = line.empty() ? word : line + " " + word;
    if (!line.empty() && text_width(gc, longer, pen) > width) {
      lines.push_back(std::move(line));
      line = word;
    } else {
      line = longer;
    }
  }
  if (!line.empty()) lines.push_back(std::move(line));
  return lines;
}

int tag_height() {
  return look().sizes.of(21);
}

double tag_width(wxGraphicsContext& gc, const std::string& number) {
  return text_width(gc, number, tag_pen()) + look().sizes.of(10);
}

double draw_tag(wxGraphicsContext& gc, const std::string& number, double x, double y) {
  const double width = tag_width(gc, number);
  gc.SetPen(wxPen(colour(tag_ink), 1));
  gc.SetBrush(wxBrush(*wxWHITE));
  gc.DrawRoundedRectangle(x + 0.5, y + 0.5, width - 1, tag_height() - 1, 2);
  double w = 0, height = 0;
  use_pen(gc, tag_pen());
  gc.GetTextExtent(shown(number), &w, &height);
  gc.DrawText(shown(number), x + (width - w) / 2, y + (tag_height() - height) / 2);
  return width;
}

void Canvas::SetFocus() {
  if (!takes_keys_) return Surface::SetFocus();
  SetFocusIgnoringChildren();
}

// A panel gives up the keys, and its place among the Tab stops, once a field stands on it.
void Canvas::SetCanFocus(bool can) {
  Surface::SetCanFocus(can || takes_keys_);
}

Canvas::Canvas(wxWindow* parent, Depth depth) : Surface(parent, depth) {
  SetBackgroundStyle(wxBG_STYLE_PAINT);
  Bind(wxEVT_PAINT, [this](wxPaintEvent&) {
    wxAutoBufferedPaintDC dc(this);
    dc.SetBackground(wxBrush(GetBackgroundColour()));
    dc.Clear();
    const std::unique_ptr<wxGraphicsContext> gc(wxGraphicsContext::Create(dc));
    if (!gc) return;
    const wxSize size = GetClientSize();
    draw(*gc, size);
    if (takes_keys_ && HasFocus()) {
      gc->SetPen(wxPen(colour(look().palette.accent), 2));
      gc->SetBrush(*wxTRANSPARENT_BRUSH);
      gc->DrawRectangle(1, 1, size.x - 2, size.y - 2);
    }
  });
  Bind(wxEVT_SIZE, [this](wxSizeEvent& event) {
    Refresh();
    event.Skip();
  });
}

void Canvas::takes_keys() {
  takes_keys_ = true;
  SetCanFocus(true);
  for (const auto& kind : {wxEVT_SET_FOCUS, wxEVT_KILL_FOCUS}) {
    Bind(kind, [this](wxFocusEvent& event) {
      Refresh();
      event.Skip();
    });
  }
}

void Canvas::dress() {
  Surface::dress();
}

void Canvas::says(const std::string& summary) {
  name_for_readers(*this, summary);
}

}  // namespace tangmark::window
