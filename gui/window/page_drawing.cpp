// SPDX-License-Identifier: MIT
#include "gui/window/page_drawing.h"

#include <wx/bitmap.h>
#include <wx/brush.h>
#include <wx/graphics.h>
#include <wx/image.h>
#include <wx/pen.h>

#include <cmath>
#include <cstring>
#include <numbers>

#include "gui/window/text.h"
#include "reports/page.h"

namespace tangmark::window {
namespace {

wxColour grey(reports::Grey g) {
  return {g.level, g.level, g.level};
}

class PagePainter {
 public:
  PagePainter(wxGraphicsContext& gc, double scale) : gc_(gc), scale_(scale) {}

  void operator()(const reports::TextRun& run) {
    wxFontInfo info(100.0 * 72 / 96);  // an em of 100 pixels
    info.Bold(run.font.weight == reports::Weight::bold);
    info.Italic(run.font.slant == reports::Slant::italic);
    info.FaceName(face(run.font.face));
    // Measured once at 100 pixels and scaled, so that a line keeps the width the layout gave it
    // at any size: hinting at small sizes would stretch it.
    gc_.SetFont(wxFont(info), grey(run.grey));
    double width = 0, height = 0, descent = 0, lead = 0;
    gc_.GetTextExtent(shown(run.text), &width, &height, &descent, &lead);
    const double size = run.font.size * scale_ / 100.0;
    const double stretch = run.width > 0 && width > 0 ? run.width * scale_ / (width * size) : 1;
    gc_.PushState();
    gc_.Translate(run.baseline.x * scale_, run.baseline.y * scale_);
    gc_.Rotate(-run.turn_degrees * std::numbers::pi / 180.0);
    gc_.Scale(size * stretch, size);
    gc_.DrawText(shown(run.text), 0, -(height - descent));
    gc_.PopState();
  }
  void operator()(const reports::Line& line) {
    stroke(line.grey, line.width, line.dash);
    gc_.StrokeLine(line.from.x * scale_, line.from.y * scale_, line.to.x * scale_,
                   line.to.y * scale_);
  }
  void operator()(const reports::Rectangle& r) {
    use(r.paint);
    gc_.DrawRectangle(r.box.x * scale_, r.box.y * scale_, r.box.width * scale_,
                      r.box.height * scale_);
  }
  void operator()(const reports::Circle& c) {
    use(c.paint);
    const double across = 2 * c.radius * scale_;
    gc_.DrawEllipse((c.centre.x - c.radius) * scale_, (c.centre.y - c.radius) * scale_, across,
                    across);
  }
  void operator()(const reports::Polyline& line) {
    if (line.places.size() < 2) return;
    stroke(line.grey, line.width, line.dash);
    gc_.StrokePath(path(line.places));
  }
  void operator()(const reports::Polygon& polygon) {
    if (polygon.places.size() < 3) return;
    use(polygon.paint);
    wxGraphicsPath shape = path(polygon.places);
    shape.CloseSubpath();
    gc_.DrawPath(shape);
  }
  void operator()(const reports::PlacedPicture& placed) {
    const reports::Picture& picture = placed.picture;
    if (picture.width_px <= 0 || picture.height_px <= 0) return;
    wxImage image(picture.width_px, picture.height_px, false);
    std::memcpy(image.GetData(), picture.rgb.data(), picture.rgb.size());
    if (!picture.alpha.empty()) {
      image.InitAlpha();
      std::memcpy(image.GetAlpha(), picture.alpha.data(), picture.alpha.size());
    }
    gc_.DrawBitmap(wxBitmap(image), placed.box.x * scale_, placed.box.y * scale_,
                   placed.box.width * scale_, placed.box.height * scale_);
  }
  void operator()(const reports::PlacedQr& placed) {
    const reports::QrModules& qr = placed.modules;
    if (qr.across <= 0) return;
    const double module = placed.box.width * scale_ / qr.across;
    gc_.SetPen(*wxTRANSPARENT_PEN);
    gc_.SetBrush(*wxBLACK_BRUSH);
    gc_.SetAntialiasMode(wxANTIALIAS_NONE);
    for (int row = 0; row < qr.across; ++row) {
      for (int column = 0; column < qr.across; ++column) {
        if (!qr.dark[static_cast<std::size_t>(row * qr.across + column)]) continue;
        gc_.DrawRectangle(placed.box.x * scale_ + column * module,
                          placed.box.y * scale_ + row * module, module, module);
      }
    }
    gc_.SetAntialiasMode(wxANTIALIAS_DEFAULT);
  }

 private:
  static wxString face(reports::Face face) {
    switch (face) {
      case reports::Face::serif:
        return wxS("Noto Serif");
      case reports::Face::sans:
        return wxS("Noto Sans");
      case reports::Face::mono:
        return wxS("DejaVu Sans Mono");
    }
    return {};
  }
  wxGraphicsPath path(const std::vector<reports::Place>& places) {
    wxGraphicsPath made = gc_.CreatePath();
    made.MoveToPoint(places.front().x * scale_, places.front().y * scale_);
    for (const reports::Place& place : places)
      made.AddLineToPoint(place.x * scale_, place.y * scale_);
    return made;
  }
  void stroke(reports::Grey g, reports::Points width, reports::Points dash) {
    wxGraphicsPenInfo pen(grey(g), width * scale_,
                          dash > 0 ? wxPENSTYLE_SHORT_DASH : wxPENSTYLE_SOLID);
    gc_.SetPen(gc_.CreatePen(pen));
  }
  void use(const reports::Paint& paint) {
    if (paint.stroked) {
      stroke(paint.stroke, paint.width, 0);
    } else {
      gc_.SetPen(*wxTRANSPARENT_PEN);
    }
    gc_.SetBrush(paint.filled ? wxBrush(grey(paint.fill)) : *wxTRANSPARENT_BRUSH);
  }

  wxGraphicsContext& gc_;
  double scale_;
};

}  // namespace

void draw_page(wxGraphicsContext& gc, const reports::Page& page, double scale) {
  gc.SetPen(*wxTRANSPARENT_PEN);
  gc.SetBrush(*wxWHITE_BRUSH);
  gc.DrawRectangle(0, 0, page.width * scale, page.height * scale);
  gc.PushState();
  gc.Clip(0, 0, page.width * scale, page.height * scale);
  PagePainter painter(gc, scale);
  for (const reports::Element& element : page.underlay) std::visit(painter, element);
  for (const reports::Element& element : page.elements) std::visit(painter, element);
  gc.PopState();
}

}  // namespace tangmark::window
