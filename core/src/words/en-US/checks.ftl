### Checks: tests of a meat, their outcomes and verdicts.
