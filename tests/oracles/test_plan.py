"""The run sheet against OR-Tools CP-SAT: the same model, written here anew from docs/plan.md and not from the solver.

Every household is made of a seed, planned by `slowbend sum plan` and by CP-SAT, and both costs are compared level by level.
Where CP-SAT proves its optimum the costs are the same; where it does not, ours is never worse than what it found.

PLAN_HOUSEHOLDS says how many (60), PLAN_SECONDS how long CP-SAT may think of each stage (10).
"""

import json
import os
import random
import subprocess
import tempfile
import unittest

from ortools.sat.python import cp_model

GRID = 15
HOUSEHOLDS = int(os.environ.get("PLAN_HOUSEHOLDS", "60"))
SECONDS = float(os.environ.get("PLAN_SECONDS", "10"))
LEVELS = ["not_ready_permille", "late_min", "temperature_k", "night_quarters", "hold_min", "openings", "fuel_quarter_g"]


def mk(fahrenheit):
    return (fahrenheit * 10 * 500 + 2_298_350 + 4) // 9


def up(minutes):
    return -(-minutes // GRID)


# --- households ------------------------------------------------------------------------------------------------------

CUTS = [
    ("pork_butt", False, 420, 540, 500, 3500),
    ("spare_ribs", False, 240, 330, 800, 1500),
    ("chicken_half", True, 60, 80, 450, 900),
    ("turkey_breast", True, 120, 180, 800, 2600),
    ("pork_loin", False, 90, 140, 500, 1900),
]


def household(seed, meats=None, pits=None):
    """So many meats and pits, or as they come."""
    dice = random.Random(seed)
    temps = [mk(250), mk(325)]
    serve = dice.choice([600, 660, 720, 780])
    count = dice.choice([2, 3, 3, 4])
    meats = [meat(dice, number, temps) for number in range(meats or count)]
    servings = [{"name": "lunch", "preferred": {"min": serve}, "latest": {"min": serve + dice.choice([0, 0, 30])}}]
    if dice.random() < 0.3:
        servings.append({"name": "supper", "preferred": {"min": serve + 60}})
        for one in meats:
            one["serving"] = dice.randrange(2)
    hands = dice.choice([1, 1, 2])
    few = dice.choice([1, 2])
    made = {
        "from_ms": 1_780_747_200_000,
        "hands": hands,
        "meats": meats,
        "pits": [pit(dice, number, temps) for number in range(few if pits is None else pits)],
        "places": [place(dice)],
        "burners": 1,
        "servings": servings,
        "sleep": [{"from_min": dice.choice([0, 60]), "until_min": dice.choice([240, 300])}] if dice.random() < 0.6 else [],
        "alternatives": 0,
        "budget_nodes": 5_000_000,
    }
    if dice.random() < 0.3:
        made["dishes"] = [dish(dice)]
    return made


def meat(dice, number, temps):
    cut, poultry, least, most, area, weight = dice.choice(CUTS)
    if dice.random() < 0.5:
        least, most = least * 3 // 4, most * 3 // 4
    rest = dice.choice([10, 20, 30])
    best = dice.choice([(15, 60), (60, 150), (10, 20)])
    prep = [{"what": "rub", "hands_min": dice.choice([5, 10, 20]), "then": {"least_min": 30, "most_min": 240}}]
    times = []
    for temp, scale in zip(temps, [100, 70]):
        low, high = least * scale // 100, most * scale // 100
        half = (low + high) // 2
        times.append({"pit": temp, "minutes": {"p10": low, "p50": half, "p80": half + (high - half) * 2 // 3, "p90": high}})
    happy = (mk(300), mk(350)) if poultry else (mk(225), mk(275))
    return {
        "name": f"{cut} {number}", "cut": cut, "form": "intact", "serving": 0, "area_cm2": area, "weight_g": weight,
        "prep": prep if dice.random() < 0.5 else [],
        "times": times,
        "happy": {"low_mk": happy[0], "high_mk": happy[1]},
        "off_mk": mk(195) if not poultry else mk(165),
        "rest": {"least_min": rest, "most_min": rest + 15},
        "hold": {"best_least_min": best[0], "best_most_min": best[1], "most_min": best[1] + dice.choice([60, 120])},
        "cut_min": dice.choice([0, 5, 10, 15]), "cut_early_min": dice.choice([15, 30]),
    }


def pit(dice, number, temps):
    return {
        "name": f"pit {number}", "area_cm2": dice.choice([1000, 1600, 2400]),
        "temps": [{"temp": temp, "fuel_g_per_h": fuel} for temp, fuel in zip(temps, [500 + 100 * number, 900])],
        "preheat_min": dice.choice([15, 30, 45]), "alone_min": dice.choice([60, 120, 600]),
        "poultry_apart": dice.random() < 0.5, "may_step": True,
    }


def place(dice):
    if dice.random() < 0.5:
        return {"name": "oven", "room_g": dice.choice([4000, 9000]), "keeps": {"heated": {"at_mk": mk(150)}}}
    keeps = {"insulated": {"loses_permille_per_h": 100, "around_mk": mk(70)}}
    return {"name": "cooler", "room_g": dice.choice([4000, 9000]), "keeps": keeps}


def dish(dice):
    return {
        "name": "beans", "serving": 0, "hands_min": 10, "cook_min": dice.choice([30, 60]), "heat": "burner",
        "keeps": {"least_min": 30, "most_min": 120}, "reheat_min": dice.choice([0, 15]),
    }


# --- the rules -------------------------------------------------------------------------------------------------------


def hands_count(minutes):
    """Steps of five up to a quarter of an hour, then whole quarters."""
    return (minutes + 4) // 5 * 5 if minutes <= GRID else up(minutes) * GRID


def job(slot, minutes):
    """The slots of a job with the minutes in each."""
    if minutes == 0:
        return []
    if minutes <= GRID:
        return [(slot, minutes)]
    return [(slot + step, GRID) for step in range(minutes // GRID)]


def within(four, permille):
    p10, p50, p80, p90 = four
    low, high, start, rise = (p50, p80, 500, 300) if permille <= 800 else (p80, p90, 800, 100)
    return low + -(-(permille - start) * (high - low) // rise)


def chance(four, minutes):
    p10, p50, p80, p90 = four
    if minutes >= p90:
        return 900
    for low, high, start, rise in [(p80, p90, 800, 100), (p50, p80, 500, 300), (p10, p50, 100, 400)]:
        if minutes >= low:
            return start + rise * (minutes - low) // (high - low)
    return max(0, 100 - 400 * (p10 - minutes) // max(1, p50 - p10))


def safe_slots(place, off):
    keeps = place["keeps"]
    if "heated" in keeps:
        return 96
    lost, around = keeps["insulated"]["loses_permille_per_h"], keeps["insulated"]["around_mk"]
    temp, slots = off, 0
    while slots < 96:
        temp -= -(-max(0, temp - around) * lost // (4000 - 3 * lost))
        if temp < mk(140):
            return slots
        slots += 1
    return slots


class Model:
    """The household as CP-SAT sees it."""

    def __init__(self, household):
        self.h, self.m = household, cp_model.CpModel()
        self.confidence = household.get("confidence_permille", 900)
        self.last = max(self.slots_of(serving)[-1] for serving in household["servings"])
        self.night = self.nights()
        self.hands = {slot: [] for slot in range(self.last)}
        self.up = {slot: self.m.new_bool_var(f"up {slot}") for slot in self.night}
        self.cost = {level: [] for level in LEVELS}
        self.serve = [self.one_of(self.slots_of(serving)) for serving in household["servings"]]
        for serving, slots in enumerate(self.serve):
            first = min(slots)
            self.cost["late_min"] += [(slots[slot], (slot - first) * GRID) for slot in slots]
        self.pits = [self.pit(pit) for pit in household["pits"]]
        for number, meat in enumerate(household["meats"]):
            self.meat(number, meat)
        for dish in household.get("dishes", []):
            self.dish(dish)
        self.close()

    def slots_of(self, serving):
        first = serving["preferred"]["min"]
        latest = (serving.get("latest") or serving["preferred"])["min"]
        return list(range(first // GRID, latest // GRID + 1))

    def nights(self):
        slots = set()
        for window in self.h["sleep"]:
            slots |= set(range(window["from_min"] // GRID, up(window["until_min"])))
        return sorted(slot for slot in slots if 0 <= slot < self.last)

    def one_of(self, values):
        literals = {value: self.m.new_bool_var("") for value in values}
        self.m.add_exactly_one(literals.values())
        return literals

    def works(self, literal, slot, minutes):
        """A job with hands on; false where it cannot be."""
        for at, of in job(slot, minutes):
            if at not in self.hands:
                self.m.add(literal == 0)
                return
            self.hands[at].append((literal, of))
            if at in self.up:
                self.m.add_implication(literal, self.up[at])

    def pit(self, pit):
        temps = range(len(pit["temps"]))
        runs = {(a, a, None): None for a in temps}
        for slot in range(1, self.last):
            if (self.h["from_ms"] // 900_000 + slot) % 4 == 0 and slot not in self.night:
                runs |= {(a, b, slot): None for a in temps for b in temps if a != b}
        runs = self.one_of(runs)
        for (_, _, slot), literal in runs.items():
            if slot is not None:
                self.works(literal, slot, 5)
                self.cost["openings"].append((literal, 1))
        feeds, burns = self.feeds(pit), {}
        started = [self.m.new_bool_var("") for _ in range(self.last)]
        over = [self.m.new_bool_var("") for _ in range(self.last + 1)]
        for slot in range(self.last):
            burns[slot] = self.m.new_bool_var("")
            self.m.add(burns[slot] == started[slot] - over[slot])
            if slot:
                self.m.add_implication(started[slot - 1], started[slot])
                self.m.add_implication(over[slot - 1], over[slot])
            if slot in feeds:
                self.m.add_implication(burns[slot], self.up[slot])
            begins = started[slot] - (started[slot - 1] if slot else 0)
            light = self.m.new_bool_var("")
            self.m.add(light == begins)
            self.works(light, slot, hands_count(pit.get("light_min", 10)))
            self.fuel(pit, runs, burns[slot], slot)
        grate = {slot: [] for slot in range(self.last)}
        lids = {slot: self.m.new_bool_var("") for slot in range(self.last + 1)}
        self.cost["openings"] += [(lid, 1) for lid in lids.values()]
        return {"of": pit, "runs": runs, "started": started, "over": over, "grate": grate, "lids": lids, "kinds": {}, "users": []}

    def feeds(self, pit):
        alone, slots = pit["alone_min"] // GRID, set()
        run = []
        for slot in self.night + [None]:
            if run and slot != run[-1] + 1:
                slots |= set(run[alone::alone] if alone else run)
                run = []
            run.append(slot)
        return slots

    def fuel(self, pit, runs, burning, slot):
        """Quarters of a gram a slot are grams an hour."""
        rates = [temp["fuel_g_per_h"] for temp in pit["temps"]]
        least = min(rates)
        self.cost["fuel_quarter_g"].append((burning, least))
        for temp, rate in enumerate(rates):
            if rate == least:
                continue
            hot = [literal for (a, b, step), literal in runs.items() if (b if step is not None and step <= slot else a) == temp]
            both = self.m.new_bool_var("")
            self.m.add(both >= burning + sum(hot) - 1)
            self.cost["fuel_quarter_g"].append((both, rate - least))

    def meat(self, number, meat):
        """Every way to cook it, one literal each."""
        rest, most = meat["rest"]["least_min"], meat["hold"]["most_min"]
        cut = hands_count(meat.get("cut_min", 0))
        early = meat.get("cut_early_min", 0) // GRID
        prep = [(hands_count(step["hands_min"]), up(step["hands_min"]), up(step["then"]["least_min"]), step["then"]["most_min"] // GRID) for step in meat.get("prep", [])]
        earliest = sum(slots + least for _, slots, least, _ in prep)
        ways, starts = [], {}
        for slot, serving in self.serve[meat["serving"]].items():
            for cut_at in range(slot - up(cut) - early, slot - up(cut) + 1):
                waits = (slot - up(cut) - cut_at) * GRID
                for pit in self.pits:
                    preheat = up(pit["of"]["preheat_min"])
                    for on in range(max(earliest, preheat), cut_at):
                        for four, outside, runs in self.cooking(meat, pit, on):
                            off = on + up(four[1])
                            hold = (cut_at - off) * GRID
                            if not rest <= hold <= most:
                                continue
                            has = (cut_at - on) * GRID - rest
                            late = max(off, on + min(up(within(four, self.confidence)), has // GRID))
                            for place in self.places(meat, hold):
                                way = self.m.new_bool_var("")
                                ways.append(way)
                                starts.setdefault(on, []).append(way)
                                self.m.add_implication(way, serving)
                                self.m.add_bool_or([way.negated(), *runs])
                                self.use(pit, meat, way, on, off, late, preheat)
                                for minutes, at in [(5, on), (5, off), (cut, cut_at)]:
                                    self.works(way, at, minutes)
                                if place is not None:
                                    self.hold_in(place, meat, way, off, cut_at)
                                best = meat["hold"]
                                away = max(0, best["best_least_min"] - hold, hold - best["best_most_min"])
                                self.cost["not_ready_permille"].append((way, max(0, self.confidence - chance(four, has))))
                                self.cost["temperature_k"].append((way, outside))
                                self.cost["hold_min"].append((way, away + waits))
        self.m.add_exactly_one(ways)
        self.prepare(prep, starts)

    def cooking(self, meat, pit, on):
        """Each way the pit may run while it is on: its four times, the kelvin outside, and the runs that are like that."""
        known = {times["pit"]: [times["minutes"][key] for key in ("p10", "p50", "p80", "p90")] for times in meat["times"]}
        found = {}
        for (a, b, step), literal in pit["runs"].items():
            temp = [pit["of"]["temps"][run]["temp"] for run in (a, b)]
            before = 10**9 if step is None else (step - on) * GRID
            four = []
            for quantile in range(4):
                first, second = (known[one][quantile] if one in known else None for one in temp)
                if before <= 0:
                    time = second
                elif first is not None and first <= before:
                    time = first
                elif first is None or second is None:
                    time = None
                else:
                    time = before + -(-second * (first - before) // first)
                four.append(time)
            if None in four:
                continue
            seen = ([temp[0]] if before > 0 else []) + ([temp[1]] if within(four, self.confidence) > before else [])
            low, high = meat["happy"]["low_mk"], meat["happy"]["high_mk"]
            outside = max(-(-max(0, low - one, one - high) // 1000) for one in seen)
            found.setdefault((tuple(four), outside), []).append(literal)
        return [(four, outside, runs) for (four, outside), runs in found.items()]

    def places(self, meat, hold):
        if hold <= meat["rest"]["most_min"]:
            return [None]
        return [
            number for number, place in enumerate(self.h["places"])
            if hold <= safe_slots(place, meat["off_mk"]) * GRID and meat["weight_g"] <= place["room_g"]
        ]

    def hold_in(self, place, meat, way, off, cut_at):
        for slot in range(off, cut_at):
            self.held.setdefault((place, slot), []).append((way, meat["weight_g"]))

    held: dict

    def use(self, pit, meat, way, on, off, late, preheat):
        pit["users"].append((way, on - preheat, late))
        poultry = meat["cut"].startswith(("chicken", "turkey"))
        for slot in range(on, late):
            pit["grate"][slot].append((way, meat["area_cm2"]))
            if not pit["of"]["poultry_apart"]:
                kind = pit["kinds"].setdefault(slot, self.m.new_bool_var(""))
                self.m.add_implication(way, kind if poultry else kind.negated())
        self.m.add_implication(way, pit["lids"][on])
        self.m.add_implication(way, pit["lids"][off])

    def prepare(self, prep, starts):
        """Steps from the last to the first."""
        after = [(at, ways) for at, ways in starts.items()]
        variable = sum(at * way for at, ways in after for way in ways)
        for number in reversed(range(len(prep))):
            minutes, slots, least, most = prep[number]
            literals = self.one_of(range(self.last))
            begin = sum(at * literal for at, literal in literals.items())
            self.m.add(variable - begin - slots >= least)
            self.m.add(variable - begin - slots <= most)
            for at, literal in literals.items():
                self.works(literal, at, minutes)
            variable = begin

    def dish(self, dish):
        minutes = max(dish["cook_min"], dish["hands_min"])
        again = up(dish.get("reheat_min", 0))
        ways = []
        for slot, serving in self.serve[dish["serving"]].items():
            end = slot - again
            for on in range(0, end):
                off = on + up(minutes)
                keeps = (end - off) * GRID
                if off > end or not dish.get("reheat_min", 0) <= keeps <= dish["keeps"]["most_min"]:
                    continue
                way = self.m.new_bool_var("")
                ways.append(way)
                self.m.add_implication(way, serving)
                self.works(way, on, hands_count(dish["hands_min"]))
                if again:
                    self.works(way, end, 5)
                for at in [*range(on, off), *range(end, end + again)]:
                    self.burners.setdefault(at, []).append(way)
                self.cost["hold_min"].append((way, max(0, keeps - dish["keeps"]["least_min"])))
        self.m.add_exactly_one(ways)

    def close(self):
        for slot, jobs in self.hands.items():
            self.m.add(sum(literal * minutes for literal, minutes in jobs) <= GRID * self.h["hands"])
            self.m.add(sum(literal for literal, minutes in jobs if minutes > 5) <= self.h["hands"])
        for (place, _), taken in self.held.items():
            self.m.add(sum(way * weight for way, weight in taken) <= self.h["places"][place]["room_g"])
        for ways in self.burners.values():
            self.m.add(sum(ways) <= self.h["burners"])
        for pit in self.pits:
            for taken in pit["grate"].values():
                self.m.add(sum(way * area for way, area in taken) <= pit["of"]["area_cm2"])
            self.burn_exactly(pit)
        self.cost["night_quarters"] = [(literal, 1) for literal in self.up.values()]

    def burn_exactly(self, pit):
        """It burns from the first that needs it to the last, and no longer."""
        started, over = pit["started"], pit["over"]
        by_from, by_late = {}, {}
        for way, begin, late in pit["users"]:
            self.m.add_implication(way, started[begin])
            self.m.add_implication(way, over[late - 1].negated())
            by_from.setdefault(begin, []).append(way)
            by_late.setdefault(late, []).append(way)
        for slot in range(self.last):
            # Lit in this slot: somebody needs it from then on. Out in this slot: somebody came off then.
            earlier = started[slot - 1] if slot else None
            self.m.add_bool_or([started[slot].negated(), *([earlier] if slot else []), *by_from.get(slot, [])])
            before = over[slot - 1] if slot else None
            self.m.add_bool_or([over[slot].negated(), *([before] if slot else []), *by_late.get(slot, [])])
            self.m.add_implication(over[slot], started[slot])


def new_model(household):
    Model.held, Model.burners = {}, {}
    return Model(household)


def solve(household, spent=None, most=None):
    """The cost, level by level, and whether it is proven; none where there is no plan. `spent` gets the solver's seconds; `most` are
    all that it has, where each stage does not have SECONDS of its own."""
    model = new_model(household)
    stages = [LEVELS[:4], LEVELS[4:6], LEVELS[6:]]
    weights = {"not_ready_permille": 2**30, "late_min": 2**20, "temperature_k": 2**8, "night_quarters": 1, "hold_min": 64, "openings": 1, "fuel_quarter_g": 1}
    proven, values = True, None
    spent = [] if spent is None else spent
    for stage in stages:
        terms = [(literal, amount * weights[level]) for level in stage for literal, amount in model.cost[level]]
        objective = sum(literal * amount for literal, amount in terms if amount)
        model.m.minimize(objective)
        solver = cp_model.CpSolver()
        solver.parameters.max_time_in_seconds = SECONDS if most is None else max(0.01, most - sum(spent))
        solver.parameters.num_workers = 2
        status = solver.solve(model.m)
        spent.append(solver.wall_time)
        if status == cp_model.INFEASIBLE:
            return None, True
        if status not in (cp_model.OPTIMAL, cp_model.FEASIBLE):
            return values, False
        proven &= status == cp_model.OPTIMAL
        values = [sum(amount * solver.value(literal) for literal, amount in model.cost[level]) for level in LEVELS]
        if terms:
            model.m.add(objective <= round(solver.objective_value))
        model.m.clear_hints()
    return values, proven


def ours(household):
    with tempfile.NamedTemporaryFile("w", suffix=".json") as file:
        json.dump(household, file)
        file.flush()
        done = subprocess.run([os.environ["SLOWBEND"], "sum", "plan", file.name], capture_output=True, text=True, check=False)
    if done.returncode:
        return None, done.stderr
    answer = json.loads(done.stdout)
    return [answer["plan"]["cost"][level] for level in LEVELS], answer["proof"]


class Plan(unittest.TestCase):
    """Ours is as good as what CP-SAT proves, and never worse than what it finds."""

    def test_households(self):
        proven = none = 0
        for seed in range(HOUSEHOLDS):
            with self.subTest(seed=seed):
                made = household(seed)
                theirs, optimal = solve(made)
                cost, proof = ours(made)
                if theirs is None and not optimal:
                    continue
                if theirs is None:
                    none += 1
                    self.assertIsNone(cost, f"CP-SAT shows that there is no plan; ours costs {cost}")
                    continue
                self.assertIsNotNone(cost, f"CP-SAT has a plan of {theirs}; ours: {proof}")
                if optimal:
                    proven += 1
                    self.assertEqual(cost, theirs, proof)
                else:
                    self.assertLessEqual(cost, theirs, proof)
        print(f"{HOUSEHOLDS} households: CP-SAT proved {proven} optima and {none} without a plan")
        self.assertGreater(proven, HOUSEHOLDS // 2)


if __name__ == "__main__":
    unittest.main()
