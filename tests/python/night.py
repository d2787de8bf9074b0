"""The devices of a story, and what each step does to them: the twin of tests/src/stories/night.rs."""

import json
import tempfile
from datetime import datetime

import slowbend as api
import slowbend_core as core
from find import find, holds

MINUTE = 60_000
ALARMS = 60

# A plan that is asked for with nothing said.
ASKED = {
    "go": True, "later_min": 0, "hands": "", "sleep_from": "", "sleep_to": "", "watched": False, "cooler": False, "oven": False,
    "late": "",
}
STEPS = 16
ZONE = "America/Chicago"


class Wrong(Exception):
    """A step did not hold."""


class Device:
    """One device and who holds it."""

    def __init__(self, border, seed, holder, now):
        self.seed = seed
        self.folder = tempfile.TemporaryDirectory()
        self.open(now)
        told = {"locale": "en-US", "temperature": "fahrenheit", "weight": "pound", "hours": "twelve"}
        told |= holder | {"zone": ZONE, "device": self.door.device()}
        self.viewer = border.into("viewer", told)

    def open(self, now):
        self.door = api.open_seeded(self.folder.name, "story", self.seed, now)

    def restart(self, now):
        self.door.suspend()
        del self.door
        self.seed += 100
        self.open(now)


class Night:
    """A story being lived."""

    def __init__(self, border, story):
        self.border = border
        self.utc_ms = instant("@" + story["starts"])
        self.made = {}
        self.outcomes = {}
        self.devices = {}
        for seed, (name, holder) in enumerate(sorted(story["devices"].items()), start=1):
            self.devices[name] = Device(border, seed, holder, self.now)

    @property
    def now(self):
        at = {"utc_ms": self.utc_ms, "zone": ZONE, "boot_id": "boot", "since_boot_ms": self.utc_ms}
        return self.border.into("moment", at)

    @property
    def hearing(self):
        """A radio that is ready and keeps no probe: what a cook knows of probes is shown."""
        return self.border.into("hearing", {"radio": "ready", "asked_in_vain": False, "looking": False, "sources": []})

    def live(self, step):
        (kind, told), = step.items()
        getattr(self, f"_{kind}")(told)

    def device(self, name):
        if name not in self.devices:
            raise Wrong(f"nobody is called {name}")
        return self.devices[name]

    def _wait(self, minutes):
        self.utc_ms += minutes * MINUTE

    def _act(self, told):
        act = self.border.into("act", self.filled(told["what"]))
        device = self.device(told["by"])
        args = (device.viewer, act, self.now)
        try:
            token = told.get("token")
            outcome = device.door.act_once(token, *args) if token else device.door.act(*args)
        except core.Trouble.Refused as refusal:
            if told.get("refused") is None or told["refused"] not in refusal.reason:
                raise Wrong(f"was refused: {refusal.reason}") from refusal
            return
        if told.get("refused") is not None:
            raise Wrong(f"expected a refusal with {told['refused']!r}, but got {outcome}")
        self._taken(told, outcome)

    def _taken(self, told, outcome):
        came = self.border.out("outcome", outcome)
        as_told = "said" not in told or holds(came["said"], told["said"])
        if not as_told or came["repeated"] != told.get("repeated", came["repeated"]):
            raise Wrong(f"came out as {came}")
        names = told.get("makes", [])
        if len(names) > len(came["made"]):
            raise Wrong(f"made only {came['made']}")
        self.made |= {name: made.get("id") for name, made in zip(names, came["made"])}
        self._call(told, outcome)

    def _call(self, told, outcome):
        if told.get("called") is not None:
            self.outcomes[told["called"]] = outcome

    def _undo(self, told):
        outcome = self.outcomes.get(told["of"])
        if outcome is None or outcome.undo is None:
            raise Wrong("nothing was called so, or it offers no taking back")
        self._perform(told, outcome.undo.act)

    def _press(self, told):
        screen = self.look(told["by"], told["see"], told.get("of"), told.get("at"))
        button = find(screen, told["button"])
        if not isinstance(button, dict) or "act" not in button:
            raise Wrong(f"no such button on {screen}")
        self._perform(told, self.border.into("act", button["act"]))

    def _perform(self, told, act):
        device = self.device(told["by"])
        outcome = device.door.act(device.viewer, act, self.now)
        self.border.out("outcome", outcome)
        self._call(told, outcome)

    def _reading(self, told):
        heard = {"source": told["source"], "sensor": told["sensor"], "at": self.utc_ms, "temp": from_f(told["f"])}
        self.device(told["by"]).door.readings([self.border.into("reading", heard)], self.now)

    def _word(self, told):
        """A probe sends bytes; what is taken of them."""
        heard = {"utc_ms": self.utc_ms, "zone": ZONE, "boot_id": "boot", "since_boot_ms": self.utc_ms}
        word = {
            "source": told["source"], "sensor": told["sensor"], "characteristic": int(told["characteristic"], 16),
            "bytes": list(bytes.fromhex(told["hex"])), "heard": heard,
        }
        device = self.device(told["by"])
        (taken,) = device.door.probe_words(device.viewer, [self.border.into("word", word)], self.now)
        why = self.border.out("taken", taken)["why_none"] or ""
        if not holds(why, told.get("why_none", "")):
            raise Wrong(f"why there is no reading: {why!r}")

    def _screen(self, told):
        screen = self.look(told["by"], told["see"], told.get("of"), told.get("at"))
        for path, value in told["shows"].items():
            found = find(screen, path)
            if not holds(found, value):
                raise Wrong(f"{path} should be {value}, but is {found}, on {json.dumps(screen, indent=1, ensure_ascii=False)}")

    def look(self, by, see, of=None, at=None):
        device, now = self.device(by), self.now
        of = self.id(of) if of and see not in ("cuts", "cut") else of
        at = self.id(at) if at and see != "hand_out" else at
        ways = {
            "start": (lambda: device.door.start(device.viewer, None, now), lambda: api.Screen.START()),
            "settings": (lambda: device.door.settings(device.viewer, now), lambda: api.Screen.SETTINGS()),
            "pitside": (lambda: device.door.pitside(device.viewer, of, now), lambda: api.Screen.PITSIDE(of)),
            "timeline": (lambda: device.door.timeline(device.viewer, of, None, now), lambda: api.Screen.TIMELINE(of)),
            "card": (lambda: device.door.card(device.viewer, of, None, now), lambda: api.Screen.CARD(of)),
            "again": (lambda: device.door.again(device.viewer, of, now), lambda: api.Screen.AGAIN(of)),
            "piece": (lambda: device.door.piece(device.viewer, of, now), lambda: api.Screen.PIECE(of)),
            "check": (lambda: device.door.check(device.viewer, of, now), lambda: api.Screen.CHECK(of)),
            "cuts": (lambda: device.door.cuts(device.viewer, of or "", now), lambda: api.Screen.CUTS(of or "")),
            "cut": (lambda: device.door.cut(device.viewer, core.Cut[of.upper()], now), lambda: api.Screen.CUT(of)),
            "thermometers": (lambda: device.door.thermometers(device.viewer, now), lambda: api.Screen.THERMOMETERS()),
            "readings_of": (
                lambda: device.door.readings_of(device.viewer, core.ReadingsOf.COOK(of), None, None, now),
                lambda: api.Screen.READINGS_OF(of),
            ),
            "opening": (lambda: device.door.opening(device.viewer, of, at, now), lambda: api.Screen.OPENING(of, at)),
            "pits": (lambda: device.door.pits(device.viewer, of, now), lambda: api.Screen.PITS(of)),
            "dishes": (lambda: device.door.dishes(device.viewer, of, now), lambda: api.Screen.DISHES(of)),
            "kitchen": (lambda: device.door.kitchen(device.viewer, of, now), lambda: api.Screen.KITCHEN(of)),
            "kitchen_sheet": (lambda: device.door.kitchen_sheet(device.viewer, of, now), lambda: api.Screen.KITCHEN_SHEET(of)),
            "watch": (lambda: device.door.watch(device.viewer, of, now), lambda: api.Screen.WATCH(of)),
            "fire": (lambda: device.door.fire(device.viewer, of, at, now), lambda: api.Screen.FIRE(of, at)),
            "run_sheet": (lambda: device.door.run_sheet(device.viewer, of, now), lambda: api.Screen.RUN_SHEET(of)),
            "plan": (
                lambda: device.door.plan(device.viewer, of, core.PlanTyped(**ASKED), now),
                lambda: api.Screen.PLAN(of),
            ),
            "hand_out": (
                lambda: device.door.hand_out(device.viewer, of, at or "", now),
                lambda: api.Screen.HAND_OUT(of, at or ""),
            ),
            "trouble": (lambda: device.door.trouble(device.viewer, of, at, now), lambda: api.Screen.TROUBLE(of, at)),
            "fire_out": (lambda: device.door.fire_out(device.viewer, of, at, now), lambda: api.Screen.FIRE_OUT(of, at)),
            "temp_log": (lambda: device.door.temp_log(device.viewer, of, now), lambda: api.Screen.TEMP_LOG(of)),
            "write_down": (lambda: device.door.write_down(device.viewer, of, now), lambda: api.Screen.WRITE_DOWN(of)),
            "probes": (lambda: device.door.probes(device.viewer, self.hearing, now), lambda: api.Screen.PROBES()),
            "alarms": (lambda: device.door.alarms(device.viewer, now, ALARMS), lambda: api.Screen.ALARMS()),
        }
        if see not in ways:
            raise Wrong(f"there is no screen {see}")
        record, screen = ways[see]
        canon = api.screen_text(device.door, device.viewer, screen(), now)
        return self.border.out(see, record(), canon)

    def _alarms(self, told):
        alarms = self.look(told["by"], "alarms")["alarms"]
        for one in told.get("rings", []):
            if not any(self.fits(one, alarm) for alarm in alarms):
                raise Wrong(f"nothing rings as {one} among:\n{self.told_short(alarms)}")
        for one in told.get("silent", []):
            if any(self.fits(one, alarm) for alarm in alarms):
                raise Wrong(f"something rings as {one} among:\n{self.told_short(alarms)}")

    def told_short(self, alarms):
        line = "  in {} min, {urgency}: {title}"
        return "\n".join(line.format((alarm["at"] - self.utc_ms) // MINUTE, **alarm) for alarm in alarms)

    def fits(self, told, alarm):
        earliest, latest = told.get("minutes", (None, None))
        in_ms = alarm["at"] - self.utc_ms
        in_time = earliest is None or earliest * MINUTE <= in_ms <= latest * MINUTE
        return in_time and all(holds(alarm[field], told[field]) for field in ("title", "urgency") if field in told)

    def _rang(self, by):
        device = self.device(by)
        alarms = device.door.alarms(device.viewer, self.now, ALARMS).alarms
        device.door.rang([alarm.id for alarm in alarms if alarm.at <= self.utc_ms], self.now)

    def _restart(self, by):
        self.device(by).restart(self.now)

    def _forecast(self, by):
        door = self.device(by).door
        door.make_forecasts()
        while door.work(self.now, STEPS):
            pass

    def _join(self, told):
        self.device(told["by"]).door.join_crew(self.device(told["of"]).door.log(), self.now)

    def _sync(self, names):
        entries = [entry for name in names for entry in self.device(name).door.entries_after([])]
        for name in names:
            self.device(name).door.absorb(entries, self.now)

    def id(self, name):
        name = name.removeprefix("$")
        if name not in self.made:
            raise Wrong(f"nothing was made that is called ${name}")
        return self.made[name]

    def filled(self, told):
        if isinstance(told, dict):
            return {field: self.filled(value) for field, value in told.items()}
        if isinstance(told, list):
            return [self.filled(value) for value in told]
        if not isinstance(told, str):
            return told
        return self.id(told) if told.startswith("$") else number(told)


def number(text):
    """`@2026-06-13T14:00:00-05:00` and `203 °F` as the numbers they stand for; other text as it is."""
    if text.startswith("@"):
        return instant(text)
    degrees = text.removesuffix(" °F")
    return from_f(int(degrees)) if degrees != text and degrees.removeprefix("-").isdigit() else text


def instant(text):
    """Milliseconds since 1970."""
    return int(datetime.fromisoformat(text.removeprefix("@")).timestamp()) * 1000


def from_f(degrees):
    """Whole degrees Fahrenheit in millikelvin, rounded as core rounds."""
    return (degrees * 5000 + 2_298_350 + 4) // 9
