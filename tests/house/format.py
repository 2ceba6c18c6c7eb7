# SPDX-FileCopyrightText: The Setfolio authors
# SPDX-License-Identifier: MIT
"""Every C++ file is as clang-format 14 leaves it with the tree's .clang-format."""

import re
import shutil
import subprocess
from pathlib import Path

import files

VERSION = "14"


def program():
    """clang-format of the version the tree is kept with: another one lays out some lines differently."""
    for name in (f"clang-format-{VERSION}", "clang-format"):
        if shutil.which(name):
            said = subprocess.run([name, "--version"], capture_output=True, text=True, check=True).stdout
            if re.search(rf"version {VERSION}\.", said):
                return name
    raise files.Skip(f"clang-format {VERSION} is not on this machine")


def complaints(root):
    names = [str(path) for path in files.tracked(root) if files.is_cpp(path)]
    if not names:
        return []
    command = [program(), "--dry-run", "--style=file", *names]
    done = subprocess.run(command, cwd=Path(root), capture_output=True, text=True)
    return [line for line in done.stderr.splitlines() if ": warning:" in line or ": error:" in line]


if __name__ == "__main__":
    files.main(complaints)
