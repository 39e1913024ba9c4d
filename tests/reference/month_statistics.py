#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""A month's summary worked out anew from exported observations and nothing else of the program's.

    month_statistics.py OBSERVATIONS.csv --month 1887-07 --hours 07:00,14:00,21:00 [--against summary.csv]

Without --against the table is printed; with it, every column is compared and each difference told (exit 1).
Standard library only. Own formulas:
- Saturation vapour pressure over water: Sonntag 1990 (Meteorol. Z. 70, 340-344); its inverse by bisection. The
  enhancement factor is taken to be 1, as it is for every exposure but a fan's.
- A month has no means where an hour lacks 11 days or more, or 5 or more in a row: WMO-No. 1203 (2017).
- What counts: a humidity that is neither set aside nor an estimate. The hours' means are equally weighted.
The observations have six decimals, and so has the summary: a mean may differ by one unit of the sixth.
"""
import argparse
import calendar
import csv
import math
import sys

LAST_DIGIT = 1.05e-6
MEANS = ("mean_dry_c", "mean_wet_c", "mean_vapour_pressure_hpa", "mean_dew_point_c", "mean_relative_humidity_pct")
SOURCES = ("dry_used_c", "wet_used_c", "vapour_pressure_hpa", "dew_point_c", "relative_humidity_pct")


def saturation(celsius):
    t = celsius + 273.15
    return math.exp(-6096.9385 / t + 16.635794 - 2.711193e-2 * t + 1.673952e-5 * t * t + 2.433502 * math.log(t))


def dew_point(vapour):
    low, high = -60.0, 60.0
    if not saturation(low) <= vapour <= saturation(high):
        return None
    for _ in range(80):
        middle = (low + high) / 2
        if saturation(middle) < vapour:
            low = middle
        else:
            high = middle
    return (low + high) / 2


def number(cell):
    return float(cell) if cell else None


def kind(row):
    if row is None or row["origin"] == "missing" or not (row["dry_read"] or row["wet_read"]):
        return "missing"
    if row["set_aside"] == "yes" or row["origin"] == "estimated":
        return "set_aside"
    return "counted" if row["relative_humidity_pct"] else "missing"


def withheld(kinds):
    """Why a month of these days has no mean at this hour."""
    if "counted" not in kinds:
        return "nothing-read"
    if sum(k != "counted" for k in kinds) >= 11:
        return "too-many-days-missing"
    run = longest = 0
    for k in kinds:
        run = 0 if k == "counted" else run + 1
        longest = max(longest, run)
    return "too-many-days-in-a-row" if longest >= 5 else ""


def mean(values):
    values = list(values)
    return None if not values or None in values else math.fsum(values) / len(values)


def extremes(line, counted):
    for column, name in (("relative_humidity_pct", "relative_humidity"), ("dew_point_c", "dew_point")):
        suffix = column.rsplit("_", 1)[1]
        rows = [r for r in counted if r[column]]
        for which, best in (("highest", max), ("lowest", min)):
            found = best(rows, key=lambda r: float(r[column])) if rows else None  # of equal ones the first
            line[f"{which}_{name}_{suffix}"] = number(found[column]) if found else None
            line[f"{which}_{name}_at"] = f"{found['local_date']}T{found['hour']}" if found else ""


def line_of(hour, slots):
    """slots: (date, row or None) of one hour or, in time order, of all."""
    kinds = [kind(row) for _, row in slots]
    counted = [row for _, row in slots if kind(row) == "counted"]
    line = {"hour": hour, "expected": len(slots), "n": len(counted),
            "missing": kinds.count("missing"), "set_aside": kinds.count("set_aside")}
    extremes(line, counted)
    humidity = [(r["local_date"], float(r["relative_humidity_pct"])) for r in counted]
    line["days_at_or_above_95"] = len({d for d, u in humidity if u >= 95})
    line["days_at_or_below_40"] = len({d for d, u in humidity if u <= 40})
    return line, kinds, counted


def add_means(line, values, why):
    line["mean_withheld_because"] = why
    for name in MEANS:
        line[name] = None if why else values.get(name)
    vapour = line["mean_vapour_pressure_hpa"]
    line["dew_point_of_mean_vapour_pressure_c"] = None if vapour is None else dew_point(vapour)


def summary(rows, month, hours):
    year, number_of_month = (int(part) for part in month.split("-"))
    days = [f"{month}-{day:02}" for day in range(1, calendar.monthrange(year, number_of_month)[1] + 1)]
    at = {(r["local_date"], r["hour"]): r for r in rows if r["hour"]}
    lines, means, reasons = [], [], []
    for hour in hours:
        line, kinds, counted = line_of(hour, [(d, at.get((d, hour))) for d in days])
        why = withheld(kinds)
        values = {name: mean(number(r[source]) for r in counted) for name, source in zip(MEANS, SOURCES)}
        add_means(line, values, why)
        lines.append(line)
        means.append({name: line[name] for name in MEANS})
        reasons.append(why)
    everything, _, _ = line_of("all", [(d, at.get((d, h))) for d in days for h in hours])
    why = next((reason for reason in reasons if reason), "")
    if why and everything["n"] == 0:
        why = "nothing-read"
    add_means(everything, {name: mean(m[name] for m in means) for name in MEANS}, why)
    return lines + [everything]


def differences(ours, theirs):
    found = []
    if len(ours) != len(theirs):
        return [f"{len(theirs)} lines where {len(ours)} were expected"]
    compared = 0
    for line, row in zip(ours, theirs):
        if set(line) != set(row):
            return [f"other columns: {sorted(set(line) ^ set(row))}"]
        for name, value in line.items():
            cell = row[name]
            compared += 1
            if isinstance(value, float):
                same = bool(cell) and abs(float(cell) - value) <= LAST_DIGIT
            else:
                same = cell == ("" if value is None else str(value))
            if not same:
                found.append(f"{line['hour']} {name}: {cell!r} where {value!r} was found")
    if compared < 22 * len(ours):
        found.append(f"only {compared} cells were compared")
    return found


def main():
    arguments = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    arguments.add_argument("observations")
    arguments.add_argument("--month", required=True)
    arguments.add_argument("--hours", required=True)
    arguments.add_argument("--against")
    given = arguments.parse_args()
    with open(given.observations, encoding="utf-8", newline="") as file:
        rows = [r for r in csv.DictReader(file) if r["local_date"].startswith(given.month)]
    ours = summary(rows, given.month, sorted(given.hours.split(",")))
    if not given.against:
        table = csv.DictWriter(sys.stdout, list(ours[0]))
        table.writeheader()
        table.writerows(ours)
        return 0
    with open(given.against, encoding="utf-8", newline="") as file:
        found = differences(ours, list(csv.DictReader(file)))
    last = ours[-1]
    why = [line["mean_withheld_because"] or "given" for line in ours]
    print(f"{given.month}: expected {last['expected']}, n {last['n']}, missing {last['missing']}, set aside "
          f"{last['set_aside']}, means {'/'.join(why)}: " + ("as printed" if not found else "DIFFERENT"))
    for difference in found:
        print("  " + difference)
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
