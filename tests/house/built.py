# SPDX-FileCopyrightText: The Setfolio authors
# SPDX-License-Identifier: MIT
"""Every .cpp file is named in the CMakeLists.txt of its own folder: a test that nobody builds proves nothing."""

import re
from pathlib import Path

import files


MADE_BY = {"tst_": r"setfolio_(?:command_|desk_)?test", "bench_": "setfolio_bench", "fuzz_": "setfolio_fuzz"}


def is_named(path, listing):
    """A test, timing or fuzzer is named by its CMake function, without its prefix; any other file by its whole name."""
    for prefix, function in MADE_BY.items():
        if path.name.startswith(prefix):
            return re.search(rf"^\s*{function}\(\s*{path.stem[len(prefix):]}\b", listing, re.M)
    return re.search(rf"(?<![\w./-]){re.escape(path.name)}(?![\w.])", listing)


def complaints(root):
    found = []
    for path in files.tracked(root):
        if path.suffix != ".cpp":
            continue
        listing = Path(root) / path.parent / "CMakeLists.txt"
        text = re.sub(r"#.*", "", listing.read_text(encoding="utf-8")) if listing.is_file() else ""
        if not is_named(path, text):
            found.append(f"{path} is not named in {path.parent}/CMakeLists.txt")
    return found


if __name__ == "__main__":
    files.main(complaints)
