// SPDX-License-Identifier: MIT
#include "gui/window/page_canvas.h"

#include <wx/graphics.h>

#include <algorithm>

#include "gui/window/page_drawing.h"
#include "reports/page.h"

namespace tangmark::window {
namespace {

std::string in_words(const reports::Document& document) {
  std::string text = document.title + ".";
  for (const reports::Page& page : document.pages) {
    for (const reports::Element& element : page.elements) {
      if (const auto* run = std::get_if<reports::TextRun>(&element)) text += " " + run->text;
    }
  }
  return text;
}

}  // namespace

PageCanvas::PageCanvas(wxWindow* parent) : Canvas(parent, Depth::window) {
  takes_keys();
  SetMinSize({look().sizes.of(280), look().sizes.of(280)});
  Bind(wxEVT_KEY_DOWN, &PageCanvas::on_key, this);
  Bind(wxEVT_MOUSEWHEEL, &PageCanvas::on_wheel, this);
}

void PageCanvas::show(std::shared_ptr<const reports::Document> document) {
  document_ = std::move(document);
  page_ = 0;
  down_ = 0;
  says(document_ ? in_words(*document_) : std::string());
  Refresh();
}

double PageCanvas::scale(wxSize size) const {
  const reports::Page& page = document_->pages[page_];
  const double gap = look().sizes.gap(2);
  const double whole =
      std::min((size.x - gap) / page.width, (size.y - gap - look().sizes.gap(3)) / page.height);
  return std::max(0.1, whole) * zoom_;
}

void PageCanvas::draw(wxGraphicsContext& gc, wxSize size) {
  if (!document_ || document_->pages.empty()) return;
  const Sizes& sizes = look().sizes;
  const reports::Page& page = document_->pages[page_];
  const double factor = scale(size);
  const double x = std::max(0.0, (size.x - page.width * factor) / 2);
  down_ = std::clamp(down_, 0.0, std::max(0.0, page.height * factor + sizes.gap(5) - size.y));
  gc.PushState();
  gc.Translate(x, sizes.of(24) - down_);
  draw_page(gc, page, factor);
  gc.SetPen(wxPen(colour(look().palette.line), 1));
  gc.SetBrush(*wxTRANSPARENT_BRUSH);
  gc.DrawRectangle(-0.5, -0.5, page.width * factor + 1, page.height * factor + 1);
  gc.PopState();
  const std::string which = "Page " + std::to_string(page_ + 1) + " of " +
                            std::to_string(document_->pages.size()) +
                            ".  Page Up, Page Down turn; + and \xE2\x88\x92 size.";
  gc.SetPen(*wxTRANSPARENT_PEN);
  gc.SetBrush(wxBrush(colour(look().palette.window)));
  gc.DrawRectangle(0, 0, size.x, sizes.of(22));
  draw_text(gc, which, x, sizes.of(2), {sizes.note(), false, look().palette.second_ink});
}

void PageCanvas::turn(int pages) {
  if (!document_ || document_->pages.empty()) return;
  const auto last = static_cast<int>(document_->pages.size()) - 1;
  page_ = static_cast<std::size_t>(std::clamp(static_cast<int>(page_) + pages, 0, last));
  down_ = 0;
  Refresh();
}

void PageCanvas::on_wheel(wxMouseEvent& event) {
  down_ -= event.GetWheelRotation() / 2.0;
  Refresh();
}

void PageCanvas::on_key(wxKeyEvent& event) {
  switch (event.GetKeyCode()) {
    case WXK_PAGEDOWN:
      turn(1);
      return;
    case WXK_PAGEUP:
      turn(-1);
      return;
    case WXK_DOWN:
      down_ += look().sizes.gap(6);
      break;
    case WXK_UP:
      down_ -= look().sizes.gap(6);
      break;
    case '+':
    case '=':
    case WXK_NUMPAD_ADD:
      zoom_ = std::min(4.0, zoom_ * 1.25);
      break;
    case '-':
    case WXK_NUMPAD_SUBTRACT:
      zoom_ = std::max(1.0, zoom_ / 1.25);
      break;
    default:
      event.Skip();
      return;
  }
  Refresh();
}

}  // namespace tangmark::window
