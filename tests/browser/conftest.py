"""A real browser over the built site, served on this machine only."""

import shutil
import threading
from collections.abc import Iterator
from functools import partial
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path

import pytest
from jinja2 import Environment, FileSystemLoader
from playwright.sync_api import Browser, BrowserContext, Page, sync_playwright

from generator.website.engine import build_into
from generator.website.offline import WORKER, offline_worker
from generator.website.site import build_site
from tests.website.small_course import small_course

ROOT = Path(__file__).parents[2]
THEME = ROOT / "site_theme"
CHROMIUM = Path("/usr/bin/chromium")
ARGUMENTS = (
    "--no-sandbox",
    "--disable-gpu",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
)


class QuietHandler(SimpleHTTPRequestHandler):
    """Serves files and keeps the test report free of request lines."""

    def log_message(self, format: str, *arguments: object) -> None:
        """Say nothing."""


class Visit:
    """A page under watch: what it asked for and what it complained about."""

    def __init__(self, context: BrowserContext, address: str) -> None:
        self.address = address
        self.page: Page = context.new_page()
        self.requests: list[str] = []
        self.complaints: list[str] = []
        self.page.on("request", lambda request: self.requests.append(request.url))
        self.page.on("console", lambda message: self.complaints.append(message.text))
        self.page.on("pageerror", lambda error: self.complaints.append(str(error)))

    def open(self, name: str) -> Page:
        """Open a page of the site by its file name."""
        self.page.goto(f"{self.address}/{name}")
        return self.page

    def strangers(self) -> list[str]:
        """Give the requests that went anywhere but to this site."""
        return [url for url in self.requests if not url.startswith((self.address, "blob:"))]


@pytest.fixture(scope="session")
def chromium() -> Iterator[Browser]:
    """Start the browser once."""
    if not CHROMIUM.is_file():
        pytest.skip(f"no Chromium at {CHROMIUM}: the browser tests need Debian's package")
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=CHROMIUM, args=list(ARGUMENTS))
        yield browser
        browser.close()


def _served(folder: Path) -> Iterator[str]:
    handler = partial(QuietHandler, directory=str(folder))
    with ThreadingHTTPServer(("127.0.0.1", 0), handler) as server:
        thread = threading.Thread(target=server.serve_forever, daemon=True)
        thread.start()
        yield f"http://127.0.0.1:{server.server_address[1]}"
        server.shutdown()
        thread.join()


@pytest.fixture(scope="session")
def site_folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Build the real course once."""
    folder = tmp_path_factory.mktemp("site")
    build_into(ROOT / "mkdocs.yml", folder)
    return folder


@pytest.fixture(scope="session")
def site_address(site_folder: Path) -> Iterator[str]:
    """Serve the real course."""
    yield from _served(site_folder)


@pytest.fixture(scope="session")
def small_folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Write the small course with the theme's own page frame."""
    folder = tmp_path_factory.mktemp("small")
    shutil.copytree(THEME / "assets", folder / "assets")
    frame = Environment(loader=FileSystemLoader(THEME)).get_template("main.html")
    pages = build_site(small_course(), THEME).pages
    (folder / WORKER).write_text(offline_worker(pages, THEME), encoding="utf-8")
    for built in pages:
        html = frame.render(
            built=built,
            page={"content": built.html},
            config={"site_name": "Guidecoat"},
            published=True,
        )
        (folder / built.path).write_text(html, encoding="utf-8")
    return folder


@pytest.fixture(scope="session")
def small_address(small_folder: Path) -> Iterator[str]:
    """Serve the small course."""
    yield from _served(small_folder)


@pytest.fixture
def phone(chromium: Browser, small_address: str) -> Iterator[Visit]:
    """Visit the small course on a phone 360 wide, with an empty store."""
    context = chromium.new_context(viewport={"width": 360, "height": 780}, has_touch=True)
    visit = Visit(context, small_address)
    yield visit
    context.close()
    assert visit.complaints == [], "the page complained on its console"
    assert visit.strangers() == [], "the page asked another host"
