# SPDX-License-Identifier: GPL-3.0-or-later
"""What is measured on: the invented station's books, a register as CSV, and a file of a million pairs."""

import random

from processes import run


class Stock:
    def __init__(self, program, folder):
        self.folder = folder
        self.century = folder / "century.wickbook"
        self.small = folder / "small.wickbook"
        self.register = folder / "register.csv"
        self.million = folder / "million.csv"
        for book, years in ((self.century, 100), (self.small, 0)):
            run([program, "sample", "--book", book, "--years", str(years), "--last-day", "2026-06-30"])
        run([program, "export", "--book", self.century, "--out", self.register])
        self._write_pairs()

    def _write_pairs(self):
        numbers = random.Random(5)
        with open(self.million, "w", encoding="ascii") as file:
            file.write("when,dry_c,wet_c,wick,pressure_hpa\n")
            for i in range(1_000_000):
                dry = round(numbers.uniform(-12, 30), 1)
                wet = round(dry - numbers.uniform(0, 6), 1)
                wick = "ice" if wet < 0 else "water"
                year, month, day = 1900 + i // 8766, 1 + i % 12, 1 + i % 28
                file.write(f"{year}-{month:02}-{day:02} {i % 24:02}:00,{dry},{wet},{wick},"
                           f"{numbers.uniform(960, 1010):.1f}\n")
