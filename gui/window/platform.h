// SPDX-License-Identifier: MIT
#pragma once

#include <string>

class wxButton;
class wxStaticText;
class wxWindow;

namespace tangmark::window {

/// What wx does not offer and the toolkit below it does; the only file that knows the toolkit.

/// The name a screen reader says for a control that shows no text of its own.
void name_for_readers(const wxWindow& window, const std::string& name);
/// Adds or takes away a class of the style sheet.
void set_style(const wxWindow& window, const char* style, bool on = true);
/// Puts a style sheet over all windows of the program, in place of the one before.
void use_style_sheet(const std::string& css);
/// The size of a text in pixels (its em) and its weight, at once; a style sheet would take effect
/// only after the text has been measured.
void set_text_size(const wxStaticText& text, int em_px, bool strong);
/// Lets a text break over lines by itself.
void wrap_by_width(const wxStaticText& text);
/// The height a text takes at a width, and the width it takes on one line.
int height_at_width(const wxStaticText& text, int width);
int width_on_one_line(const wxStaticText& text);
void align_text_right(const wxStaticText& text);

/// The words on a target, with the key that does the same after them, smaller and grey; and the
/// width they take.
void label_button(wxButton& button, const std::string& label, const std::string& key, int em_px);
int label_width(const wxButton& button);

}  // namespace tangmark::window
