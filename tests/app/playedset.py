# SPDX-FileCopyrightText: The Setfolio authors
# SPDX-License-Identifier: MIT
"""A set to be played from outside, and what must stand on its sheet: worked out by a plain model that shares no code
with the program. Marks as rules and common practice have them: a ring for every serve, R when it is lost, the opponents'
total un-ringed in their next server's row, a triangle for the libero, S and Sx, T and Tx, RS for a replay."""
import random

HOME, VISITORS = "home", "visitors"
LINE_UPS = {HOME: [4, 7, 12, 9, 15, 3], VISITORS: [17, 12, 5, 21, 8, 1]}  # court positions 1 to 6
LIBEROS = {HOME: [2], VISITORS: [6]}
CAPTAINS = {HOME: 9, VISITORS: 5}
BENCH = {HOME: [10, 11, 14, 2], VISITORS: [4, 19, 23, 6]}
NUMERALS = ["I", "II", "III", "IV", "V", "VI"]


def other(team):
    return VISITORS if team == HOME else HOME


def steps():
    """What is done, in order: ("rally", team, contact first?), ("replay",), ("slip", team), ("sub", team, in, out),
    ("time-out", team), ("libero", team). Home serves first and wins 25-22 in at least 45 rallies."""
    chance = random.Random(20261010)
    while True:
        points, serving, winners = {HOME: 0, VISITORS: 0}, HOME, []
        while max(points.values()) < 25 or abs(points[HOME] - points[VISITORS]) < 2:
            serving = serving if chance.random() < 0.42 else other(serving)
            points[serving] += 1
            winners.append(serving)
        if (points[HOME], points[VISITORS]) == (25, 22):
            break
    done, libero_served, serving, term = [], False, HOME, 0
    for number, winner in enumerate(winners):
        done += {6: [("sub", HOME, 10, 7)], 9: [("sub", VISITORS, 4, 12), ("sub", VISITORS, 19, 8)],
                 13: [("time-out", VISITORS)], 17: [("replay",)], 20: [("slip", other(winner))],
                 24: [("time-out", HOME)], 28: [("sub", HOME, 7, 10)], 33: [("time-out", VISITORS)]}.get(number, [])
        if serving == HOME and term % 6 == 2 and not libero_served:
            done.append(("libero", HOME))
            libero_served = True
        done.append(("rally", winner, number % 3 == 0))
        if winner != serving:
            serving = winner
            term += 1 if winner == HOME else 0
    return done


def expected():
    """The sheet: per team its terms as (slot, round, marks), points, substitutions, time-outs."""
    sheet = {team: {"terms": [], "points": 0, "substitutions": 0, "time-outs": []} for team in (HOME, VISITORS)}
    count = {HOME: 0, VISITORS: 0}

    def open_term(team):
        count[team] += 1
        sheet[team]["terms"].append((NUMERALS[(count[team] - 1) % 6], (count[team] - 1) // 6 + 1, []))

    def mark(team, shape, text, struck=False):
        sheet[team]["terms"][-1][2].append((shape, text, struck))

    open_term(HOME)
    serving, shape = HOME, "ring"
    pending = None  # marks that an undone side-out left in the other team's next cell
    for step in steps():
        if step[0] == "libero":
            shape = "triangle"
        elif step[0] == "sub":
            mark(serving, "none", f"{'S' if step[1] == serving else 'Sx'} {step[2]}/{step[3]}")
            sheet[step[1]]["substitutions"] += 1
        elif step[0] == "time-out":
            mark(serving, "none", "T" if step[1] == serving else "Tx")
            sheet[step[1]]["time-outs"].append((sheet[step[1]]["points"], sheet[other(step[1])]["points"]))
        elif step[0] == "replay":
            mark(serving, shape, "RS")
        elif step[0] == "slip" and step[1] == serving:
            mark(serving, shape, str(sheet[serving]["points"] + 1), struck=True)
        elif step[0] == "slip":
            mark(serving, shape, "R", struck=True)
            pending = (step[1], count[step[1]], ("none", str(sheet[step[1]]["points"] + 1), True))
        else:
            winner = step[1]
            sheet[winner]["points"] += 1
            if winner == serving:
                mark(serving, shape, str(sheet[winner]["points"]))
            else:
                mark(serving, shape, "R")
                serving, shape = winner, "ring"
                open_term(winner)
                if pending and pending[:2] == (winner, count[winner] - 1):
                    mark(winner, *pending[2][:2], struck=True)
                    pending = None
                mark(winner, "none", str(sheet[winner]["points"]))
    return sheet
