"""The course in one file needs nothing beside it and leads nowhere else."""

import re
from base64 import b64decode, b64encode
from hashlib import sha256
from pathlib import Path

import pytest

from generator.website.context import BuiltPage, theme_templates
from generator.website.offline.page_sections import page_sections
from generator.website.offline.single_file import ONE_FILE
from tests.some import some
from tests.website.test_pages import Reader

ROOT = Path(__file__).parents[2]
THEME = ROOT / "site_theme"


@pytest.fixture(scope="module")
def site(real_project: Path) -> Path:
    """Return the real course as it was built with its one file."""
    return real_project / "site"


@pytest.fixture(scope="module")
def text(site: Path) -> str:
    """Read the one file."""
    return (site / ONE_FILE).read_text(encoding="utf-8")


@pytest.fixture(scope="module")
def reader(text: str) -> Reader:
    """Read its elements; what stands in templates is left out, as a browser does."""
    found = Reader()
    found.feed(re.sub(r"<template.*?</template>", "", text, flags=re.DOTALL))
    return found


def test_every_page_is_a_section(site: Path, reader: Reader) -> None:
    pages = {path.stem for path in site.glob("*.html")} - {Path(ONE_FILE).stem}
    assert len(pages) > 20
    assert pages <= set(reader.ids)


def test_places_are_unique_and_every_link_and_reference_has_its_place(reader: Reader) -> None:
    places = set(reader.ids)
    assert len(reader.ids) == len(places)
    links = [link for link in reader.links if not link.startswith("data:")]
    assert len(links) > 500
    assert [link for link in links if link[1:] not in places or link[0] != "#"] == []
    assert [place for place in reader.references if place not in places] == []


def test_nothing_is_loaded_from_anywhere(text: str) -> None:
    outside = re.sub(r"<script>.*?</script>", "", text, flags=re.DOTALL)
    assert re.findall(r"<(?:img|iframe|object|embed|video|audio|source)\b", outside) == []
    assert re.findall(r"\ssrc\s*=", outside) == []
    assert {part.partition(":")[0] for part in re.findall(r"url\(([^)#][^)]*)\)", outside)} == {
        "data"
    }
    assert "@import" not in outside


def test_typefaces_are_inside_as_they_are(site: Path, text: str) -> None:
    inside = {
        sha256(b64decode(data)).digest()
        for data in re.findall(r"url\(data:font/woff2;base64,([A-Za-z0-9+/=]+)\)", text)
    }
    files = {sha256(path.read_bytes()).digest() for path in (site / "assets/fonts").glob("*.woff2")}
    assert inside == files


def test_the_licence_of_each_typeface_goes_with_it(site: Path, text: str) -> None:
    for path in some((site / "assets/fonts").glob("LICENCE-*.txt")):
        assert path.read_text("utf-8").strip().splitlines()[0] in text


def test_the_policy_allows_this_script_and_this_style_alone(text: str) -> None:
    """Content Security Policy level 3: a hash is taken over the text inside the element."""
    (policy,) = re.findall(r'Content-Security-Policy" content="([^"]*)"', text)
    policy = policy.replace("&#39;", "'")
    assert "unsafe" not in policy
    assert policy.startswith("default-src 'none';")
    for name, tag in (("script-src", "script"), ("style-src", "style")):
        (inner,) = re.findall(rf"<{tag}>(.*?)</{tag}>", text, flags=re.DOTALL)
        digest = b64encode(sha256(inner.encode("utf-8")).digest()).decode()
        assert f"{name} 'sha256-{digest}';" in policy
    assert text.index("Content-Security-Policy") < text.index("<style>")


def test_no_element_breaks_the_policy(reader: Reader) -> None:
    assert "style" not in reader.attributes
    assert not {name for name in reader.attributes if name.startswith("on")}


def test_the_worker_does_not_store_the_one_file(site: Path) -> None:
    assert ONE_FILE not in (site / "offline.js").read_text("utf-8")


def test_places_links_and_references_get_the_page_in_front() -> None:
    main = (
        '<h2 id="a">A &amp; &lt;b&gt;</h2><a href="#a">here</a><a href="two.html#c">there</a>'
        '<a href="two.html">all</a><label for="n">N</label><input id="n" aria-labelledby="a n">'
        '<svg viewBox="0 0 1 1"><clipPath id="k"/><path clip-path="url(#k)" fill="url(#mist-1)"/>'
        '</svg><script type="application/json">{"a":"<b href=\\"#x\\">"}</script>'
    )
    pages = [
        BuiltPage("one.html", main, "One", "home", after=("two.html", "Two & more")),
        BuiltPage("two.html", "", "Two & more", "lesson"),
    ]
    frame, sections = page_sections(pages, "Course", theme_templates(THEME))
    assert [(section.name, section.title) for section in sections] == [
        ("one", "One"),
        ("two", "Two & more · Course"),
    ]
    assert '<a class="home" href="#index"' in frame.top
    assert '<a class="after" href="#two">' in sections[0].html
    assert sections[0].html.startswith(
        '<h2 id="one--a">A &amp; &lt;b&gt;</h2><a href="#one--a">here</a>'
        '<a href="#two--c">there</a><a href="#two">all</a><label for="one--n">N</label>'
        '<input id="one--n" aria-labelledby="one--a one--n"><svg viewBox="0 0 1 1">'
        '<clipPath id="one--k"/><path clip-path="url(#one--k)" fill="url(#mist-1)"/></svg>'
        '<script type="application/json">{"a":"<b href=\\"#x\\">"}</script>'
    )
