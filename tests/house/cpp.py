# SPDX-FileCopyrightText: The Setfolio authors
# SPDX-License-Identifier: MIT
"""A reading of C++ that is good enough to find functions, by text without comments and by pairs of braces."""

import re

_NOISE = re.compile(
    r'//[^\n]*|/\*.*?\*/|R"(?P<tag>[^(\s]*)\(.*?\)(?P=tag)"|"(?:\\.|[^"\\\n])*"'
    r"|(?<![0-9a-fA-F])'(?:\\.|[^'\\\n])+'",
    re.S,
)
_AFTER_HEAD = re.compile(r"(\)|\bconst|\bnoexcept|\boverride|\bfinal|\bmutable|&|\}|->\s*[\w:<>,\s*&]+)\s*$")
_NOT_FUNCTION = re.compile(
    r"^\s*(?:inline\s+)?(namespace|class|struct|enum|union|extern)\b(?!.*\)\s*(?:const\s*)?$)", re.S
)
_DIRECTIVE = re.compile(r"^[ \t]*#(?:[^\n]*\\\n)*[^\n]*", re.M)


def without_comments_and_strings(text):
    """The same text, with blanks for every comment and the inside of every literal: lines keep their numbers."""
    return _NOISE.sub(_blank, text)


def _blank(match):
    return re.sub(r"[^\n]", " ", match.group(0))


def _pairs(text):
    opened, pairs = [], {}
    for place, sign in enumerate(text):
        if sign == "{":
            opened.append(place)
        elif sign == "}" and opened:
            pairs[opened.pop()] = place
    return pairs


def _is_initializer(text, end):
    rest = text[end + 1 :].lstrip()
    return rest[:1] in (",", "{", ";", ")", ".", "(")


def functions(text):
    """(name, first line, lines from the opening to the closing brace) of every function that has a body."""
    code = _DIRECTIVE.sub(_blank, without_comments_and_strings(text))
    pairs = _pairs(code)
    found, head_start, place = [], 0, 0
    while place < len(code):
        sign = code[place]
        if sign in ";}":
            head_start = place + 1
        elif sign == "{" and place in pairs:
            head, end = code[head_start:place], pairs[place]
            if "(" in head and _is_initializer(code, end):
                place = end + 1
                continue
            if "(" in head and not _NOT_FUNCTION.match(head) and _AFTER_HEAD.search(head):
                name = re.search(r"([\w:~]+|operator\s*\S+)\s*\(", head)
                line = code.count("\n", 0, place) + 1
                found.append((name.group(1) if name else "?", line, code.count("\n", place, end) + 1))
                place = end
                head_start = end + 1
            else:
                head_start = place + 1
        place += 1
    return found
