# SPDX-License-Identifier: GPL-3.0-or-later
"""The real window under a display of its own, typed in with real keys. Shared by the tests beside it."""

import csv
import os
import shutil
import signal
import subprocess
import sys
import time

SKIP = 77
STATION = "Invented Hill"


def skip(reason):
    """Ends the test so that it is shown as skipped, with the reason."""
    print("skipped: " + reason, flush=True)
    sys.exit(SKIP)


def need_programs(*programs):
    for program in programs:
        if shutil.which(program) is None:
            skip(program + " is not installed")


def start_display():
    """The server and the display's name, as Xvfb tells it once it can be used."""
    reading, writing = os.pipe()
    server = subprocess.Popen(
        ["Xvfb", "-displayfd", str(writing), "-screen", "0", "1280x800x24", "-nolisten", "tcp"],
        pass_fds=[writing], stderr=subprocess.DEVNULL)
    os.close(writing)
    with os.fdopen(reading) as told:
        number = told.readline().strip()
    if not number:
        raise RuntimeError("Xvfb did not come up")
    return server, ":" + number


def surroundings(folder, display):
    """An environment in which the program finds this display and nothing of the person's own settings."""
    return dict(os.environ, DISPLAY=display, QT_QPA_PLATFORM="xcb", LANG="C.UTF-8", HOME=folder,
                XDG_CONFIG_HOME=os.path.join(folder, "config"), XDG_DATA_HOME=os.path.join(folder, "data"))


def new_book(program, folder, name="hill.wickbook", hours=None):
    """A book of an invented station that reads every two hours, so that one is always on offer."""
    book = os.path.join(folder, name)
    hours = hours or ",".join("%02d:00" % hour for hour in range(1, 24, 2))
    made = subprocess.run(
        [program, "new", "--book", book, "--name", STATION, "--latitude", "52", "--longitude", "-1",
         "--elevation", "0", "--zone", "UTC", "--hours", hours, "--exposure", "screen"],
        capture_output=True, text=True)
    if made.returncode != 0:
        raise RuntimeError("the book was not made: " + made.stderr)
    return book


def readings(program, book):
    """What the book holds, as rows of the export."""
    text = subprocess.run([program, "export", "--book", book, "--out", "-"], capture_output=True, text=True,
                          check=True).stdout
    return list(csv.DictReader(text.splitlines()))


class Window:
    """The program with its window, and a hand at its keys."""

    def __init__(self, program, book, environment, *options):
        self.environment = environment
        self.keys = 0
        self.process = subprocess.Popen([program, *options, book], env=environment)

    def hand(self, *words):
        subprocess.run(["xdotool", *words], env=self.environment, check=True, timeout=60)

    def wait_until_shown(self):
        # Without a window manager nobody else gives the window the keyboard.
        self.hand("search", "--sync", "--onlyvisible", "--name", STATION, "windowfocus", "--sync")

    def type(self, text, delay=40):
        self.keys += len(text)
        # "--": else a reading below zero is taken for an option.
        self.hand("type", "--delay", str(delay), "--", text)

    def key(self, *names):
        self.keys += len(names)
        self.hand("key", "--delay", "60", *names)

    def kill(self):
        """As a power cut would; false where the program had ended before."""
        running = self.process.poll() is None
        self.process.send_signal(signal.SIGKILL)
        self.process.wait()
        return running


def wait_for(what, found, seconds=40):
    """Asks until something is found."""
    end = time.monotonic() + seconds
    while time.monotonic() < end:
        try:
            result = found()
        except Exception:  # a thing that went away while it was looked at
            result = None
        if result:
            return result
        time.sleep(0.2)
    raise RuntimeError("not seen within %d s: %s" % (seconds, what))
