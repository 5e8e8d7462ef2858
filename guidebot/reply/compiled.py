"""The compiled guide: made once from the content folder, kept in the user's cache."""

from __future__ import annotations

import hashlib
import os
import sys
from collections.abc import Callable, Mapping
from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path

from guidebot import __version__, blob
from guidebot.domain.guide import Guide
from guidebot.guide.codec import from_plain, to_plain
from guidebot.plan.activity_words import word_tables
from guidebot.plan.ask import AskReader
from guidebot.safety import compiled as safety
from guidebot.safety.wide import Net
from guidebot.search.engine import SearchEngine
from guidebot.search.leave import LeaveIndex

Say = Callable[[str], None]
FORMAT = "21"
"""Changed whenever the same guide would compile to other bytes."""

_KEEP = 4
"""Compiled guides kept in the cache; older ones are removed."""


_SAFETY = {"rules", "net"}
"""Sections without which every message gets the fixed stop-and-call text."""


@dataclass(frozen=True, slots=True)
class Compiled:
    """A guide, its search engine, the wide net (None if it is damaged), the reader of
    questions of permission (None to build it anew) and its index (None if the guide has none).
    """

    guide: Guide
    engine: SearchEngine
    net: Net | None
    asks: AskReader | None = None
    leave: LeaveIndex | None = None


def cache_folder() -> Path:
    """`GUIDEBOT_CACHE`, else the platform's folder for caches."""
    named = os.environ.get("GUIDEBOT_CACHE")
    if named:
        return Path(named)
    home = Path.home()
    if sys.platform == "win32":
        return Path(os.environ.get("LOCALAPPDATA", home / "AppData" / "Local")) / "guidebot"
    if sys.platform == "darwin":
        return home / "Library" / "Caches" / "guidebot"
    return Path(os.environ.get("XDG_CACHE_HOME") or home / ".cache") / "guidebot"


def open_compiled(
    content: Path | None, *, say: Say = lambda _: None, cache: bool = True
) -> Compiled:
    """Open the guide, compiling it if the cache has no compiled form of just these files.

    Args:
        content: the content folder, None to look for it (`guide.files.find_content`).
        say: told what is being done while compiling, and "" at the end.
        cache: read and write the cache; a cache that cannot be written is passed over.

    Raises:
        ContentError: the guide is missing or has faults.
    """
    folder = _find(content)
    quick = folder_print(folder)
    if cache:
        found = _from_cache(quick)
        if found is not None:
            return found
    sections = compile_guide(folder, say)
    say("")
    data = blob.pack(sections)
    if cache and sections.keys() >= _SAFETY:
        _to_cache(quick, data)
    return _load(blob.unpack(data))


def _find(content: Path | None) -> Path:
    from guidebot.guide.files import find_content

    return find_content(content).resolve()


def folder_print(folder: Path) -> str:
    """A fingerprint of the folder by name, size and time of every file: no file is opened.

    Changes with the program's version and with the injury rules, which are compiled in.
    """
    total = hashlib.sha256(
        f"{FORMAT} {__version__} {sys.version_info[:2]} {safety.stamp().hash} {folder}".encode()
    )
    for path, size, changed in sorted(_files(str(folder))):
        total.update(f"{path}\0{size}\0{changed}\0".encode("utf-8", "surrogateescape"))
    for path, size, changed in sorted(_files(str(Path(safety.__file__).parent / "data"))):
        total.update(f"{path}\0{size}\0{changed}\0".encode("utf-8", "surrogateescape"))
    return total.hexdigest()[:24]


def _files(folder: str) -> list[tuple[str, int, int]]:
    found: list[tuple[str, int, int]] = []
    with os.scandir(folder) as entries:
        for entry in entries:
            if entry.is_dir(follow_symlinks=False):
                found += _files(entry.path)
            elif entry.name.endswith((".md", ".yaml", ".txt", ".tsv")):
                status = entry.stat()
                found.append((entry.path, status.st_size, status.st_mtime_ns))
    return found


def compile_guide(folder: Path, say: Say = lambda _: None) -> dict[str, bytes]:
    """Read the guide and make every section of its compiled form; needs yaml and numpy.

    Raises:
        ContentError: the guide has faults.
    """
    from guidebot.guide.read import read_guide

    say("reading the guide")
    guide = read_guide(folder)
    sections = {"guide": blob.pack_values(to_plain(guide))}
    sections["asks"] = blob.pack_values(word_tables(guide.activities))
    engine = SearchEngine.build_from(guide.wordings, guide, lambda what: say(f"questions: {what}"))
    sections.update(engine.dump())
    if guide.leave:
        off_topic = guide.wordings.get("off-topic", ())
        words = {key: activity.words for key, activity in guide.activities.items()}
        index = LeaveIndex.build(guide.leave, words, off_topic, lambda what: say(f"leave: {what}"))
        sections.update(index.dump())
    # Injury rules that cannot be built must end in a call with every answer, not in no answer.
    with suppress(Exception):
        sections.update(_compile_safety(guide, lambda what: say(f"injury signs: {what}")))
    return sections


def _compile_safety(guide: Guide, say: Say) -> dict[str, bytes]:
    from guidebot.safety import net

    def harmless() -> list[str]:
        return net.harmless(guide.wordings, guide.leave, guide.follow_ups)

    say("rules")
    return {"rules": safety.dump(safety.build()), "net": net.fit_net(harmless, say).dump()}


def _load(sections: Mapping[str, memoryview]) -> Compiled:
    guide = from_plain(blob.unpack_values(sections["guide"]), {})
    engine = SearchEngine.load(guide.passages, sections)
    # Damaged safety sections must not look like a quiet net: without them every message gets the
    # fixed stop-and-call text (`safety.judge`).
    try:
        net: Net | None = Net.load(sections["net"])
    except (KeyError, ValueError):
        net = None
    with suppress(KeyError, ValueError):  # without them `safety.judge` builds its own or calls
        safety.use(safety.load(sections["rules"]))
    asks = AskReader(guide.activities, tables=blob.unpack_values(sections["asks"]))
    leave = LeaveIndex.load(sections) if "leave-asks" in sections else None
    return Compiled(guide, engine, net, asks, leave)


def _from_cache(quick: str) -> Compiled | None:
    try:
        return _load(blob.map_file(cache_folder() / f"guide-{quick}.bin"))
    except (OSError, ValueError, KeyError, TypeError, IndexError):
        return None  # missing or damaged: it is made anew


def _to_cache(quick: str, data: bytes) -> None:
    folder = cache_folder()
    try:
        blob.write_whole(folder / f"guide-{quick}.bin", data)
        kept = sorted(folder.glob("guide-*.bin"), key=lambda p: p.stat().st_mtime, reverse=True)
        for old in kept[_KEEP:]:
            old.unlink(missing_ok=True)
    except OSError:
        return  # a read-only home only costs time
