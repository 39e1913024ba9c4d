#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Makes beside_pairs.csv and beside_expected.csv: invented pairs beside an invented reference, and what numpy makes of
them. Everything is computed here from the published equations, none of it by the program: saturation pressure after
Sonntag (1990), regression through zero and with an intercept by numpy.linalg.lstsq, Student's quantile by bisection of
the integral of its density. Run in this folder: python3 beside_numpy.py"""
import csv
import math

import numpy as np

A_WATER, A_ICE, PRESSURE = 7.31e-4, 6.55e-4, 987.3


def saturation(celsius, ice=False):
    t = celsius + 273.15
    if ice:
        # 24.7219 is 29.32707 - ln 100: the equation in hPa
        return math.exp(-6024.5282 / t + 24.7219 + 1.0613868e-2 * t - 1.3198825e-5 * t * t - 0.49382577 * math.log(t))
    return math.exp(-6096.9385 / t + 16.635794 - 2.711193e-2 * t + 1.673952e-5 * t * t + 2.433502 * math.log(t))


def student_quantile(probability, degrees):
    def density(x):
        return math.exp(math.lgamma((degrees + 1) / 2) - math.lgamma(degrees / 2)) / math.sqrt(degrees * math.pi) * (
            1 + x * x / degrees) ** (-(degrees + 1) / 2)

    nodes, weights = np.polynomial.legendre.leggauss(200)

    def below(x):
        return 0.5 + sum(w * density(x * (n + 1) / 2) for n, w in zip(nodes, weights)) * x / 2

    low, high = 0.0, 20.0
    for _ in range(200):
        middle = (low + high) / 2
        low, high = (middle, high) if below(middle) < probability else (low, middle)
    return (low + high) / 2


def pairs():
    random = np.random.default_rng(2026)
    rows = []
    for i in range(60):
        ice = i % 5 == 4
        dry = round(float(random.uniform(0.5, 6.0) if ice else random.uniform(8, 30)), 1)
        wet = round(dry - float(random.uniform(3.0, 5.5) if ice else random.uniform(1.0, 9.5)), 1)
        if ice:
            wet = min(wet, -0.2)
        e = saturation(wet, ice) - (A_ICE if ice else A_WATER) * PRESSURE * (dry - wet)
        humidity = round(100 * e / saturation(dry) + float(random.normal(0, 1.2)), 2)
        rows.append((dry, wet, "ice" if ice else "water", PRESSURE, humidity, int(random.integers(0, 7))))
    return rows


def write_line(writer, name, x, y):
    design = np.column_stack([np.ones_like(x), x])
    answer = np.linalg.lstsq(design, y, rcond=None)[0]
    residual = y - design @ answer
    variance = float(residual @ residual) / (len(x) - 2)
    errors = np.sqrt(np.diag(variance * np.linalg.inv(design.T @ design)))
    writer.writerow([name + " slope", repr(float(answer[1]))])
    writer.writerow([name + " slope error", repr(float(errors[1]))])
    writer.writerow([name + " intercept", repr(float(answer[0]))])
    writer.writerow([name + " intercept error", repr(float(errors[0]))])


def main():
    rows = pairs()
    with open("beside_pairs.csv", "w", newline="") as file:
        writer = csv.writer(file)
        writer.writerow(["dry", "wet", "wick", "pressure", "reference_rh", "wind"])
        writer.writerows(rows)
    with open("beside_expected.csv", "w", newline="") as file:
        writer = csv.writer(file)
        writer.writerow(["quantity", "value"])
        for surface in ("water", "ice"):
            used = [row for row in rows if row[2] == surface and row[0] - row[1] >= 3 - 1e-9]
            x = np.array([row[3] * (row[0] - row[1]) for row in used])
            y = np.array([saturation(row[1], surface == "ice") - row[4] / 100 * saturation(row[0]) for row in used])
            slope = float(np.linalg.lstsq(x[:, None], y, rcond=None)[0][0])
            residual = y - slope * x
            deviation = math.sqrt(float(residual @ residual) / (len(x) - 1))
            error = deviation / math.sqrt(float(x @ x))
            writer.writerow([surface + " n", len(x)])
            writer.writerow([surface + " coefficient", repr(slope)])
            writer.writerow([surface + " error", repr(error)])
            writer.writerow([surface + " residual deviation", repr(deviation)])
            writer.writerow([surface + " upper95", repr(slope + student_quantile(0.975, len(x) - 1) * error)])
            write_line(writer, surface + " residual on depression", np.array([row[0] - row[1] for row in used]), residual)
            write_line(writer, surface + " residual on wind", np.array([float(row[5]) for row in used]), residual)
        # Held against a screen's coefficient: bias, spread and bands.
        own = np.array([100 * (saturation(r[1], r[2] == "ice") - (7.20e-4 if r[2] == "ice" else 7.99e-4) * r[3] *
                               (r[0] - r[1])) / saturation(r[0]) for r in rows])
        reference = np.array([r[4] for r in rows])
        off = own - reference
        writer.writerow(["bias", repr(float(off.mean()))])
        writer.writerow(["bias error", repr(float(off.std(ddof=1) / math.sqrt(len(off))))])
        writer.writerow(["deviation", repr(float(off.std(ddof=1)))])
        for low, high in ((0, 40), (40, 60), (60, 80), (80, 100.001)):
            inside = off[(reference >= low) & (reference < high)]
            writer.writerow([f"band {low} n", len(inside)])
            writer.writerow([f"band {low} bias", repr(float(inside.mean())) if len(inside) else ""])
            writer.writerow([f"band {low} deviation", repr(float(inside.std(ddof=1))) if len(inside) > 1 else ""])
        for probability, degrees in ((0.975, 1), (0.975, 2), (0.975, 10), (0.975, 29), (0.975, 1000), (0.9, 5)):
            writer.writerow([f"t {probability} {degrees}", repr(student_quantile(probability, degrees))])


main()
