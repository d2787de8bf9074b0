"""Paths into a screen, and whether what is there is what was told: the twin of tests/src/stories/find.rs."""


def find(screen, path):
    """What is at `path`; nothing there is None."""
    for segment in path.split("/"):
        screen = _step(screen, segment)
    return screen


def _step(at, segment):
    if isinstance(at, dict):
        return at.get(segment)
    if not isinstance(at, list):
        return None
    if "=" in segment:
        field, text = segment.split("=", 1)
        return next((one for one in at if one.get(field) == text), None)
    if "~" in segment:
        field, part = segment.split("~", 1)
        return next((one for one in at if part in (one.get(field) or "")), None)
    return at[int(segment)] if segment.isdigit() and int(segment) < len(at) else None


def holds(found, told):
    """Whether `found` is as `told`: `has`, `lacks`, `count`, `not`, or equal."""
    if isinstance(told, dict) and len(told) == 1:
        (test, value), = told.items()
        if test in TESTS:
            return TESTS[test](found, value)
    return found == told and isinstance(found, bool) == isinstance(told, bool)


def _has(found, part):
    if isinstance(found, str):
        return isinstance(part, str) and part in found
    return isinstance(found, list) and part in found


TESTS = {
    "has": _has,
    "lacks": lambda found, part: not _has(found, part),
    "count": lambda found, n: isinstance(found, list) and len(found) == n,
    "not": lambda found, other: found != other,
}
