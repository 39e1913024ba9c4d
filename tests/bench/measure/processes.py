# SPDX-License-Identifier: GPL-3.0-or-later
"""Whole processes timed turn and turn about, so that what the machine does besides falls on all alike."""

import statistics
import subprocess
import time


def run(command, **options):
    """Runs to the end and gives what was printed; one that fails ends the measurement with what it said."""
    done = subprocess.run([str(part) for part in command], capture_output=True, text=True, **options)
    if done.returncode != 0:
        raise SystemExit(f"{' '.join(map(str, command))}: exit {done.returncode}\n{done.stdout}{done.stderr}")
    return done.stdout


def _seconds(command, before=None, **options):
    if before:
        before()
    start = time.perf_counter()
    run(command, **options)
    return time.perf_counter() - start


def medians(rounds, *jobs):
    """jobs: (command, options) each; a round runs each once. The medians in the order of jobs, seconds."""
    times = [[] for _ in jobs]
    for _ in range(rounds):
        for place, (command, options) in zip(times, jobs):
            place.append(_seconds(command, **options))
    return [statistics.median(place) for place in times]


def told(output):
    """The lines "@ key value peer" of a program."""
    found = {}
    for line in output.splitlines():
        if line.startswith("@ "):
            _, key, value, peer = line.split()
            found[key] = (float(value), float(peer))
    return found
