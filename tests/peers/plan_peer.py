"""How long CP-SAT takes to prove the households of tests/oracles/test_plan.py: FOLDER gets each as JSON, and times.txt.

Only the time inside the solver counts. Ends with 3 where there is no ortools.
"""

import json
import pathlib
import sys

sys.path.insert(0, str(pathlib.Path(__file__).resolve().parent.parent / "oracles"))
try:
    import test_plan
except ImportError:
    sys.exit(3)

HOUSEHOLDS = 25

folder = pathlib.Path(sys.argv[1])
lines = []
for seed in range(HOUSEHOLDS):
    made = test_plan.household(1_000 + seed)
    spent = []
    values, proven = test_plan.solve(made, spent)
    if values is not None and proven:
        name = f"household-{seed}.json"
        (folder / name).write_text(json.dumps(made))
        lines.append(f"{name} {sum(spent):.6f}")
(folder / "times.txt").write_text("\n".join(lines) + "\n")
