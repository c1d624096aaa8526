// SPDX-License-Identifier: MIT
#include "gui/window/background_work.h"

#include <exception>

namespace tangmark::window {

BackgroundWork::BackgroundWork(wxEvtHandler& window, desk::Job job, std::function<void(Found)> done)
    : job_(std::move(job)) {
  thread_ = std::thread([this, &window, done = std::move(done)] {
    Found found;
    try {
      found.finish = job_.work(stop_);
    } catch (const std::exception& failure) {
      found.failure = failure.what();
    }
    window.CallAfter([done, found] { done(found); });
  });
}

BackgroundWork::~BackgroundWork() {
  stop_ = true;
  if (thread_.joinable()) thread_.join();
}

}  // namespace tangmark::window
