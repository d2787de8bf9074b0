"""Heat against SciPy and NumPy: the same equations, written a second time (heat_model.py) or straight from the published rows."""

import csv
import random
import unittest
from pathlib import Path

import numpy as np
from scipy.integrate import solve_ivp

from heat_model import Meat, follow, graded
from sums import ask

PUBLISHED = Path(__file__).parents[2] / "core" / "tests" / "published"
PARTS = ["water", "protein", "fat", "carbohydrate", "ash"]
KELVIN = 273.15


def coefficients():
    """(part, property) -> polynomial in °C, as published."""
    rows = csv.DictReader((PUBLISHED / "choi_okos_coefficients.csv").open())
    return {
        (row["component"].split()[0], row["property"]): np.polynomial.Polynomial([float(row[a] or 0) for a in ("a0", "a1", "a2")])
        for row in rows
    }


def by_published_rows(grams, celsius):
    """Density, heat, greatest and least conductivity of these grams of each part."""
    table = coefficients()
    share = np.array(grams) / np.sum(grams)
    at = {name: np.array([table[part, name](celsius) for part in PARTS]) for name in ("k", "rho", "cp")}
    volume = share / at["rho"]
    side = np.sum(volume * at["k"]) / volume.sum()
    behind = volume.sum() / np.sum(volume / at["k"])
    return 1 / volume.sum(), np.sum(share * at["cp"]) * 1000, side, behind


class Food(unittest.TestCase):
    def test_invented_foods_at_any_temperature(self):
        chance = random.Random(7)
        for _ in range(60):
            cuts = sorted(chance.randrange(0, 10_001) for _ in range(4))
            grams = [b - a for a, b in zip([0, *cuts], [*cuts, 10_000])]
            milli_c = chance.randrange(0, 150_001)
            ours = ask("food-properties", dict(zip(PARTS, grams), temp=milli_c + 273_150))
            density, heat, most, least = by_published_rows(grams, milli_c / 1000)
            self.assertAlmostEqual(ours["density_g_per_m3"] / 1e3, density, delta=0.001)
            self.assertAlmostEqual(ours["heat_mj_per_kg_k"] / 1e3, heat, delta=0.001)
            self.assertAlmostEqual(ours["conducts_most_uw_per_m_k"] / 1e6, most, delta=1e-6)
            self.assertAlmostEqual(ours["conducts_least_uw_per_m_k"] / 1e6, least, delta=1e-6)
            self.assertAlmostEqual(ours["diffusivity_um2_per_s"] / 1e12, most / density / heat, delta=1e-12)


def conducted(shape, half, k, holds, h, start, around, times, cells=240):
    """Core and surface at each time: the method of lines on even cells and SciPy's BDF, tight."""
    edges = np.linspace(0, 1, cells + 1)
    volume = np.diff(edges ** (shape + 1)) / (shape + 1) * half
    width = half / cells
    inner = k * edges[1:-1] ** shape / width
    half_cell = 2 * k / width
    outer = half_cell * h / (half_cell + h)

    def rates(_, temp):
        flux = np.concatenate([[0.0], inner * (temp[:-1] - temp[1:]), [outer * (temp[-1] - around)]])
        return -np.diff(flux) / (volume * holds)

    done = solve_ivp(rates, (0, times[-1]), np.full(cells, start), method="BDF", t_eval=times, rtol=1e-8, atol=1e-8)
    core = done.y[0] - (done.y[1] - done.y[0]) / 8
    surface = (half_cell * done.y[-1] + h * around) / (half_cell + h)
    return core, surface


class Conduction(unittest.TestCase):
    def test_shapes_between_which_no_series_is_known_for(self):
        chance = random.Random(11)
        for shape in [0.0, 0.3, 0.7, 1.0, 1.4, 2.0]:
            half, k, holds = chance.uniform(0.01, 0.08), chance.uniform(0.35, 0.6), chance.uniform(3.2e6, 3.9e6)
            h, scale = chance.uniform(8, 60), holds * half * half / k
            times = [round(scale * part) for part in (0.05, 0.2, 0.6)]
            given = {
                "half_thickness_um": round(half * 1e6),
                "shape_permille": round(shape * 1e3),
                "conducts_uw_per_m_k": round(k * 1e6),
                "holds_j_per_m3_k": round(holds),
                "surface_mw_per_m2_k": round(h * 1e3),
                "start": 277_150,
                "around": 394_250,
                "at_s": times,
            }
            ours = ask("conduction", given)["at"]
            core, surface = conducted(
                shape, round(half * 1e6) / 1e6, round(k * 1e6) / 1e6, round(holds), round(h * 1e3) / 1e3, 4.0, 121.1, times
            )
            for at, core_c, surface_c in zip(ours, core, surface):
                self.assertAlmostEqual(at["core"] / 1000 - KELVIN, core_c, delta=0.1, msg=f"{shape} core {at}")
                self.assertAlmostEqual(at["surface"] / 1000 - KELVIN, surface_c, delta=0.1, msg=f"{shape} surface {at}")


# What `typical` of core/src/heat/meat.rs comes to is a function of published rows and of the figures in docs/heat.md.
def typical(grams_of_parts, half_thickness, shape):
    density = by_published_rows(grams_of_parts, 20.0)[0]
    table = coefficients()
    share = np.array(grams_of_parts) / np.sum(grams_of_parts)

    def conducts(celsius):
        volume = share / np.array([table[part, "rho"](celsius) for part in PARTS])
        water = volume[0] * table["water", "k"](celsius) / volume.sum()
        return by_published_rows(grams_of_parts, celsius)[2] - water, water

    cold, hot = conducts(15.0), conducts(80.0)
    straight = [[a - (b - a) / 65 * 15, (b - a) / 65] for a, b in zip(cold, hot)]
    dry = sum(s * table[part, "cp"](60.0) for s, part in zip(share[1:], PARTS[1:])) * 1000
    return {
        "half_thickness": half_thickness,
        "shape": shape,
        "dry_heat": density * dry,
        "water": density * share[0],
        "dry_conducts": straight[0],
        "water_conducts": straight[1],
        "convection": 6.0,
        "emissivity": 0.9,
        "wetness": 0.22,
        "seep": 6e-8,
        "lets_go": 0.7,
        "start_c": 4.0,
    }


# ndb 10080 and 13803 of core/tests/published/composition.csv: water, protein, fat, carbohydrate, ash.
MEATS = {
    "pork_butt": ([69.18, 17.42, 12.36, 0, 0.83], 4_000, 1 / 1.9 + 1 / 1.5, (1.9, 1.5)),
    "brisket": ([61.08, 18.42, 19.06, 0, 0.88], 6_000, 1 / 6.5 + 1 / 3.4, (6.5, 3.4)),
}


class Cooks(unittest.TestCase):
    """The whole model: heat, juice, film and stall, against BDF on its own grid of 40 cells."""

    def test_the_whole_curve_the_time_to_its_end_and_the_water_lost(self):
        for cut, (parts, grams, shape, (long, wide)) in MEATS.items():
            half = (grams / 1000 / 1040 / (long * wide)) ** (1 / 3) / 2
            meat = Meat(typical(parts, half, shape), graded(40, 1.4))
            for pit_c in (110.0, 130.0):
                self.held(cut, grams, meat, pit_c)

    def held(self, cut, grams, meat, pit_c):
        given = {
            "cut": cut,
            "grams": grams,
            "start": 277_150,
            "outside": 293_150,
            "pit": [{"at_s": 0, "temp": round(pit_c * 1000) + 273_150}],
            "vapor_mg_per_kg": 25_000,
            "for_s": 14 * 3600,
            "every_s": 300,
        }
        ours = ask("cook-heat", given)["curve"]
        theirs = follow(meat, 14 * 3600, pit_c, 0.025, 1e-5)
        times = [at["at_s"] for at in ours]
        core = np.interp(times, theirs.t, [meat.core(state) for state in theirs.y.T])
        curve = np.array([at["core"] / 1000 - KELVIN for at in ours])
        apart = np.max(np.abs(curve - core))
        self.assertLess(apart, 1.5, f"{cut} at {pit_c} °C: the curves lie {apart:.2f} K apart")
        # Late, where nothing stalls, a kelvin is many minutes; so the time is held too.
        goal = min(90.0, core[-1] - 2)
        hit, exact = (np.interp(goal, temps, times) for temps in (curve, core))
        self.assertLess(abs(hit / exact - 1), 0.015, f"{cut} at {pit_c} °C to {goal:.0f}: {hit:.0f} s for {exact:.0f} s")
        left = np.sum(theirs.y[meat.n : 2 * meat.n, -1] * meat.volume) / np.sum(meat.volume) / meat.m["water"]
        parts = MEATS[cut][0]
        lost = (1 - left) * parts[0] / sum(parts) * 1000
        self.assertAlmostEqual(ours[-1]["lost_permille"], lost, delta=10)
