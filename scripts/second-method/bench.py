"""How long SciPy takes over the heap model's right-hand side, and how far off it is: for bench/heap-twin.bench.ts.

Reads {"problem", "wave", "methods", "rtols", "reference_rtol"} on standard input: the air's temperature is a wave over
the day, warmest at 15 h, and the reference is LSODA's at reference_rtol. Writes {"reference", "sure_K", "runs"}: the
temperatures at each moment shown, how far those at ten times the tolerance lie from them, and for each run its calls of
the right-hand side, its processor time and the greatest distance of any shell's temperature from the reference.
"""

import json
import sys

import numpy as np

import heap


class Waved(heap.Heap):
    """A heap in air that is warm by day and cool by night."""

    wave = None

    def rates(self, t, y):
        at = self.wave["mean_degC"] + self.wave["swing_K"] * np.cos(2 * np.pi * (t / heap.DAY - 15 / 24))
        self.p["weather"]["temp_degC"] = at
        self.p["weather"]["vapour_Pa"] = self.wave["humidity_share"] * heap.saturation(at)
        return super().rates(t, y)


def temperatures(run):
    return np.array([moment["temp_degC"] for moment in run["shown"]])


def main():
    asked = json.load(sys.stdin)
    problem = asked["problem"]
    if asked["wave"]["swing_K"] > 0:
        Waved.wave = asked["wave"]
        heap.Heap = Waved
    reference = temperatures(heap.integrate(problem, "LSODA", asked["reference_rtol"]))
    second = temperatures(heap.integrate(problem, "LSODA", 10 * asked["reference_rtol"]))
    runs = []
    for method in asked["methods"]:
        for rtol in asked["rtols"]:
            run = heap.integrate(problem, method, rtol)
            off = float(np.abs(temperatures(run) - reference).max())
            runs.append({"method": method, "rtol": rtol, "calls": run["calls"], "seconds": run["seconds"], "off_K": off})
    json.dump({"reference": reference.tolist(), "sure_K": float(np.abs(second - reference).max()), "runs": runs}, sys.stdout)


if __name__ == "__main__":
    main()
