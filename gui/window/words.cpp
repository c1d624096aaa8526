// SPDX-License-Identifier: MIT
#include "gui/window/words.h"

#include <algorithm>

#include "gui/window/platform.h"
#include "gui/window/surface.h"
#include "gui/window/text.h"

namespace tangmark::window {
Words::Words(wxWindow* parent, const std::string& text, Voice voice)
    : wxStaticText(parent, wxID_ANY, wxString(), wxDefaultPosition, wxDefaultSize,
                   wxST_NO_AUTORESIZE) {
  speak_as(voice);
  say(text);
}

void Words::speak_as(Voice voice) {
  for (const char* style : {"tm-text", "tm-grey"}) set_style(*this, style, false);
  const bool grey = voice == Voice::grey || voice == Voice::note;
  set_style(*this, grey ? "tm-grey" : "tm-text");
  const Sizes& sizes = look().sizes;
  const int em_px = voice == Voice::heading                           ? sizes.heading()
                    : voice == Voice::note || voice == Voice::problem ? sizes.note()
                                                                      : sizes.text();
  set_text_size(*this, em_px,
                voice == Voice::strong || voice == Voice::heading || voice == Voice::problem);
}

void Words::say(const std::string& text) {
  const wxString now = shown(text);
  if (now == GetLabelText()) return;
  SetLabelText(now);
  InvalidateBestSize();
}

void Words::fit(int width) {
  // A pixel more than its line: given just its own width, a line may be broken by a rounded-off
  // part.
  const int taken = std::min(width, width_on_one_line(*this) + 1);
  wrap_by_width(*this);
  SetMinSize({taken, height_at_width(*this, taken)});
}

void Words::right_aligned() {
  align_text_right(*this);
}

}  // namespace tangmark::window
