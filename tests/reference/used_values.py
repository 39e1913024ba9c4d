#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Used values and humidities worked out anew from an export's CSV and its sidecar alone.

    used_values.py OBSERVATIONS.csv

reads OBSERVATIONS.csv and OBSERVATIONS.csv-metadata.json and tells every cell that differs by more than 1e-4 (exit 1).
Standard library only. Own formulas:
- Saturation vapour pressure: Sonntag 1990 (Meteorol. Z. 70, 340-344), over water and over ice.
- Psychrometer equation e = f e_s(t_w) - A p (t - t_w), relative humidity 100 e / (f e_w(t)); dew point by bisection.
- Enhancement factor f = 1.0016 + 3.15e-6 p - 0.074/p where the sidecar names one (WMO-No. 8, Annex 4.B), else 1.
- Pressure: as read, else the station's mean, else the ICAO standard atmosphere (ISO 2533) at the elevation.
- Saturation, as the sidecar says: melting ice stands at 0 °C, and a wet bulb above the highest that the air allows,
  by no more than 0.2 K or a scale step, is taken for 100 %.
- Corrections in the thermometer's unit, linear between points, the nearest beyond.
"""
import bisect
import collections
import csv
import json
import math
import re
import sys

TOLERANCE = 1e-4


def water(celsius):
    t = celsius + 273.15
    return math.exp(-6096.9385 / t + 16.635794 - 2.711193e-2 * t + 1.673952e-5 * t * t + 2.433502 * math.log(t))


def ice(celsius):
    t = celsius + 273.15
    pascal = math.exp(-6024.5282 / t + 29.32707 + 1.0613868e-2 * t - 1.3198825e-5 * t * t - 0.49382577 * math.log(t))
    return pascal / 100


def dew_point(vapour, factor):
    low, high = -60.0, 60.0
    if vapour <= 0 or not factor * water(low) <= vapour <= factor * water(high):
        return None
    for _ in range(80):
        middle = (low + high) / 2
        low, high = (middle, high) if factor * water(middle) < vapour else (low, middle)
    return (low + high) / 2


def standard_pressure(metres):
    return 1013.25 * (1 - 0.0065 * metres / 288.15) ** (9.80665 * 0.0289644 / (8.31432 * 0.0065))


def values_of(entry):
    """Facts of a block by name; several of one name as a list."""
    found = collections.defaultdict(list)
    for fact in entry["schema:value"]:
        found[fact["schema:name"]].append(fact)
    return found


def only(facts, name):
    found = facts.get(name)
    return found[0]["schema:value"] if found else None


def in_force(entries, time):
    """The last of the entries whose validity has begun; ISO times compare as texts."""
    begun = [e for e in entries if e.get("schema:validFrom", "") <= time]
    return max(begun, key=lambda e: e.get("schema:validFrom", "")) if begun else None


class Station:
    def __init__(self, metadata):
        facts = metadata["schema:spatialCoverage"]["schema:additionalProperty"]
        named = lambda name: [f for f in facts if f["schema:name"] == name]
        self.periods = named("period")
        self.fittings = named("thermometers in use")
        self.thermometers = {only(values_of(t), "identity"): values_of(t) for t in named("thermometer")}

    def period(self, time):
        return values_of(in_force(self.periods, time))

    def thermometer(self, bulb, time):
        fitting = in_force(self.fittings, time)
        return self.thermometers[values_of(fitting)[bulb][0]["schema:propertyID"]]


def kelvins(step):
    return step["schema:value"] / (1.8 if step["schema:unitText"] == "[degF]" else 1)


def used(read, unit, thermometer, time):
    """Corrected reading in degrees Celsius; None where it stood off the scale."""
    step = thermometer["scale step"][0]
    fahrenheit = step["schema:unitText"] == "[degF]"
    celsius = (read - 32) / 1.8 if unit == "f" else read
    on_scale = read if (unit == "f") == fahrenheit else celsius * 1.8 + 32 if fahrenheit else celsius
    slack = step["schema:value"] / 2 + 1e-9
    off = not only(thermometer, "lowest mark") - slack <= on_scale <= only(thermometer, "highest mark") + slack
    correction = 0.0
    entry = in_force(thermometer.get("correction", []), time)
    if entry:
        points = sorted((only(values_of(p), "at reading"), only(values_of(p), "add")) for p in entry["schema:value"])
        at = [x for x, _ in points]
        i = bisect.bisect(at, on_scale)
        if i == 0 or i == len(points):
            correction = points[max(i - 1, 0)][1]
        else:
            (x0, y0), (x1, y1) = points[i - 1], points[i]
            correction = y0 + (y1 - y0) * (on_scale - x0) / (x1 - x0)
    return celsius + (correction / 1.8 if fahrenheit else correction), off


def coefficient(period, wet, frozen):
    own = only(period, "psychrometer coefficient, water")
    if own is not None:
        own_ice = only(period, "psychrometer coefficient, ice")
        return own_ice if frozen and own_ice is not None else own
    if frozen:
        return only(period, "psychrometer coefficient, ice")
    slope = only(period, "relative increase of the coefficient with the wet bulb") or 0.0
    return only(period, "psychrometer coefficient at 0 °C, water") * (1 + slope * wet)


def expected(row, station):
    time = row["time_utc"]
    units = (row["unit"] + ";" + row["unit"]).split(";")[:2]
    result, off = {}, False
    for bulb, unit in zip(("dry", "wet"), units):
        text = row[f"{bulb}_read"]
        off = off or text == "below"
        if text in ("", "below"):
            result[f"{bulb}_used_c"] = None
            continue
        value, outside = used(float(text), unit, station.thermometer(bulb, time), time)
        off = off or outside
        result[f"{bulb}_used_c"] = value
    dry, wet = result["dry_used_c"], result["wet_used_c"]
    period = station.period(time)
    mean = only(period, "mean pressure at the station")
    source = row["pressure_source"]
    if source == "read":
        pressure = float(row["pressure_hpa"])
    else:
        pressure = mean if mean else standard_pressure(only(period, "elevation"))
        if source:
            result["pressure_hpa"] = pressure
    if not row["relative_humidity_pct"]:
        return result, (dry is not None and wet is not None and not off)
    factor = 1.0016 + 3.15e-6 * pressure - 0.074 / pressure if any("enhancement" in name for name in period) else 1.0
    frozen = row["wick"] == "ice"
    wet = min(wet, 0.0) if frozen else wet
    vapour = factor * (ice if frozen else water)(wet) - coefficient(period, wet, frozen) * pressure * (dry - wet)
    step = max(kelvins(station.thermometer(bulb, time)["scale step"][0]) for bulb in ("dry", "wet"))
    saturated = vapour > factor * water(dry) and (wet - dry if not frozen else 0.0) <= max(step, 0.2) + 1e-9
    if saturated:
        vapour = factor * water(dry)
    result["vapour_pressure_hpa"] = vapour
    result["relative_humidity_pct"] = 100 * vapour / (factor * water(dry))
    if row["dew_point_c"]:
        result["dew_point_c"] = dry if saturated else dew_point(vapour, factor)
    return result, False


def main():
    path = sys.argv[1]
    with open(path + "-metadata.json", encoding="utf-8") as file:
        station = Station(json.load(file))
    cells = collections.Counter()
    corrected = frozen = without = wrong = 0
    worst = 0.0
    with open(path, encoding="utf-8", newline="") as file:
        for row in csv.DictReader(file):
            values, lacking = expected(row, station)
            without += lacking
            frozen += row["wick"] == "ice" and bool(row["relative_humidity_pct"])
            for name, value in values.items():
                cell = row[name]
                off = (cell != "") if value is None else (not cell or abs(float(cell) - value) > TOLERANCE)
                if value is not None and cell:
                    worst = max(worst, abs(float(cell) - value))
                cells[name] += value is not None
                wrong += off
                if off and wrong <= 20:
                    print(f"{row['time_utc']} {name}: {cell!r} where {value!r} was found")
            dry = values["dry_used_c"]
            if dry is not None and re.fullmatch(r"c(;.*)?", row["unit"]):
                corrected += abs(dry - float(row["dry_read"])) > 1e-9
    print(f"{sum(cells.values())} cells ({', '.join(f'{n} {c}' for n, c in sorted(cells.items()))}), dry bulbs "
          f"corrected {corrected}, ice bulbs {frozen}, pairs without humidity {without}, largest difference "
          f"{worst:.2e}, wrong {wrong}")
    return 1 if wrong or not cells["relative_humidity_pct"] else 0


if __name__ == "__main__":
    sys.exit(main())
