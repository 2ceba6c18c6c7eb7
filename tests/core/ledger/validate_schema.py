#!/usr/bin/python3
# SPDX-FileCopyrightText: The Setfolio authors
# SPDX-License-Identifier: MIT
"""Holds every ledger and every list in the tree to the schemas, with a validator that is not ours (python3-jsonschema,
draft 2020-12), and the schemas to refusing what FORMAT.md refuses."""

import copy
import json
import pathlib
import sys
import urllib.parse

import jsonschema

# This validator resolves references with urljoin, which knows no "#/..." within a URN unless told.
urllib.parse.uses_relative.append("urn")

ROOT = pathlib.Path(__file__).resolve().parents[3]
SCHEMAS = {}
for path in (ROOT / "resources/schema").glob("*.schema.json"):
    schema = json.loads(path.read_text(encoding="utf-8"))
    jsonschema.Draft202012Validator.check_schema(schema)
    SCHEMAS[schema["$id"]] = schema


def validator(name):
    schema = SCHEMAS["urn:setfolio:schema:" + name]
    return jsonschema.Draft202012Validator(schema, resolver=jsonschema.RefResolver(schema["$id"], schema, store=SCHEMAS))


LINE = validator("ledger")
ENTRY = validator("entry")


def objects(path):
    """The objects of a file, each with the number of its line."""
    lines = path.read_text(encoding="utf-8").split("\n")
    return [(number, json.loads(line)) for number, line in enumerate(lines, 1) if line.strip()]


def check_files(schema, paths):
    """How many lines pass; a file that does not ends the test."""
    count = 0
    for path in paths:
        for number, line in objects(path):
            if not schema.is_valid(line):
                error = jsonschema.exceptions.best_match(schema.iter_errors(line))
                sys.exit(f"{path.relative_to(ROOT)}, line {number}: {error.message}")
            count += 1
    return count


def without(line, *members):
    return {name: value for name, value in line.items() if name not in members}


def with_team(line, **members):
    changed = copy.deepcopy(line)
    changed["teams"]["home"].update(members)
    return changed


EVERY_KIND = [line for _, line in objects(ROOT / "tests/data/ledger/every-kind.setfolio")]
OPENED = EVERY_KIND[0]
BY_KIND = {line["kind"]: line for line in EVERY_KIND}
KINDS = {branch["$ref"].rsplit("/", 1)[1] for branch in SCHEMAS["urn:setfolio:schema:entry"]["$defs"]["record"]["oneOf"]}


def bad_lines():
    """Lines that a ledger must not hold, each with what is wrong."""
    for line in EVERY_KIND:
        for member in ("seq", "time", "kind", "digest"):
            yield f"{line['kind']} without {member}", without(line, member)
        yield f"{line['kind']} with a member unknown", {**line, "mood": "good"}
        yield f"{line['kind']} with an upper-case digest", {**line, "digest": "A" * 64}
        yield f"{line['kind']} with a short digest", {**line, "digest": line["digest"][1:]}
        yield f"{line['kind']} with a number too low", {**line, "seq": 0}
        yield f"{line['kind']} with a number in words", {**line, "seq": "1"}
        yield f"{line['kind']} in local time", {**line, "time": line["time"].replace("Z", "+02:00")}
        yield f"{line['kind']} without milliseconds", {**line, "time": "2026-10-10T18:42:03Z"}
        yield f"{line['kind']} overruled by a number", {**line, "overruled": 1}
        if line["kind"] not in ("match-opened", "match-closed"):
            yield f"{line['kind']} first", {**line, "seq": 1}
    yield "opened twice", {**OPENED, "seq": 2}
    yield "a rulebook by its name", {**OPENED, "rulebook": "high-school"}
    yield "no format", without(OPENED, "format")
    for kind in ("ace", "Rally-won", "", 7):
        yield f"kind {kind}", {**BY_KIND["no-serve"], "kind": kind}


def bad_entries():
    """Entries that not even a list may hold, each with what is wrong."""
    listed = {kind: without(line, "seq", "digest") for kind, line in BY_KIND.items()}
    opened, remark, line_up = listed["match-opened"], listed["remark"], listed["line-up"]
    required = {"match-opened": "best-of teams rulebook", "roster": "team players", "officials": "officials",
                "toss": "serves-first left", "line-up": "team positions", "rally-won": "by",
                "substitution": "team in out", "time-out": "team", "libero-serve": "team libero",
                "forfeit": "by how", "server-seen": "number", "wrong-server": "team served",
                "place-vacated": "team out", "captain-named": "team captain", "libero-in": "team libero replaced",
                "libero-out": "team libero", "libero-exchange": "team in out", "libero-redesignated": "team former",
                "sanction": "team level", "delay-sanction": "team level", "improper-request": "team",
                "penalty-point": "to", "remark": "text", "strike": "entry",
                "signed": "role", "left-unsigned": "role reason", "reopened": "reason"}
    for kind, members in required.items():
        for member in members.split():
            yield f"{kind} without {member}", without(listed[kind], member)
    yield "a ledger's number", {**remark, "seq": 2}
    yield "a ledger's digest", {**remark, "digest": "0" * 64}
    yield "a third team", {**listed["rally-won"], "by": "them"}
    yield "a team in capitals", {**listed["time-out"], "team": "Home"}
    for number in (-1, 100, 1.5, "4", None):
        yield f"shirt {number}", {**listed["substitution"], "in": number}
        yield f"shirt {number} in a list", {**line_up, "positions": [1, 2, 3, 4, 5, number]}
    yield "five positions", {**line_up, "positions": [1, 2, 3, 4, 5]}
    yield "seven positions", {**line_up, "positions": [1, 2, 3, 4, 5, 6, 7]}
    yield "eleven liberos", {**line_up, "liberos": list(range(11))}
    for time in ("24:00", "8:05", "08:05:00", "", "08:60"):
        yield f"time {time}", {**listed["set-started"], "at": time}
    for date in ("10.10.2026", "2026-13-01", "2026-1-1", ""):
        yield f"date {date}", {**opened, "date": date}
    for best_of in (0, 2, 4, 7, "5"):
        yield f"best of {best_of}", {**opened, "best-of": best_of}
    yield "format 2", {**opened, "format": 2}
    yield "a long code", with_team(opened, code="NINELONGS")
    yield "a long name", with_team(opened, name="x" * 121)
    yield "a name on two lines", with_team(opened, name="a\nb")
    yield "a trailing line feed", with_team(opened, name="a\n")
    yield "a team's member unknown", with_team(opened, nickname="a")
    yield "one team", {**opened, "teams": {"home": {}}}
    yield "a rulebook of another kind", {**opened, "rulebook": {}}
    yield "a rulebook with a setting unknown", {**opened, "rulebook": {**opened["rulebook"], "ball": "blue"}}
    yield "a long text", {**remark, "text": "x" * 1001}
    yield "a bell", {**remark, "text": "\a"}
    yield "a carriage return", {**remark, "text": "a\r\nb"}
    yield "a role unknown", {"kind": "officials", "officials": [{"role": "umpire"}]}
    yield "an official's member unknown", {"kind": "officials", "officials": [{"role": "scorer", "age": 40}]}
    yield "a player without number", {"kind": "roster", "team": "home", "players": [{"name": "A"}]}
    yield "101 players", {"kind": "roster", "team": "home", "players": [{"number": 1}] * 101}
    forfeit = next(line for line in EVERY_KIND if "of-set" in line)
    forfeit = without(forfeit, "seq", "digest")
    for of_set in (0, 6, "1"):
        yield f"a forfeit of set {of_set}", {**forfeit, "of-set": of_set}
    for keeps in (-1, 1000, "1"):
        yield f"{keeps} points kept", {**forfeit, "keeps": keeps}
    yield "points kept of no set", without(forfeit, "of-set")
    yield "an earlier set of the match", without(forfeit, "reach")
    yield "a default of an earlier set", {**forfeit, "how": "default"}
    yield "a strike of nothing", {**listed["strike"], "entry": 0}
    signed = listed["signed"]
    yield "a captain of no team", without({**signed, "role": "captain"}, "team")
    yield "a referee of a team", {**signed, "role": "first-referee", "team": "home"}
    yield "a sixth set", {**signed, "set": 6}
    yield "a point beside the pad", {**signed, "strokes": [[-1, 0, 0]]}
    yield "a seal in capitals", {**listed["sealed"], "seal": "A" * 64}
    yield "a short seal", {**listed["sealed"], "seal": "a" * 63}
    yield "another replay", {"kind": "replay", "again": "twice"}


def check_refused(schema, plants):
    """How many planted lines are refused; one that passes ends the test."""
    count = 0
    for what, line in plants:
        if schema.is_valid(line):
            sys.exit(f"the schema lets through: {what}")
        count += 1
    return count


def main():
    if set(BY_KIND) != KINDS:
        sys.exit(f"every-kind.setfolio and the schema differ in {set(BY_KIND) ^ KINDS}")
    folders = [ROOT / "resources/demo", ROOT / "tests/data"]
    ledgers = sorted(path for folder in folders for path in folder.rglob("*.setfolio"))
    lists = sorted(path for folder in folders for path in folder.rglob("*.jsonl"))
    lines = check_files(LINE, ledgers)
    entries = check_files(ENTRY, lists)
    refused = check_refused(LINE, bad_lines()) + check_refused(ENTRY, bad_entries())
    print(f"{len(ledgers)} ledgers with {lines} lines and {len(lists)} lists with {entries} entries are valid; "
          f"{refused} planted lines were refused")


main()
