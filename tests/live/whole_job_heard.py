# SPDX-License-Identifier: GPL-3.0-or-later
"""The main job through the accessibility bus alone, as an assistive program does it: no key, no pointer. Doors and
buttons are pressed by their actions, fields are filled as editable text, and what they are is known only by their
names and roles.

    whole_job_heard.py PROGRAM
"""

import csv
import os
import subprocess
import sys
import tempfile
import time

import window_hand
from hear_answer import has_its_own_bus, need_a_desktops_ear, objects_below, once_more_on_a_bus
from window_hand import wait_for


class Ear:
    """Finds things by name and role among what the program shows."""

    def __init__(self):
        from gi.repository import Atspi, GLib

        self.atspi, self.glib = Atspi, GLib
        Atspi.init()

    def let_events_come(self):
        context = self.glib.MainContext.default()
        while context.pending():
            context.iteration(False)

    def root(self):
        desktop = self.atspi.get_desktop(0)
        for i in range(desktop.get_child_count()):
            one = desktop.get_child_at_index(i)
            if one is not None and "wickbook" in (one.get_name() or "").lower():
                return one
        return None

    def find(self, name, roles):
        """The showing object of one of these roles whose name begins so."""
        self.let_events_come()
        root = self.root()
        for one in objects_below(root) if root is not None else ():
            if ((one.get_name() or "").lower().startswith(name.lower()) and one.get_role_name() in roles
                    and one.get_state_set().contains(self.atspi.StateType.SHOWING)):
                return one
        return None

    def showing(self):
        """What can be found now, for the sentence that says what was not."""
        root = self.root()
        return ", ".join("%s “%s”" % (one.get_role_name(), one.get_name())
                         for one in (objects_below(root) if root is not None else ())
                         if one.get_name() and one.get_role_name() not in ("table cell", "list item") and one.get_state_set().contains(self.atspi.StateType.SHOWING)
                         and one.get_state_set().contains(self.atspi.StateType.FOCUSABLE))

    def press(self, name, roles=("button", "push button", "page tab", "radio button", "list item")):
        button = wait_for("a button “%s”" % name, lambda: self.find(name, roles))
        actions = {button.get_action_name(i).lower(): i for i in range(button.get_n_actions())}
        chosen = next((actions[each] for each in ("press", "click", "activate", "toggle") if each in actions), None)
        if chosen is None:
            raise RuntimeError("“%s” (%s) has no action to press: %s" % (name, button.get_role_name(), actions))
        if not button.do_action(chosen):
            raise RuntimeError("“%s” could not be pressed" % name)

    def fill(self, name, text, roles=("text", "entry", "spin button")):
        field = wait_for("a field “%s”" % name, lambda: self.find(name, roles))
        if not field.get_state_set().contains(self.atspi.StateType.EDITABLE):
            raise RuntimeError("“%s” (%s) can't be written in" % (name, field.get_role_name()))
        if not field.set_text_contents(text):
            raise RuntimeError("“%s” did not take its text" % name)
        wait_for("the text in “%s”" % name, lambda: field.get_text(0, -1) == text)


def stored(program, book, environment):
    out = subprocess.run([program, "export", "--book", book, "--out", "-"], env=environment, capture_output=True,
                         text=True, check=True)
    return list(csv.DictReader(out.stdout.splitlines()))


def check(program, folder, environment):
    ear = Ear()
    book = os.path.join(folder, "hill.wickbook")
    club = os.path.join(folder, "club")
    os.makedirs(club)
    process = subprocess.Popen([program], env=environment)
    try:
        ear.press("Start a station")
        ear.fill("name of the station", "Invented Hill")
        ear.fill("latitude", "52")
        ear.fill("longitude", "-1")
        ear.fill("elevation", "0")
        ear.fill("observing hours", ",".join("%02d:00" % hour for hour in range(1, 24, 2)))
        ear.press("Start the book")
        ear.fill("File name", book)
        ear.press("Save")
        wait_for("the book", lambda: os.path.exists(book))
        ear.fill("Dry bulb", "9.4")
        ear.fill("Wet bulb", "7.1")
        ear.press("Save")
        time.sleep(0.7)
        if not stored(program, book, environment):
            ear.press("Save")  # the margin has a note on an hour that is still to come
        rows = wait_for("the reading", lambda: stored(program, book, environment))
        if (rows[-1]["dry_read"], rows[-1]["wet_read"]) != ("9.4", "7.1"):
            raise RuntimeError("in the book is %s / %s" % (rows[-1]["dry_read"], rows[-1]["wet_read"]))
        ear.press("Month")
        ear.press("Write the month's report")
        ear.fill("Directory", club)
        ear.press("Choose")
        wait_for("the month's page", lambda: any(name.endswith("report.pdf") for _, _, names in os.walk(club)
                                                 for name in names))
    except RuntimeError:
        print("there was: " + ear.showing())
        raise
    finally:
        process.kill()
        process.wait()


def main():
    program = os.path.abspath(sys.argv[1])
    window_hand.need_programs("Xvfb", "xdotool", "dbus-run-session")
    need_a_desktops_ear()
    if not has_its_own_bus():
        return once_more_on_a_bus()
    with tempfile.TemporaryDirectory() as folder:
        server, display = window_hand.start_display()
        os.environ.update(window_hand.surroundings(folder, display), LC_ALL="C.UTF-8",
                          QT_LINUX_ACCESSIBILITY_ALWAYS_ON="1")
        try:
            check(program, folder, dict(os.environ))
        except (RuntimeError, subprocess.SubprocessError) as problem:
            print("failed: %s" % problem)
            return 1
        finally:
            server.kill()
            server.wait()
    return 0


if __name__ == "__main__":
    sys.exit(main())
