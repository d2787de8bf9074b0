"""Wet bulbs against CoolProp's humid air, over the range of a pit's air, at random points that no table holds."""

import random
import unittest

from CoolProp.HumidAirProp import HAPropsSI

from sums import Refused, ask


def points(count):
    chance = random.Random(20261125)
    for _ in range(count):
        dry_mk = chance.randrange(278_150, 453_150)
        vapor = chance.choice([chance.randrange(1, 9) * 1_000, chance.randrange(9_000, 350_000)])
        yield {"dry_bulb": dry_mk, "vapor_mg_per_kg": vapor, "pressure_pa": chance.randrange(70_000, 104_000)}


def allowed(point):
    """Kelvin: a tenth in a pit's air; nearly saturated air below 200 °F, which no pit holds, may be half as much further off."""
    return 0.1 if point["dry_bulb"] >= 366_483 else 0.15


def coolprop(point):
    """The wet bulb in kelvin; none where CoolProp has no such air, or calls it all but fog."""
    air = ("T", point["dry_bulb"] / 1e3, "W", point["vapor_mg_per_kg"] / 1e6, "P", point["pressure_pa"])
    try:
        return HAPropsSI("Twb", *air) if HAPropsSI("RH", *air) < 0.99 else None
    except ValueError:
        return None


class WetBulb(unittest.TestCase):
    def test_a_wet_thermometer_shows_what_coolprop_says(self):
        worst, compared = 0.0, 0
        for point in points(120):
            theirs = coolprop(point)
            if theirs is None or theirs < 275:
                continue
            ours = ask("wet-bulb", point)["wet_bulb"] / 1e3
            worst, compared = max(worst, abs(ours - theirs)), compared + 1
            self.assertLess(abs(ours - theirs), allowed(point), point)
        print(f"wet bulb: {compared} points, the worst is {worst:.3f} K off")
        self.assertGreater(compared, 60)

    def test_air_with_more_vapor_than_it_holds_is_refused(self):
        with self.assertRaisesRegex(Refused, "vapor"):
            ask("wet-bulb", {"dry_bulb": 293_150, "vapor_mg_per_kg": 100_000, "pressure_pa": 101_325})


if __name__ == "__main__":
    unittest.main()
