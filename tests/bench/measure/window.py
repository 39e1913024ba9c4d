# SPDX-License-Identifier: GPL-3.0-or-later
"""The window from outside: first frame and memory, against an empty window with a menu and a status bar."""

import os
import shutil
import subprocess
import time

from processes import medians, run


class Display:
    """A display of our own, of no size that anybody looks at."""

    def __init__(self):
        self.number = next(n for n in range(90, 200) if not os.path.exists(f"/tmp/.X11-unix/X{n}"))
        self.server = subprocess.Popen(["Xvfb", f":{self.number}", "-screen", "0", "1280x900x24"],
                                       stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        while not os.path.exists(f"/tmp/.X11-unix/X{self.number}"):
            time.sleep(0.05)

    def __enter__(self):
        return f":{self.number}"

    def __exit__(self, *_):
        self.server.terminate()
        self.server.wait()


def _home(stock):
    """Settings, log and drafts go where the measurement is, and are gone with it."""
    home = stock.folder / "home"
    home.mkdir(mode=0o700, exist_ok=True)
    return dict(os.environ, HOME=str(home), XDG_RUNTIME_DIR=str(home), XDG_CONFIG_HOME=str(home / "config"),
                XDG_STATE_HOME=str(home / "state"), XDG_DATA_HOME=str(home / "data"), LC_ALL="C.UTF-8")


def _first_frame(table, tools, stock, environment, where, goal):
    mine, peer = medians(
        15,
        ([tools.program("window_frames"), "first", stock.century], {"env": environment}),
        ([tools.program("empty_window")], {"env": environment}))
    table.add(f"first frame with the book of a century, {where}", mine, peer, goal, "s",
              "an empty window with a menu and a status bar")


def first_frame(table, tools, stock):
    offscreen = dict(_home(stock), QT_QPA_PLATFORM="offscreen")
    _first_frame(table, tools, stock, offscreen, "offscreen", 1.6)
    if shutil.which("Xvfb") is None:
        table.skip("first frame under X, and memory", "Xvfb is not installed")
        return
    with Display() as display:
        shown = dict(_home(stock), QT_QPA_PLATFORM="xcb", DISPLAY=display)
        shown.pop("WAYLAND_DISPLAY", None)
        _first_frame(table, tools, stock, shown, "under X", 1.3)
        mine = float(run([tools.program("window_frames"), "memory", stock.century], env=shown))
        small = float(run([tools.program("window_frames"), "memory", stock.small], env=shown))
        empty = float(run([tools.program("empty_window"), "memory"], env=shown))
        table.add("resident memory, the book of a century and its chart open", mine, empty, 1.6, "MiB",
                  "the empty window")
        table.note("the same, a book of five weeks", small, empty, "MiB", "the empty window")
