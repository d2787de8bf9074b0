#!/usr/bin/env python3
"""Lives every story file through the Python binding: run_stories.py [FOLDER OF THE GENERATED PYTHON] [STORY...]

`bindings/generate --echo` makes the folder; the default is target/bindings/python. Ends with a line as cargo's tests do.
"""

import json
import sys
import traceback
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent.parent
FOLDER = Path(sys.argv[1]) if len(sys.argv) > 1 else ROOT / "target/bindings/python"
sys.path.insert(0, str(FOLDER.resolve()))

import slowbend as api  # noqa: E402
import slowbend_core as core  # noqa: E402
from border import Border, Changed  # noqa: E402
from night import Night, Wrong  # noqa: E402

# What stories must have carried over the border, between them.
KINDS = {
    "act", "outcome", "reading", "moment", "viewer",
    "start", "pitside", "piece", "check", "timeline", "card", "again", "settings", "write_down", "alarms", "cuts", "cut",
    "readings_of", "thermometers",
    "opening", "pits", "dishes", "kitchen", "kitchen_sheet", "watch", "trouble", "run_sheet", "hand_out", "plan", "fire", "fire_out", "temp_log",
    "hearing", "probes", "word", "taken",
}


def live(path, border):
    """What is wrong with the story, or None."""
    story = json.loads(path.read_text(encoding="utf-8"))
    night, steps = Night(border, story), story["steps"]
    for i, step in enumerate(steps, start=1):
        try:
            night.live(step)
        except (Wrong, Changed, core.Trouble) as wrong:
            return f"step {i} of {len(steps)}: {wrong}"
        except Exception:
            return f"step {i} of {len(steps)}: {traceback.format_exc()}"
    return None


def all_kinds_crossed(border):
    missing = KINDS - border.crossed.keys()
    return f"no story carries a {', a '.join(sorted(missing))} over the border" if missing else None


def trouble_crosses_with_its_reason(_):
    try:
        api.act_from_json("{}")
    except core.Trouble.Refused as refusal:
        return None if "act" in refusal.reason else f"the reason is {refusal.reason!r}"
    return "an act of nothing was taken"


def tell(name, wrong):
    print(f"test {name} ... {'FAILED' if wrong else 'ok'}", flush=True)
    if wrong:
        again = f"tests/python/run_stories.py {FOLDER} {name}"
        print(f"{wrong}\nto see it again: {again}", file=sys.stderr, flush=True)
    return 1 if wrong else 0


def main():
    asked = sys.argv[2:]
    paths = sorted((ROOT / "tests/stories").glob("*.json"))
    chosen = [path for path in paths if not asked or path.stem in asked]
    border = Border()
    results = [tell(path.stem, live(path, border)) for path in chosen]
    if not asked:
        for law in (all_kinds_crossed, trouble_crosses_with_its_reason):
            results.append(tell(law.__name__, law(border)))
    failed = sum(results)
    crossed = ", ".join(f"{kind} {n}" for kind, n in sorted(border.crossed.items()))
    print(f"compared byte for byte: {crossed}")
    state = "FAILED" if failed else "ok"
    print(f"test result: {state}. {len(results) - failed} passed; {failed} failed; 0 ignored")
    return 1 if failed or not results else 0


if __name__ == "__main__":
    sys.exit(main())
