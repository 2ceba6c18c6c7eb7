# SPDX-FileCopyrightText: The Setfolio authors
# SPDX-License-Identifier: MIT
"""Scores a whole set in a real window on a virtual screen of 1366 x 768, from the line-ups to the result: by keys alone or
by pointer alone, from outside the program. Then ledger, record and printed text must agree with what was keyed.

Once, in the middle of a rally, the program is killed and started again.

  play_set.py SETFOLIO keys|pointer [--pictures FOLDER]
"""
import hashlib
import json
import os
import pathlib
import subprocess
import sys
import tempfile
import time

import hands
import playedset
from playedset import HOME, VISITORS

KILLED_AT = next(number for number, step in enumerate(playedset.steps()) if number > 25 and step[0] == "rally" and step[2])
TEAMS = {HOME: ("Saltmarsh Herons", "SAL"), VISITORS: ("Quarry Ridge Larks", "QRL")}


class PointerScorer(hands.Pointer):
    """The steps of a set, by pointer. Controls are known by what is written on them."""

    def toss(self):
        self.press_button("Record the toss")
        self.press_button("Stands left of the scorer: Saltmarsh")
        self.press_button("Serves first: Saltmarsh")
        self.press_button("Record the toss")

    def line_up(self, team):
        self.press_button("Type the line-up", "Record line-up of", "Record the line-up")
        for number in [*playedset.LINE_UPS[team], playedset.CAPTAINS[team], playedset.LIBEROS[team][0]]:
            self.press(lambda name, role, number=number: hands.is_button(role) and name.split(" ")[0] == str(number),
                       leftmost=team == HOME)
        self.press_button("Record line-up of", "Record both line-ups")

    def start(self):
        self.press_button("Start the set")

    def contact(self):
        self.press_button("Serve contacted")

    def rally(self, team):
        self.press_button(TEAMS[team][0])

    def replay(self):
        self.press_button("Replay")

    def undo(self):
        self.press_button("Undo")

    def side_button(self, team, words):
        """The control of that name on the team's side: home stands left."""
        self.press(lambda name, role: hands.is_button(role) and name.startswith(words), leftmost=team == HOME)

    def sub(self, team, number_in, number_out):
        self.side_button(team, "Sub")
        bar = lambda number: lambda name, role: hands.is_button(role) and name.split(",")[0].split(" ")[0] == str(number)
        self.press(bar(number_in))
        try:
            self.find(bar(number_out), within=1.0)
            self.press(bar(number_out))
        except AssertionError:
            pass  # the number out was proposed, being the only lawful one
        self.press(lambda name, role: hands.is_button(role) and name.startswith("Record  "))
        self.press_button("Close")

    def time_out(self, team):
        self.side_button(team, "Time-out")

    def libero(self, team):
        self.side_button(team, "Libero")
        self.press_button("Serves, only the mark")

    def end(self):
        self.press_button("End the set", "Confirm")
        self.press_button("Confirmed: end the set")


def prepare(program, folder):
    """A match with rosters, nothing more, written from a plain list."""
    rosters = []
    for team in (HOME, VISITORS):
        numbers = sorted(set(playedset.LINE_UPS[team] + playedset.BENCH[team]))
        rosters.append({"kind": "roster", "team": team, "players": [
            {"number": number, "name": f"Player {number}", **({"libero": True} if number in playedset.LIBEROS[team] else {})}
            for number in numbers]})
    opening = {"kind": "match-opened", "best-of": 3, "rulebook": "high-school", "competition": "Estuary and Uplands Schools League",
               "teams": {team: {"name": name, "code": code} for team, (name, code) in TEAMS.items()}}
    match = folder / "played.setfolio"
    text = "\n".join(json.dumps(entry) for entry in [opening, *rosters]) + "\n"
    subprocess.run([program, "enter", "-", "--to", match], input=text.encode(), check=True)
    return match


def acknowledged(match, count, within=5.0):
    """Waits until the ledger holds so many lines."""
    deadline = time.time() + within
    while time.time() < deadline:
        lines = match.read_bytes().count(b"\n")
        if lines >= count:
            return lines
        time.sleep(0.02)
    raise AssertionError(f"{count} entries expected in the ledger, {match.read_bytes().count(bytes([10]))} there")


class Window:
    """The program, which may be killed in the middle of a set and started again."""

    def __init__(self, program, match):
        self.command = [program, match]
        self.start()

    def start(self):
        self.process = subprocess.Popen(self.command)
        time.sleep(2.0)

    def kill(self):
        self.process.kill()
        self.process.wait()


def perform(scorer, match, picture, window):
    lines = acknowledged(match, 3)

    def done(more=1):
        nonlocal lines
        lines = acknowledged(match, lines + more)

    scorer.toss(), done(), picture("line-ups")
    for team in (HOME, VISITORS):
        scorer.line_up(team), done()
    picture("start")
    scorer.start(), done()
    for number, step in enumerate(playedset.steps()):
        if step[0] == "rally":
            if step[2]:
                scorer.contact(), done()
            if number == KILLED_AT:  # in the middle of a rally, as when the machine dies: it goes on where it was
                window.kill(), window.start(), picture("after-kill")
            scorer.rally(step[1]), done()
        elif step[0] == "replay":
            scorer.contact(), done()
            scorer.replay(), done()
        elif step[0] == "slip":
            scorer.rally(step[1]), done()
            scorer.undo(), done()
        elif step[0] == "sub":
            scorer.sub(*step[1:]), done()
        elif step[0] == "time-out":
            scorer.time_out(step[1]), done(), picture(f"time-out-{number}")
        elif step[0] == "libero":
            scorer.libero(step[1]), done()
    picture("set-won")
    scorer.end(), done()
    picture("next-set")


def check_chain(match):
    """The chain, recomputed with the standard library's SHA-256 as FORMAT.md describes it."""
    digest = "0" * 64
    for number, line in enumerate(match.read_bytes().splitlines(), 1):
        body, _, tail = line.rpartition(b',"digest":')
        digest = hashlib.sha256(digest.encode() + body).hexdigest()
        assert tail == f'"{digest}"}}'.encode(), f"line {number}: the chain does not hold"


def check_record(program, match):
    exported = json.loads(subprocess.run([program, "export", match, "--as", "json"], check=True, capture_output=True).stdout)
    played, wanted = exported["sets"][0], playedset.expected()
    assert played["finished"] and played["winner"] == HOME, played["score"]
    assert exported["findings"] == [], exported["findings"]
    for team in (HOME, VISITORS):
        has, wants = played["teams"][team], wanted[team]
        assert played["score"][team] == wants["points"]
        assert len(has["substitutions"]) == wants["substitutions"]
        assert [(taken["own"], taken["opponents"]) for taken in has["time-outs"]] == wants["time-outs"]
        terms = [(term["slot"], term["round"],
                  [(mark["shape"], mark["text"], mark.get("struck", False)) for mark in term["marks"]])
                 for term in has["terms"]]
        for mine, theirs in zip(wants["terms"], terms):
            assert mine == theirs, f"{team}: keyed {mine}, on the sheet {theirs}"
        assert len(terms) == len(wants["terms"])


def check_print(program, match, folder):
    pdf = folder / "played.pdf"
    subprocess.run([program, "print", match, "--to", pdf], check=True, stdout=subprocess.DEVNULL)
    text = subprocess.run(["pdftotext", "-layout", pdf, "-"], check=True, capture_output=True).stdout.decode()
    for words in ("Saltmarsh Herons", "Quarry Ridge Larks", "Estuary and Uplands Schools League", "10/7", "4/12", "7/10",
                  "14–10", "6–7", "14–19", "RS", "25", "22"):
        assert words in text, f"'{words}' is not in the printed sheet"


def main():
    program, by = os.path.abspath(sys.argv[1]), sys.argv[2]
    pictures = pathlib.Path(sys.argv[4]) if len(sys.argv) > 4 else None
    folder = pathlib.Path(tempfile.mkdtemp(prefix="setfolio-played-"))
    match = prepare(program, folder)

    def picture(name):
        if pictures:
            pictures.mkdir(parents=True, exist_ok=True)
            time.sleep(0.3)
            subprocess.run(["import", "-window", "root", pictures / f"{by}-{name}.png"], check=True)

    window = Window(program, match)
    try:
        scorer = hands.Keyboard() if by == "keys" else PointerScorer()
        perform(scorer, match, picture, window)
    except BaseException:
        picture("failed")
        raise
    finally:
        window.kill()
    check_chain(match)
    assert subprocess.run([program, "check", match], stdout=subprocess.DEVNULL).returncode == 0
    check_record(program, match)
    check_print(program, match, folder)
    rallies = sum(step[0] == "rally" for step in playedset.steps())
    print(f"a set of {rallies} rallies, scored by {by}: ledger, record and print agree with what was keyed")


if __name__ == "__main__":
    main()
