"""Compare the build of our site with the site engine alone, in one run.

Run it by `python tests/benchmarks/bench_build.py`.

The engine alone builds as many pages from plain Markdown files, made of the text of our built
pages, in a page frame that shows the content and no more. It does so twice: with that text once
(the same words), and with the text repeated until each file has as many bytes as our page (the
same bytes). What is left over is ours: reading the bank, drawing and solving the questions, and
our page templates.
"""

import logging
import sys
import tempfile
import time
from collections.abc import Callable
from html import escape
from html.parser import HTMLParser
from pathlib import Path
from statistics import median

from mkdocs.commands.build import build
from mkdocs.config import load_config

ROOT = Path(__file__).parents[2]
sys.path.insert(0, str(ROOT))

from generator.website.engine import build_into  # noqa: E402

ROUNDS = 5
SETTINGS = """
site_name: Plain
docs_dir: pages
use_directory_urls: false
theme:
  name: null
  custom_dir: frame
plugins: []
"""
FRAME = "<!doctype html><title>{{ page.title }}</title><main>{{ page.content }}</main>"


class Text(HTMLParser):
    """Gathers the words of a page, one line for each piece of text."""

    def __init__(self) -> None:
        super().__init__()
        self.lines: list[str] = []

    def handle_data(self, data: str) -> None:
        """Keep a piece of text that is more than space."""
        words = " ".join(data.split())
        if words:
            self.lines.append(escape(words))


def plain_page(page: Path, same_bytes: bool) -> str:
    """Return Markdown made of a page's text, once or until it has as many bytes as the page."""
    reader = Text()
    reader.feed(page.read_text("utf-8"))
    text = f"# {page.stem}\n\n" + "\n\n".join(reader.lines) + "\n\n"
    if not same_bytes:
        return text
    size = page.stat().st_size
    times = -(-size // len(text.encode()))
    return (text * times).encode()[:size].decode("utf-8", "ignore")


def plain_project(folder: Path, site: Path, same_bytes: bool) -> Path:
    """Write a project of plain Markdown with a page for every page of a site."""
    (folder / "pages").mkdir(parents=True)
    (folder / "frame").mkdir()
    (folder / "frame" / "main.html").write_text(FRAME, "utf-8")
    (folder / "mkdocs.yml").write_text(SETTINGS, "utf-8")
    for page in sorted(site.glob("*.html")):
        (folder / "pages" / f"{page.stem}.md").write_text(plain_page(page, same_bytes), "utf-8")
    return folder / "mkdocs.yml"


def plain_build(config: Path, target: Path) -> None:
    """Build a project by the engine alone."""
    build(load_config(str(config), site_dir=str(target)))


def seconds(work: Callable[[], object]) -> float:
    """Time one piece of work in seconds."""
    start = time.perf_counter()
    work()
    return time.perf_counter() - start


def main() -> None:
    """Print seconds of our build and of both plain ones, with the ratios."""
    logging.getLogger("mkdocs").setLevel(logging.ERROR)
    with tempfile.TemporaryDirectory() as temporary:
        folder = Path(temporary)
        build_into(ROOT / "mkdocs.yml", folder / "site")
        pages = len(sorted((folder / "site").glob("*.html")))
        configs = {
            "our build": ROOT / "mkdocs.yml",
            "engine, same words": plain_project(folder / "words", folder / "site", False),
            "engine, same bytes": plain_project(folder / "bytes", folder / "site", True),
        }
        builders = dict.fromkeys(configs, plain_build) | {"our build": build_into}
        rounds = [
            [
                seconds(lambda b=builders[name], c=config: b(c, folder / "out"))
                for name, config in configs.items()
            ]
            for _ in range(ROUNDS)
        ]
    times = dict(zip(configs, map(median, zip(*rounds, strict=True)), strict=True))
    print(f"{pages} pages, median of {ROUNDS} builds each, taken in turn")
    for name, taken in times.items():
        print(f"{name:<20}{taken:>7.2f} s   ours is {times['our build'] / taken:.2f} of it")


if __name__ == "__main__":
    main()
