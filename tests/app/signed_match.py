#!/usr/bin/python3
# SPDX-FileCopyrightText: The Setfolio authors
# SPDX-License-Identifier: MIT
"""Writes a list of entries: one set of a match, played, ended, signed with strokes and sealed. All names are invented.
With the word "again" the set is then reopened, corrected and signed anew."""

import json
import math
import sys

SIGNERS = ("scorer", "second-referee", "first-referee")


def scrawl(seed):
    """Two strokes, another pair for each seed."""
    first = [n for i in range(40) for n in (i * 60, round(900 + 700 * math.sin(i * (seed + 2) / 5)), i * 12)]
    second = [n for i in range(8) for n in (900 + i * 120, 300 + seed * 60, 700 + i * 12)]
    return [first, second]


def rulebook(path):
    """A published rulebook, signed by three officials after each set."""
    book = json.load(open(path, encoding="utf-8"))
    book["settings"]["signing-order"]["value"] = list(SIGNERS)
    book["settings"]["signed-for"]["value"] = "set"
    return book


def sign_off(seed):
    for i, role in enumerate(SIGNERS):
        yield {"kind": "signed", "set": 1, "role": role, "name": ("Wim Sedge", "Tobias Dunlin", "Orla Vantage")[i],
               "strokes": scrawl(seed + i)}
    yield {"kind": "sealed", "set": 1}


def entries(path, again):
    yield {"kind": "match-opened", "id": "7f1c2a54-3f0e-4b5e-9c0d-2f6c1a9b8e77", "best-of": 3, "date": "2026-10-10",
           "teams": {"home": {"name": "Saltmarsh Herons", "code": "SAL"},
                     "visitors": {"name": "Quarry Ridge Larks", "code": "QRL"}},
           "rulebook": rulebook(path)}
    yield {"kind": "toss", "serves-first": "home", "left": "home"}
    yield {"kind": "line-up", "team": "home", "positions": [1, 2, 3, 4, 5, 6]}
    yield {"kind": "line-up", "team": "visitors", "positions": [11, 12, 13, 14, 15, 16]}
    yield {"kind": "set-started", "at": "18:40"}
    for _ in range(20):
        yield {"kind": "rally-won", "by": "home"}
        yield {"kind": "rally-won", "by": "visitors"}
    for _ in range(5):
        yield {"kind": "rally-won", "by": "home"}
    yield {"kind": "set-ended", "at": "19:02"}
    yield from sign_off(1)
    if again:
        yield {"kind": "reopened", "set": 1, "name": "Orla Vantage", "reason": "remark forgotten"}
        yield {"kind": "remark", "text": "net lowered", "placed": {"before": 20}}
        yield from sign_off(5)


for entry in entries(sys.argv[1], "again" in sys.argv[2:]):
    entry["time"] = "2026-10-10T18:00:00.000Z"
    print(json.dumps(entry))
