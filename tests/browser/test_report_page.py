"""Reports in a browser: readable at 360 px, accessible, and silent on the network."""

from pathlib import Path

import pytest
from playwright.sync_api import Browser

from generator.website.exam.report_page import report_page
from tests.browser.conftest import THEME, Visit
from tests.browser.test_every_page import violations
from tests.reports.real_reports import real_reports


@pytest.mark.parametrize("scheme", ["light", "dark"])
@pytest.mark.parametrize("kind", ["person", "class", "profile"])
def test_a_report_reads_well_on_a_phone_and_asks_for_nothing(
    chromium: Browser, tmp_path: Path, kind: str, scheme: str
) -> None:
    content = real_reports("new_hire_check", 12)[kind]
    file = tmp_path / "report.html"
    file.write_bytes(report_page(content, theme=THEME, site="../site/"))
    context = chromium.new_context(viewport={"width": 360, "height": 780}, color_scheme=scheme)
    visit = Visit(context, tmp_path.as_uri())
    page = visit.open("report.html")
    assert page.evaluate("document.documentElement.scrollWidth") == 360
    assert visit.complaints == []
    assert [url for url in visit.requests if not url.startswith("data:")] == [file.as_uri()]
    context.close()
    # the rules need script in the page, which its own policy forbids
    context = chromium.new_context(
        viewport={"width": 360, "height": 780}, color_scheme=scheme, bypass_csp=True
    )
    page = Visit(context, tmp_path.as_uri()).open("report.html")
    assert violations(page) == []
    context.close()
