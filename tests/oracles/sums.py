"""Asks `slowbend sum NAME`, as any script would. The program's path is in SLOWBEND."""

import json
import os
import subprocess


def ask(name, given):
    """The answer to one input."""
    return ask_text(name, json.dumps(given))


def ask_text(name, text):
    """The answer to an input that is JSON already; a refusal is an `Refused` with its sentence."""
    program = [os.environ["SLOWBEND"], "sum", name]
    done = subprocess.run(program, input=text, capture_output=True, text=True, timeout=120)
    if done.returncode:
        raise Refused(done.stderr.strip())
    return json.loads(done.stdout)


class Refused(Exception):
    """What the sum said instead of an answer."""
