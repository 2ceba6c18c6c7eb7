# SPDX-FileCopyrightText: The Setfolio authors
# SPDX-License-Identifier: MIT
"""Words that do not belong in the tree: paths of one machine, unreasoned reminders, second words for one thing."""

import re

import files

FORBIDDEN = {
    r"(?<![\w.$}{*-])/(?:work|root|home)/\w": "a path of one machine",
    r"(?<![\w.$}{*-])/tmp/\w": "a path of one machine",
    r"\b(?:TODO|FIXME|XXX|HACK)\b(?!: \S.* because \S)": "a reminder without its reason (TODO: what, because why)",
    r"(?i)\bjersey": "shirt number is the word",
    r"(?i)\b(?:away|guest)[ -](?:team|side|score)|\bguests\b": "visitors is the word",
    r"\b(?:[Tt]ime out|[Tt]imeouts)\b": "time-out is the word",
    r"\b[Ll]ine ?ups?\b(?<!line up)": "line-up is the word",
    r"\bhttps?://localhost": "an address of one machine",
}
EXEMPT = ("tests/house/words.py", "tests/house/selftest.py")


def complaints(root):
    found = []
    for path, text in files.texts(root):
        if path.as_posix() in EXEMPT:
            continue
        for pattern, why in FORBIDDEN.items():
            for match in re.finditer(pattern, text):
                line = text.count("\n", 0, match.start()) + 1
                found.append(f'{path}:{line}: "{match.group(0)}": {why}')
    return found


if __name__ == "__main__":
    files.main(complaints)
