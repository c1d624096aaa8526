// SPDX-License-Identifier: MIT
#pragma once

#include <wx/event.h>

#include <atomic>
#include <functional>
#include <string>
#include <thread>

#include "gui/desk/going.h"

namespace tangmark::window {

/// Runs long work on a thread of its own and brings what it found back to the window. One work at a
/// time; destroying it stops the work and waits for it.
class BackgroundWork {
 public:
  /// What is to be done on the window's thread with what was found.
  using Finish = std::function<void()>;
  /// Runs on its own thread, looks at `going.stop` often and touches nothing of the window.
  using Work = std::function<Finish(const desk::Going& going)>;
  /// What came of it: what is to be done now, or the sentence of the failure.
  struct Found {
    Finish finish;
    std::string failure;
  };
  /// What is told on the window's thread: how far it has come, and at last what it found.
  struct Told {
    std::function<void(const std::string&)> so_far;
    std::function<void(Found)> done;
  };
  /// `doing` says it in words: "Planning the kilns".
  BackgroundWork(wxEvtHandler& window, std::string doing, Work work, Told told);
  ~BackgroundWork();
  BackgroundWork(const BackgroundWork&) = delete;
  BackgroundWork& operator=(const BackgroundWork&) = delete;
  /// Asks the job to end with the best it has.
  void stop() { stop_ = true; }
  const std::string& doing() const { return doing_; }

 private:
  std::string doing_;
  Work work_;
  std::atomic<bool> stop_{false};
  std::thread thread_;
};

}  // namespace tangmark::window
