# SPDX-FileCopyrightText: The Setfolio authors
# SPDX-License-Identifier: MIT
"""Plays invented sets rally by rally and keeps them as lists of entries; herons-larks.py and stories.py say which.

The same plan gives the same list, byte for byte."""

import json
import random
from datetime import datetime, timedelta

LOCAL_BEHIND_UTC = timedelta(hours=4)
ROSTERS = {
    "home": ("Rowan Estcourt", [
        (2, "Tamsin Orrell", "libero"), (4, "Wren Halloway"), (5, "Odile Fenwick"), (7, "Juno Pelletier"),
        (9, "Briony Sandever"), (10, "Maren Tidewell"), (11, "Posy Lindqvist"), (12, "Ottilie Crake", "captain"),
        (14, "Fern Abernook"), (15, "Delphie Rusk"), (18, "Isolde Marran"), (21, "Hetty Quillane", "libero")]),
    "visitors": ("Alder Wexcombe", [
        (1, "Linnet Garrowby"), (3, "Saffi Dunmore", "libero"), (6, "Bryn Scarfe"), (8, "Coral Petherick", "captain"),
        (9, "Ines Vallory"), (13, "Marnie Stobart"), (16, "Thea Underhay"), (17, "Zadie Crowhurst"),
        (19, "Perrin Oakshott"), (20, "Lotte Brandreth"), (22, "Nova Hessler"), (24, "Esme Tarrant", "libero")]),
}
OFFICIALS = [
    ("first-referee", "Corin Asheby"), ("second-referee", "Mirela Dostrova"), ("scorer", "Pia Wendle"),
    ("assistant-scorer", "Tomas Ackerby"), ("timer", "Una Brockhurst"),
    ("line-judge", "Gil Trevanion"), ("line-judge", "Sorrel Maddock")]

# A set: its seed; the line-ups by court position; who comes in for the server of a slot and leaves when that slot comes
# to the front row; the slot a libero serves and plays in while it is in the back row, and who she is; what happens before
# which rally; the rally it is left at.
REMARKS = ["Play was held at the table's request: a shoe was tied on court.",
           "The ball was changed after the rally before this one."]
OTHERS = {"home": "visitors", "visitors": "home"}
CARDS = {"coach": ("visitors", {"role": "assistant-coach"}, "warning", "Shouted at the line judge."),
         "player": ("home", {"number": 15}, "warning", "Pulled at the net after the rally."),
         "coach again": ("visitors", {"role": "assistant-coach"}, "penalty", "On the court during the rally."),
         "coach for good": ("visitors", {"role": "assistant-coach"}, "disqualification", "Threw the clipboard.")}


class Match:
    """The list as it grows, and the clock on the wall."""

    def __init__(self):
        self.clock = datetime(2026, 10, 14, 18, 21, 40)
        self.entries = []
        self.remarks = iter(REMARKS)

    def add(self, kind, seconds=0.0, **members):
        self.clock += timedelta(milliseconds=int(seconds * 1000))
        time = (self.clock + LOCAL_BEHIND_UTC).isoformat(timespec="milliseconds") + "Z"
        named = {name.replace("_", "-"): value for name, value in members.items()}
        self.entries.append({"time": time, "kind": kind, **named})

    def wall(self):
        return self.clock.strftime("%H:%M")


class Set:
    """Plays one set rally by rally: who serves, from which slot, and who stands in each slot now."""

    def __init__(self, match, plan, serves_first):
        self.match, self.plan, self.serving = match, plan, serves_first
        self.chance = random.Random(plan["seed"])
        self.points = {"home": 0, "visitors": 0}
        self.run = 0
        self.rally = 0
        self.time_outs = {"home": 0, "visitors": 0}
        positions = plan["positions"]
        self.slots = {team: positions[team] if team == serves_first else positions[team][1:] + positions[team][:1]
                      for team in positions}
        self.slots = {team: list(numbers) for team, numbers in self.slots.items()}
        self.starters = {team: tuple(numbers) for team, numbers in self.slots.items()}
        self.server = {serves_first: 1, OTHERS[serves_first]: 6}
        self.libero_in = {"home": False, "visitors": False}
        self.wrong_server_due = False
        self.missed = None

    def between(self, low, high):
        return low + (high - low) * self.chance.random()

    def won(self):
        high, low = max(self.points.values()), min(self.points.values())
        return high >= 25 and high - low >= 2

    def substitute(self, team, slot, number):
        out = self.slots[team][slot - 1]
        if out != number:
            self.match.add("substitution", self.between(5, 9), team=team, **{"in": number, "out": out})
            self.slots[team][slot - 1] = number

    def dead_ball(self):
        """Substitutes come in to serve and go out again as their slot comes to the front row; then the libero serves."""
        for team in self.points:
            for slot, number in self.plan["servers"][team].items():
                if self.server[team] == slot and team == self.serving and self.run == 0:
                    self.substitute(team, slot, number)
                if (slot - self.server[team]) % 6 == 3:
                    self.substitute(team, slot, self.starters[team][slot - 1])
        receiving = OTHERS[self.serving]
        if self.run >= 3 and self.time_outs[receiving] < 2 and self.run % 3 == 0:
            self.time_outs[receiving] += 1
            self.match.add("time-out", self.between(3, 6), team=receiving)
            self.match.clock += timedelta(seconds=62)
        for team in self.plan["liberos"]:
            self.move_libero(team)

    def move_libero(self, team):
        """In when her slot comes to serve, out when it comes to the front row."""
        slot, libero = self.plan["liberos"][team]
        if self.libero_in[team] and (slot - self.server[team]) % 6 == 3:
            self.match.add("libero-out", self.between(3, 5), team=team, libero=libero)
            self.libero_in[team] = False
        if not self.libero_in[team] and self.server[team] == slot and team == self.serving and self.run == 0:
            self.match.add("libero-in", self.between(4, 7), team=team, libero=libero, replaced=self.slots[team][slot - 1])
            self.libero_in[team] = True

    def point(self, team):
        self.points[team] += 1
        self.run = self.run + 1 if team == self.serving else 0
        if team != self.serving:
            self.serving = team
            self.server[team] = self.server[team] % 6 + 1

    def card(self, team, who, level, reason):
        self.match.add("sanction", self.between(20, 30), team=team, **who, level=level, reason=reason)
        if level != "warning":
            self.point(OTHERS[team])
            self.dead_ball()

    def delay(self, level):
        self.match.add("delay-sanction", self.between(15, 25), team="home", level=level, reason="Slow to take the court.")
        if level == "penalty":
            self.point("visitors")
            self.dead_ball()

    def wrong_server(self):
        """She serves from the start of the term; the table tells the second referee as she hits her third serve."""
        team, slot = self.serving, self.server[self.serving]
        served = self.slots[team][slot % 6]
        first = None
        for _ in range(2):
            self.match.add("serve-contacted", self.between(9, 14))
            self.match.add("rally-won", self.between(5, 21), by=team)
            first = first or len(self.match.entries)
            self.rally += 1
        self.match.add("server-seen", self.between(3, 5), number=served)
        self.match.add("serve-contacted", self.between(3, 5))
        self.match.add("wrong-server", self.between(20, 40), team=team, served=served, taken_back_from=first)
        self.point(OTHERS[team])
        self.dead_ball()

    def hurt(self):
        """The visitors' captain cannot play on, and every player of their bench is bound to another slot."""
        slot = 5
        out = self.slots["visitors"][slot - 1]
        bench = [number for number in self.plan["servers"]["visitors"].values() if number not in self.slots["visitors"]]
        self.match.add("substitution", self.between(60, 90), team="visitors", **{"in": bench[0], "out": out},
                       how="exceptional")
        self.slots["visitors"][slot - 1] = bench[0]
        self.plan["servers"]["visitors"] = {kept: number for kept, number in self.plan["servers"]["visitors"].items()
                                            if number != bench[0]}
        self.match.add("captain-named", self.between(5, 9), team="visitors", captain=self.slots["visitors"][3])

    def happens(self, event):
        if event in CARDS:
            self.card(*CARDS[event])
        if event == "delay":
            self.delay("warning")
        if event == "delay again":
            self.delay("penalty")
        if event == "hurt":
            self.hurt()
        if event == "remark":
            self.match.add("remark", self.between(6, 9), text=next(self.match.remarks))
        self.wrong_server_due = self.wrong_server_due or event == "wrong server"
        slot, _ = self.plan["liberos"].get(self.serving, (0, 0))
        if self.wrong_server_due and self.run == 0 and self.server[self.serving] not in (slot, (slot - 2) % 6 + 1):
            self.wrong_server_due = False
            self.wrong_server()

    def play_rally(self):
        self.rally += 1
        self.dead_ball()
        event = self.plan["before"].get(self.rally)
        self.happens(event)
        if event == "missed":
            self.missed = (len(self.match.entries) + 1, self.serving)
            self.match.clock += timedelta(seconds=25)
            self.point(self.serving)
            return
        self.match.add("serve-contacted", self.between(9, 14))
        if event in ("replay", "re-serve"):
            self.match.add("replay", self.between(4, 8), **({"again": "re-serve"} if event == "re-serve" else {}))
            self.match.add("serve-contacted", self.between(8, 12))
        winner = self.serving if self.chance.random() < 0.36 else OTHERS[self.serving]
        seconds = self.between(5, 21)
        if event == "slip":
            self.match.add("rally-won", seconds, by=OTHERS[winner])
            reason = self.plan.get("reason", "wrong side")
            self.match.add("strike", self.between(2, 4), entry=len(self.match.entries), reason=reason)
            seconds = self.between(1, 2)
        self.match.add("rally-won", seconds, by=winner)
        self.point(winner)
        if self.missed:
            before, by = self.missed
            self.match.add("rally-won", self.between(6, 9), by=by,
                           placed={"before": before, "reason": "missed at the table"})
            self.missed = None

    def play(self):
        while not self.won() and self.rally != self.plan["left at"]:
            self.play_rally()


def open_match(match, identity="6f1c1c1e-3f0b-4b8e-9c55-2c4f6a7d1027", number="27"):
    match.add("match-opened", id=identity, format=1,
              competition="Estuary and Uplands Schools League", division="Division 1", match_number=number,
              venue="Tidewater Hall, Court 2", date="2026-10-14", scheduled="18:30", best_of=5, rulebook="high-school",
              teams={"home": {"name": "Saltmarsh Herons", "code": "SAL", "colour": "teal"},
                     "visitors": {"name": "Quarry Ridge Larks", "code": "QRL", "colour": "white"}})
    for team, (coach, players) in ROSTERS.items():
        listed = [{"number": number, "name": name, **{mark: True for mark in marks}} for number, name, *marks in players]
        match.add("roster", 140, team=team, players=listed, coach=coach)
    match.add("officials", 65, officials=[{"role": role, "name": name} for role, name in OFFICIALS])
    match.add("toss", 190, serves_first="visitors", left="home")


def line_ups(match, positions):
    """The slips of both teams, and the start of the set."""
    for team, captain in (("home", 12), ("visitors", 8)):
        liberos = [number for number, _, *marks in ROSTERS[team][1] if "libero" in marks]
        match.add("line-up", 34, team=team, positions=positions[team], captain=captain, liberos=liberos)
    match.clock += timedelta(seconds=130)
    match.add("set-started", at=match.wall())


def end_set(match):
    match.clock += timedelta(seconds=25)
    match.add("set-ended", at=match.wall())


def print_list(match, out):
    for entry in match.entries:
        print(json.dumps(entry, ensure_ascii=False, separators=(",", ":")), file=out)
