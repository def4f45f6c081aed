"""Weigh and time the course as a cheap phone meets it.

Run it by `python tests/benchmarks/bench_site.py`. It ends with 1 when a figure misses its mark.

The browser is Debian's Chromium with a phone's screen, its processor slowed to a quarter and its
network held to emulated 4G: 9 Mbit/s down, 1.5 Mbit/s up, 165 ms for each answer. Every page is a
first visit with an empty cache, made three times: the times are medians, the shift is the worst.
An answer is timed from the click that the page is handed to the picture with its feedback; how
long the browser holds a touch back first is given beside it. The service worker is left out of
the page's own weight; what it stores afterwards is given as a line of its own.
"""

import gzip
import logging
import os
import sys
import tempfile
from dataclasses import replace
from itertools import cycle
from pathlib import Path
from statistics import median
from typing import Any, NamedTuple

from playwright.sync_api import Browser, Page, sync_playwright

ROOT = Path(__file__).parents[2]
sys.path.insert(0, str(ROOT))

from generator.website.context.course import Course, Variants  # noqa: E402
from generator.website.engine import build_into  # noqa: E402
from generator.website.gather import read_course  # noqa: E402
from generator.website.offline.kept_offline import content_prints  # noqa: E402
from generator.website.pages.site import build_site  # noqa: E402
from tests.browser.conftest import ARGUMENTS, CHROMIUM, THEME  # noqa: E402
from tests.browser.gzip_server import served  # noqa: E402

PHONE: dict[str, Any] = {
    "viewport": {"width": 360, "height": 780},
    "device_scale_factor": 3,
    "is_mobile": True,
    "has_touch": True,
    "service_workers": "block",
}
NETWORK = {
    "offline": False,
    "latency": 165,
    "downloadThroughput": 9_000_000 / 8,
    "uploadThroughput": 1_500_000 / 8,
}
SLOWER = 4
ROUNDS = 3
WATCH = """
window.seen = {paint: 0, shift: 0, clicks: []};
function watch(options, take) {
  const observer = new PerformanceObserver(list => list.getEntries().forEach(take));
  observer.observe({buffered: true, ...options});
}
watch({type: 'largest-contentful-paint'}, entry => { seen.paint = entry.startTime; });
watch({type: 'layout-shift'}, entry => { seen.shift += entry.value; });
watch({type: 'event', durationThreshold: 16}, entry => {
  const checks = entry.name === 'click' && entry.target && entry.target.matches('.check');
  const waited = entry.processingStart - entry.startTime;
  if (checks) { seen.clicks.push([entry.duration - waited, waited]); }
});
"""


class Bar(NamedTuple):
    """A figure with the most it may be."""

    name: str
    found: float
    most: float
    unit: str


def packed(data: bytes) -> float:
    """Return the gzip size in kB."""
    return len(gzip.compress(data, mtime=0)) / 1000


class Cost(NamedTuple):
    """What one first visit to a page took: bytes, ms to the largest paint, and shift.

    answers  for each answer, the ms that the page took and those that the browser held it back
    """

    size: float
    paint: float
    shift: float
    answers: tuple[tuple[float, float], ...]


def visited(browser: Browser, address: str) -> Cost:
    """Open a page as a first visit, answer what it asks, and give what it took."""
    context = browser.new_context(**PHONE)
    page = context.new_page()
    page.add_init_script(WATCH)
    session = context.new_cdp_session(page)
    sizes: list[float] = []
    session.on("Network.loadingFinished", lambda event: sizes.append(event["encodedDataLength"]))
    session.send("Network.enable")
    session.send("Network.emulateNetworkConditions", NETWORK)
    session.send("Emulation.setCPUThrottlingRate", {"rate": SLOWER})
    page.goto(address, wait_until="load")
    page.wait_for_timeout(1500)
    seen = page.evaluate("window.seen")
    answers = answered(page)
    context.close()
    return Cost(sum(sizes), seen["paint"], seen["shift"], answers)


def answered(page: Page) -> tuple[tuple[float, float], ...]:
    """Answer every question that is in view, one after the other; give what each took in ms."""
    for option in page.locator("fieldset.options:visible").all():
        option.locator(".option").first.tap()
    for button in page.locator(".question .check:visible").all():
        button.tap()
        page.wait_for_timeout(150)
    page.wait_for_timeout(300)
    return tuple((own, held) for own, held in page.evaluate("window.seen.clicks"))


def page_bars(browser: Browser, address: str, site: Path) -> list[Bar]:
    """Measure every lesson, the question pages, the course home and the daily check."""
    bars = []
    for path in sorted(site.glob("*.html")):
        lesson = path.with_name(f"{path.stem}-questions.html").is_file()
        if not (lesson or "-questions" in path.stem or path.stem in ("index", "today")):
            continue
        costs = [visited(browser, f"{address}/{path.name}") for _ in range(ROUNDS)]
        paint = median(cost.paint for cost in costs)
        if lesson:
            bars.append(Bar(f"{path.stem}: first visit", costs[0].size / 1000, 150, "kB"))
        bars.append(Bar(f"{path.stem}: largest paint", paint, 1500, "ms"))
        bars.append(Bar(f"{path.stem}: layout shift", max(cost.shift for cost in costs), 0, ""))
        answers = [taken for cost in costs for taken in cost.answers]
        if answers:
            own, held = (median(times) for times in zip(*answers, strict=True))
            name = f"{path.stem}: answer, of {len(answers)} (held back {held:.0f} ms)"
            bars.append(Bar(name, own, 50, "ms"))
    return bars


def weight_bars(site: Path) -> list[Bar]:
    """Weigh the script and the questions of each module."""
    script = (site / "assets" / "course.js").read_bytes()
    bars = [Bar("script of every page", packed(script), 30, "kB")]
    for path in sorted(site.glob("*-questions*.html")):
        bars.append(Bar(f"{path.name}: question data", packed(path.read_bytes()), 60, "kB"))
    return bars


def swollen(course: Course, name: str) -> Course:
    """Return the course with the items of every module moved into one, over its objectives."""
    module = course.module_named(name)
    assert module is not None
    places = cycle(f"{name}/{entry.objective}" for entry in module.objectives)

    def moved(variants: Variants) -> Variants:
        place = next(places)
        return tuple({**one, "module": name, "objective": place} for one in variants)

    everything = [item for items in course.questions.values() for item in items]
    return replace(course, questions={name: tuple(moved(item) for item in everything)})


def growth_bars(course: Course) -> list[Bar]:
    """Hold the pages and data parts of a module about ten times as large against the marks."""
    lessons = dict.fromkeys(course.lessons, "# Lesson\n")
    sizes = {name: len(items) for name, items in course.questions.items()}
    largest = max(sizes, key=lambda name: sizes[name])
    heaviest = []
    for bank in (course, swollen(course, largest)):
        site = build_site(replace(bank, lessons=lessons), THEME)
        pages = [packed(page.html.encode()) for page in site.pages if page.kind == "questions"]
        parts = [packed(f.text.encode()) for f in site.files if f.path.startswith("parts/")]
        heaviest.append((max(pages), max(parts)))
    (page, part), (page_then, part_then) = heaviest
    times = sum(sizes.values()) / sizes[largest]
    print(f"{largest} with {sizes[largest]} items, then {times:.1f} times as many:")
    print(f"heaviest question page {page:.1f} kB, then {page_then:.1f} kB")
    print(f"heaviest data part {part:.1f} kB, then {part_then:.1f} kB")
    return [
        Bar("question page of the swollen module", page_then, 60, "kB"),
        Bar("data part of the swollen module", part_then, 10, "kB"),
    ]


def main() -> int:
    """Print every figure beside its mark."""
    logging.getLogger("mkdocs").setLevel(logging.ERROR)
    course, _ = read_course(ROOT / "question_bank", ROOT / "course", ROOT / "site_theme")
    if course is None:
        raise SystemExit("the bank cannot be read")
    with tempfile.TemporaryDirectory() as temporary, sync_playwright() as playwright:
        site = Path(temporary) / "site"
        build_into(ROOT / "mkdocs.yml", site)
        browser = playwright.chromium.launch(executable_path=CHROMIUM, args=list(ARGUMENTS))
        with served(site) as address:
            bars = weight_bars(site) + page_bars(browser, address, site)
        browser.close()
        load = os.getloadavg()[0]
        kept = list(content_prints(site))
        stored = sum(packed((site / path).read_bytes()) for path in kept)
    bars += growth_bars(course)
    missed = [bar for bar in bars if bar.found > bar.most]
    for bar in bars:
        sign = "  MISSED" if bar in missed else ""
        print(f"{bar.name:<60}{bar.found:>9.2f} of {bar.most:g} {bar.unit}{sign}")
    print(f"stored for use without a network: {len(kept)} files, {stored:.0f} kB")
    print(f"{len(bars)} figures, {len(missed)} missed; load {load:.1f} on {os.cpu_count()} cores")
    return 1 if missed else 0


if __name__ == "__main__":
    sys.exit(main())
