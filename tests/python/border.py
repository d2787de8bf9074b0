"""The border between Python and Rust: every record that crosses it is compared byte for byte.

Law: JSON -> record -> Python -> record -> JSON gives the bytes that Rust writes of the same value when nothing crosses.
"""

import json

import slowbend as api


class Changed(Exception):
    """A record did not come back as it went."""


class Border:
    """Counts what crossed, by kind."""

    def __init__(self):
        self.crossed = {}

    def into(self, kind, value):
        """The record of the JSON `value`, once it is known to come back unchanged."""
        text = json.dumps(value)
        record = getattr(api, f"{kind}_from_json")(text)
        self._same(kind, getattr(api, f"{kind}_canon")(text), record)
        return record

    def out(self, kind, record, canon=None):
        """The JSON of a record that Rust gave, once it is known to come back unchanged; `canon` is what Rust writes."""
        text = getattr(api, f"{kind}_json")(record)
        self._same(kind, canon or getattr(api, f"{kind}_canon")(text), record)
        again = getattr(api, f"{kind}_from_json")(text)
        if again != record:
            raise Changed(f"{kind}: {record!r} came back as {again!r}")
        return json.loads(text)

    def _same(self, kind, canon, record):
        text = getattr(api, f"{kind}_json")(record)
        if text != canon:
            raise Changed(f"{kind}: {canon} came back as {text}")
        self.crossed[kind] = self.crossed.get(kind, 0) + 1
