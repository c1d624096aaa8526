// SPDX-License-Identifier: MIT
#include <wx/app.h>
#include <wx/image.h>
#include <wx/log.h>

#include <clocale>
#include <cstdio>
#include <cstdlib>

#include "gui/desk/paper/certificate_printer.h"
#include "gui/desk/paper/photo_reader.h"
#include "gui/desk/start.h"
#include "gui/window/frame.h"
#include "gui/window/text.h"

namespace tangmark::window {
namespace {

void say_and_abort(const wxString& file, int line, const wxString&, const wxString& condition,
                   const wxString& message) {
  std::fprintf(stderr, "%s:%d: %s %s\n", typed(file).c_str(), line, typed(condition).c_str(),
               typed(message).c_str());
  std::abort();
}

class Program final : public wxApp {
 public:
  // wx starts with a C locale in which text with accents cannot be shown; numbers stay as they are.
  Program() { std::setlocale(LC_CTYPE, "C.UTF-8"); }

  bool OnInit() override {
    desk::lend_certificate_printer();
    desk::lend_photo_reader();
    std::vector<std::string> words;
    for (int i = 1; i < argc; ++i) words.push_back(typed(argv[i]));
    const auto start = desk::read_start(words);
    if (!start) {
      const Problem& problem = start.problem();
      std::fprintf(stderr, "tangmark-window: %s %s\n", problem.sentence.c_str(),
                   problem.remedy.c_str());
      std::exit(2);
    }
    if (start->wants_help) {
      std::fputs(desk::start_help().c_str(), stdout);
      std::exit(0);
    }
    if (start->quiet_dialogs) {
      wxSetAssertHandler(say_and_abort);
      delete wxLog::SetActiveTarget(new wxLogStderr);
    }
    wxInitAllImageHandlers();
    (new Frame(*start))->Show();
    return true;
  }
  int OnExit() override { return 0; }
  // The window's own events are guarded where they do work; what still escapes must not end the
  // program with a half-filled form in it.
  bool OnExceptionInMainLoop() override {
    try {
      throw;
    } catch (const std::exception& failure) {
      std::fprintf(stderr, "tangmark-window: %s\n", failure.what());
    }
    return true;
  }
};

}  // namespace
}  // namespace tangmark::window

wxIMPLEMENT_APP(tangmark::window::Program);
