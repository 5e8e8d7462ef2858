"""The speed budgets as ratios in one run: python eval/bench.py [--large]

Prints milliseconds for scale only; the ratios count. Nothing here is a test: clocks move.
"""

from __future__ import annotations

import json
import os
import random
import resource
import subprocess
import sys
import time
from collections.abc import Callable
from pathlib import Path
from statistics import median

from rank_bm25 import BM25Okapi

from guidebot import Assistant
from guidebot.evaluate.sets import find_sets
from guidebot.search.bm25 import Bm25

ROOT = Path(__file__).resolve().parent.parent


def timed(call: Callable[[], object]) -> float:
    """Seconds of one call."""
    start = time.perf_counter()
    call()
    return time.perf_counter() - start


def quantile(times: list[float], share: float) -> float:
    """A quantile of the times, in milliseconds."""
    return sorted(times)[min(len(times) - 1, int(len(times) * share))] * 1e3


def processes(rounds: int = 15) -> None:
    """`guidebot ask` against a bare interpreter, interleaved, warm caches."""
    # An installed program finds its modules compiled; some shells forbid writing that down.
    allowed = {k: v for k, v in os.environ.items() if k != "PYTHONDONTWRITEBYTECODE"}
    bare = [sys.executable, "-c", "pass"]
    ask = [sys.executable, "-m", "guidebot", "ask", "how tight should the heel strap be"]
    subprocess.run(ask, cwd=ROOT, check=True, capture_output=True, env=allowed)
    runs: dict[str, list[float]] = {"bare": [], "ask": []}
    for _ in range(rounds):
        for name, command in (("bare", bare), ("ask", ask)):
            runs[name].append(
                timed(
                    lambda c=command: subprocess.run(c, cwd=ROOT, capture_output=True, env=allowed)
                )
            )
    low, high = median(runs["bare"]) * 1e3, median(runs["ask"]) * 1e3
    print(f"process: bare {low:.0f} ms, ask {high:.0f} ms, ratio {high / low:.1f} (budget 8)")


def memory() -> None:
    """Peak memory of one `ask`."""
    code = (
        "import resource, sys; from guidebot.cli.main import main\n"
        "try: main(['ask', 'how tight should the heel strap be'])\n"
        "except SystemExit: pass\n"
        "print(resource.getrusage(resource.RUSAGE_SELF).ru_maxrss, file=sys.stderr)"
    )
    run = subprocess.run([sys.executable, "-c", code], cwd=ROOT, capture_output=True, text=True)
    print(f"memory of ask: {int(run.stderr.split()[-1]) / 1024:.0f} MB (budget 60)")


def answers(rounds: int = 3) -> None:
    """Whole answers in process, dev questions."""
    assistant = Assistant.open()
    texts = [
        json.loads(line)["text"]
        for author in ("a1", "a2")
        for line in (find_sets() / "questions" / f"{author}.jsonl").read_text("utf-8").splitlines()
    ]
    for text in texts[:30]:
        assistant.answer(text)
    times = [timed(lambda t=text: assistant.answer(t)) for _ in range(rounds) for text in texts]
    print(
        f"answer in process, {len(assistant.guide.passages)} passages: "
        f"p50 {quantile(times, 0.5):.2f} ms, p95 {quantile(times, 0.95):.2f} ms (budget p95 3 ms)"
    )


def engines(sizes: tuple[int, ...]) -> None:
    """Our postings against rank-bm25 on the same tokens, scores checked equal."""
    rng = random.Random(7)
    vocabulary = [f"w{i}" for i in range(5_000)]
    weights = [1 / (rank + 2.7) for rank in range(len(vocabulary))]
    for size in sizes:
        documents = [rng.choices(vocabulary, weights, k=rng.randint(40, 150)) for _ in range(size)]
        frequent = set(vocabulary[:100])  # a stop list, as in real use
        documents = [[w for w in document if w not in frequent] for document in documents]
        ours, theirs = Bm25.build(documents), BM25Okapi(documents)
        queries = [rng.sample(rng.choice(documents), k=6) for _ in range(20)]
        mine, other = [], []
        for query in queries:
            mine.append(timed(lambda q=query, index=ours: index.top(q, 5)))
            other.append(timed(lambda q=query, index=theirs: index.get_scores(q)))
            reference = theirs.get_scores(query)
            assert all(abs(reference[i] - s) < 1e-9 for i, s in ours.scores(query).items())
        ratio = median(other) / median(mine)
        print(
            f"BM25, {size} passages: ours {median(mine) * 1e3:.2f} ms "
            f"(p95 {quantile(mine, 0.95):.2f}), rank-bm25 {median(other) * 1e3:.2f} ms, "
            f"{ratio:.0f} times faster (budget 15 at 20,000), equal scores"
        )


if __name__ == "__main__":
    processes()
    memory()
    answers()
    engines((200, 2_000, 20_000))
    own = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024
    print(f"(this bench itself peaked at {own:.0f} MB)")
