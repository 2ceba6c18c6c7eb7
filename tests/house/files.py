# SPDX-FileCopyrightText: The Setfolio authors
# SPDX-License-Identifier: MIT
"""The files that the house checks look at, and how a check reports: complaints(root) -> list of lines."""

import os
import subprocess
import sys
from pathlib import Path

SKIPPED = 77
BINARY = {".png", ".pdf", ".gz", ".qm"}
SCRIPT_START = b"#!"


def tracked(root):
    """Paths, relative to root, of the files under version control; without git, of all files but the build's."""
    root = Path(root)
    names = None
    if (root / ".git").exists():
        try:
            done = subprocess.run(["git", "-C", str(root), "ls-files", "-z"], capture_output=True, check=True)
            names = done.stdout.decode().split("\0")
        except (OSError, subprocess.CalledProcessError):
            names = None
    if names is None:
        names = list(_walk(root))
    return sorted(Path(name) for name in names if name and (root / name).is_file())


def _walk(root):
    for folder, folders, files in os.walk(root):
        folders[:] = [name for name in folders if name not in (".git", "build", "__pycache__")]
        yield from (os.path.relpath(os.path.join(folder, name), root) for name in files)


def texts(root):
    """(path, text) of every tracked text file."""
    for path in tracked(root):
        if path.suffix not in BINARY:
            yield path, (Path(root) / path).read_text(encoding="utf-8", errors="replace")


def is_cpp(path):
    return path.suffix in (".h", ".cpp")


def is_source(path, root):
    """C++, CMake, Python, shell, and what starts as a script."""
    if is_cpp(path) or path.suffix in (".py", ".sh", ".cmake") or path.name == "CMakeLists.txt":
        return True
    if path.suffix:
        return False
    with open(Path(root) / path, "rb") as file:
        return file.read(2) == SCRIPT_START


def main(complaints, *arguments):
    """Runs a check as a program: `check.py ROOT`, exit code 0, 1, or SKIPPED when it raises Skip."""
    try:
        found = complaints(sys.argv[1], *arguments)
    except Skip as reason:
        print(f"skipped: {reason}")
        sys.exit(SKIPPED)
    for line in found:
        print(line)
    print(f"{len(found)} complaints")
    sys.exit(1 if found else 0)


class Skip(Exception):
    """A check that cannot be made on this machine, and why."""
