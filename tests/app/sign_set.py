# SPDX-FileCopyrightText: The Setfolio authors
# SPDX-License-Identifier: MIT
"""Signs a set off in a real window on a virtual screen of 1366 x 768: the review, three signatures drawn by the pointer,
the seal; then reopens it, and signs and seals it anew; asks for the printer, saves a PDF and a copy with numbers only. From
outside the program the chain is computed with SHA-256, the QR codes are read off the screen and off the printed page, the
strokes looked for among the page's vectors, and every socket of the whole run is listed: none may be of the internet.

  sign_set.py SETFOLIO [--pictures FOLDER]
"""
import hashlib
import json
import math
import os
import pathlib
import re
import signal
import subprocess
import sys
import tempfile
import time

import hands

HERE = pathlib.Path(__file__).parent
SIGNERS = ("Wim Sedge", "Tobias Dunlin", "Orla Vantage")


class Signer(hands.Pointer):
    """Draws on the pad, which is found by its accessible name."""

    def draw(self, seed):
        box = self.box(self.find(lambda name, role: name.startswith("Sign here")))
        place = lambda i: (box.x + box.width * (0.15 + 0.7 * i / 40),
                           box.y + box.height * (0.5 + 0.3 * math.sin(i * (seed + 2) / 5)))
        hands.xdotool("mousemove", *map(int, place(0)), "mousedown", 1)
        for i in range(1, 41):
            hands.xdotool("mousemove", *map(int, place(i)))
            time.sleep(0.02)  # a busy machine takes moves that come together for one
        hands.xdotool("mouseup", 1)
        time.sleep(0.2)


def prepare(program, folder):
    """A match whose first set has ended and is to be signed."""
    text = subprocess.run([sys.executable, HERE / "signed_match.py", HERE.parents[1] / "resources/rulebooks/high-school.json"],
                          check=True, capture_output=True, text=True).stdout
    entries = [json.loads(line) for line in text.splitlines()]
    entries = [entry for entry in entries if entry["kind"] not in ("signed", "sealed")]
    officials = [{"role": role, "name": name} for role, name in zip(("scorer", "second-referee", "first-referee"), SIGNERS)]
    entries.insert(1, {"kind": "officials", "officials": officials})
    match = folder / "signed.setfolio"
    subprocess.run([program, "enter", "-", "--to", match], input="\n".join(map(json.dumps, entries)).encode(), check=True,
                   stdout=subprocess.DEVNULL)
    return match


def entries_of(match):
    return [json.loads(line) for line in match.read_text(encoding="utf-8").splitlines()]


def wait_for(match, kind, count, within=8.0):
    """Waits until the ledger holds so many entries of a kind."""
    deadline = time.time() + within
    while time.time() < deadline:
        if sum(entry["kind"] == kind for entry in entries_of(match)) >= count:
            return
        time.sleep(0.05)
    raise AssertionError(f"{count} entries of the kind {kind} expected in the ledger")


def sign_off(hand, match, seed, picture, signed):
    """All of it, from the step card to the seal."""
    hand.press_button("Sign off")
    picture("review")
    hand.press_button("To the signatures")
    for i in range(len(SIGNERS)):
        hand.draw(seed + i)
        picture(f"signature-{i + 1}")
        hand.press_button("Record the signature")
        wait_for(match, "signed", signed + i + 1)
    picture("to-be-sealed")
    hand.press_button("Seal set 1")
    wait_for(match, "sealed", 1 if signed == 0 else 2)
    time.sleep(0.5)
    picture("sealed")
    seen = read_qr_off_screen()
    hand.press_button("Done")
    return seen


def read_qr_off_screen():
    with tempfile.NamedTemporaryFile(suffix=".png") as shot:
        subprocess.run(["import", "-window", "root", shot.name], check=True)
        return subprocess.run(["zbarimg", "--quiet", "--raw", shot.name], capture_output=True, text=True).stdout.strip()


def reopen(hand, match, picture):
    """By undo, which a seal stops."""
    hands.xdotool("key", "BackSpace")
    time.sleep(1.0)
    hands.xdotool("type", "--delay", "25", "a remark was forgotten")
    picture("reopen")
    hand.press_button("Reopen set 1")
    wait_for(match, "reopened", 1)


def give_path(path):
    """To the file dialog that comes up."""
    time.sleep(1.0)
    hands.xdotool("type", "--delay", "15", path)
    hands.xdotool("key", "Return")
    deadline = time.time() + 8.0
    while not path.exists() and time.time() < deadline:
        time.sleep(0.05)
    assert path.exists(), f"{path.name} was not saved"
    time.sleep(0.3)


def print_and_copy(hand, folder, picture):
    """The preview with the printer's dialog, a PDF, and a copy with numbers only."""
    hands.xdotool("key", "ctrl+p")
    hand.press_button("Print…")
    time.sleep(2.0)
    picture("printer")
    hands.xdotool("key", "Escape")
    time.sleep(0.5)
    hand.press_button("Save as PDF…")
    give_path(folder / "from-the-window.pdf")
    hands.xdotool("key", "Escape")
    time.sleep(0.5)
    hands.xdotool("key", "ctrl+shift+s")
    hand.press_button("Numbers only")
    picture("copy")
    hand.press_button("Save…")
    give_path(folder / "numbers-only.setfolio")
    picture("copied")
    hands.xdotool("key", "Escape")
    copy = (folder / "numbers-only.setfolio").read_text(encoding="utf-8")
    assert not any(part in copy for name in SIGNERS for part in name.split()), "the copy names somebody"


def digests(match):
    """The chain, recomputed as FORMAT.md describes it; what it was before each seal."""
    digest, seals = "0" * 64, []
    for line in match.read_bytes().splitlines():
        body, _, tail = line.rpartition(b',"digest":')
        if b'"kind":"sealed"' in body:
            seals.append(digest)
        digest = hashlib.sha256(digest.encode() + body).hexdigest()
        assert tail == f'"{digest}"}}'.encode(), "the chain does not hold"
    return seals


def paths_of(program, match, folder):
    """How many points each open path on the printed page has, and what its QR code says."""
    pdf = folder / "signed.pdf"
    subprocess.run([program, "print", match, "--to", pdf], check=True, stdout=subprocess.DEVNULL)
    plain = folder / "plain.pdf"
    subprocess.run(["qpdf", "--qdf", "--object-streams=disable", pdf, plain], check=True)
    lengths, length = [], 0
    for operator in re.findall(rb"^[-0-9. ]+ ([ml])$", plain.read_bytes(), re.M):
        if operator == b"m":
            lengths.append(length)
            length = 0
        length += 1
    subprocess.run(["pdftoppm", "-r", "300", "-png", "-f", "1", "-l", "1", pdf, folder / "page"], check=True)
    page = next(folder.glob("page*.png"))
    qr = subprocess.run(["zbarimg", "--quiet", "--raw", page], capture_output=True, text=True).stdout.strip()
    page.unlink()
    return [*lengths, length], qr


def check_strokes(match, lengths):
    strokes = [entry["strokes"][0] for entry in entries_of(match) if entry["kind"] == "signed"]
    assert len(strokes) == 6
    for stroke in strokes:
        assert len(stroke) // 3 >= 15 and stroke[2::3] == sorted(stroke[2::3]) and stroke[-1] > 0, "a stroke has lost its points"
        assert len(stroke) // 3 in lengths, f"no path of {len(stroke) // 3} points is on the page"


def check_sockets(log):
    made = [line for line in log.read_text(errors="replace").splitlines() if "socket(" in line]
    assert made, "the run has made no socket at all, so that nothing was watched"
    internet = [line for line in made if "AF_INET" in line]
    assert not internet, "sockets of the internet:\n" + "\n".join(internet)
    return len(made)


def watched(log, *command):
    return ["strace", "--follow-forks", "--trace=socket,connect", "--output-append-mode", f"--output={log}", *map(str, command)]


def end(window):
    """Ends the program; strace, which watches it, ends with it."""
    children = pathlib.Path(f"/proc/{window.pid}/task/{window.pid}/children").read_text().split()
    for child in map(int, children):
        os.kill(child, signal.SIGTERM)
    window.wait(10)


def main():
    program = os.path.abspath(sys.argv[1])
    pictures = pathlib.Path(sys.argv[sys.argv.index("--pictures") + 1]) if "--pictures" in sys.argv else None
    folder = pathlib.Path(tempfile.mkdtemp(prefix="setfolio-signed-"))
    match, log = prepare(program, folder), folder / "sockets"

    def picture(name):
        if pictures:
            pictures.mkdir(parents=True, exist_ok=True)
            time.sleep(0.3)
            subprocess.run(["import", "-window", "root", pictures / f"{name}.png"], check=True)

    window = subprocess.Popen(watched(log, program, match))
    time.sleep(4.0)
    try:
        hand = Signer()
        first = sign_off(hand, match, 1, picture, 0)
        reopen(hand, match, picture)
        second = sign_off(hand, match, 5, picture, 3)
        picture("table")
        print_and_copy(hand, folder, picture)
    except BaseException:
        picture("failed")
        raise
    finally:
        end(window)
    seals = digests(match)
    assert len(seals) == 2 and seals[0] in first and seals[1] in second, "the screen shows another digest than the chain's"
    lengths, qr = paths_of(program, match, folder)
    assert seals[1] in qr and seals[0] not in qr, f"the page's QR code says {qr}"
    check_strokes(match, lengths)
    for command in (["check", match], ["export", match, "--as", "json"], ["print", match, "--to", folder / "again.pdf"]):
        subprocess.run(watched(log, program, *command), stdout=subprocess.DEVNULL, check=True)
    print(f"signed, sealed, reopened and sealed again; six signatures as vectors; {check_sockets(log)} sockets, none of them of "
          "the internet")


if __name__ == "__main__":
    main()
