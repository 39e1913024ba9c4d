# SPDX-License-Identifier: GPL-3.0-or-later
"""Without a display the window can't open: a sentence and an exit code, not an abort.

    no_display.py PROGRAM
"""

import os
import subprocess
import sys

SENTENCE = "There is no display to open the window on"


def main():
    program = os.path.abspath(sys.argv[1])
    bare = {name: value for name, value in os.environ.items()
            if name not in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM")}
    failed = 0
    for what, environment in (("no display named", bare),
                              ("a display that is not there", dict(bare, DISPLAY=":4711"))):
        ran = subprocess.run([program], env=environment, capture_output=True, text=True, timeout=60)
        if ran.returncode != 3 or SENTENCE not in ran.stderr:
            failed += 1
            print("failed: %s: ended with %d and said: %s" % (what, ran.returncode, ran.stderr))
        else:
            print("ok: " + what)
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
