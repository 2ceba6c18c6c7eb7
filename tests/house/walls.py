# SPDX-FileCopyrightText: The Setfolio authors
# SPDX-License-Identifier: MIT
"""The direction from the scorer's hand to the paper: what each folder may include, link and use."""

import re
import sys
from pathlib import Path

import cpp
import files

# folder: (folders of ours it may include, Qt modules it may include, libraries its target may link, its target)
FLOORS = {
    "core": (["core"], ["QtCore"], ["house", "Qt6::Core"], "core"),
    "ui/wording": (["core", "ui/wording"], ["QtCore"], ["core"], "wording"),
    "ui/sheet": (["core", "ui/wording", "ui/sheet"], ["QtCore", "QtGui"], ["core", "wording", "Qt6::Gui", "qrencode"], "sheet"),
    "ui": (["core", "ui"], ["QtCore", "QtGui", "QtWidgets", "QtPrintSupport"],
           ["sheet", "Qt6::Widgets", "Qt6::PrintSupport"], "ui"),
    "app": (["core", "ui", "app"], ["QtCore", "QtGui", "QtWidgets"], ["ui"], "setfolio"),
}
# Below the widgets, time, ids, locale and surroundings are arguments, and nothing is an object with signals.
FROM_THE_AIR = {
    r"\bQ_OBJECT\b": "an object with signals",
    r"\bQObject\b": "an object with signals",
    r"\bQ(?:Date|Time|DateTime)::current\w+": "a clock",
    r"\b(?:system|steady|high_resolution)_clock\b": "a clock",
    r"\bQElapsedTimer\b|\bQTimer\b": "a clock",
    r"\bQLocale::system\b|\bQLocale\s*[({]\s*[)}]|\bQLocale\s+\w+\s*;": "a locale from the air",
    r"\bQUuid::createUuid\b|\bQRandomGenerator\b|\brandom_device\b": "chance",
    r"\bqgetenv\b|\bqEnvironmentVariable\w*|\bgetenv\b|\bQSettings\b": "the surroundings",
    r"\bqApp\b|\bQ_GLOBAL_STATIC\b": "a single global thing",
}
WORDS = r"\btr\(|\bQCoreApplication::translate\b|\bQT_TR\w*|\bQ_DECLARE_TR_FUNCTIONS\b"
QUOTED = re.compile(r'^\s*#\s*include\s+"([^"]+)"', re.M)
ANGLED = re.compile(r"^\s*#\s*include\s+<([^>]+)>", re.M)


def floor_of(path):
    """The narrowest floor that holds the path, or None outside them all."""
    inside = [folder for folder in FLOORS if path.as_posix().startswith(folder + "/")]
    return max(inside, key=len, default=None)


def qt_module(header, headers):
    """The Qt module that a header such as QPainter or QtGui/qpainter.h belongs to, or None when it is no Qt header."""
    if "/" in header:
        return header.split("/")[0] if header.startswith("Qt") else None
    folders = headers.iterdir() if headers else []
    return next((folder.name for folder in folders if (folder / header).is_file()), None)


def include_complaints(root, path, text, floor, headers):
    ours, modules, _, _ = FLOORS[floor]
    for name in QUOTED.findall(text):
        if name.endswith(".moc"):
            continue
        if not (Path(root) / name).is_file():
            yield f'{path}: "{name}" is not named from the top of the tree'
        if not any(name.startswith(folder + "/") for folder in ours):
            yield f'{path}: {floor} may not include "{name}"'
    for name in ANGLED.findall(text):
        module = qt_module(name, headers)
        if module and module not in modules:
            yield f"{path}: {floor} may not include <{name}> of {module}"


def use_complaints(path, text, floor):
    code = cpp.without_comments_and_strings(text)
    if floor in ("core", "ui/wording", "ui/sheet"):
        for pattern, what in FROM_THE_AIR.items():
            for match in re.finditer(pattern, code):
                yield f"{path}:{code.count(chr(10), 0, match.start()) + 1}: {match.group(0).strip()} is {what}"
    if floor in ("core", "ui/sheet"):
        for match in re.finditer(WORDS, code):
            yield f"{path}:{code.count(chr(10), 0, match.start()) + 1}: words for people are made in ui/wording"


def link_complaints(path, text):
    allowed = {target: libraries for _, _, libraries, target in FLOORS.values()}
    for target, rest in re.findall(r"target_link_libraries\(\s*(\S+)([^)]*)\)", text):
        for library in re.findall(r"[^\s\"]+", rest):
            if library not in ("PUBLIC", "PRIVATE", "INTERFACE") and library not in allowed.get(target, [library]):
                yield f"{path}: {target} may not link {library}"


def complaints(root, headers=None):
    found = []
    for path, text in files.texts(root):
        floor = floor_of(path)
        if floor and files.is_cpp(path):
            found += include_complaints(root, path, text, floor, headers)
            found += use_complaints(path, text, floor)
        elif path.name == "CMakeLists.txt" and not path.as_posix().startswith("tests/"):
            found += link_complaints(path, text)
    return found


if __name__ == "__main__":
    files.main(complaints, Path(sys.argv[2]))
