"""Calendar files read back by the library icalendar: each event at its instant, through the changes of the clocks in three zones."""

import datetime
import random
import unittest
import zoneinfo

import icalendar

from sums import Refused, ask

HOUR = 3_600_000

# Zone, and an instant of each change of its clocks in 2026 (zoneinfo says the same: see `changes`).
ZONES = ["America/Chicago", "Europe/Madrid", "Australia/Lord_Howe"]


def changes(zone, year):
    """The instants at which the clocks of a zone change, milliseconds, by Python's own tables."""
    zone = zoneinfo.ZoneInfo(zone)
    at = datetime.datetime(year, 1, 1, tzinfo=datetime.timezone.utc)
    hour = datetime.timedelta(hours=1)
    offset = at.astimezone(zone).utcoffset()
    found = []
    while at.year == year:
        at += hour / 2
        now = at.astimezone(zone).utcoffset()
        if now != offset:
            found.append(int(at.timestamp() * 1000))
            offset = now
    return found


def events(around, chance):
    """A night of jobs around an instant, some in the hour that comes twice or is skipped."""
    jobs = []
    for n in range(40):
        at = around + chance.randrange(-40, 40) * HOUR // 4
        length = chance.choice([0, HOUR // 4, 9 * HOUR])
        jobs.append({
            "uid": f"{n}@slowbend", "at": at, "until": at + length, "rings": n % 3 == 0,
            "summary": f"Put on: Slab {n}; salt, pepper \\ thyme ñ " + "long " * (n % 30), "description": "one\ntwo" if n % 2 else "",
        })
    return jobs


def instant(value):
    """Milliseconds since 1970 of what the file says; its own description of the zone is what counts."""
    return int(value.astimezone(datetime.timezone.utc).timestamp() * 1000)


class Calendars(unittest.TestCase):
    def test_each_event_is_found_at_its_instant_through_every_change_of_the_clocks(self):
        chance = random.Random(20261101)
        for zone in ZONES:
            found = changes(zone, 2026)
            self.assertEqual(len(found), 2, zone)
            for around in found:
                given = events(around, chance)
                text = ask("calendar", {"name": "Regatta; lunch", "zone": zone, "made": around, "sequence": 3, "events": given})["text"]
                self.check(zone, given, icalendar.Calendar.from_ical(text), text)

    def check(self, zone, given, calendar, text):
        # The library leaves escapes of NAME (RFC 7986) as they stand.
        self.assertEqual(str(calendar["NAME"]).replace("\\;", ";"), "Regatta; lunch")
        own = own_zone(calendar)
        read = {str(event["UID"]): event for event in calendar.walk("VEVENT")}
        self.assertEqual(len(read), len(given), zone)
        for told in given:
            event = read[told["uid"]]
            self.assertEqual(self.at(event["DTSTART"], own), told["at"], (zone, told, text))
            end = event.get("DTEND")
            self.assertEqual(told["until"] if end is None else self.at(end, own), told["until"], (zone, told))
            self.assertEqual(str(event["SUMMARY"]), told["summary"])
            self.assertEqual(str(event.get("DESCRIPTION", "")), told["description"])
            self.assertEqual(len(event.walk("VALARM")), int(told["rings"]))

    def at(self, time, own):
        """By Python's tables of the zone, and by the description in the file: the two have to agree."""
        by_tables = instant(time.dt)
        if time.dt.tzname() not in (None, "UTC"):
            wall = time.dt.replace(tzinfo=None, fold=0)
            self.assertEqual(int(own(wall).timestamp() * 1000), by_tables, time)
        return by_tables

    def test_what_is_written_again_is_the_same(self):
        chance = random.Random(7)
        for zone in ZONES:
            given = events(changes(zone, 2026)[0], chance)
            text = ask("calendar", {"name": "Lunch", "zone": zone, "made": 0, "sequence": 0, "events": given})["text"]
            again = icalendar.Calendar.from_ical(icalendar.Calendar.from_ical(text).to_ical())
            first = icalendar.Calendar.from_ical(text)
            told = lambda calendar: [(str(e["UID"]), e["DTSTART"].dt, str(e["SUMMARY"])) for e in calendar.walk("VEVENT")]
            self.assertEqual(told(first), told(again))

    def test_a_zone_that_nobody_knows_is_told(self):
        with self.assertRaises(Refused) as refused:
            ask("calendar", {"name": "", "zone": "Lake/Boathouse", "made": 0, "sequence": 0, "events": []})
        self.assertIn("Lake/Boathouse", str(refused.exception))


def own_zone(calendar):
    """The zone as the file itself describes it: wall time to instant, by RFC 5545, 3.6.5: the last onset at or before it."""
    (zone,) = calendar.walk("VTIMEZONE")
    rules = []
    for rule in zone.subcomponents:
        onset = rule["DTSTART"].dt.replace(tzinfo=None)
        rules.append((onset, rule["TZOFFSETFROM"].td, rule["TZOFFSETTO"].td))
    rules.sort()

    def at(wall):
        # A time that comes twice is its first occurrence, so an offset counts from its onset by the clock before it.
        offset = rules[0][2]
        for onset, before, after in rules:
            first_after = max(onset, onset - before + after)
            if wall >= first_after:
                offset = after
        return (wall - offset).replace(tzinfo=datetime.timezone.utc)

    return at
