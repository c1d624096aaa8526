// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <optional>
#include <string>

#include "gui/desk/list.h"
#include "gui/window/surface.h"

class wxDataViewCtrl;
class wxTextCtrl;

namespace tangmark::window {

class ListRows;
class Words;

/// The list of a place: a heading, a field that narrows the list while typing, and the rows.
class ListColumn final : public Surface {
 public:
  ListColumn(wxWindow* parent, std::function<void(const std::string& id)> selected);
  ~ListColumn() override;
  /// Shows a list; keeps the selected row, by its id, when it is still there.
  void show(const std::string& title, const std::string& hint, desk::List list);
  /// Selects without telling: for going somewhere from elsewhere. Widens the list if it must.
  void select(const std::string& id);
  std::optional<std::string> selected() const;
  void focus_find();
  /// Typing on the rows goes into the find field, from this letter on.
  void find_from(wxChar letter);
  void focus_rows();
  bool find_has_focus() const;
  bool rows_have_focus() const;
  void clear_find();
  void dress() override;

 private:
  void narrow();
  void show_selected(const std::string& id);
  void row_height();

  std::function<void(const std::string&)> selected_;
  desk::List list_;
  Words* title_ = nullptr;
  wxTextCtrl* find_ = nullptr;
  wxDataViewCtrl* rows_ = nullptr;
  ListRows* model_ = nullptr;
  std::string selected_id_;
  bool quiet_ = false;
};

}  // namespace tangmark::window
