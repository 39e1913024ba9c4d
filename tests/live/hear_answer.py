# SPDX-License-Identifier: GPL-3.0-or-later
"""A screen reader's view of the real window: the live answer's value changes over AT-SPI while a reading is typed.

Starts a display, a session bus and the program, walks the tree of accessible objects, types 16.4 / 14.2 and then
15.2 with real keys, and waits for the bus to tell that the humidity is another one. Every object that takes the
keyboard must have a name and a role. Says "skipped:" and ends with 77 where a piece of the desktop is missing.
"""

import os
import subprocess
import sys
import tempfile

import window_hand
from window_hand import wait_for


def need_a_desktops_ear():
    launchers = ("/usr/libexec/at-spi-bus-launcher", "/usr/lib/at-spi2-core/at-spi-bus-launcher")
    if not any(os.path.exists(launcher) for launcher in launchers):
        window_hand.skip("at-spi2-core is not installed")
    try:
        import gi

        gi.require_version("Atspi", "2.0")
        from gi.repository import Atspi  # noqa: F401
    except (ImportError, ValueError):
        window_hand.skip("python3-gi or gir1.2-atspi-2.0 is not installed")


def has_its_own_bus():
    return os.environ.get("WICKBOOK_HEARING") == "1"


def once_more_on_a_bus():
    """The same program again, on a session bus of its own."""
    environment = dict(os.environ, WICKBOOK_HEARING="1")
    return subprocess.call(["dbus-run-session", "--", sys.executable, *sys.argv], env=environment)


def objects_below(root):
    """Every object of the tree, showing or not, parents first."""
    waiting = [root]
    while waiting:
        one = waiting.pop(0)
        if one is None:
            continue
        yield one
        try:
            waiting.extend(one.get_child_at_index(i) for i in range(one.get_child_count()))
        except Exception:
            continue


def named(root, begins):
    return next((one for one in objects_below(root) if (one.get_name() or "").startswith(begins)), None)


def check(program, folder):
    from gi.repository import Atspi, GLib

    book = window_hand.new_book(program, folder)
    Atspi.init()
    heard = []
    listener = Atspi.EventListener.new(
        lambda event: heard.append((event.type, event.source.get_name() or "")))
    for event in ("object:property-change:accessible-name", "object:property-change:accessible-value"):
        listener.register(event)

    def let_events_come():
        context = GLib.MainContext.default()
        while context.pending():
            context.iteration(False)

    window = window_hand.Window(program, book, dict(os.environ))
    try:
        desktop = Atspi.get_desktop(0)

        def our_program():
            let_events_come()
            return next((one for one in (desktop.get_child_at_index(i) for i in range(desktop.get_child_count()))
                         if one is not None and "wickbook" in (one.get_name() or "").lower()), None)

        root = wait_for("the program among the accessible ones", our_program)
        answer = wait_for("the humidity without a reading", lambda: named(root, "Relative humidity: none yet"))

        window.wait_until_shown()
        window.type("16.4", delay=60)
        window.key("Return")
        window.type("14.2", delay=60)

        def answer_says(different_from):
            let_events_come()
            name = answer.get_name() or ""
            return name if "%" in name and name != different_from else None

        first = wait_for("a humidity after 16.4 / 14.2", lambda: answer_says(None))
        window.key("BackSpace", "BackSpace", "BackSpace", "BackSpace")
        window.type("15.2", delay=60)

        def settled():
            name = answer_says(first)
            return name if name and any(text == name for _, text in heard) else None

        second = wait_for("another humidity after 16.4 / 15.2, told by the bus", settled)
        print("heard: %s, then: %s" % (first, second))
        percent = [int("".join(c for c in text.split("%")[0] if c.isdigit())) for text in (first, second)]
        if not percent[0] < percent[1]:
            raise RuntimeError("a smaller depression must be damper air: %s" % percent)

        wait_for("the wet bulb's own value", lambda: (let_events_come() or any(
            one.get_role_name() == "slider" and (one.get_name() or "").startswith("Drawn wet bulb")
            for one in objects_below(root))))
        silent = []
        for one in objects_below(root):
            states = one.get_state_set()
            if states.contains(Atspi.StateType.FOCUSABLE) and states.contains(Atspi.StateType.SHOWING):
                if not one.get_name() or one.get_role_name() in ("unknown", "invalid", "redundant object"):
                    silent.append("%s “%s”" % (one.get_role_name(), one.get_name()))
        # The window itself and the pages' frames take no keys of their own; an empty cell has nothing to say.
        silent = [one for one in silent
                  if not one.startswith(("frame", "panel", "filler", "layered", "table cell"))]
        if silent:
            raise RuntimeError("without a name or a role: " + ", ".join(silent))
    finally:
        window.kill()


def main():
    program = os.path.abspath(sys.argv[1])
    window_hand.need_programs("Xvfb", "xdotool", "dbus-run-session")
    need_a_desktops_ear()
    if not has_its_own_bus():
        return once_more_on_a_bus()
    with tempfile.TemporaryDirectory() as folder:
        server, display = window_hand.start_display()
        os.environ.update(window_hand.surroundings(folder, display))
        os.environ["QT_LINUX_ACCESSIBILITY_ALWAYS_ON"] = "1"
        try:
            check(program, folder)
        except RuntimeError as problem:
            print("failed: %s" % problem)
            return 1
        finally:
            server.kill()
            server.wait()
    return 0


if __name__ == "__main__":
    sys.exit(main())
