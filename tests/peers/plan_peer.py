"""How long CP-SAT takes to prove the households of tests/oracles/test_plan.py: FOLDER gets each as JSON, and times.txt.

A line says the set, the file, the seconds, and whether that is a proof or the limit. Only the time inside the solver counts.
Households of which CP-SAT proves that there is no plan are left out. Ends with 3 where there is no ortools.
"""

import json
import pathlib
import sys

sys.path.insert(0, str(pathlib.Path(__file__).resolve().parent.parent / "oracles"))
try:
    import test_plan
except ImportError:
    sys.exit(3)

# Name, households, first seed, meats and pits (as they come where none), seconds for each.
SETS = [("few", 25, 1_000, None, None, 30.0), ("six", 15, 2_000, 6, 2, 20.0)]

folder = pathlib.Path(sys.argv[1])
lines = []
for of, households, first, meats, pits, most in SETS:
    for seed in range(first, first + households):
        made = test_plan.household(seed, meats, pits)
        spent = []
        values, proven = test_plan.solve(made, spent, most)
        if values is None and proven:
            continue
        name = f"household-{seed}.json"
        (folder / name).write_text(json.dumps(made))
        lines.append(f"{of} {name} {sum(spent):.6f} {'proof' if proven else 'limit'}")
(folder / "times.txt").write_text("\n".join(lines) + "\n")
