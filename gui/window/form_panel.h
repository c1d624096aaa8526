// SPDX-License-Identifier: MIT
#pragma once

#include <wx/scrolwin.h>

#include <functional>
#include <vector>

#include "gui/desk/form.h"
#include "gui/window/surface.h"

class wxFlexGridSizer;
class wxSizer;

namespace tangmark::window {

class Press;
class Words;

/// A form beside the list. Enter submits it, Escape leaves it; what was typed is kept by whoever
/// owns the panel, through filled().
class FormPanel final : public Surface {
 public:
  struct Answers {
    std::function<void()> submit;
    std::function<void()> leave;
  };
  FormPanel(wxWindow* parent, Answers answers);
  void show(const desk::Form& form);
  /// What stands in the fields now, by their names; empty fields are left out.
  desk::Typed filled() const;
  /// Puts every problem beside its field and the cursor into the first field at fault.
  void show_problems(const Problems& problems);
  const desk::Form& form() const { return form_; }
  void focus_first();

 private:
  struct Line {
    wxWindow* control = nullptr;
    Words* label = nullptr;
    Words* beside = nullptr;
    wxSizer* control_sizer = nullptr;
  };
  void add_line(std::size_t position);
  wxWindow* make_control(const desk::FormField& field, wxSizer*& holder);
  void show_hidden(bool all);
  std::string value_of(std::size_t position) const;
  void fit();
  void on_key(wxKeyEvent& event);

  Answers answers_;
  desk::Form form_;
  wxScrolledWindow* scroll_;
  Words* title_;
  Words* under_;
  Words* above_;
  wxFlexGridSizer* grid_;
  Press* more_;
  Press* submit_;
  std::vector<Line> lines_;
  bool all_shown_ = false;
};

}  // namespace tangmark::window
