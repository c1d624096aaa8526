// SPDX-License-Identifier: MIT
#pragma once

#include <wx/frame.h>
#include <wx/timer.h>

#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <string>

#include "gui/desk/desk.h"
#include "gui/desk/start.h"
#include "gui/desk/welcome.h"
#include "gui/window/background_work.h"
#include "gui/window/stage.h"

class wxSizer;

namespace tangmark::window {

class BenchCanvas;
class FormPanel;
class ListColumn;
class NextLineBar;
class PlacesRow;
class Surface;
class Words;

/// The one window: places, next line, list, and beside it the stage or a form. It shows what the
/// desk says and passes on what the maker does; it decides nothing.
class Frame final : public wxFrame {
 public:
  explicit Frame(const desk::Start& start);
  ~Frame() override;

 private:
  void build();
  void make_parts();
  void lay_out();
  Stage::Answers answers_of_desk();
  void go_across();
  bool step_out();
  void bind_keys();
  void on_key(wxKeyEvent& event);
  void on_tick();
  void follow_desktop();

  // Where we are.
  void go(desk::Place place, const std::string& id);
  void reload();
  void show_view();
  void show_welcome();
  void select(const std::string& id);

  // What is done.
  void perform(const desk::Deed& deed);
  void open_form(const desk::OpenForm& wanted);
  void leave_form();
  void submit_form();
  void take(const Outcome<desk::Said>& outcome);
  void begin(const desk::PlaceWork& work);
  void begin_shop(desk::ShopWriting writing);
  void work_on(const std::string& doing, const std::string& ending, BackgroundWork::Work work);
  void show_work(const std::string& doing, const std::string& so_far, const std::string& ending);
  void show_document(const desk::ShowDocument& wanted);
  void open_shop(const std::filesystem::path& path);
  void tell(const std::string& sentence);
  /// Does something; a failing machine becomes a sentence at the foot of the window.
  void guarded(const std::function<void()>& work);
  void text_size(double factor);
  void to_bench();
  void leave_bench();
  void perform_at_bench(const desk::Deed& deed);
  desk::Clock clock() const;

  desk::Start start_;
  std::optional<desk::Desk> desk_;
  desk::Place place_;
  std::map<desk::Place, std::string> selected_;
  std::map<std::string, desk::Typed> drafts_;  // half-filled forms, by action and selection
  desk::PlaceView view_;
  std::optional<desk::ShowDocument> document_;

  Surface* ground_ = nullptr;
  BenchCanvas* bench_ = nullptr;
  PlacesRow* places_ = nullptr;
  NextLineBar* next_ = nullptr;
  ListColumn* list_ = nullptr;
  Surface* list_rule_ = nullptr;
  Stage* stage_ = nullptr;
  FormPanel* form_ = nullptr;
  Words* told_ = nullptr;
  std::unique_ptr<BackgroundWork> work_;
  wxTimer tick_;
  double text_size_ = 1;
};

}  // namespace tangmark::window
