// SPDX-License-Identifier: MIT
#include "gui/window/sheet_panel.h"

#include <wx/sizer.h>
#include <wx/wupdlock.h>
#include <wx/wrapsizer.h>

#include <algorithm>

#include "gui/window/words.h"

namespace tangmark::window {
namespace {

constexpr int table_gap_px = 24;

}  // namespace

SheetPanel::SheetPanel(wxWindow* parent, std::function<void(const desk::Deed&)> perform)
    : Surface(parent, Depth::window), perform_(std::move(perform)) {
  scroll_ = new wxScrolledWindow(this, wxID_ANY, wxDefaultPosition, wxDefaultSize,
                                 wxVSCROLL | wxTAB_TRAVERSAL | wxNO_BORDER);
  scroll_->SetScrollRate(0, look().sizes.gap(3));
  // Long texts break; they must not push what stands beside the sheet.
  scroll_->SetMinSize({look().sizes.of(200), look().sizes.of(80)});
  auto* all = new wxBoxSizer(wxVERTICAL);
  all->Add(scroll_, 1, wxEXPAND);
  SetSizer(all);
  parts_ = new wxBoxSizer(wxVERTICAL);
  auto* inset = new wxBoxSizer(wxVERTICAL);
  inset->Add(parts_, 1, wxEXPAND | wxALL, look().sizes.gap(2));
  scroll_->SetSizer(inset);
  scroll_->Bind(wxEVT_SIZE, [this](wxSizeEvent& event) {
    fit();
    event.Skip();
  });
}

void SheetPanel::show(const desk::Sheet& sheet) {
  const wxWindowUpdateLocker still(this);
  breaking_.clear();
  parts_->Clear(true);
  if (!sheet.title.empty()) {
    auto* title = new Words(scroll_, sheet.title, Voice::heading);
    breaking_.push_back({title, 0});
    parts_->Add(title, 0, wxEXPAND);
  }
  if (!sheet.under.empty()) {
    auto* under = new Words(scroll_, sheet.under, Voice::grey);
    breaking_.push_back({under, 0});
    parts_->Add(under, 0, wxEXPAND | wxBOTTOM, look().sizes.gap(1));
  }
  for (const desk::Section& section : sheet.sections) add_section(section);
  fitted_ = 0;
  fit();
  scroll_->Scroll(0, 0);
}

void SheetPanel::add_section(const desk::Section& section) {
  const bool empty = section.paragraphs.empty() && section.facts.empty() &&
                     section.table.rows.empty() && section.offers.empty();
  if (empty) return;
  const Sizes& sizes = look().sizes;
  wxWindow* on = scroll_;
  auto* column = new wxBoxSizer(wxVERTICAL);
  parts_->AddSpacer(sizes.gap(2));
  if (section.proposed) {
    auto* mark = new Surface(scroll_, Depth::raised);
    mark->SetBackgroundColour(colour(look().palette.accent));
    mark->SetMinSize({sizes.of(4), -1});
    auto* row = new wxBoxSizer(wxHORIZONTAL);
    row->Add(mark, 0, wxEXPAND | wxRIGHT, sizes.gap(2));
    row->Add(column, 1, wxEXPAND);
    parts_->Add(row, 0, wxEXPAND);
  } else {
    parts_->Add(new Rule(scroll_, Rule::Way::across), 0, wxEXPAND | wxBOTTOM, sizes.gap(1));
    parts_->Add(column, 0, wxEXPAND);
  }
  if (!section.title.empty()) {
    auto* title = new Words(on, section.title, section.proposed ? Voice::heading : Voice::strong);
    breaking_.push_back({title, sizes.gap(3)});
    column->Add(title, 0, wxEXPAND | wxBOTTOM, sizes.of(4));
  }
  for (const std::string& paragraph : section.paragraphs) {
    column->Add(words(on, paragraph, true, sizes.gap(3)), 0, wxEXPAND | wxBOTTOM, sizes.of(4));
  }
  if (!section.facts.empty()) column->Add(facts(on, section), 0, wxEXPAND);
  if (!section.table.rows.empty()) column->Add(table(on, section.table), 0, wxEXPAND);
  if (!section.offers.empty())
    column->Add(offers(on, section.offers, PressKind::plain), 0, wxEXPAND | wxTOP, sizes.gap(1));
}

Words* SheetPanel::words(wxWindow* on, const std::string& text, bool breaks, int less) {
  auto* made = new Words(on, text, Voice::text);
  if (breaks) breaking_.push_back({made, less});
  return made;
}

wxSizer* SheetPanel::facts(wxWindow* on, const desk::Section& section) {
  const Sizes& sizes = look().sizes;
  auto* grid = new wxFlexGridSizer(3, sizes.of(4), sizes.gap(2));
  for (const desk::Fact& fact : section.facts) {
    auto* label = new Words(on, fact.label, Voice::grey);
    label->SetMinSize({std::max(sizes.of(184), label->GetBestSize().x), -1});
    grid->Add(label);
    auto* figure = new wxBoxSizer(wxHORIZONTAL);
    figure->Add(new Words(on, fact.value, Voice::strong));
    if (!fact.unit.empty()) {
      figure->Add(new Words(on, fact.unit, Voice::grey), 0, wxLEFT, sizes.of(4));
    }
    grid->Add(figure);
    auto* note = new Words(on, fact.note, Voice::grey);
    grid->Add(note, 1, wxEXPAND);
  }
  return grid;
}

wxSizer* SheetPanel::table(wxWindow* on, const desk::Table& table) {
  const Sizes& sizes = look().sizes;
  const int columns = static_cast<int>(table.columns.size());
  auto* grid = new wxFlexGridSizer(columns + 1, sizes.of(4), sizes.of(table_gap_px));
  const bool heads = std::any_of(table.columns.begin(), table.columns.end(),
                                 [](const desk::Column& c) { return !c.title.empty(); });
  const auto flags = [&table](std::size_t column) {
    return wxALIGN_CENTRE_VERTICAL |
           (table.columns[column].align == desk::Align::right ? wxALIGN_RIGHT : wxALIGN_LEFT);
  };
  if (!table.columns.empty() && table.columns.back().align == desk::Align::left) {
    grid->AddGrowableCol(table.columns.size() - 1, 1);
  }
  if (heads) {
    for (std::size_t c = 0; c < table.columns.size(); ++c) {
      grid->Add(new Words(on, table.columns[c].title, Voice::note), 0, flags(c));
    }
    grid->AddSpacer(0);
  }
  for (const desk::TableRow& row : table.rows) {
    for (std::size_t c = 0; c < table.columns.size(); ++c) {
      const std::string cell = c < row.cells.size() ? row.cells[c] : std::string();
      auto* text = new Words(on, cell, row.strong ? Voice::strong : Voice::text);
      if (c + 1 == table.columns.size() && table.columns[c].align == desk::Align::left) {
        grid->Add(text, 1, flags(c));
      } else {
        grid->Add(text, 0, flags(c));
      }
    }
    grid->Add(offers(on, row.offers, PressKind::quiet), 0, wxALIGN_CENTRE_VERTICAL);
  }
  return grid;
}

wxSizer* SheetPanel::offers(wxWindow* on, const std::vector<desk::Offer>& offers, PressKind kind) {
  auto* row = new wxWrapSizer(wxHORIZONTAL, wxREMOVE_LEADING_SPACES);
  for (const desk::Offer& offer : offers) {
    if (!offer.why_not.empty()) {
      auto* why = new Words(on, offer.label + ": " + offer.why_not, Voice::grey);
      row->Add(why, 0, wxALIGN_CENTRE_VERTICAL | wxRIGHT, look().sizes.gap(2));
      continue;
    }
    auto* press = new Press(on, offer.label, kind, offer.key);
    press->Bind(wxEVT_BUTTON, [this, deed = offer.deed](wxCommandEvent&) {
      CallAfter([this, deed] { perform_(deed); });  // performing may take this very button away
    });
    row->Add(press, 0, kind == PressKind::quiet ? wxRIGHT : wxRIGHT | wxBOTTOM,
             look().sizes.gap(1));
  }
  return row;
}

void SheetPanel::fit() {
  const int width = scroll_->GetClientSize().x - 2 * look().sizes.gap(2);  // the inset
  if (width < 80 || width == fitted_) return;
  fitted_ = width;
  for (const Breaking& text : breaking_) text.text->fit(width - text.less);
  scroll_->FitInside();
  scroll_->Layout();
}

}  // namespace tangmark::window
