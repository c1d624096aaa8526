// SPDX-License-Identifier: MIT
#include "gui/window/family_canvas.h"

#include <wx/graphics.h>

#include <algorithm>

namespace tangmark::window {
namespace {

constexpr int box_wide_px = 176;
constexpr int box_high_px = 46;
constexpr int column_px = 208;
constexpr int family_row_px = 54;

}  // namespace

FamilyCanvas::FamilyCanvas(wxWindow* parent, std::function<void(const desk::Deed&)> perform)
    : Canvas(parent, Depth::window), perform_(std::move(perform)) {
  takes_keys();
  Bind(wxEVT_LEFT_UP, [this](wxMouseEvent& event) {
    for (const desk::FamilyMember& member : tree_.members) {
      if (!box_of(member).Contains(wxPoint2DDouble(event.GetX(), event.GetY()))) continue;
      CallAfter([this, deed = member.go] { perform_(deed); });
      return;
    }
  });
  Bind(wxEVT_KEY_DOWN, &FamilyCanvas::on_key, this);
}

void FamilyCanvas::show(desk::FamilyTree tree) {
  tree_ = std::move(tree);
  int rows = 1;
  for (const desk::FamilyMember& member : tree_.members) rows = std::max(rows, member.row + 1);
  const int height = std::min(rows, 7) * look().sizes.of(family_row_px) + look().sizes.gap(1);
  SetMinSize({-1, height});
  GetParent()->Layout();
  says(desk::in_words(tree_));
  Refresh();
}

wxRect2DDouble FamilyCanvas::box_of(const desk::FamilyMember& member) const {
  const Sizes& sizes = look().sizes;
  return {2.0 + member.column * sizes.of(column_px), 4.0 + member.row * sizes.of(family_row_px),
          static_cast<double>(sizes.of(box_wide_px)), static_cast<double>(sizes.of(box_high_px))};
}

void FamilyCanvas::draw(wxGraphicsContext& gc, wxSize) {
  const Sizes& sizes = look().sizes;
  const desk::Palette& p = look().palette;
  gc.SetPen(wxPen(colour(p.second_ink), 1));
  for (const desk::FamilyLink& link : tree_.links) {
    const auto from = box_of(tree_.members[link.from]), to = box_of(tree_.members[link.to]);
    const double x0 = from.GetRight(), y0 = from.GetTop() + from.m_height / 2;
    const double x1 = to.GetLeft(), y1 = to.GetTop() + to.m_height / 2;
    const double middle = (x0 + x1) / 2;
    gc.StrokeLine(x0, y0, middle, y0);
    gc.StrokeLine(middle, y0, middle, y1);
    gc.StrokeLine(middle, y1, x1, y1);
  }
  for (const desk::FamilyMember& member : tree_.members) {
    const auto box = box_of(member);
    gc.SetPen(member.selected ? wxPen(colour(p.accent), 2)
                              : wxPen(colour(member.gone ? p.line : p.second_ink), 1));
    gc.SetBrush(wxBrush(colour(member.gone ? p.window : p.raised)));
    gc.DrawRoundedRectangle(box.m_x, box.m_y, box.m_width, box.m_height, 3);
    const double room = box.m_width - sizes.gap(2);
    const Pen title{sizes.text(), true, member.gone ? p.second_ink : p.ink};
    const Pen grey{sizes.note(), false, p.second_ink};
    draw_text(gc, shortened(gc, member.title, title, room), box.m_x + sizes.gap(1),
              box.m_y + sizes.of(3), title);
    draw_text(gc, shortened(gc, member.under, grey, room), box.m_x + sizes.gap(1),
              box.m_y + sizes.of(24), grey);
  }
}

void FamilyCanvas::on_key(wxKeyEvent& event) {
  int columns = 0, rows = 0;
  switch (event.GetKeyCode()) {
    case WXK_LEFT:
      columns = -1;
      break;
    case WXK_RIGHT:
      columns = 1;
      break;
    case WXK_UP:
      rows = -1;
      break;
    case WXK_DOWN:
      rows = 1;
      break;
    default:
      event.Skip();
      return;
  }
  const auto here = std::find_if(tree_.members.begin(), tree_.members.end(),
                                 [](const desk::FamilyMember& m) { return m.selected; });
  if (here == tree_.members.end()) return;
  const desk::FamilyMember* best = nullptr;
  int best_way = 0;
  for (const desk::FamilyMember& member : tree_.members) {
    const int right = member.column - here->column, down = member.row - here->row;
    const int ahead = columns != 0 ? right * columns : down * rows;
    const int aside = columns != 0 ? std::abs(down) : std::abs(right) * 10;
    if (ahead <= 0) continue;
    if (best == nullptr || ahead * 10 + aside < best_way) {
      best = &member;
      best_way = ahead * 10 + aside;
    }
  }
  if (best != nullptr) CallAfter([this, deed = best->go] { perform_(deed); });
}

}  // namespace tangmark::window
