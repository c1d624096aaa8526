# SPDX-License-Identifier: MIT
"""The running window as a screen reader sees it."""
import os
import subprocess
import time

import pyatspi

PATIENCE_S = 25.0


class Story(Exception):
    """What was expected of the window and did not happen."""


def wait_for(what, expected, patience=PATIENCE_S):
    """Asks again until it gets an answer; the sentence names what was waited for."""
    until = time.monotonic() + patience
    while time.monotonic() < until:
        try:
            answer = what()
        except Exception:  # the tree changes while it is read
            answer = None
        if answer:
            return answer
        time.sleep(0.15)
    raise Story("waited in vain for " + expected)


class Window:
    """One window program; leaving the `with` ends it."""

    def __init__(self, build, arguments):
        self.program = subprocess.Popen(
            [os.path.join(build, "tangmark-window"), "--quiet-dialogs", *arguments],
            stdout=subprocess.DEVNULL, stderr=subprocess.PIPE)
        self.app = wait_for(self._find_app, "the window to appear")

    def __enter__(self):
        return self

    def __exit__(self, kind, value, trace):
        if kind is not None:
            print("what the window showed:\n" + "\n".join(self.texts()))
        self.program.terminate()
        try:
            self.program.wait(5)
        except subprocess.TimeoutExpired:
            self.program.kill()
        if kind is not None and self.program.stderr:
            print(self.program.stderr.read().decode(errors="replace")[-3000:])

    def _find_app(self):
        if self.program.poll() is not None:
            raise Story("the window ended by itself")
        for app in pyatspi.Registry.getDesktop(0):
            if app is not None and app.name == "tangmark-window" and app.childCount > 0:
                return app
        return None

    def everything(self):
        """All things on the screen, but for the cells of tables."""
        open_ones = [self.app]
        while open_ones:
            here = open_ones.pop()
            try:
                if not here.getState().contains(pyatspi.STATE_VISIBLE) and here is not self.app:
                    continue
                yield here
                if here.getRole() in (pyatspi.ROLE_TABLE, pyatspi.ROLE_TREE_TABLE):
                    continue
                open_ones.extend(child for child in here if child is not None)
            except Exception:
                continue

    def showing(self):
        for each in self.everything():
            if each.getState().contains(pyatspi.STATE_SHOWING):
                yield each

    def texts(self):
        """Every label that is seen."""
        return [each.name for each in self.showing()
                if each.getRole() == pyatspi.ROLE_LABEL and each.name]

    def button(self, label):
        return wait_for(lambda: next((each for each in self.showing()
                                      if each.getRole() == pyatspi.ROLE_PUSH_BUTTON and each.name == label
                                      and each.getState().contains(pyatspi.STATE_SENSITIVE)), None),
                        "a target named \"%s\"" % label)

    def press(self, label):
        self.button(label).queryAction().doAction(0)

    def has_text(self, part):
        return any(part in text for text in self.texts())

    def sees(self, part, patience=PATIENCE_S):
        wait_for(lambda: self.has_text(part), "the words \"%s\"" % part, patience)

    def field(self, label):
        roles = (pyatspi.ROLE_TEXT, pyatspi.ROLE_COMBO_BOX, pyatspi.ROLE_CHECK_BOX)
        return wait_for(lambda: next((each for each in self.showing()
                                      if each.getRole() in roles and each.name == label), None),
                        "a field named \"%s\"" % label)

    def fill(self, label, text):
        self.field(label).queryEditableText().setTextContents(text)
        time.sleep(0.2)

    def filled(self, label):
        return self.field(label).queryText().getText(0, -1)

    def choose(self, label, start):
        """Selects the first choice that begins with these words."""
        combo = self.field(label)
        menu = combo[0]
        for i in range(menu.childCount):
            if (menu[i].name or "").startswith(start):
                combo.querySelection().selectChild(i)
                time.sleep(0.3)
                return
        raise Story("no choice of %s begins with %s" % (label, start))

    def canvas(self, begins):
        """A drawn part, by the beginning of its words."""
        return wait_for(lambda: next((each.name for each in self.showing()
                                      if (each.name or "").startswith(begins)), None),
                        "a drawing that begins with \"%s\"" % begins)

    def table(self):
        found = wait_for(lambda: next((each for each in self.showing()
                                       if each.getRole() in (pyatspi.ROLE_TABLE, pyatspi.ROLE_TREE_TABLE)), None),
                         "the list")
        return found.queryTable()

    def keys(self, *names):
        window = subprocess.run(["xdotool", "search", "--onlyvisible", "--class", "tangmark-window"],
                                capture_output=True, text=True).stdout.split()
        if window:
            subprocess.run(["xdotool", "windowfocus", window[-1]], check=False)
        for name in names:
            subprocess.run(["xdotool", "key", "--clearmodifiers", name], check=True)
            time.sleep(0.4)

    def type(self, text):
        subprocess.run(["xdotool", "type", "--delay", "40", text], check=True)
        time.sleep(0.4)
