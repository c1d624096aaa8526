// SPDX-License-Identifier: MIT
#include "gui/window/list_column.h"

#include <wx/dataview.h>
#include <wx/sizer.h>
#include <wx/textctrl.h>

#include "gui/window/platform.h"
#include "gui/window/text.h"
#include "gui/window/words.h"
#include "reports/markup.h"

namespace tangmark::window {

/// The rows that match, read by the control only where they are seen.
class ListRows final : public wxDataViewVirtualListModel {
 public:
  void show(const desk::List* list, std::vector<std::size_t> rows) {
    list_ = list;
    rows_ = std::move(rows);
    Reset(static_cast<unsigned>(rows_.size()));
  }
  const desk::Row& at(unsigned row) const { return list_->row(rows_[row]); }
  unsigned size() const { return static_cast<unsigned>(rows_.size()); }

  void GetValueByRow(wxVariant& value, unsigned row, unsigned column) const override {
    const desk::Row& shown_row = at(row);
    if (column == 0) {
      // A blade's number stands large; a tag such as 14-2B3 must be seen whole.
      constexpr std::size_t short_number = 4;
      const bool large = shown_row.number.size() <= short_number;
      value =
          shown((large ? "<b><big>" : "<b><small>") + reports::escaped_markup(shown_row.number) +
                (large ? "</big></b>" : "</small></b>"));
      return;
    }
    const std::string grey = desk::hex(look().palette.second_ink);
    value = shown(reports::escaped_markup(shown_row.line) + "\n<span size='smaller' color='" +
                  grey + "'>" + reports::escaped_markup(shown_row.under) + "</span>");
  }
  bool SetValueByRow(const wxVariant&, unsigned, unsigned) override { return false; }
  unsigned GetColumnCount() const override { return 2; }
  wxString GetColumnType(unsigned) const override { return wxS("string"); }

 private:
  const desk::List* list_ = nullptr;
  std::vector<std::size_t> rows_;
};

ListColumn::ListColumn(wxWindow* parent, std::function<void(const std::string&)> selected)
    : Surface(parent, Depth::window), selected_(std::move(selected)) {
  const Sizes& sizes = look().sizes;
  title_ = new Words(this, {}, Voice::strong);
  find_ = new wxTextCtrl(this, wxID_ANY);
  find_->SetMinSize({-1, sizes.of(36)});
  set_style(*find_, "tm-field");
  rows_ = new wxDataViewCtrl(this, wxID_ANY, wxDefaultPosition, wxDefaultSize,
                             wxDV_NO_HEADER | wxDV_SINGLE | wxNO_BORDER);
  model_ = new ListRows;
  rows_->AssociateModel(model_);
  model_->DecRef();
  for (unsigned column : {0u, 1u}) {
    auto* text = new wxDataViewTextRenderer(wxS("string"), wxDATAVIEW_CELL_INERT,
                                            column == 0 ? wxALIGN_CENTRE : wxALIGN_LEFT);
    text->EnableMarkup();
    text->EnableEllipsize(wxELLIPSIZE_END);
    rows_->AppendColumn(
        new wxDataViewColumn(wxString(), text, column, sizes.of(column == 0 ? 64 : 224)));
  }
  auto* column = new wxBoxSizer(wxVERTICAL);
  column->AddSpacer(sizes.gap(2));
  column->Add(title_, 0, wxEXPAND | wxLEFT | wxRIGHT, sizes.of(12));
  column->AddSpacer(sizes.gap(1));
  column->Add(find_, 0, wxEXPAND | wxLEFT | wxRIGHT, sizes.of(12));
  column->AddSpacer(sizes.gap(1));
  column->Add(rows_, 1, wxEXPAND);
  SetSizer(column);
  SetMinSize({sizes.of(296), -1});

  find_->Bind(wxEVT_TEXT, [this](wxCommandEvent&) { narrow(); });
  rows_->Bind(wxEVT_DATAVIEW_SELECTION_CHANGED, [this](wxDataViewEvent&) {
    if (quiet_ || !rows_->GetSelection().IsOk()) return;
    const std::string id = model_->at(model_->GetRow(rows_->GetSelection())).id;
    if (id == selected_id_) return;
    selected_id_ = id;
    selected_(id);
  });
  row_height();
  ListColumn::dress();
}

ListColumn::~ListColumn() {
  model_->show(&list_, {});
}

void ListColumn::row_height() {
  rows_->SetRowHeight(look().sizes.of(48));
}

void ListColumn::show(const std::string& title, const std::string& hint, desk::List list) {
  title_->say(title);
  find_->SetHint(shown(hint));
  name_for_readers(*find_, hint);
  name_for_readers(*rows_, title);
  list_ = std::move(list);
  narrow();
}

void ListColumn::narrow() {
  quiet_ = true;
  model_->show(&list_, list_.matching(typed(find_->GetValue())));
  quiet_ = false;
  show_selected(selected_id_);
}

void ListColumn::select(const std::string& id) {
  selected_id_ = id;
  if (!find_->IsEmpty() && list_.index_of(id) < list_.size()) find_->ChangeValue(wxString());
  narrow();
}

void ListColumn::show_selected(const std::string& id) {
  for (unsigned row = 0; row < model_->size(); ++row) {
    if (model_->at(row).id != id) continue;
    quiet_ = true;
    const wxDataViewItem item = model_->GetItem(row);
    rows_->Select(item);
    rows_->EnsureVisible(item);
    quiet_ = false;
    return;
  }
}

std::optional<std::string> ListColumn::selected() const {
  if (selected_id_.empty()) return std::nullopt;
  return selected_id_;
}

void ListColumn::focus_find() {
  find_->SetFocus();
  find_->SelectAll();
}

void ListColumn::find_from(wxChar letter) {
  find_->SetFocus();
  find_->SetValue(wxString(wxUniChar(letter)));
  find_->SetInsertionPointEnd();
}

void ListColumn::focus_rows() {
  if (model_->size() > 0 && !rows_->GetSelection().IsOk()) {
    rows_->Select(model_->GetItem(0));
    selected_id_ = model_->at(0).id;
    selected_(selected_id_);
  }
  rows_->SetFocus();
}

bool ListColumn::find_has_focus() const {
  return find_->HasFocus();
}

bool ListColumn::rows_have_focus() const {
  const wxWindow* focus = wxWindow::FindFocus();
  return focus != nullptr && (focus == rows_ || focus->GetParent() == rows_);
}

void ListColumn::clear_find() {
  find_->Clear();
}

void ListColumn::dress() {
  Surface::dress();
  if (rows_ == nullptr) return;
  set_style(*rows_, "tm-list");
  rows_->Refresh();
}

}  // namespace tangmark::window
