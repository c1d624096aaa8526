// SPDX-License-Identifier: MIT
#include "gui/window/background_work.h"

#include <exception>

namespace tangmark::window {

BackgroundWork::BackgroundWork(wxEvtHandler& window, std::string doing, Work work,
                               std::function<void(Found)> done)
    : doing_(std::move(doing)), work_(std::move(work)) {
  thread_ = std::thread([this, &window, done = std::move(done)] {
    Found found;
    try {
      found.finish = work_(stop_);
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
