"""Copying, and saying honestly what became of it."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from collections.abc import Callable
from datetime import datetime
from pathlib import Path

TOOLS: tuple[tuple[str, tuple[str, ...], str], ...] = (
    ("pbcopy", (), ""),
    ("wl-copy", (), "WAYLAND_DISPLAY"),
    ("xclip", ("-selection", "clipboard"), "DISPLAY"),
    ("xsel", ("--clipboard", "--input"), "DISPLAY"),
    ("clip.exe", (), ""),
    ("clip", (), ""),
)
"""Program, its arguments, and the variable without which it cannot work."""

PATIENCE = 3.0
"""Seconds a clipboard program may take."""


def system_tool() -> list[str] | None:
    """The clipboard program of this machine, None if there is none that can work now."""
    for name, args, needs in TOOLS:
        if name == "clip" and sys.platform != "win32":
            continue
        if needs and not os.environ.get(needs):
            continue
        if path := shutil.which(name):
            return [path, *args]
    return None


def hand_over(text: str, tool: list[str]) -> bool:
    """Give the text to a clipboard program; True if it took it."""
    try:
        # Output goes nowhere: xclip stays alive behind us and would hold a pipe open.
        done = subprocess.run(  # noqa: S603 - a fixed list of programs, the text goes to stdin
            tool,
            input=text.encode(),
            timeout=PATIENCE,
            check=False,
            stdout=subprocess.DEVNULL,
            stderr=subprocess.DEVNULL,
        )
    except (OSError, subprocess.SubprocessError):
        return False
    return done.returncode == 0


def save(text: str, folder: Path) -> Path:
    """Write the text to a new file only its owner may read.

    Raises:
        OSError: the folder cannot be written to.
    """
    folder.mkdir(parents=True, exist_ok=True)
    stem = datetime.now().strftime("answer-%Y%m%d-%H%M%S")
    for number in range(100):
        path = folder / f"{stem}{f'-{number}' if number else ''}.txt"
        try:
            handle = os.open(path, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600)
        except FileExistsError:
            continue
        with os.fdopen(handle, "w", encoding="utf-8") as file:
            file.write(text + "\n")
        return path
    raise OSError(f"{folder} holds too many files of this second")


def copy(text: str, terminal: Callable[[str], None], folder: Path) -> str:
    """Copy by every way there is.

    Args:
        text: what to copy.
        terminal: sends the text to the terminal's clipboard (OSC 52), which does not answer.
        folder: where a file is saved if no clipboard program took the text.

    Returns:
        One sentence that says which way was taken and whether it is known to have worked.
    """
    terminal(text)
    tool = system_tool()
    if tool and hand_over(text, tool):
        return f"Copied with {Path(tool[0]).name}."
    try:
        path = save(text, folder)
    except OSError as error:
        return (
            "Sent to your terminal's clipboard. It does not say whether that worked: paste to see. "
            f"It could not be saved to a file ({error.strerror or error})."
        )
    return (
        "Sent to your terminal's clipboard. It does not say whether that worked, so the mail is "
        f"also saved in {path}"
    )
