// SPDX-License-Identifier: MIT
#pragma once

class wxGraphicsContext;

namespace tangmark::reports {
struct Page;
}

namespace tangmark::window {

/// Draws one page of a document with its top left corner at the origin, `scale` pixels a point.
void draw_page(wxGraphicsContext& gc, const reports::Page& page, double scale);

}  // namespace tangmark::window
