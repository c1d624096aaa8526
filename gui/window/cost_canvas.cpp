// SPDX-License-Identifier: MIT
#include "gui/window/cost_canvas.h"

#include <wx/graphics.h>
#include <wx/textctrl.h>

#include <algorithm>
#include <array>

#include "gui/window/platform.h"
#include "gui/window/text.h"

namespace tangmark::window {
namespace {

constexpr int cost_head_px = 24;
constexpr std::array cells_in_order{desk::QuoteCell::how_much, desk::QuoteCell::each,
                                    desk::QuoteCell::amount};

std::string name_of(desk::QuoteCell cell) {
  return cell == desk::QuoteCell::how_much ? "How much"
         : cell == desk::QuoteCell::each   ? "Price of one"
                                           : "Cost";
}

}  // namespace

CostCanvas::CostCanvas(wxWindow* parent, Changed changed)
    : Canvas(parent, Depth::window), changed_(std::move(changed)) {
  takes_keys();
  SetMinSize({look().sizes.of(440), look().sizes.of(200)});
  editor_ =
      new wxTextCtrl(this, wxID_ANY, wxString(), wxDefaultPosition, wxDefaultSize, wxTE_RIGHT);
  set_style(*editor_, "tm-figure");
  editor_->Hide();
  editor_->Bind(wxEVT_TEXT, [this](wxCommandEvent&) {
    if (!opening_ && place_) changed_(edited_, place_->cell, typed(editor_->GetValue()));
  });
  editor_->Bind(wxEVT_CHAR_HOOK, [this](wxKeyEvent& event) {
    switch (event.GetKeyCode()) {
      case WXK_RETURN:
      case WXK_NUMPAD_ENTER:
        return close(true);
      case WXK_ESCAPE:
        return close(false);
      case WXK_DOWN:
      case WXK_UP:
        close(true);
        return step(event.GetKeyCode() == WXK_DOWN ? 1 : -1);
      case WXK_TAB:
        close(true);
        return step_across(event.ShiftDown() ? -1 : 1);
      default:
        event.Skip();
    }
  });
  editor_->Bind(wxEVT_KILL_FOCUS, [this](wxFocusEvent& event) {
    event.Skip();
    if (editor_->IsShown()) editor_->Hide();
  });
  Bind(wxEVT_MOUSEWHEEL, [this](wxMouseEvent& event) { move(-event.GetWheelRotation() / 2); });
  Bind(wxEVT_LEFT_DOWN, [this](wxMouseEvent& event) { click(event.GetPosition()); });
  Bind(wxEVT_CHAR_HOOK, [this](wxKeyEvent& event) {
    if (!HasFocus() || !key(event)) event.Skip();
  });
}

// Rows are as high as the text wants, and closer when all of them then fit.
int CostCanvas::row_height() const {
  const Sizes& sizes = look().sizes;
  const int count = std::max<int>(1, static_cast<int>(rows_.size()));
  const int room = (GetClientSize().y - sizes.of(cost_head_px)) / count;
  return std::clamp(room, sizes.of(22), sizes.of(24));
}

void CostCanvas::show(const desk::QuoteView& view) {
  notes_ = view.notes;
  currency_ = view.currency;
  // The same desk shown anew, as when the odds have been counted, leaves the hands where they are.
  if (commission_ == view.commission && rows_.size() == view.live.rows.size())
    return show_rows(view.live.rows);
  commission_ = view.commission;
  rows_ = view.live.rows;
  down_ = 0;
  place_.reset();
  editor_->Hide();
  says(desk::in_words(view));
  Refresh();
}

void CostCanvas::show_rows(std::vector<desk::QuoteRow> rows) {
  rows_ = std::move(rows);
  if (place_ && place_->row >= rows_.size()) place_.reset();
  Refresh();
}

void CostCanvas::mark_wrong(bool wrong) {
  set_style(*editor_, "tm-wrong", wrong);
}

void CostCanvas::move(int by_px) {
  if (editor_->IsShown()) close(true);
  down_ = std::clamp(down_ + by_px, 0, std::max(0, all_px_ - GetClientSize().y));
  Refresh();
}

CostCanvas::Columns CostCanvas::columns() const {
  const Sizes& sizes = look().sizes;
  const double right = GetClientSize().x - sizes.gap(1);
  const double each = right - sizes.of(88), unit = each - sizes.of(136);
  return {right, each, unit, unit - sizes.of(6)};
}

wxRect CostCanvas::box_of(const Place& place) const {
  const Sizes& sizes = look().sizes;
  const Columns at = columns();
  const double end = place.cell == desk::QuoteCell::how_much ? at.much
                     : place.cell == desk::QuoteCell::each   ? at.each
                                                             : at.right;
  const int wide = sizes.of(72), high = row_height();
  const int y = sizes.of(cost_head_px) - down_ + static_cast<int>(place.row) * high;
  return {static_cast<int>(end) - wide + sizes.of(4), y, wide, high};
}

// True when the key was for the figures.
bool CostCanvas::key(wxKeyEvent& event) {
  const int code = event.GetKeyCode();
  if (event.ControlDown() || event.AltDown()) return false;
  switch (code) {
    case WXK_DOWN:
      step(1);
      return true;
    case WXK_UP:
      step(-1);
      return true;
    case WXK_LEFT:
      step_across(-1);
      return true;
    case WXK_RIGHT:
      step_across(1);
      return true;
    case WXK_PAGEDOWN:
      move(GetClientSize().y / 2);
      return true;
    case WXK_PAGEUP:
      move(-GetClientSize().y / 2);
      return true;
    case WXK_RETURN:
    case WXK_NUMPAD_ENTER:
    case WXK_F2:
      if (!place_) return false;
      open({});
      return true;
    case WXK_DELETE:
    case WXK_BACK:
      if (!place_) return false;
      changed_(rows_[place_->row], place_->cell, "");
      return true;
    default:
      break;
  }
  const wxChar letter = event.GetUnicodeKey();
  const bool figure = (letter >= '0' && letter <= '9') || letter == '.';
  if (!place_ || !figure) return false;
  open(std::string(1, static_cast<char>(letter)));
  return true;
}

void CostCanvas::step(int rows) {
  const auto count = static_cast<int>(rows_.size());
  int at = place_ ? static_cast<int>(place_->row) + rows : rows > 0 ? 0 : count - 1;
  for (; at >= 0 && at < count; at += rows) {
    const desk::QuoteRow& row = rows_[static_cast<std::size_t>(at)];
    if (row.cells.empty()) continue;
    const bool same = place_ && row.may_change(place_->cell);
    return select({static_cast<std::size_t>(at), same ? place_->cell : row.cells.front()});
  }
}

void CostCanvas::step_across(int cells) {
  if (!place_) return step(1);
  const auto& row = rows_[place_->row];
  const auto here = std::find(row.cells.begin(), row.cells.end(), place_->cell);
  const auto next = (here - row.cells.begin()) + cells;
  if (next >= 0 && next < static_cast<std::ptrdiff_t>(row.cells.size()))
    return select({place_->row, row.cells[static_cast<std::size_t>(next)]});
  step(cells);
}

void CostCanvas::select(const Place& place) {
  place_ = place;
  const wxRect box = box_of(place);
  const int head = look().sizes.of(cost_head_px);
  if (box.y < head) move(box.y - head);
  if (box.GetBottom() > GetClientSize().y) move(box.GetBottom() - GetClientSize().y);
  const desk::QuoteRow& row = rows_[place.row];
  says(name_of(place.cell) + ", " + row.text + ": " + row.figure(place.cell) + " " +
       (place.cell == desk::QuoteCell::how_much ? row.unit : currency_) +
       (row.by_hand ? ", set by hand" : ""));
  Refresh();
}

void CostCanvas::open(const std::string& first) {
  if (!place_) return;
  edited_ = rows_[place_->row];
  opening_ = true;
  editor_->SetSize(box_of(*place_).Inflate(0, 1));
  name_for_readers(*editor_, name_of(place_->cell) + ": " + edited_.text);
  editor_->ChangeValue(shown(first.empty() ? edited_.figure(place_->cell) : first));
  mark_wrong(false);
  editor_->Show();
  editor_->SetFocus();
  first.empty() ? editor_->SelectAll() : editor_->SetInsertionPointEnd();
  opening_ = false;
  if (!first.empty()) changed_(edited_, place_->cell, first);
}

// Not kept, the figure is again what it was when it was opened.
void CostCanvas::close(bool keep) {
  if (!editor_->IsShown() || !place_) return;
  if (!keep) changed_(edited_, place_->cell, edited_.by_hand ? edited_.figure(place_->cell) : "");
  editor_->Hide();
  SetFocus();
  Refresh();
}

void CostCanvas::click(wxPoint at) {
  close(true);
  SetFocus();
  const int line = (at.y + down_ - look().sizes.of(cost_head_px)) / std::max(1, row_height());
  if (line < 0 || line >= static_cast<int>(rows_.size())) return;
  for (const desk::QuoteCell cell : cells_in_order) {
    const Place place{static_cast<std::size_t>(line), cell};
    if (!rows_[place.row].may_change(cell) || !box_of(place).Inflate(8, 0).Contains(at)) continue;
    select(place);
    return open({});
  }
}

double CostCanvas::draw_notes(wxGraphicsContext& gc, double y, double width) {
  if (notes_.empty()) return y;
  const Sizes& sizes = look().sizes;
  const desk::Palette& p = look().palette;
  const double x = sizes.gap(1);
  y += sizes.gap(2);
  draw_text(gc, "Worked from", x, y, {sizes.text(), true, p.ink});
  y += sizes.of(24);
  const Pen pen{sizes.note(), false, p.second_ink};
  for (const std::string& note : notes_) {
    for (const std::string& line : wrapped(gc, note, pen, width - x)) {
      draw_text(gc, line, x, y, pen);
      y += sizes.of(18);
    }
    y += sizes.of(4);
  }
  return y;
}

void CostCanvas::draw_row(wxGraphicsContext& gc, const desk::QuoteRow& row, double y, wxSize size) {
  const Sizes& sizes = look().sizes;
  const desk::Palette& p = look().palette;
  const Columns at = columns();
  const bool strong = row.head || row.total;
  const Pen pen{sizes.text(), strong, p.ink};
  const Pen figure{sizes.text(), strong || row.by_hand, row.by_hand ? p.accent : p.ink};
  if (strong) {
    gc.SetPen(wxPen(colour(row.total ? p.ink : p.line), row.total ? 2 : 1));
    gc.StrokeLine(0, y, size.x, y);
  }
  const double x = sizes.gap(1) + (strong ? 0 : sizes.of(4));
  const double room = (row.how_much.empty() ? at.each : at.much - sizes.of(60)) - x - sizes.gap(1);
  draw_text(gc, shortened(gc, row.text, pen, room), x, y + 1, pen);
  draw_text(gc, row.how_much, at.much, y + 1,
            row.may_change(desk::QuoteCell::how_much) ? figure : pen, Anchor::end);
  draw_text(gc, row.unit, at.unit, y + 1, {sizes.text(), false, p.second_ink});
  draw_text(gc, row.each, at.each, y + 1, pen, Anchor::end);
  draw_text(gc, row.amount, at.right, y + 1, row.may_change(desk::QuoteCell::amount) ? figure : pen,
            Anchor::end);
}

// The figure that typing would open, framed; a thin line under every other that may be changed.
void CostCanvas::draw_place(wxGraphicsContext& gc, wxSize size) {
  const desk::Palette& p = look().palette;
  for (std::size_t i = 0; i < rows_.size(); ++i)
    for (const desk::QuoteCell cell : rows_[i].cells) {
      const wxRect box = box_of({i, cell});
      if (box.y < 0 || box.y > size.y) continue;
      gc.SetPen(wxPen(colour(p.line), 1, wxPENSTYLE_DOT));
      gc.StrokeLine(box.x + box.width / 3, box.GetBottom() - 1, box.GetRight() - 4,
                    box.GetBottom() - 1);
    }
  if (!place_ || editor_->IsShown()) return;
  const wxRect box = box_of(*place_);
  gc.SetPen(wxPen(colour(p.accent), HasFocus() ? 2 : 1));
  gc.SetBrush(*wxTRANSPARENT_BRUSH);
  gc.DrawRectangle(box.x, box.y, box.width, box.height - 1);
}

void CostCanvas::draw(wxGraphicsContext& gc, wxSize size) {
  const Sizes& sizes = look().sizes;
  const desk::Palette& p = look().palette;
  const Columns at = columns();
  const Pen grey{sizes.note(), false, p.second_ink};
  const double head = sizes.of(cost_head_px);
  double y = head - down_;
  for (std::size_t i = 0; i < rows_.size(); ++i, y += row_height())
    if (y >= head - row_height() && y <= size.y) draw_row(gc, rows_[i], y, size);
  all_px_ = static_cast<int>(draw_notes(gc, y, at.right)) + down_;
  draw_place(gc, size);
  gc.SetPen(*wxTRANSPARENT_PEN);
  gc.SetBrush(wxBrush(colour(p.window)));
  gc.DrawRectangle(0, 0, size.x, head);
  draw_text(gc, "Line", sizes.gap(1), sizes.of(2), grey);
  draw_text(gc, "How much", at.much, sizes.of(2), grey, Anchor::end);
  draw_text(gc, "Each " + currency_, at.each, sizes.of(2), grey, Anchor::end);
  draw_text(gc, "Cost " + currency_, at.right, sizes.of(2), grey, Anchor::end);
}

}  // namespace tangmark::window
