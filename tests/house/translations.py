# SPDX-FileCopyrightText: The Setfolio authors
# SPDX-License-Identifier: MIT
"""Every catalogue in translations/ is finished, and fills in the same places as the English sentence does."""

import re
import xml.etree.ElementTree as xml
from pathlib import Path

import files


def places(sentence):
    return set(re.findall(r"%(?:L?\d+|n)", sentence))


def sentences(translation):
    """One, or one for each plural form."""
    return [form.text or "" for form in translation.findall("numerusform")] or [translation.text or ""]


def message_complaints(message):
    english, translation = message.findtext("source", ""), message.find("translation")
    if translation is None or translation.get("type") == "unfinished" or "" in sentences(translation):
        yield f'"{english}" is not translated'
        return
    for sentence in sentences(translation):
        if places(sentence) != places(english):
            yield f'"{sentence}" does not fill in what "{english}" does'


def complaints(root):
    found, catalogues = [], [path for path in files.tracked(root) if path.suffix == ".ts"]
    for path in catalogues:
        for message in xml.parse(Path(root) / path).iter("message"):
            found += [f"{path}: {line}" for line in message_complaints(message)]
    print(f"{len(catalogues)} catalogues")
    return found


if __name__ == "__main__":
    files.main(complaints)
