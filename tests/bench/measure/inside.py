# SPDX-License-Identifier: GPL-3.0-or-later
"""Kernels, checks, charts and the register: programs that measure two things turn and turn about by themselves."""

import json
import os
import shutil

from processes import run, told


def kernels(table, tools, stock):
    program = tools.program("bench_psychrometry")
    if not program.exists():
        table.skip("derivation of pairs", "Google Benchmark is not installed")
        return
    report = json.loads(run([program, "--benchmark_format=json", "--benchmark_repetitions=9",
                             "--benchmark_enable_random_interleaving=true"]))
    pairs = 1024
    time = {run_["run_name"]: run_["cpu_time"] / pairs for run_ in report["benchmarks"]
            if run_.get("aggregate_name") == "median"}
    scalar = time["equationOneByOne"]
    if shutil.which("node") and tools.psychrolib:
        environment = dict(os.environ, WICKBOOK_PSYCHROLIB=str(tools.psychrolib))
        peer = float(run(["node", tools.here / "psychrolib_pairs.js"], env=environment))
        table.add("one pair: e, RH, dew point", scalar, peer, 1 / 35, "ns", "PsychroLib in JavaScript, per pair")
    else:
        table.skip("one pair: e, RH, dew point", "PsychroLib for Node.js is not at hand")
    table.add("columns of pairs, the widest instructions", time["equationColumns/widest"], scalar, 1 / 3, "ns",
              "one pair after another")
    table.add("columns of pairs, instructions of every x86-64", time["equationColumns/baseline"], scalar, 1 / 2,
              "ns", "one pair after another")
    table.note("all that derive() gives, with uncertainty", time["deriveOneByOne"], scalar, "ns",
               "e, RH and dew point alone")


def checks(table, tools, stock):
    found = told(run([tools.program("check_one_reading"), "100"]))
    table.add("check of the whole register", *found["check.plain"], 5.0, "µs", "deriving it")
    table.add("the same with likely causes", *found["check.causes"], 50.0, "µs", "deriving it")


def charts(table, tools, stock):
    environment = dict(os.environ, QT_QPA_PLATFORM="offscreen")
    found = told(run([tools.program("chart_frames"), stock.century], env=environment))
    table.add("chart of 73,000 readings, built and first painted", *found["chart.build.73000"], 3.5, "µs",
              "the same chart of 62")
    table.add("chart of 263,000 readings, built and first painted", *found["chart.build.263000"], 4.0, "µs",
              "the same chart of 62")
    table.add("pan a frame of the century's chart", *found["chart.pan"], 1.5, "µs", "a frame of one month")
    table.add("zoom a frame of the century's chart", *found["chart.zoom"], 1.5, "µs", "a frame of one month")


def register(table, tools, stock):
    environment = dict(os.environ, QT_QPA_PLATFORM="offscreen")
    found = told(run([tools.program("register_frames"), stock.century], env=environment))
    table.add("scroll the register by a line", *found["register.scroll"], 2.6, "µs",
              "drawing the same texts by hand")
