# SPDX-FileCopyrightText: The Setfolio authors
# SPDX-License-Identifier: MIT
"""validate.py FOLDER ID < LINES: each line is JSON that the schema of that $id in FOLDER must allow.

A validator from outside the project, so that what is written is measured by what the schemas say and not by our own reader."""

import json
import sys
import urllib.parse
from pathlib import Path

import jsonschema

# Without this, urljoin does not see that "#/$defs/name" in a schema named by a URN is a place in that same schema.
urllib.parse.uses_relative.append("urn")


def schemas(folder):
    found = [json.loads(path.read_text(encoding="utf-8")) for path in sorted(Path(folder).glob("*.json"))]
    return {schema["$id"]: schema for schema in found}


def main(folder, name):
    store = schemas(folder)
    for schema in store.values():
        jsonschema.Draft202012Validator.check_schema(schema)
    resolver = jsonschema.RefResolver(name, store[name], store=store)
    validator = jsonschema.Draft202012Validator(store[name], resolver=resolver)
    lines = [line for line in sys.stdin if line.strip()]
    faults = 0
    for number, line in enumerate(lines, 1):
        for error in validator.iter_errors(json.loads(line)):
            faults += 1
            print(f"line {number}: {'/'.join(map(str, error.absolute_path))}: {error.message[:300]}")
    print(f"{len(lines)} lines, {faults} faults")
    return 1 if faults or not lines else 0


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
