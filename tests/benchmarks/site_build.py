"""What the site weighs, what its build costs beside the bare engine, and how soon an edit shows.

`lines` yields the lines; run it alone by `python tests/benchmarks/site_build.py`. Times are
processor seconds of this process, so that a loaded machine tells nearly the same; what an edit
takes is also given on the clock, from the written file to the new page on the preview's address.
"""

import gzip
import logging
import shutil
import sys
import tempfile
import threading
import time
from collections.abc import Callable, Iterator
from pathlib import Path
from urllib.request import urlopen

ROOT = Path(__file__).parents[2]
sys.path.insert(0, str(ROOT))

from generator.website import build_into  # noqa: E402
from generator.website.offline.kept_offline import content_prints  # noqa: E402
from generator.website.preview import Preview, preview  # noqa: E402
from tests.benchmarks.bench_build import plain_build, plain_project  # noqa: E402

PLAIN_GOAL, STORE_GOAL, RATIO_GOAL, EDIT_GOAL = 150_000, 83_000, 1.5, 1.0
EDITED = "question_bank/items/film_build/convert_units.yml"
PAGE, WORDS, NEW = (
    "film_build-questions.html",
    "The air in a booth moves",
    "The air of a booth moves",
)
PORT, PATIENCE = 8765, 600


def lines() -> Iterator[str]:
    """Yield one line for each figure, with its goal."""
    logging.getLogger("mkdocs").setLevel(logging.ERROR)
    with tempfile.TemporaryDirectory() as temporary:
        folder = Path(temporary)
        site = folder / "site"
        ours = _seconds(lambda: build_into(ROOT / "mkdocs.yml", site))
        plain = plain_project(folder / "plain", site, False)
        engine = _seconds(lambda: plain_build(plain, folder / "out"))
        yield f"cold build {ours:.2f} s, {ours / engine:.2f} of the engine (goal {RATIO_GOAL})"
        pages = sorted(site.glob("*-questions*.html"), key=lambda path: path.stat().st_size)
        size = pages[-1].stat().st_size
        yield f"heaviest of {len(pages)} question pages {size:,} bytes (goal {PLAIN_GOAL:,})"
        goal = STORE_GOAL * len(list(site.glob("*-questions.html")))
        yield f"offline store {stored(site):,} bytes, gzip -9 (goal {goal:,})"
        yield from _edits(folder)


def stored(site: Path) -> int:
    """Return the bytes of all that a phone keeps, each file pressed by gzip at its best."""
    kept = (site / path for path in content_prints(site))
    return sum(len(gzip.compress(path.read_bytes(), 9, mtime=0)) for path in kept)


def _seconds(work: Callable[[], object]) -> float:
    start = time.process_time()
    work()
    return time.process_time() - start


def _project(folder: Path) -> Path:
    """Return a copy of the project that may be edited."""
    root = folder / "project"
    for name in ("question_bank", "course", "site_theme"):
        shutil.copytree(ROOT / name, root / name)
    shutil.copy(ROOT / "mkdocs.yml", root)
    return root


def _edits(folder: Path) -> Iterator[str]:
    root = _project(folder)
    pages = Preview(root / "mkdocs.yml", folder / "preview")
    first = _seconds(pages.refresh)
    _swap(root / EDITED, WORDS, NEW)
    again = _seconds(pages.refresh)
    _swap(root / EDITED, NEW, WORDS)
    yield f"preview: first pages {first:.2f} s, an edited item {again:.2f} s of the processor"
    yield f"preview: an edit is on its address after {_on_the_clock(root):.2f} s (goal {EDIT_GOAL})"


def _on_the_clock(root: Path) -> float:
    """Return seconds from the written file to the new words on the preview's address."""
    address = f"http://127.0.0.1:{PORT}/{PAGE}"
    serving = (root / "mkdocs.yml", "127.0.0.1", PORT)
    threading.Thread(target=preview, args=serving, daemon=True).start()
    _wait(address, WORDS)
    time.sleep(1)
    start = time.perf_counter()
    _swap(root / EDITED, WORDS, NEW)
    _wait(address, NEW)
    return time.perf_counter() - start


def _wait(address: str, words: str) -> None:
    end = time.monotonic() + PATIENCE
    while time.monotonic() < end:
        try:
            if words in urlopen(address, timeout=5).read().decode("utf-8"):
                return
        except OSError:
            pass
        time.sleep(0.02)
    raise SystemExit(f"'{words}' never came to {address}")


def _swap(path: Path, old: str, new: str) -> None:
    text = path.read_text("utf-8")
    assert old in text, f"{path} no longer says '{old}'"
    path.write_text(text.replace(old, new), "utf-8")


if __name__ == "__main__":
    print("\n".join(lines()))
