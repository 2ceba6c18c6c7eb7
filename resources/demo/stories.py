# SPDX-FileCopyrightText: The Setfolio authors
# SPDX-License-Identifier: MIT
"""Plays the sets of the practice matches: stories.py FOLDER writes a list of entries for each story into the folder.

A story is a set as it should have been recorded. The same script gives the same lists, byte for byte."""

import sys
from pathlib import Path

from play import Match, Set, end_set, line_ups, open_match, print_list

HOME, VISITORS = [7, 12, 10, 4, 15, 9], [8, 16, 20, 1, 13, 22]
NOBODY = {"home": {}, "visitors": {}}
SERVERS = {"home": {3: 18, 5: 11}, "visitors": {2: 17}}
LIBEROS = {"home": (6, 2), "visitors": (4, 3)}

# In the order of their difficulty. The seed is chosen so that the set is neither short nor endless.
STORIES = {
    "1-plain-set": {"seed": 4, "servers": NOBODY, "liberos": {}, "before": {}},
    "2-substitutions": {"seed": 10, "servers": SERVERS, "liberos": {}, "before": {20: "re-serve"}},
    "3-libero-serves": {"seed": 6, "servers": {"home": {3: 18}, "visitors": {2: 17}}, "liberos": LIBEROS,
                        "before": {15: "replay"}},
    "4-wrong-server": {"seed": 11, "servers": {"home": {}, "visitors": {2: 17}}, "liberos": {},
                       "before": {11: "wrong server", 22: "delay"}},
    "5-corrected-call": {"seed": 12, "servers": SERVERS, "liberos": LIBEROS,
                         "before": {9: "slip", 16: "coach", 21: "replay", 27: "slip", 33: "coach again"}},
}


def play(number, plan):
    match = Match()
    open_match(match, f"0a9d3c57-1e42-4d6b-8f10-5e7a2b6c900{number}", f"P{number}")
    whole = plan | {"positions": {"home": HOME, "visitors": VISITORS}, "left at": None, "reason": "the call was changed"}
    line_ups(match, whole["positions"])
    Set(match, whole, "visitors").play()
    end_set(match)
    return match


def main():
    folder = Path(sys.argv[1])
    for number, (name, plan) in enumerate(STORIES.items(), start=1):
        with open(folder / f"{name}.list.jsonl", "w", encoding="utf-8") as out:
            print_list(play(number, plan), out)


if __name__ == "__main__":
    main()
