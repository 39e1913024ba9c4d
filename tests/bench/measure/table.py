# SPDX-License-Identifier: GPL-3.0-or-later
"""The table of measurements: what, the ratio, the goal, and what it is a ratio to."""


class Table:
    def __init__(self):
        self.rows = []

    def add(self, what, value, peer, goal, unit, against):
        """value and peer in one unit; goal is the largest ratio wanted."""
        ratio = value / peer
        self.rows.append((what, f"{ratio:.3g} ×", f"≤ {goal:.3g} ×", "met" if ratio <= goal else "NOT MET",
                          f"{value:.4g} {unit} : {peer:.4g} {unit}", against))
        print(f"  {what}: {ratio:.3g} (goal {goal:.3g})", flush=True)

    def note(self, what, value, peer, unit, against):
        """A ratio without a goal: what explains another row."""
        ratio = value / peer
        self.rows.append((what, f"{ratio:.3g} ×", "", "", f"{value:.4g} {unit} : {peer:.4g} {unit}", against))
        print(f"  {what}: {ratio:.3g}", flush=True)

    def skip(self, what, why):
        self.rows.append((what, "–", "", "skipped", why, ""))
        print(f"  {what}: skipped, {why}", flush=True)

    def markdown(self):
        head = ("What", "Ratio", "Goal", "", "Medians", "Against")
        lines = ["| " + " | ".join(head) + " |", "|" + "---|" * len(head)]
        lines += ["| " + " | ".join(row) + " |" for row in self.rows]
        return "\n".join(lines) + "\n"
