"""Runs every oracle here and says the outcome as cargo does. `run.py NAME...` runs those files only."""

import sys
import unittest
from pathlib import Path

HERE = Path(__file__).parent


def main():
    sys.path.insert(0, str(HERE))
    names = sys.argv[1:] or sorted(path.stem for path in HERE.glob("test_*.py"))
    tests = unittest.defaultTestLoader.loadTestsFromNames(names)
    done = unittest.TextTestRunner(verbosity=2).run(tests)
    bad = len(done.failures) + len(done.errors)
    passed = done.testsRun - bad - len(done.skipped)
    verdict = "FAILED" if bad else "ok"
    print(f"test result: {verdict}. {passed} passed; {bad} failed; {len(done.skipped)} ignored", flush=True)
    return 1 if bad or not passed else 0


sys.exit(main())
