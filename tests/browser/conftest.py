"""A real browser over the built site, served on this machine only."""

import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest
from jinja2 import Environment, FileSystemLoader
from playwright.sync_api import Browser, BrowserContext, Page, sync_playwright

from generator.website.context.course import Course
from generator.website.offline.kept_offline import MANIFEST, app_manifest, write_worker
from generator.website.pages.site import build_site
from tests.browser.gzip_server import served
from tests.website.small_course import small_course

ROOT = Path(__file__).parents[2]
THEME = ROOT / "site_theme"
CHROMIUM = Path("/usr/bin/chromium")
# Switched off by Playwright itself; a second list of features replaces the first.
OFF_ALREADY = (
    "AvoidUnnecessaryBeforeUnloadCheckSync",
    "DestroyProfileOnBrowserClose",
    "HttpsUpgrades",
    "HttpsFirstBalancedModeAutoEnable",
    "LensOverlay",
    "MediaRouter",
    "PaintHolding",
    "ThirdPartyStoragePartitioning",
    "AvoidCorsURLLoaderRestartOnRedirect",
    "OptimizationHints",
    "NetworkTimeServiceQuerying",
    "AimEnabled",
    "PreconnectToSearch",
)
# Lists that drop from an address bar nobody sees: two pages of the browser's own for each window,
# and more work than the pages that are tested.
ADDRESS_BAR = (
    "WebUIOmniboxPopup",
    "WebUIOmniboxAimPopup",
    "WebUIOmniboxFullPopup",
    "PreloadTopChromeWebUI",
)
ARGUMENTS = (
    "--no-sandbox",
    "--disable-gpu",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    f"--disable-features={','.join((*OFF_ALREADY, *ADDRESS_BAR))}",
)


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

    def report_unread_files(self) -> list[str]:
        """Return the requests that went anywhere but to this site."""
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


@pytest.fixture(scope="session")
def site_folder(real_site: Path) -> Path:
    """Return the real course as it was built."""
    return real_site


@pytest.fixture(scope="session")
def site_address(site_folder: Path) -> Iterator[str]:
    """Serve the real course."""
    with served(site_folder) as address:
        yield address


def write_site(course: Course, folder: Path) -> None:
    """Write a course with the theme's own page frame, in place of what the folder holds."""
    shutil.rmtree(folder, ignore_errors=True)
    shutil.copytree(THEME / "assets", folder / "assets")
    frame = Environment(loader=FileSystemLoader(THEME)).get_template("main.html")
    site = build_site(course, THEME)
    for path, text in site.files:
        (folder / path).parent.mkdir(parents=True, exist_ok=True)
        (folder / path).write_text(text, encoding="utf-8")
    for built in site.pages:
        html = frame.render(
            built=built,
            page={"content": built.html},
            config={"site_name": "Guidecoat"},
            published=True,
        )
        (folder / built.path).write_text(html, encoding="utf-8")
    (folder / MANIFEST).write_text(app_manifest(course.title), encoding="utf-8")
    write_worker(folder, THEME)


@pytest.fixture(scope="session")
def small_folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Write the small course."""
    folder = tmp_path_factory.mktemp("small") / "site"
    write_site(small_course(), folder)
    return folder


@pytest.fixture(scope="session")
def small_address(small_folder: Path) -> Iterator[str]:
    """Serve the small course."""
    with served(small_folder) as address:
        yield address


@pytest.fixture
def phone(chromium: Browser, small_address: str) -> Iterator[Visit]:
    """Visit the small course on a phone 360 wide, with an empty store."""
    context = chromium.new_context(viewport={"width": 360, "height": 780}, has_touch=True)
    visit = Visit(context, small_address)
    yield visit
    context.close()
    assert visit.complaints == [], "the page complained on its console"
    assert visit.report_unread_files() == [], "the page asked another host"
