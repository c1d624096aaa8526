// SPDX-License-Identifier: MIT
// What the maker does in the frame: forms, actions, documents and long work.
#include <exception>

#include "gui/desk/welcome.h"
#include "gui/window/background_work.h"
#include "gui/window/bench_canvas.h"
#include "gui/window/form_panel.h"
#include "gui/window/frame.h"
#include "gui/window/list_column.h"
#include "gui/window/next_line_bar.h"
#include "gui/window/sentences.h"
#include "gui/window/stage.h"
#include "gui/window/surface.h"
#include "gui/window/words.h"

namespace tangmark::window {

void Frame::perform(const desk::Deed& deed) {
  guarded([&] {
    if (const auto* form = std::get_if<desk::OpenForm>(&deed)) return open_form(*form);
    if (const auto* now = std::get_if<desk::DoNow>(&deed))
      return take(desk_->act(now->action, now->fields));
    if (const auto* to = std::get_if<desk::GoTo>(&deed)) return go(to->place, to->id);
    if (const auto* paper = std::get_if<desk::ShowDocument>(&deed)) return show_document(*paper);
    begin(std::get<desk::PlaceWork>(deed));
  });
}

void Frame::open_form(const desk::OpenForm& wanted) {
  if (!desk_ && work_) return tell(work_->doing() + ". Escape stops it.");
  desk::Form form =
      desk_ ? desk_->form(wanted.action, wanted.filled) : desk::welcome_form(wanted.action);
  const auto draft = drafts_.find(wanted.action + "/" + selected_[place_]);
  if (draft != drafts_.end()) {
    for (desk::FormField& field : form.fields) {
      const auto kept = draft->second.find(field.name);
      if (kept != draft->second.end()) field.value = kept->second;
    }
    form.under += form.under.empty() ? "Kept as you left it." : " Kept as you left it.";
  }
  stage_->Hide();
  form_->Show();
  next_->step_back(true);
  form_->GetParent()->Layout();
  form_->show(form);
  form_->focus_first();
}

void Frame::leave_form() {
  if (!form_->IsShown()) return;
  drafts_[form_->form().action + "/" + selected_[place_]] = form_->filled();
  form_->Hide();
  stage_->Show();
  next_->step_back(false);
  form_->GetParent()->Layout();
  if (desk_) list_->focus_rows();
}

void Frame::submit_form() {
  if (!form_->IsShown()) return;
  const std::string action = form_->form().action;
  const desk::Typed answers = form_->filled();
  try {
    if (!desk_) {
      auto begun = desk::welcome_shop(action, answers, clock()());
      if (!begun) return form_->show_problems(begun.problems());
      leave_form();
      if (const auto* path = std::get_if<std::filesystem::path>(&*begun)) return open_shop(*path);
      return begin_shop(std::get<desk::ShopWriting>(std::move(begun).value()));
    }
    const auto done = desk_->act(action, answers);
    if (!done) return form_->show_problems(done.problems());
    leave_form();
    drafts_.erase(action + "/" + selected_[place_]);
    take(done);
  } catch (const std::exception& failure) {
    form_->show_problems({{"", failure.what(), ""}});
  }
}

void Frame::take(const Outcome<desk::Said>& outcome) {
  if (!outcome) return tell(all_of(outcome.problems()));
  document_.reset();
  if (outcome->go) {
    go(outcome->go->place, outcome->go->id);
  } else {
    // Something was done: what needs hands most is first again.
    if (place_ == desk::Place::today) selected_[place_].clear();
    reload();
  }
  tell(outcome->sentence);
  if (outcome->then) begin(*outcome->then);
}

void Frame::begin(const desk::PlaceWork& work) {
  if (work.name == "bench") return to_bench();
  if (work.name == "stop") {
    if (work_) work_->stop();
    return;
  }
  if (work_) return tell(work_->doing() + ". Escape stops it with the best it has.");
  auto begun = desk_->begin(work);
  if (!begun) return tell(all_of(begun.problems()));
  if (auto* said = std::get_if<desk::Said>(&*begun)) {
    return take(std::move(*said));
  }
  desk::Job job = std::get<desk::Job>(std::move(begun).value());
  tell(job.doing + ". Escape stops it with the best it has.");
  show_view();
  work_on(job.doing, "Stop with the best so far",
          [this, work = std::move(job.work)](const desk::Going& going) -> BackgroundWork::Finish {
            return [this, finish = work(going)] { take(finish(*desk_)); };
          });
}

void Frame::begin_shop(desk::ShopWriting writing) {
  work_on(
      writing.doing, "Stop, and write nothing",
      [this, work = std::move(writing.work)](const desk::Going& going) -> BackgroundWork::Finish {
        return [this, path = work(going)] {
          if (path) return open_shop(*path);
          show_welcome();
          tell(all_of(path.problems()));
        };
      });
}

// `ending` is what stopping it means.
void Frame::work_on(const std::string& doing, const std::string& ending,
                    BackgroundWork::Work work) {
  BackgroundWork::Told told;
  told.so_far = [this, doing, ending](const std::string& sentence) {
    show_work(doing, sentence, ending);
  };
  told.done = [this](BackgroundWork::Found found) {
    work_.reset();
    if (!found.failure.empty()) return tell(found.failure);
    guarded(found.finish);
  };
  work_ = std::make_unique<BackgroundWork>(*this, doing, std::move(work), std::move(told));
  show_work(doing, "It has only begun.", ending);
}

// Over any view: what is on its way, how far it has come, and stopping it.
void Frame::show_work(const std::string& doing, const std::string& so_far,
                      const std::string& ending) {
  if (!work_) return;
  next_->show({doing + " ...", so_far, {{ending, desk::PlaceWork{"stop", {}}, "Esc", ""}}});
}

void Frame::show_document(const desk::ShowDocument& wanted) {
  auto paper = desk_->document(wanted.kind, wanted.id);
  if (!paper) return tell(all_of(paper.problems()));
  document_ = wanted;
  desk::PlaceView view = desk_->document_view(wanted, *paper);
  next_->show(view.next);
  stage_->show(view);
  stage_->focus_picture();
}

void Frame::to_bench() {
  if (!desk_ || bench_->IsShown()) return;
  if (form_->IsShown()) leave_form();
  ground_->Hide();
  bench_->Show();
  Layout();
  bench_->begin();
}

void Frame::perform_at_bench(const desk::Deed& deed) {
  const auto* now = std::get_if<desk::DoNow>(&deed);
  if (now == nullptr) {
    leave_bench();
    return perform(deed);
  }
  const auto done = desk_->act(now->action, now->fields);
  if (done) return tell(done->sentence);
  // What is refused needs an answer, and the form is where it can be given.
  leave_bench();
  open_form({now->action, now->fields});
  form_->show_problems(done.problems());
}

void Frame::leave_bench() {
  bench_->end();
  bench_->Hide();
  ground_->Show();
  Layout();
  reload();
  list_->focus_rows();
}

}  // namespace tangmark::window
