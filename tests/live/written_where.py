# SPDX-License-Identifier: GPL-3.0-or-later
"""Every file that is opened for writing, made, renamed or removed while the whole main job is done, as the kernel
sees it: only the book and the month where the person said, and the folders of the XDG Base Directory Specification.

    written_where.py PROGRAM
"""

import os
import re
import subprocess
import sys
import tempfile

import window_hand
from whole_job import job, surroundings

CALLS = "openat,open,creat,mkdir,mkdirat,rename,renameat,renameat2,unlink,unlinkat,rmdir,symlink,symlinkat,link,linkat"
# Devices and what the kernel makes up; nothing there stays.
NO_FILES = ("/dev/", "/proc/", "/sys/")


def written(trace):
    """Absolute paths that a line of the trace writes to and that went well."""
    for line in trace:
        if " = -1 " in line or "resumed>" in line or "unfinished" in line:
            continue
        call = re.search(r"\b(\w+)\(", line)
        if not call:
            continue
        if call.group(1) in ("open", "openat") and not re.search(r"O_WRONLY|O_RDWR|O_CREAT|O_TRUNC", line):
            continue
        yield from (path for path in re.findall(r'"((?:[^"\\]|\\.)*)"', line) if path.startswith("/"))


def main():
    window_hand.need_programs("Xvfb", "xdotool", "strace")
    if subprocess.run(["strace", "-o", os.devnull, "true"], capture_output=True).returncode != 0:
        window_hand.skip("strace may not trace here")
    program = os.path.abspath(sys.argv[1])
    with tempfile.TemporaryDirectory() as folder:
        home = os.path.join(folder, "home")
        os.makedirs(os.path.join(home, "run"), mode=0o700)
        os.chmod(os.path.join(home, "run"), 0o700)
        server, display = window_hand.start_display()
        environment = surroundings(home, display)
        trace = os.path.join(folder, "trace")
        try:
            job(["strace", "-f", "-qq", "-e", "signal=none", "-e", "trace=" + CALLS, "-o", trace, "-A", program],
                home, environment)
        except (RuntimeError, subprocess.SubprocessError) as problem:
            print("failed: %s" % problem)
            return 1
        finally:
            server.kill()
            server.wait()
        with open(trace, errors="replace") as lines:
            paths = sorted(set(written(lines)))
        inside = [os.path.join(home, part) + "/" for part in
                  ("books", "club", "config", "data", "state", "cache", "run")]
        strays = [path for path in paths
                  if not path.startswith(tuple(inside)) and path + "/" not in inside
                  and not path.startswith(NO_FILES)]
        print("%d paths written, made or removed" % len(paths))
        if not any(path.endswith("hill.wickbook") for path in paths):
            print("failed: the trace does not even show the book")
            return 1
        if strays:
            print("failed: outside the XDG folders and what was chosen:\n" + "\n".join(strays))
            return 1
    return 0


if __name__ == "__main__":
    sys.exit(main())
