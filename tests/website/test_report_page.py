"""A report as a page: nothing beside it, no script, and links that lead into the course."""

import re
from base64 import b64encode
from hashlib import sha256
from html import unescape
from pathlib import Path

import pytest

from generator.reports import person_report
from generator.website.exam.report_page import report_page
from tests.bank.small_bank import REPOSITORY
from tests.reports.real_reports import real_reports
from tests.reports.toy_forms import NAMES, answer, paper_of, took

THEME = REPOSITORY / "site_theme"
KINDS = ("person", "class", "profile")


def page(content, site="../../../site/"):
    """Write a report as text."""
    return report_page(content, theme=THEME, site=site).decode("utf-8")


def words_of(html):
    """Return the words that a reader sees, with single spaces."""
    body = re.sub(r"<svg.*?</svg>|<style>.*?</style>", "", html.partition("<body")[2], flags=re.S)
    return " ".join(unescape(re.sub(r"<[^>]*>", " ", body)).split())


@pytest.mark.parametrize("kind", KINDS)
def test_a_page_asks_for_nothing_and_runs_nothing(kind):
    html = page(real_reports("new_hire_check", 4)[kind])
    style = re.search(r"<style>(.*?)</style>", html, re.S)[1]
    policy = unescape(re.search(r'Content-Security-Policy" content="([^"]*)"', html)[1])
    print_of = b64encode(sha256(style.encode()).digest()).decode()
    assert policy == (
        f"default-src 'none'; style-src 'sha256-{print_of}'; font-src data:; "
        "base-uri 'none'; form-action 'none'"
    )
    assert "<script" not in html and "<link" not in html and "<img" not in html
    assert not re.search(r"\s(?:style|on\w+|src)=", html.replace(style, ""))
    assert set(re.findall(r"url\((.{15})", style)) == {"data:font/woff2"}


@pytest.mark.parametrize("kind", KINDS)
def test_a_page_is_the_same_every_time_and_its_places_are_named_once(kind):
    content = real_reports("new_hire_check", 4)[kind]
    html = page(content)
    assert page(content) == html
    names = re.findall(r'\sid="([^"]*)"', html)
    assert len(names) == len(set(names))
    assert html.count("<h1") == 1
    assert set(re.findall(r'aria-labelledby="([^"]*)"', html)) <= set(names)


def test_every_reason_stands_on_the_page_of_a_person():
    content = real_reports("final_paper", 1, 1)["person"]
    words = words_of(page(content))
    texts = [row["text"] for group in content["slips"] for row in group["rows"]]
    missing = [t for t in texts if " ".join(t.replace("`", " ").split()) not in words]
    assert missing == []
    assert all(sentence in words for sentence in (*content["gate"], *content["notes"]))


def test_strips_are_pictures_with_words():
    content = real_reports("new_hire_check", 4)["person"]
    html = page(content)
    assert re.findall(r'role="img" aria-label="([^"]*)"', html) == [
        module["in_words"] for module in content["modules"]
    ]


@pytest.mark.parametrize("kind", KINDS)
def test_links_lead_to_files_of_the_built_course_only(kind):
    html = page(real_reports("new_hire_check", 4)[kind], "../site/")
    links = re.findall(r'href="([^"]*)"', html)
    assert links
    for link in links:
        place = re.fullmatch(r"\.\./site/([a-z_]+)(-questions)?\.html(#[a-z-]+)?", link)
        assert place, link
        assert (REPOSITORY / "course" / f"{place[1]}.md").is_file()


def test_an_objective_with_study_questions_links_to_them():
    paper = paper_of([answer(1, 0, item="filler/mix/x"), answer(2, 0, item="cleaning/wash/x")])
    html = page(person_report(paper, NAMES), "../site/")
    assert 'href="../site/filler-questions.html#mix"' in html
    assert "cleaning-questions" not in html and 'href="../site/cleaning.html"' in html


def test_what_people_wrote_never_becomes_markup():
    hostile = '<script>alert(1)</script><img src=x onerror=alert(1)>"'
    findings = took("B", f"{hostile} [link](javascript:alert(1)) ![p](x.png) **No**")
    paper = paper_of([answer(1, 0, findings=findings)], person=hostile, label=hostile)
    html = page(person_report(paper, NAMES))
    assert "<script" not in html and "<img" not in html
    assert not re.search(r'="\s*javascript:', html)
    assert "<strong>No</strong>" in html
    assert "&lt;script&gt;" in html


def test_the_theme_brings_the_licences_of_the_typefaces_it_puts_into_a_page():
    html = page(real_reports("new_hire_check", 4)["person"])
    for licence in sorted((THEME / "assets" / "fonts").glob("LICENCE-*.txt")):
        first = Path(licence).read_text("utf-8").strip().splitlines()[0]
        assert first in unescape(html)
