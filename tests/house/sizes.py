# SPDX-FileCopyrightText: The Setfolio authors
# SPDX-License-Identifier: MIT
"""How long files and functions are, and the licence lines at the head of each source file."""

import math
from pathlib import Path

import cpp
import files

FILE_MOST, FILE_NINE_IN_TEN = 500, 350
FUNCTION_MOST, FUNCTION_NINE_IN_TEN = 60, 30
LICENCE = ["SPDX-FileCopyrightText: The Setfolio authors", "SPDX-License-Identifier: MIT"]


def nine_in_ten(lengths):
    """The length that nine in ten do not pass."""
    return sorted(lengths)[math.ceil(0.9 * len(lengths)) - 1] if lengths else 0


def licence_complaint(path, text):
    lines = text.splitlines()
    if lines[:1] and lines[0].startswith("#!"):
        lines = lines[1:]
    mark = "// " if files.is_cpp(path) else "# "
    if lines[:2] != [mark + line for line in LICENCE]:
        return [f"{path}:1: does not begin with the two licence lines"]
    return []


def function_lengths(path, text):
    """Functions that are tables of test data are as long as their tables, and are not counted."""
    return [entry for entry in cpp.functions(text) if not entry[0].endswith("_data")] if files.is_cpp(path) else []


def complaints(root):
    found, file_lengths, lengths = [], [], []
    for path, text in files.texts(root):
        if not files.is_source(path, root):
            continue
        found += licence_complaint(path, text)
        file_lengths.append(text.count("\n"))
        if file_lengths[-1] > FILE_MOST:
            found.append(f"{path}: {file_lengths[-1]} lines, {FILE_MOST} at most")
        for name, line, length in function_lengths(path, text):
            lengths.append(length)
            if length > FUNCTION_MOST:
                found.append(f"{path}:{line}: {name} has {length} lines, {FUNCTION_MOST} at most")
    found += nine_in_ten_complaints("files", file_lengths, FILE_NINE_IN_TEN)
    found += nine_in_ten_complaints("functions", lengths, FUNCTION_NINE_IN_TEN)
    return found


def nine_in_ten_complaints(what, lengths, most):
    reached = nine_in_ten(lengths)
    middle = sorted(lengths)[len(lengths) // 2] if lengths else 0
    longest = max(lengths, default=0)
    print(f"{len(lengths)} {what}: median {middle} lines, nine in ten within {reached}, longest {longest}")
    return [f"nine in ten {what} are within {reached} lines, {most} at most"] if reached > most else []


if __name__ == "__main__":
    files.main(complaints)
