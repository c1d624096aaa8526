// SPDX-License-Identifier: MIT
#include "gui/window/press.h"

#include "gui/window/platform.h"
#include "gui/window/surface.h"
#include "gui/window/text.h"

namespace tangmark::window {

Press::Press(wxWindow* parent, const std::string& label, PressKind kind, const std::string& key)
    : wxButton(parent, wxID_ANY, shown(label), wxDefaultPosition, wxDefaultSize, 0), kind_(kind) {
  set_style(*this, "tm-press");
  if (kind == PressKind::main) set_style(*this, "tm-main");
  if (kind == PressKind::quiet) set_style(*this, "tm-quiet");
  say(label, key);
}

void Press::say(const std::string& label, const std::string& key) {
  const Sizes& sizes = look().sizes;
  label_button(*this, label, key, sizes.text());
  name_for_readers(*this, label);
  // The label is measured in its plain weight; the main target's is heavier.
  const int room = kind_ == PressKind::quiet  ? sizes.gap(3)
                   : kind_ == PressKind::main ? sizes.gap(6)
                                              : sizes.gap(4);
  SetMinSize({label_width(*this) + room, sizes.of(kind_ == PressKind::quiet ? 34 : 44)});
}

}  // namespace tangmark::window
