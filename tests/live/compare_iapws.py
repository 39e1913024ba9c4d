# SPDX-License-Identifier: GPL-3.0-or-later
"""Saturation over water and ice against IAPWS-95 and IAPWS R14-08, computed here by the iapws package.

Tolerances are the stated largest errors of Sonntag 1990 with half a unit of their last digit: 0.007 % over water
0.5…50 °C, 0.05 % over ice −50…0 °C. To 60 °C the error is not stated: twice that of 50 °C.
"""
import subprocess
import sys

try:
    from iapws import IAPWS95
    from iapws._iapws import _Sublimation_Pressure
except ImportError as problem:
    print("skipped: the iapws package for Python is not installed (%s)" % problem)
    sys.exit(77)


def ours(questions):
    answer = subprocess.run([sys.argv[1]], input="\n".join(questions) + "\n", text=True, check=True,
                            capture_output=True)
    return [float(line) for line in answer.stdout.split("\n") if line]


failures = 0


def compare(what, points, got, expected, allowed):
    global failures
    worst = (0.0, None)
    for t, a, b in zip(points, got, expected):
        error = abs(a / b - 1)
        worst = max(worst, (error, t))
        if not error <= allowed:
            failures += 1
            print("%s at %g °C: ours %.9g, theirs %.9g" % (what, t, a, b))
    print("%s: %d points, largest relative difference %.3g at %g °C, allowed %.3g"
          % (what, len(points), worst[0], worst[1], allowed))
    if len(got) != len(points):
        failures += 1


# MPa → hPa
def water_reference(t):
    return IAPWS95(T=t + 273.15, x=0).P * 1e4


def ice_reference(t):
    return _Sublimation_Pressure(t + 273.15) * 1e4


warm = [0.5 + 0.75 * i for i in range(67)]
hot = [51 + i for i in range(10)]
frozen = [-50 + 0.25 * i for i in range(201)]
compare("water, 0.5…50 °C", warm, ours(["saturation water %r" % t for t in warm]),
        [water_reference(t) for t in warm], 7.5e-5)
compare("water, 51…60 °C", hot, ours(["saturation water %r" % t for t in hot]),
        [water_reference(t) for t in hot], 1.5e-4)
compare("ice, −50…0 °C", frozen, ours(["saturation ice %r" % t for t in frozen]),
        [ice_reference(t) for t in frozen], 5.5e-4)

# The inverse: the dew point of IAPWS's own saturation pressure. 7.5e-5 of e is at most 0.002 K (slope over 5 %/K below
# 50 °C would give 0.0015 K).
dew = ours(["dew %r" % water_reference(t) for t in warm])
worst = max(abs(a - b) for a, b in zip(dew, warm))
print("dew point of IAPWS-95 pressures: largest difference %.2g K, allowed 0.002 K" % worst)
failures += 0 if worst <= 0.002 else 1

sys.exit(1 if failures else 0)
