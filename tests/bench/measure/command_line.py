# SPDX-License-Identifier: GPL-3.0-or-later
"""The command line against the database's own shell, and the monthly return against a bare page of PDF."""

import os

from processes import medians, run

SHELL = "sqlite3"
STATION = ["--name", "Invented", "--elevation", "100", "--latitude", "52", "--longitude", "0", "--zone",
           "Europe/London", "--hours", "09:00,21:00", "--exposure", "screen"]


def _shell(database, *lines):
    return [SHELL, "-batch", str(database), *map(str, lines)]


def derive_file(table, tools, stock):
    ours, theirs = stock.folder / "derived.csv", stock.folder / "copied.csv"
    mine, peer = medians(
        5,
        ([tools.wickbook, "derive", "--in", stock.million, "--out", ours, "--exposure", "screen"], {}),
        (_shell(":memory:", ".mode csv", f".import {stock.million} t", ".headers on", f".once {theirs}",
                "SELECT * FROM t"), {}))
    table.add("derive --in, a million rows to a file", mine, peer, 1.0, "s",
              "sqlite3 :memory: importing and exporting the same file")
    for path in (ours, theirs):
        path.unlink()


def import_register(table, tools, stock):
    book, database, limit = (stock.folder / name for name in ("imported.wickbook", "plain.db", "limit.db"))

    def fresh_book():
        book.unlink(missing_ok=True)
        run([tools.wickbook, "new", "--book", book, *STATION])

    mine, peer = medians(
        5,
        ([tools.wickbook, "import", "--book", book, "--in", stock.register], {"before": fresh_book}),
        (_shell(database, "PRAGMA journal_mode=DELETE", "PRAGMA synchronous=FULL", ".mode csv",
                f".import {stock.register} t"), {"before": lambda: database.unlink(missing_ok=True)}))
    table.add("import of the register, with revisions and checksums, durable", mine, peer, 1.5, "s",
              "sqlite3 .import of the same file into a DELETE/FULL table")

    # What the book's own tables, indexes and triggers cost when nothing is read, checked or summed.
    script = stock.folder / "limit.sql"
    script.write_text(
        "PRAGMA journal_mode=DELETE;\nPRAGMA synchronous=FULL;\nPRAGMA temp_store=MEMORY;\n" +
        run(_shell(book, ".schema --nosys")) +
        f"ATTACH '{book}' AS source;\nBEGIN;\n"
        "INSERT INTO revision SELECT * FROM source.revision ORDER BY sequence;\n"
        "INSERT INTO observation SELECT * FROM source.observation ORDER BY sequence;\nCOMMIT;\n", encoding="utf-8")
    bare, = medians(5, (_shell(limit, f".read {script}"), {"before": lambda: limit.unlink(missing_ok=True)}))
    table.note("import, against its own tables filled by bare SQL", mine, bare, "s",
               "sqlite3 copying the same revisions into the same tables, indexes and triggers")
    table.add("book file", os.path.getsize(book), os.path.getsize(stock.register), 3.0, "bytes", "its CSV")


def month_report(table, tools, stock):
    out, page = stock.folder / "report", stock.folder / "page.pdf"
    for what, book, month in (("a century", stock.century, "2026-05"), ("five weeks", stock.small, "2026-06")):
        mine, peer = medians(
            9,
            ([tools.wickbook, "report", "--book", book, "--month", month, "--out", out], {}),
            ([tools.program("empty_page"), page], {}))
        table.add(f"monthly return, all files, a book of {what}", mine, peer, 3.0, "s",
                  "an empty program of the toolkit that writes one page of PDF")
