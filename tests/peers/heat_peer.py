"""The peer of the bench `heat`: SciPy's BDF over the same equations and cells. Reads a member, says its times; exit 3 without SciPy."""

import json
import sys
import time
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[1] / "oracles"))
try:
    from heat_model import Meat, follow, graded
except ImportError:
    sys.exit(3)

asked = json.load(sys.stdin)
meat = Meat(asked["member"], graded(asked["cells"]))


def run(rtol, until=None):
    return follow(meat, asked["seconds"], asked["pit_c"], asked["vapor"], rtol, until=until)


def turn():
    began = time.perf_counter_ns()
    run(1e-3)
    return time.perf_counter_ns() - began


turn()
answer = {
    "ns": [turn() for _ in range(asked["turns"])],
    "hit_s": run(1e-3, asked["until"]).t_events[0][0],
    "exact_s": run(1e-7, asked["until"]).t_events[0][0],
}
print(json.dumps(answer))
