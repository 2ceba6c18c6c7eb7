# SPDX-FileCopyrightText: The Setfolio authors
# SPDX-License-Identifier: MIT
"""Plays the demo match and prints it as a list of entries: herons-larks.py > herons-larks.list.jsonl

Everything in it is invented. The same script gives the same list, byte for byte; `setfolio enter` makes the match file of it."""

import sys

from play import OTHERS, Match, Set, end_set, line_ups, open_match, print_list

SETS = [
    {"seed": 145, "positions": {"home": [7, 12, 10, 4, 15, 9], "visitors": [8, 16, 20, 1, 13, 22]},
     "servers": {"home": {3: 18, 5: 11}, "visitors": {2: 17}}, "liberos": {"home": (6, 2), "visitors": (4, 3)},
     "before": {12: "slip", 18: "re-serve", 24: "coach", 30: "remark", 34: "player"}, "left at": None},
    {"seed": 64, "positions": {"home": [12, 10, 4, 15, 9, 7], "visitors": [16, 20, 1, 13, 22, 8]},
     "servers": {"home": {2: 18}, "visitors": {1: 17, 4: 6}}, "liberos": {"home": (5, 2), "visitors": (5, 3)},
     "before": {9: "replay", 11: "slip", 14: "delay", 17: "wrong server", 25: "delay again", 29: "coach again",
                33: "remark"}, "left at": None},
    {"seed": 367, "positions": {"home": [10, 4, 15, 9, 7, 12], "visitors": [20, 1, 13, 22, 8, 16]},
     "servers": {"home": {1: 18, 3: 11}, "visitors": {1: 6, 3: 17, 4: 19, 6: 9}},
     "liberos": {"home": (4, 21), "visitors": (2, 3)},
     "before": {19: "missed", 28: "coach for good", 36: "hurt"}, "left at": 42},
]


def main():
    match = Match()
    open_match(match)
    serves_first = "visitors"
    for plan in SETS:
        line_ups(match, plan["positions"])
        played = Set(match, plan, serves_first)
        played.play()
        if played.won():
            end_set(match)
        serves_first = OTHERS[serves_first]
    print_list(match, sys.stdout)


if __name__ == "__main__":
    main()
