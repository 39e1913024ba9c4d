# SPDX-License-Identifier: GPL-3.0-or-later
"""The whole main job by keys alone, from an empty home: start a station, write down a reading, hand on the month.

    whole_job.py PROGRAM
    whole_job.py --root FOLDER PROGRAM      in another root, as root

Ends by looking at what was written where: the book and the month where the person said, everything else in the
folders of the XDG Base Directory Specification.
"""

import csv
import os
import subprocess
import sys
import tempfile
import time

import window_hand
from window_hand import wait_for


def focus(environment, name):
    subprocess.run(["xdotool", "search", "--sync", "--onlyvisible", "--name", name, "windowfocus", "--sync"],
                   env=environment, check=True, timeout=60)


def press(environment, *names):
    subprocess.run(["xdotool", "key", "--delay", "60", *names], env=environment, check=True, timeout=60)


def write(environment, text):
    subprocess.run(["xdotool", "type", "--delay", "30", "--", text], env=environment, check=True, timeout=60)


def files_below(folder):
    return sorted(os.path.relpath(os.path.join(path, name), folder)
                  for path, _, names in os.walk(folder) for name in names)


def job(command, folder, environment, inside=""):
    """inside: the folder as the program sees it, where that is another one."""
    seen = inside or folder
    os.makedirs(os.path.join(folder, "books"))
    os.makedirs(os.path.join(folder, "club"))
    process = subprocess.Popen(command, env=environment)
    try:
        focus(environment, "^Wickbook$")
        press(environment, "Return")  # the first door
        write(environment, "Invented Hill")
        for value in ("52", "-1", "0", ",".join("%02d:00" % hour for hour in range(1, 24, 2))):
            press(environment, "Tab", "ctrl+a")
            write(environment, value)
        press(environment, "alt+s")
        focus(environment, "Where the new book shall lie")
        press(environment, "ctrl+a")
        write(environment, os.path.join(seen, "books", "hill.wickbook"))
        press(environment, "Return")
        book = os.path.join(folder, "books", "hill.wickbook")
        wait_for("the book", lambda: os.path.exists(book))
        focus(environment, "Invented Hill")
        time.sleep(0.5)
        write(environment, "9.4")
        press(environment, "Return")
        write(environment, "7.1")
        press(environment, "Return")

        def stored():
            out = subprocess.run([*command, "export", "--book", os.path.join(seen, "books", "hill.wickbook"),
                                  "--out", "-"], env=environment, capture_output=True, text=True, check=True)
            return list(csv.DictReader(out.stdout.splitlines()))

        time.sleep(0.5)
        if not stored():
            press(environment, "Return")  # the margin has a note on an hour that is still to come
        rows = wait_for("the reading", stored)
        if (rows[-1]["dry_read"], rows[-1]["wet_read"]) != ("9.4", "7.1"):
            raise RuntimeError("typed 9.4 / 7.1, in the book is %s / %s" % (rows[-1]["dry_read"], rows[-1]["wet_read"]))
        press(environment, "ctrl+3")
        time.sleep(0.5)
        press(environment, "alt+t")
        focus(environment, "Folder for the monthly return")
        press(environment, "ctrl+a")
        write(environment, os.path.join(seen, "club"))
        press(environment, "Return")
        wait_for("the month's files", lambda: "report.pdf" in " ".join(files_below(os.path.join(folder, "club"))))
        focus(environment, "Invented Hill")
        press(environment, "ctrl+q")
        process.wait(timeout=30)
    finally:
        process.kill()
        process.wait()


def surroundings(folder, display):
    """folder: the home, as the program sees it."""
    return dict(window_hand.surroundings(folder, display), LC_ALL="C.UTF-8",
                XDG_STATE_HOME=os.path.join(folder, "state"), XDG_CACHE_HOME=os.path.join(folder, "cache"),
                XDG_RUNTIME_DIR=os.path.join(folder, "run"))


def strays(folder):
    """Files that lie where none should, and such as should be there and are not."""
    left = files_below(folder)
    print("\n".join(left))
    allowed = ("books/", "club/", "config/", "data/", "state/", "cache/", "run/")
    wanted = {"books/hill.wickbook", "state/wickbook/wickbook.log", "config/wickbook/window.ini"}
    return ([name for name in left if not name.startswith(allowed)]
            + ["%s (missing)" % name for name in wanted.difference(left)])


def main():
    window_hand.need_programs("Xvfb", "xdotool")
    words = sys.argv[1:]
    with tempfile.TemporaryDirectory() as temporary:
        folder, seen, command = temporary, temporary, words
        if words[0] == "--root":  # another root: its program, and a home in it that stays to be looked at
            folder, seen = os.path.join(words[1], "home/observer"), "/home/observer"
            command = ["chroot", words[1], *words[2:]]
        os.makedirs(os.path.join(folder, "run"), exist_ok=True)
        os.chmod(os.path.join(folder, "run"), 0o700)
        server, display = window_hand.start_display()
        try:
            job(command, folder, surroundings(seen, display), seen)
        except (RuntimeError, subprocess.SubprocessError) as problem:
            print("failed: %s" % problem)
            return 1
        finally:
            server.kill()
            server.wait()
        wrong = strays(folder)
        if wrong:
            print("failed: written outside the XDG folders and what was chosen, or missing: " + ", ".join(wrong))
            return 1
    return 0


if __name__ == "__main__":
    sys.exit(main())
