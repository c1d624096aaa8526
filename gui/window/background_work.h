// SPDX-License-Identifier: MIT
#pragma once

#include <wx/event.h>

#include <atomic>
#include <functional>
#include <thread>

#include "gui/desk/desk.h"

namespace tangmark::window {

/// Runs a desk's job on a thread of its own and brings what it found back to the window. One job at
/// a time; destroying it stops the job and waits for it.
class BackgroundWork {
 public:
  /// What came of the job, on the window's thread: what to call on the desk, or the sentence of the
  /// failure.
  struct Found {
    std::function<desk::Said(desk::Desk&)> finish;
    std::string failure;
  };
  BackgroundWork(wxEvtHandler& window, desk::Job job, std::function<void(Found)> done);
  ~BackgroundWork();
  BackgroundWork(const BackgroundWork&) = delete;
  BackgroundWork& operator=(const BackgroundWork&) = delete;
  /// Asks the job to end with the best it has.
  void stop() { stop_ = true; }
  const std::string& doing() const { return job_.doing; }

 private:
  desk::Job job_;
  std::atomic<bool> stop_{false};
  std::thread thread_;
};

}  // namespace tangmark::window
