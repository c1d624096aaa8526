// SPDX-License-Identifier: MIT
#include "gui/window/frame.h"

#include <wx/button.h>
#include <wx/sizer.h>
#include <wx/textctrl.h>
#include <wx/wupdlock.h>

#include <exception>

#include "gui/desk/welcome.h"
#include "gui/window/background_work.h"
#include "gui/window/bench_canvas.h"
#include "gui/window/form_panel.h"
#include "gui/window/list_column.h"
#include "gui/window/next_line_bar.h"
#include "gui/window/places_row.h"
#include "gui/window/sentences.h"
#include "gui/window/text.h"
#include "gui/window/words.h"

namespace tangmark::window {
namespace {

constexpr int tick_ms = 20'000;

}  // namespace

Frame::Frame(const desk::Start& start)
    : wxFrame(nullptr, wxID_ANY, wxS("Tangmark"), wxDefaultPosition, wxSize(1366, 768)),
      start_(start),
      place_(start.place),
      tick_(this) {
  use_look(text_size_);
  build();
  bind_keys();
  Bind(wxEVT_TIMER, [this](wxTimerEvent&) { guarded([this] { on_tick(); }); });
  Bind(wxEVT_SYS_COLOUR_CHANGED, [this](wxSysColourChangedEvent& event) {
    event.Skip();
    follow_desktop();
  });
  if (start_.shop) {
    guarded([this] { open_shop(*start_.shop); });
    if (!desk_ && view_.next.sentence.empty()) show_welcome();
  } else {
    show_welcome();
  }
  tick_.Start(tick_ms);
}

Frame::~Frame() {
  work_.reset();
}

desk::Clock Frame::clock() const {
  return [fixed = start_.now] {
    if (fixed) return *fixed;
    return date::floor<std::chrono::seconds>(std::chrono::system_clock::now());
  };
}

void Frame::build() {
  SetMinSize({800, 480});
  make_parts();
  lay_out();
}

// What the stage asks of the desk, and what the maker does there.
Stage::Answers Frame::answers_of_desk() {
  Stage::Answers answers;
  answers.perform = [this](const desk::Deed& deed) { perform(deed); };
  answers.quote = [this](const desk::QuoteTyped& typed) { return desk_->quote(typed); };
  answers.firing_selected = [this](const std::string& firing) { guarded([&] { select(firing); }); };
  answers.firing_trial = [this](const std::string& firing, const std::string& kiln, Instant at) {
    return desk_->try_move(firing, kiln, at);
  };
  answers.firing_dropped = [this](const std::string& firing, const std::string& kiln, Instant at) {
    guarded([&] { take(desk_->propose_move(firing, kiln, at)); });
  };
  answers.firing_all_the_same = [this](const std::string& firing, const std::string& kiln,
                                       Instant at, const std::string& why) {
    const auto done = desk_->move_all_the_same(firing, kiln, at, why);
    if (!done) return all_of(done.problems());
    CallAfter([this, said = *done] { guarded([&] { take(said); }); });
    return std::string();
  };
  return answers;
}

void Frame::make_parts() {
  const auto doer = [this](const desk::Deed& deed) { perform(deed); };
  auto* ground = new Surface(this, Depth::window);
  ground_ = ground;
  bench_ = new BenchCanvas(
      this, {[this](const auto& put_off) { return desk_->bench(put_off); },
             [this](const desk::Deed& deed) { guarded([&] { perform_at_bench(deed); }); },
             [this] { leave_bench(); }});
  bench_->Hide();
  places_ = new PlacesRow(
      ground, [this](desk::Place place) { guarded([&] { go(place, selected_[place]); }); });
  next_ = new NextLineBar(ground, doer);
  list_ = new ListColumn(ground, [this](const std::string& id) { guarded([&] { select(id); }); });
  list_rule_ = new Rule(ground, Rule::Way::down);
  stage_ = new Stage(ground, answers_of_desk());
  form_ = new FormPanel(ground, {[this] { submit_form(); }, [this] { leave_form(); }});
  form_->Hide();
  told_ = new Words(ground, {}, Voice::grey);
}

void Frame::lay_out() {
  Surface* ground = ground_;
  const Sizes& sizes = look().sizes;
  auto* body = new wxBoxSizer(wxHORIZONTAL);
  body->Add(list_, 0, wxEXPAND);
  body->Add(list_rule_, 0, wxEXPAND);
  body->Add(stage_, 1, wxEXPAND);
  body->Add(form_, 1, wxEXPAND);
  auto* all = new wxBoxSizer(wxVERTICAL);
  all->Add(places_, 0, wxEXPAND);
  all->Add(new Rule(ground, Rule::Way::across), 0, wxEXPAND);
  all->Add(next_, 0, wxEXPAND);
  all->Add(new Rule(ground, Rule::Way::across), 0, wxEXPAND);
  all->Add(body, 1, wxEXPAND);
  all->Add(new Rule(ground, Rule::Way::across), 0, wxEXPAND);
  all->Add(told_, 0, wxEXPAND | wxLEFT | wxRIGHT | wxTOP | wxBOTTOM, sizes.of(6));
  told_->SetMinSize({-1, sizes.of(20)});
  ground->SetSizer(all);
  auto* whole = new wxBoxSizer(wxVERTICAL);
  whole->Add(ground, 1, wxEXPAND);
  whole->Add(bench_, 1, wxEXPAND);
  SetSizer(whole);
}

void Frame::bind_keys() {
  Bind(wxEVT_CHAR_HOOK, &Frame::on_key, this);
}

void Frame::on_key(wxKeyEvent& event) {
  const int key = event.GetKeyCode();
  if (bench_->IsShown()) return event.Skip();  // the bench has keys of its own
  if (key == WXK_F9) return to_bench();
  const bool held = event.ControlDown() || event.AltDown();
  if (held && key >= '1' && key <= '7' && desk_) {
    const desk::Place place = desk::all_places[static_cast<std::size_t>(key - '1')];
    go(place, selected_[place]);
    return;
  }
  if (event.ControlDown() && key == 'F') return list_->focus_find();
  if (key == WXK_F6 && !form_->IsShown()) return go_across();
  if (event.ControlDown() && (key == '+' || key == '=' || key == WXK_NUMPAD_ADD))
    return text_size(1.125);
  if (event.ControlDown() && (key == '-' || key == WXK_NUMPAD_SUBTRACT))
    return text_size(1 / 1.125);
  if (form_->IsShown()) return event.Skip();  // a form answers its own Enter and Escape
  const bool enter = key == WXK_RETURN || key == WXK_NUMPAD_ENTER;
  if (enter && event.ControlDown()) {
    if (next_->perform_key("Ctrl Enter")) return;
  }
  if (key == WXK_DOWN && list_->find_has_focus()) return list_->focus_rows();
  if (enter && !held) {
    const bool on_button = dynamic_cast<wxButton*>(FindFocus()) != nullptr;
    if (list_->find_has_focus()) return list_->focus_rows();
    if (!on_button && next_->perform_key("Enter")) return;
  }
  const wxChar letter = event.GetUnicodeKey();
  if (!held && list_->rows_have_focus() && letter > ' ' && letter != WXK_DELETE) {
    return list_->find_from(event.ShiftDown() ? letter : static_cast<wxChar>(wxTolower(letter)));
  }
  if (key == WXK_ESCAPE && step_out()) return;
  event.Skip();
}

// From the list to the picture beside it, and back; where there is no list, within the picture.
void Frame::go_across() {
  if (std::holds_alternative<desk::QuoteView>(view_.picture)) return stage_->focus_other_part();
  const bool from_list = list_->rows_have_focus() || list_->find_has_focus();
  from_list || !list_->IsShown() ? stage_->focus_picture() : list_->focus_rows();
}

// Escape takes back the innermost thing first. False when there is none.
bool Frame::step_out() {
  if (work_) {
    work_->stop();
  } else if (document_) {
    document_.reset();
    show_view();
  } else if (list_->find_has_focus()) {
    list_->clear_find();
  } else {
    return next_->perform_key("Esc");
  }
  return true;
}

void Frame::on_tick() {
  if (!desk_ || form_->IsShown() || document_ || work_ || bench_->IsShown()) return;
  const bool elsewhere = desk_->changed_elsewhere();
  // Clocks run in Today and Kiln; elsewhere only news from another window is worth a new drawing.
  if (elsewhere || ((place_ == desk::Place::today || place_ == desk::Place::kiln) && !start_.now))
    reload();
}

void Frame::follow_desktop() {
  use_look(text_size_);
  dress_all(*this);
  if (desk_) show_view();
}

void Frame::text_size(double factor) {
  text_size_ = std::clamp(text_size_ * factor, 0.8, 2.0);
  use_look(text_size_);
  const wxWindowUpdateLocker still(this);
  for (wxWindow* child : GetChildren()) child->Destroy();
  build();
  SendSizeEvent();
  if (desk_) {
    places_->shop_name(desk_->shop_name());
    go(place_, selected_[place_]);
  } else {
    show_welcome();
  }
}

void Frame::open_shop(const std::filesystem::path& path) {
  auto opened = desk::Desk::open(path, clock());
  if (!opened) {
    show_welcome();
    tell(all_of(opened.problems()));
    return;
  }
  desk_ = std::move(opened).value();
  places_->set_open(true);
  places_->shop_name(desk_->shop_name());
  SetTitle(shown(desk_->shop_name() + " \xE2\x80\x93 Tangmark"));
  tell(desk_->notice());
  go(start_.place, start_.select);
}

void Frame::show_welcome() {
  places_->set_open(false);
  list_->Hide();
  list_rule_->Hide();
  view_ = desk::welcome_view();
  next_->show(view_.next);
  stage_->show(view_);
  Layout();
}

void Frame::go(desk::Place place, const std::string& id) {
  if (!desk_) return;
  if (form_->IsShown()) leave_form();
  document_.reset();
  place_ = place;
  selected_[place] = id;
  places_->here(place);
  reload();
  // At the quote desk the hands are at the price; the list is out of sight there.
  if (std::holds_alternative<desk::QuoteView>(view_.picture)) {
    stage_->focus_picture();
  } else {
    list_->focus_rows();
  }
}

void Frame::reload() {
  desk::PlaceList list = desk_->list(place_);
  std::string& id = selected_[place_];
  if (list.list.index_of(id) == list.list.size()) {
    id = list.list.size() > 0 ? list.list.row(0).id : std::string();
  }
  list_->show(list.title, list.hint, std::move(list.list));
  list_->select(id);
  show_view();
}

void Frame::select(const std::string& id) {
  if (form_->IsShown()) leave_form();
  document_.reset();
  selected_[place_] = id;
  list_->select(id);
  show_view();
}

void Frame::show_view() {
  const wxWindowUpdateLocker still(this);
  view_ = desk_->view(place_, selected_[place_]);
  next_->show(view_.next);
  // The quote desk takes the whole width; so does large text, in which the list goes away first.
  const bool wide = std::holds_alternative<desk::QuoteView>(view_.picture);
  const bool room = GetClientSize().x >= look().sizes.of(960);
  list_->Show(!wide && room);
  list_rule_->Show(!wide && room);
  form_->Hide();
  stage_->Show();
  list_->GetParent()->Layout();
  stage_->show(view_);
}

void Frame::guarded(const std::function<void()>& work) {
  try {
    work();
  } catch (const std::exception& failure) {
    tell(failure.what());
  }
}

void Frame::tell(const std::string& sentence) {
  told_->say(sentence);
}

}  // namespace tangmark::window
