// SPDX-License-Identifier: MIT
#include "gui/window/background_work.h"

#include <exception>

namespace tangmark::window {

BackgroundWork::BackgroundWork(wxEvtHandler& window, std::string doing, Work work, Told told)
    : doing_(std::move(doing)), work_(std::move(work)) {
  thread_ = std::thread([this, &window, told = std::move(told)] {
    Found found;
    try {
      found.finish = work_({stop_, [&window, so_far = told.so_far](const std::string& sentence) {
                              window.CallAfter([so_far, sentence] { so_far(sentence); });
                            }});
    } catch (const std::exception& failure) {
      found.failure = failure.what();
    }
    window.CallAfter([done = told.done, found] { done(found); });
  });
}

BackgroundWork::~BackgroundWork() {
  stop_ = true;
  if (thread_.joinable()) thread_.join();
}

}  // namespace tangmark::window
