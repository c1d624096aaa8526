// SPDX-License-Identifier: MIT
#include "gui/window/style_sheet.h"

#include <map>

namespace tangmark::window {
namespace {

// $names are replaced; every selector is a class of our own, so that native dialogs stay native.
constexpr const char* sheet = R"css(
.tm-text { color: $ink; }
.tm-grey { color: $second; }

button.tm-press { font-size: $text; color: $ink; background-image: none; background-color: $raised;
  border: 1px solid $second; border-radius: 3px; padding: $padV $padH; min-height: $target;
  box-shadow: none; text-shadow: none; outline: none; font-weight: normal; }
button.tm-press:hover { background-color: $panel; border-color: $accent; }
button.tm-press:focus { border-color: $accent; box-shadow: inset 0 0 0 1px $accent, inset 4px 0 0 0 $accent; }
button.tm-press:active { background-color: $window; }
button.tm-press:disabled { color: $second; background-color: $window; border-color: $line; }
button.tm-main { color: $onaccent; background-color: $accent; border-color: $accent; font-weight: 600; }
button.tm-main:hover, button.tm-main:active { background-color: $accent; color: $onaccent; }
button.tm-main:focus { box-shadow: inset 0 0 0 2px $accent, inset 0 0 0 4px $onaccent; }
button.tm-quiet { background-color: transparent; border-color: transparent; color: $accent;
  font-weight: 600; padding: 2px 8px; min-height: $row; }
button.tm-quiet:hover { background-color: $panel; }

button.tm-place { font-size: $text; color: $ink; background: none; background-color: transparent;
  border: none; border-radius: 0; box-shadow: none; padding: 0 $padH; min-height: $target;
  outline: none; text-shadow: none; font-weight: normal; }
button.tm-place:hover { background-color: $panel; }
button.tm-place:focus { box-shadow: inset 0 0 0 2px $accent; }
button.tm-here { font-weight: 600; box-shadow: inset 0 -4px 0 0 $accent; }
button.tm-here:focus { box-shadow: inset 0 -4px 0 0 $accent, inset 0 0 0 2px $accent; }

entry.tm-field, .tm-field entry, textview.tm-field, .tm-field textview { font-size: $text; color: $ink;
  caret-color: $ink; background-color: $raised; background-image: none; border: 1px solid $second;
  border-radius: 3px; min-height: $entry; padding: 0 8px; box-shadow: none; }
entry.tm-field:focus, .tm-field entry:focus { border-color: $accent;
  box-shadow: inset 0 0 0 1px $accent, inset 4px 0 0 0 $accent; }
entry.tm-figure { font-size: $text; color: $ink; caret-color: $ink; background-color: $raised;
  background-image: none; border: 1px solid $accent; border-radius: 0; min-height: 0; padding: 0 3px;
  margin: 0; box-shadow: none; }
entry.tm-wrong { border-color: $ink; box-shadow: inset 0 0 0 1px $ink; }
entry.tm-price { font-size: $figure; font-weight: 600; min-height: $big; padding: 0 12px; }
.tm-field button, combobox.tm-field button { font-size: $text; color: $ink; background-image: none;
  background-color: $raised; border: 1px solid $second; border-radius: 3px; min-height: $entry;
  box-shadow: none; text-shadow: none; padding: 0 8px; }
combobox.tm-field button:focus { border-color: $accent; box-shadow: inset 0 0 0 1px $accent; }
.tm-field textview text { background-color: $raised; color: $ink; }
checkbutton.tm-field { font-size: $text; color: $ink; min-height: $entry; }

.tm-list treeview.view { font-size: $text; color: $ink; background-color: $window; outline: none;
  -GtkTreeView-vertical-separator: 0; -GtkTreeView-horizontal-separator: 8; }
.tm-list treeview.view:selected { color: $ink; background-color: $raised;
  border-top: 2px solid $accent; border-bottom: 2px solid $accent; }
)css";

std::string px(int n) {
  return std::to_string(n) + "px";
}

}  // namespace

std::string style_sheet(const desk::Palette& p, const Sizes& s) {
  // Longer names first where one begins with another.
  const std::map<std::string, std::string, std::greater<>> values{
      {"$text", px(s.text())},        {"$note", px(s.note())},    {"$heading", px(s.heading())},
      {"$figure", px(s.figure())},    {"$padV", px(s.of(4))},     {"$padH", px(s.gap(2))},
      {"$target", px(s.of(38))},      {"$row", px(s.of(28))},     {"$entry", px(s.of(36))},
      {"$big", px(s.of(52))},         {"$window", hex(p.window)}, {"$panel", hex(p.panel)},
      {"$raised", hex(p.raised)},     {"$line", hex(p.line)},     {"$ink", hex(p.ink)},
      {"$second", hex(p.second_ink)}, {"$accent", hex(p.accent)}, {"$onaccent", hex(p.on_accent)},
  };
  std::string css = sheet;
  for (const auto& [name, value] : values) {
    for (auto at = css.find(name); at != std::string::npos; at = css.find(name, at)) {
      css.replace(at, name.size(), value);
    }
  }
  return css;
}

}  // namespace tangmark::window
