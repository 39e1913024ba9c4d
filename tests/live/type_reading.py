# SPDX-License-Identifier: GPL-3.0-or-later
"""Entering a reading in the real window with real keys: how many it takes from the start to the saved reading, that
no key is lost however soon it comes, that an unfinished entry outlives the program's being killed, and that a
right-to-left window takes a reading like any other.
"""

import os
import subprocess
import sys
import tempfile
import time

import window_hand


def saved(program, book, count=1):
    return window_hand.wait_for(
        "%d reading(s) in the book" % count,
        lambda: (lambda rows: rows if len(rows) == count else None)(window_hand.readings(program, book)))


def expect(rows, dry, wet):
    newest = rows[-1]
    if (newest["dry_read"], newest["wet_read"]) != (dry, wet):
        raise RuntimeError("typed %s / %s, in the book is %s / %s"
                           % (dry, wet, newest["dry_read"], newest["wet_read"]))


def two_numbers_and_enter(program, folder, environment):
    """From the program's start to a saved reading."""
    book = window_hand.new_book(program, folder, "count.wickbook")
    window = window_hand.Window(program, book, environment)
    try:
        window.wait_until_shown()
        window.type("9.4")
        window.key("Return")
        window.type("7.1")
        window.key("Return")
        expect(saved(program, book), "9.4", "7.1")
        print("keys from the start to a saved reading: %d" % window.keys)
        if window.keys > 8:
            raise RuntimeError("two numbers and Enter are 8 keys for 9.4 / 7.1")
        # Taken back by one key, right after it.
        window.key("ctrl+z")
        window_hand.wait_for("the reading taken back",
                             lambda: window_hand.readings(program, book) == [])
    finally:
        window.kill()


def keys_right_at_the_start(program, folder, environment):
    """The first key comes as soon as the window is there, while the page still settles."""
    for turn in range(6):
        book = window_hand.new_book(program, folder, "start%d.wickbook" % turn)
        window = window_hand.Window(program, book, environment)
        try:
            window.wait_until_shown()
            window.type("-0.4", delay=1 if turn % 2 else 25)
            window.key("Return")
            window.type("-0.6i", delay=1 if turn % 2 else 25)
            # Once for the reading, once more where the margin has a note on it.
            window.key("Return")
            time.sleep(0.3)
            if not window_hand.readings(program, book):
                window.key("Return")
            expect(saved(program, book), "-0.4", "-0.6")
        finally:
            window.kill()


def unfinished_entry_outlives_a_kill(program, folder, environment):
    """Typed, killed, started again: the text is there, and the next keys go on where it ended."""
    book = window_hand.new_book(program, folder, "draft.wickbook")
    window = window_hand.Window(program, book, environment)
    window.wait_until_shown()
    window.type("16.4")
    window.key("Return")
    window.type("14.")
    time.sleep(1.0)
    if not window.kill():
        raise RuntimeError("the program had ended before it was killed")
    if window_hand.readings(program, book):
        raise RuntimeError("an unfinished entry was saved")
    window = window_hand.Window(program, book, environment)
    try:
        window.wait_until_shown()
        window.type("2")
        window.key("Return")
        expect(saved(program, book), "16.4", "14.2")
    finally:
        window.kill()


def right_to_left(program, folder, environment):
    """Qt's own option goes through where no verb is given."""
    book = window_hand.new_book(program, folder, "right.wickbook")
    window = window_hand.Window(program, book, environment, "-reverse")
    try:
        window.wait_until_shown()
        window.type("9.4")
        window.key("Return")
        window.type("7.1")
        window.key("Return")
        expect(saved(program, book), "9.4", "7.1")
    finally:
        window.kill()


def main():
    program = os.path.abspath(sys.argv[1])
    window_hand.need_programs("Xvfb", "xdotool")
    with tempfile.TemporaryDirectory() as folder:
        server, display = window_hand.start_display()
        environment = window_hand.surroundings(folder, display)
        failed = 0
        try:
            for case in (two_numbers_and_enter, keys_right_at_the_start, unfinished_entry_outlives_a_kill,
                         right_to_left):
                try:
                    case(program, folder, environment)
                    print("ok: %s" % case.__name__, flush=True)
                except (RuntimeError, subprocess.SubprocessError) as problem:
                    failed += 1
                    print("failed: %s: %s" % (case.__name__, problem), flush=True)
        finally:
            server.kill()
            server.wait()
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
