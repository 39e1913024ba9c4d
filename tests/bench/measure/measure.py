#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""All measurements of the program, as one table of ratios. Nothing is asserted: a goal that is not met is shown.

    measure.py BUILD [--only NAME ...] [--out TABLE.md] [--psychrolib FOLDER]

BUILD is the folder of an optimised build with the target "bench" made."""

import argparse
import pathlib
import sys
import tempfile

import command_line
import inside
import window
from stock import Stock
from table import Table

PARTS = {
    "kernels": inside.kernels,
    "derive": command_line.derive_file,
    "import": command_line.import_register,
    "checks": inside.checks,
    "window": window.first_frame,
    "charts": inside.charts,
    "register": inside.register,
    "report": command_line.month_report,
}


class Tools:
    """Where the programs are."""

    def __init__(self, build, psychrolib):
        self.here = pathlib.Path(__file__).resolve().parent
        self.psychrolib = psychrolib
        self.wickbook = build / "app" / "wickbook"
        self._bench = build / "tests" / "bench"

    def program(self, name):
        folders = {"empty_window": "empty_programs", "empty_page": "empty_programs", "bench_psychrometry": "."}
        return self._bench / folders.get(name, name) / name


def main():
    ask = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    ask.add_argument("build", type=pathlib.Path)
    ask.add_argument("--only", nargs="+", choices=PARTS, default=list(PARTS))
    ask.add_argument("--out", type=pathlib.Path)
    ask.add_argument("--psychrolib", type=pathlib.Path)
    asked = ask.parse_args()
    table = Table()
    with tempfile.TemporaryDirectory(prefix="wickbook-bench-") as folder:
        tools = Tools(asked.build.resolve(), asked.psychrolib)
        print("Making the books and files …", flush=True)
        stock = Stock(tools.wickbook, pathlib.Path(folder))
        for name in asked.only:
            print(name, flush=True)
            PARTS[name](table, tools, stock)
    print("\n" + table.markdown())
    if asked.out:
        asked.out.write_text(table.markdown(), encoding="utf-8")
    return 0


if __name__ == "__main__":
    sys.exit(main())
