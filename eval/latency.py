"""Key to echo and first paint on a pty, beside a minimal Textual application, in one run.

Usage: python eval/latency.py [KEYS]

Each application runs in a process of its own on a pty of 80 x 24. A key is one byte written to the
pty; its echo is the moment the letter comes back. Three figures: a bare application with one text
area; guidebot at rest; guidebot while it answers one question after another in its worker.
"""

from __future__ import annotations

import fcntl
import json
import os
import pty
import select
import signal
import struct
import subprocess
import sys
import termios
import time
from pathlib import Path

ROOT = Path(__file__).parent.parent
WAIT = 60.0
LETTERS = "qzxjkvw"

BARE = """
from textual.app import App
from textual.widgets import Footer, TextArea
class Bare(App):
    BINDINGS = [("f1", "quit", "Leave")]
    def compose(self):
        yield TextArea()
        yield Footer()
    def on_mount(self):
        self.query_one(TextArea).cursor_blink = False
Bare().run()
"""

FACE = """
import sys
from pathlib import Path
from guidebot.tui.app import GuidebotApp
content = Path(sys.argv[2]) if len(sys.argv) > 2 else None
app = GuidebotApp(content)
if sys.argv[1] == "busy":
    # The same pipeline as for a person's question, one question after the other, for ever.
    from guidebot.tui import session
    real = session.start_talk
    def start(assistant, case):
        talk = real(assistant, case)
        import itertools, threading
        from guidebot.reply.dialogue import Dialogue
        def grind():
            other = Dialogue(assistant)
            for n in itertools.count():
                other.say(f"can she do stairs on day {n % 90}, and the sock part slides down")
        threading.Thread(target=grind, daemon=True).start()
        return talk
    app._starter = start
app.run()
"""


class Terminal:
    """A process on a pty, and what it has written so far."""

    def __init__(self, code: str, *args: str) -> None:
        self.began = time.perf_counter()
        self.master, slave = pty.openpty()
        fcntl.ioctl(slave, termios.TIOCSWINSZ, struct.pack("HHHH", 24, 80, 0, 0))
        env = {**os.environ, "TERM": "xterm-256color", "PYTHONPATH": str(ROOT)}
        env.pop("NO_COLOR", None)
        self.process = subprocess.Popen(
            [sys.executable, "-c", code, *args],
            stdin=slave, stdout=slave, stderr=slave, env=env, start_new_session=True,
        )  # fmt: skip
        os.close(slave)

    def until(self, wanted: bytes, limit: float = WAIT) -> float:
        """Milliseconds until these bytes are written."""
        start, seen = time.perf_counter(), b""
        while wanted not in seen:
            left = limit - (time.perf_counter() - start)
            if left <= 0 or not select.select([self.master], [], [], left)[0]:
                raise TimeoutError(f"{wanted!r} did not come; last: {seen[-300:]!r}")
            seen += os.read(self.master, 65536)
        return (time.perf_counter() - start) * 1000

    def quiet(self, seconds: float = 0.15, limit: float = 3.0) -> None:
        """Read on until nothing was written for a while."""
        end = time.perf_counter() + limit
        while time.perf_counter() < end and select.select([self.master], [], [], seconds)[0]:
            os.read(self.master, 65536)

    def key(self, letter: str) -> float:
        """Milliseconds from a byte in to its echo."""
        os.write(self.master, letter.encode())
        took = self.until(letter.encode(), 5.0)
        self.quiet(0.02, 0.2)
        return took

    def close(self) -> None:
        """End the process."""
        self.process.send_signal(signal.SIGTERM)
        try:
            self.process.wait(5)
        except subprocess.TimeoutExpired:
            self.process.kill()
        os.close(self.master)


def measure(name: str, code: str, keys: int, *args: str) -> dict[str, float | str | int]:
    """First paint and key to echo of one application."""
    terminal = Terminal(code, *args)
    try:
        terminal.until(b"\x1b[?1049h")
        terminal.until(b"Leave" if name == "bare" else b"Staff")
        paint = (time.perf_counter() - terminal.began) * 1000
        if name != "bare":
            # A first question starts the talk; its answer stands when nothing more is painted.
            terminal.quiet(1.5, WAIT)
            os.write(terminal.master, b"how do i wash it")
            terminal.quiet()
            os.write(terminal.master, b"\r")
            terminal.until(b"You asked")
            terminal.quiet(1.5, WAIT)
        terminal.quiet()
        took = sorted(terminal.key(LETTERS[n % len(LETTERS)]) for n in range(keys))
    finally:
        terminal.close()
    return {
        "name": name, "keys": keys, "first_paint_ms": round(paint, 1),
        "p50_ms": round(took[len(took) // 2], 2),
        "p95_ms": round(took[int(len(took) * 0.95)], 2), "max_ms": round(took[-1], 2),
    }  # fmt: skip


def main() -> None:
    """Print one line for each application, then the ratios."""
    keys = int(sys.argv[1]) if len(sys.argv) > 1 else 200
    content = sys.argv[2:3]
    rows = [
        measure("bare", BARE, keys),
        measure("at rest", FACE, keys, "rest", *content),
        measure("searching", FACE, keys, "busy", *content),
    ]
    for row in rows:
        print(json.dumps(row))
    for row in rows[1:]:
        paint, echo = (float(row[k]) / float(rows[0][k]) for k in ("first_paint_ms", "p95_ms"))
        print(f"{row['name']}: first paint {paint:.2f}, key to echo p95 {echo:.2f} times bare")


if __name__ == "__main__":
    main()
