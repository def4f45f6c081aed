"""Draw five screens of the course, narrow and wide, light and dark, to be looked at.

Run it by `python tests/browser/draw_screens.py FOLDER`; it builds the course first.
"""

import sys
import tempfile
from collections.abc import Callable
from pathlib import Path
from typing import Literal

from playwright.sync_api import Page, sync_playwright

ROOT = Path(__file__).parents[2]
sys.path.insert(0, str(ROOT))

from generator.website.engine import build_into  # noqa: E402
from tests.browser.conftest import ARGUMENTS, CHROMIUM  # noqa: E402
from tests.browser.gzip_server import served  # noqa: E402

Scheme = Literal["light", "dark"]
SCHEMES: tuple[Scheme, ...] = ("light", "dark")
SIZES = ((360, 780), (1280, 860))


def nothing(page: Page) -> None:
    """Leave the page as it opens."""


def wrong_answer(page: Page) -> None:
    """Choose the first option of a question and check it."""
    question = page.locator(".question.kind-choice:visible").first
    question.locator(".option").first.click()
    question.locator(".check").click()
    question.scroll_into_view_if_needed()


def look_for_a_fault(page: Page) -> None:
    """Search for a fault."""
    page.get_by_label("Look for").fill("solvent popping")
    page.keyboard.press("Enter")


SCREENS: dict[str, tuple[str, Callable[[Page], None]]] = {
    "home": ("index.html", nothing),
    "lesson": ("film_build.html", nothing),
    "question": ("film_build-questions.html", wrong_answer),
    "search": ("search.html", look_for_a_fault),
    "today": ("today.html", nothing),
}


def main(folder: Path) -> None:
    """Write one picture for each screen, size and scheme."""
    folder.mkdir(parents=True, exist_ok=True)
    with tempfile.TemporaryDirectory() as temporary, sync_playwright() as playwright:
        site = Path(temporary) / "site"
        build_into(ROOT / "mkdocs.yml", site)
        browser = playwright.chromium.launch(executable_path=CHROMIUM, args=list(ARGUMENTS))
        with served(site) as address:
            for scheme in SCHEMES:
                for width, height in SIZES:
                    size = {"width": width, "height": height}
                    page = browser.new_page(viewport=size, color_scheme=scheme)
                    for name, (path, act) in SCREENS.items():
                        page.goto(f"{address}/{path}")
                        act(page)
                        page.wait_for_timeout(300)
                        page.screenshot(path=folder / f"{name}-{width}-{scheme}.png")
                    page.close()
        browser.close()


if __name__ == "__main__":
    if len(sys.argv) != 2:
        raise SystemExit("give the folder for the pictures")
    main(Path(sys.argv[1]))
