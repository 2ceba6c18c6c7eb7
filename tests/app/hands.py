# SPDX-FileCopyrightText: The Setfolio authors
# SPDX-License-Identifier: MIT
"""Two ways to work a window from outside: by keys alone, or by pointer alone, where a control is found by its accessible
name as a screen reader would (AT-SPI), and clicked where it stands."""
import subprocess
import time

import playedset


def xdotool(*words):
    subprocess.run(["xdotool", *map(str, words)], check=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)


def is_button(role):
    """A button that stays down is called a check box on the bus."""
    return "button" in role or role == "check box"


class Keyboard:
    """Nothing but keys. The home team stands left, so its keys are the left hand's."""

    side = {playedset.HOME: {"wins": "Left", "sub": "s", "time-out": "d", "libero": "f"},
            playedset.VISITORS: {"wins": "Right", "sub": "l", "time-out": "k", "libero": "j"}}

    def key(self, *keys):
        for key in keys:
            xdotool("key", "--clearmodifiers", key)
            time.sleep(0.03)

    def type(self, text):
        xdotool("type", "--delay", "25", str(text))

    def toss(self):
        self.key("Return")
        time.sleep(0.6)
        self.key("1", "3", "Return")

    def line_up(self, team):
        self.key("Return")
        time.sleep(0.8)
        for number in playedset.LINE_UPS[team]:
            self.type(number)
            self.key("space")
        self.type(playedset.CAPTAINS[team])
        self.key("space")
        self.type(playedset.LIBEROS[team][0])
        self.key("space", "Return")

    def start(self):
        self.key("Return")

    def contact(self):
        self.key("space")

    def rally(self, team):
        self.key(self.side[team]["wins"])

    def replay(self):
        self.key("y")

    def undo(self):
        self.key("BackSpace")

    def sub(self, team, number_in, number_out):
        self.key(self.side[team]["sub"])
        self.type(number_in)
        self.key("Return")
        if number_in not in playedset.LINE_UPS[team]:  # a starter has only one place to go, which is proposed
            self.type(number_out)
            self.key("Return")
        self.key("Escape")

    def time_out(self, team):
        self.key(self.side[team]["time-out"])

    def libero(self, team):
        self.key(self.side[team]["libero"])
        self.key(self.side[team]["libero"])  # again in the bar: only the mark of her serve

    def end(self):
        self.key("Return")
        time.sleep(0.8)
        self.key("Return")


class Pointer:
    """Nothing but the pointer."""

    def __init__(self):
        import pyatspi  # needs the bus, so only where it is used
        self.atspi = pyatspi

    def controls(self):
        def walk(node):
            for index in range(node.childCount):
                child = node.getChildAtIndex(index)
                if child is not None:
                    yield child
                    yield from walk(child)
        for program in self.atspi.Registry.getDesktop(0):
            if program is not None and "setfolio" in program.name.lower():
                yield from walk(program)

    def find(self, wanted, within=8.0, leftmost=None):
        """A visible control for which wanted(name, role) holds: the newest, or the one furthest to a side."""
        deadline = time.time() + within
        while time.time() < deadline:
            found = [node for node in self.controls()
                     if wanted(node.name, node.getRoleName()) and node.getState().contains(self.atspi.STATE_SHOWING)
                     and node.getState().contains(self.atspi.STATE_ENABLED)]
            if found and leftmost is not None:
                return sorted(found, key=lambda node: self.box(node).x)[0 if leftmost else -1]
            if found:
                return found[-1]
            time.sleep(0.1)
        names = sorted({f"{node.getRoleName()}: {node.name}" for node in self.controls() if node.name})
        raise AssertionError("no such control; there are:\n  " + "\n  ".join(names))

    def box(self, node):
        return node.queryComponent().getExtents(self.atspi.DESKTOP_COORDS)

    def press(self, wanted, leftmost=None):
        box = self.box(self.find(wanted, leftmost=leftmost))
        xdotool("mousemove", box.x + box.width // 2, box.y + box.height // 2, "click", 1)
        time.sleep(0.5)  # longer than a double click, which the table takes for one

    def press_button(self, *starts):
        self.press(lambda name, role: is_button(role) and name.startswith(starts))
