# SPDX-FileCopyrightText: The Setfolio authors
# SPDX-License-Identifier: MIT
"""Every package that packaging/debian-packages names can be had from this system's archive."""

import re
import shutil
import subprocess
from pathlib import Path

import files


def listed(root):
    lines = (Path(root) / "packaging/debian-packages").read_text(encoding="utf-8").splitlines()
    return [line for line in lines if re.match(r"[a-z0-9]", line)]


def had(names):
    """Those of the names for which apt knows a version to install."""
    if not shutil.which("apt-cache"):
        raise files.Skip("there is no apt on this machine")
    if not list(Path("/var/lib/apt/lists").glob("*_Packages*")):
        raise files.Skip("this machine has no list of what its archive holds (apt-get update fetches it)")
    plain = {"LC_ALL": "C", "PATH": "/usr/bin"}
    said = subprocess.run(["apt-cache", "policy", *names], capture_output=True, text=True, env=plain)
    return re.findall(r"^(\S+):\n  Installed: .*\n  Candidate: [^(]", said.stdout, re.M)


def complaints(root):
    names = listed(root)
    lacking = sorted(set(names) - set(had(names)))
    return [f"packaging/debian-packages: {name} is in no archive of this system" for name in lacking]


if __name__ == "__main__":
    files.main(complaints)
