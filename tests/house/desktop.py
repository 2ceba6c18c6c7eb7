# SPDX-FileCopyrightText: The Setfolio authors
# SPDX-License-Identifier: MIT
"""What a desktop reads of the program: its entry, its description and its kind of file, valid and of one mind."""

import shutil
import subprocess
import xml.etree.ElementTree as xml
from pathlib import Path

import files

ID = "org.setfolio.Setfolio"
MIME = "{http://www.freedesktop.org/standards/shared-mime-info}"


def said_by(*command):
    """What a validator says when it refuses; nothing when it accepts."""
    if not shutil.which(command[0]):
        raise files.Skip(f"{command[0]} is not on this machine")
    done = subprocess.run(command, capture_output=True, text=True)
    return (done.stdout + done.stderr).splitlines() if done.returncode else []


def complaints(root):
    folder = Path(root) / "packaging"
    found = said_by("desktop-file-validate", str(folder / f"{ID}.desktop"))
    found += said_by("appstreamcli", "validate", "--no-net", str(folder / f"{ID}.metainfo.xml"))
    kind = xml.parse(folder / f"{ID}.mime.xml").find(f"{MIME}mime-type").get("type")
    if f"MimeType={kind};" not in (folder / f"{ID}.desktop").read_text(encoding="utf-8").splitlines():
        found.append(f"{ID}.desktop does not open {kind}")
    if xml.parse(folder / f"{ID}.metainfo.xml").findtext("provides/mediatype") != kind:
        found.append(f"{ID}.metainfo.xml does not name {kind}")
    return found


if __name__ == "__main__":
    files.main(complaints)
