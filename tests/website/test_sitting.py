"""The page to answer a form on a screen shows the form and holds no key in any form."""

import codecs
import json
import re
from base64 import b64decode, b64encode
from collections.abc import Iterator
from copy import deepcopy
from hashlib import sha256
from html import unescape
from html.parser import HTMLParser
from pathlib import Path
from typing import Any
from urllib.parse import quote

import pytest

from generator.website.exam.exam_page import SCRIPTS, sitting_page
from tests.website.on_screen_forms import KINDS, real_form, small_form

THEME = Path(__file__).parents[2] / "site_theme"
FONTS = THEME / "fonts_print"
BLUEPRINTS = ("final_paper", "mid_course", "specimen", "numbers_only")
# below this a text of a key may stand in any page by chance
SHORTEST = 12
OTHER = "Nobody wrote this"


def page_of(form: dict[str, Any]) -> str:
    return sitting_page(form, fonts=FONTS).decode("utf-8")


@pytest.fixture(scope="module", params=BLUEPRINTS)
def form(request: pytest.FixtureRequest) -> dict[str, Any]:
    return real_form(request.param)


@pytest.fixture(scope="module")
def page(form: dict[str, Any]) -> str:
    return page_of(form)


def key_texts(question: dict[str, Any]) -> Iterator[str]:
    """Return every text that only the key of a question holds."""
    key = question["key"]
    yield from key.get("working", ())
    yield from (key.get(name, "") for name in ("band_text", "model", "rule"))
    says = key.get("says", "")
    yield from says.values() if isinstance(says, dict) else [says]
    for part in (*key.get("slips", ()), *key.get("options", ())):
        yield part["says"]
    yield from (pair["reason"] for pair in key.get("pairs", ()))
    yield from (point["text"] for point in key.get("points", ()))
    yield json.dumps(key.get("answers", ""))
    yield question["id"]
    yield from (f'"{name}": "{key[name]}"' for name in ("low", "high", "shown") if name in key)
    yield from (source["text"] for source in question["sources"])


def shown_texts(form: dict[str, Any]) -> str:
    """Return all that the paper shows too, as one text."""
    shown: list[str] = [form["title"], *form["constants"], *form["cautions"]]
    for entry in form["questions"]:
        question = entry["question"]
        shown += [question["stem"], question["caution"] or ""]
        for table in filter(None, (question["sheet"], question["table"])):
            shown += [table["title"], *table.get("columns", ())]
            shown += [cell for row in table["rows"] for cell in row]
        for side in ("options", "steps", "left", "right"):
            shown += [part["text"] for part in question["key"].get(side, ())]
    return "\n".join(shown)


def written_ways(text: str) -> Iterator[bytes]:
    """Return a text as it may be hidden in a page: escaped, in JSON, in base64, turned."""
    plain = text.encode("utf-8")
    yield from (plain, plain.hex().encode(), plain[::-1], quote(text).encode())
    yield codecs.encode(text, "rot13").encode("utf-8")
    yield from (json.dumps(text, ensure_ascii=way)[1:-1].encode("utf-8") for way in (True, False))
    for shift in range(3):
        coded = b64encode(b"\0" * shift + plain)
        # the ends share their signs with what stands beside them
        yield coded[4:-4]
    yield sha256(plain).hexdigest().encode()


def test_the_forms_together_have_every_kind_of_question() -> None:
    kinds = {e["question"]["kind"] for name in BLUEPRINTS for e in real_form(name)["questions"]}
    assert kinds == {question["kind"] for question in KINDS}


def test_no_text_of_any_key_stands_in_the_page_in_any_form(form: dict[str, Any], page: str) -> None:
    shown = shown_texts(form)
    texts = {text for entry in form["questions"] for text in key_texts(entry["question"])}
    secret = {text for text in texts if len(text) >= SHORTEST and text not in shown}
    assert len(secret) >= 2 * len(form["questions"])
    places = (page.encode("utf-8"), unescape(page).encode("utf-8"))
    found = [
        text
        for text in sorted(secret)
        for way in written_ways(text)
        if any(way in place for place in places)
    ]
    assert found == []


def test_the_search_finds_a_text_that_is_hidden() -> None:
    text = "Solvent is trapped under a skin"
    for shift in range(3):
        hidden = b64encode(b"xyz"[:shift] + text.encode() + b" and more")
        assert any(way in hidden for way in written_ways(text))
    assert any(
        way in b'{"says":"Solvent is trapped' + b' under a skin"}' for way in written_ways(text)
    )


def with_another_key(question: dict[str, Any]) -> dict[str, Any]:
    """Return a question that is shown alike and whose key says something else throughout."""
    other = deepcopy(question)
    key, kind = other["key"], other["kind"]
    other.update(id=f"other/{OTHER}", module=OTHER, objective=OTHER, level=OTHER, pool=OTHER)
    other.update(safety=not question["safety"], sources=[], minutes=99.5, draw={OTHER: OTHER})
    if kind in ("choice", "multiple_response"):
        for option in key["options"]:
            option.update(right=not option["right"], says=OTHER)
    elif kind == "numeric":
        key.update(shown="987654", exact="987654", unit=OTHER, step="987", low="1", high="2")
        key.update(band_text=OTHER, working=[OTHER], slips=[], says=OTHER)
    elif kind == "order":
        key.update(pairs=[], orders=77, one_order=[], rule=OTHER)
    elif kind == "match":
        key.update(answers={}, says={})
    else:
        key.update(points=[{"text": OTHER, "marks": 1}], model=OTHER)
    return other


def test_two_forms_that_differ_in_nothing_but_their_keys_have_the_same_page(
    form: dict[str, Any], page: str
) -> None:
    other = deepcopy(form)
    other.update(seed=OTHER, blueprint=OTHER, guesser_passes=0.9, mastery_marks=1)
    for entry in other["questions"]:
        entry["question"] = with_another_key(entry["question"])
    assert page_of(other) == page


def test_a_field_that_comes_later_does_not_reach_the_page() -> None:
    form = small_form()
    before = page_of(form)
    form["key_of_all"] = OTHER
    for entry in form["questions"]:
        entry["hint"] = OTHER
        entry["question"] = {**entry["question"], "hint": OTHER, "version": OTHER}
        entry["question"]["key"] = {**entry["question"]["key"], "hint": OTHER}
    assert page_of(form) == before


def test_nothing_is_packed_in_the_page_but_typefaces_the_mark_and_the_hashes(page: str) -> None:
    files = (*(THEME / "assets" / "fonts").glob("*.woff2"), THEME / "assets" / "mark.svg")
    known = {path.read_bytes() for path in files}
    runs = re.findall(r"[A-Za-z0-9+/]{60,}={0,2}", page)
    assert runs
    assert {b64decode(run) for run in runs} <= known
    hashes = re.findall(r"sha256-([A-Za-z0-9+/=]+)", unescape(page))
    assert len(hashes) == 2


class Reader(HTMLParser):
    """Keeps elements, attributes and words of a page."""

    def __init__(self, page: str) -> None:
        super().__init__()
        self.elements: list[tuple[str, dict[str, str | None]]] = []
        self.inside: list[str] = []
        self.words = ""
        self.feed(page)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.elements.append((tag, dict(attrs)))
        if tag in ("script", "style"):
            self.inside.append(tag)

    def handle_endtag(self, tag: str) -> None:
        if tag in ("script", "style"):
            self.inside.pop()

    def handle_data(self, data: str) -> None:
        if not self.inside:
            self.words += data


def test_the_policy_allows_this_script_and_this_style_and_no_address(page: str) -> None:
    """Content Security Policy level 3: a hash is taken over the text inside the element."""
    (policy,) = re.findall(r'Content-Security-Policy" content="([^"]*)"', page)
    policy = unescape(policy)
    assert policy.startswith("default-src 'none';")
    assert "unsafe" not in policy
    assert "http" not in policy
    for name, tag in (("script-src", "script"), ("style-src", "style")):
        (inner,) = re.findall(rf"<{tag}>(.*?)</{tag}>", page, flags=re.DOTALL)
        digest = b64encode(sha256(inner.encode("utf-8")).digest()).decode()
        assert f"{name} 'sha256-{digest}';" in policy


def test_no_element_has_a_handler_a_style_or_an_address(page: str) -> None:
    for tag, attributes in Reader(page).elements:
        assert not [name for name in attributes if name.startswith("on") or name == "style"]
        for name in ("src", "href", "action"):
            address = attributes.get(name) or "#"
            assert address.startswith(("#", "data:image/svg+xml;")), (tag, address)


def test_all_that_the_paper_shows_is_shown(form: dict[str, Any], page: str) -> None:
    words = re.sub(r"\s+", " ", Reader(page).words)
    count = len(form["questions"])
    assert f"You have {form['minutes']} minutes." in words
    assert f"You pass with {form['pass_marks']} marks ({form['pass_percent']} %)." in words
    assert words.count("MUST BE RIGHT") == len(form["gate"])
    if form["gate"]:
        assert "must be right. Missing" in words
    for number in range(1, count + 1):
        assert f"Question {number} of {count}" in words
    for text in (*form["constants"], form["title"], form["form_id"]):
        assert re.sub(r"\s+", " ", text) in words
    for caution in form["cautions"]:
        assert re.sub(r"[\s*`]+", " ", caution)[:40] in re.sub(r"[\s*`]+", " ", words)


def test_options_stand_in_the_order_of_the_form(form: dict[str, Any], page: str) -> None:
    for entry in form["questions"]:
        (part,) = re.findall(
            rf'<section class="question[^>]*data-number="{entry["number"]}".*?</section>',
            page,
            flags=re.DOTALL,
        )
        options = entry["question"]["key"].get("options", ())
        found = re.findall(r'<label class="option" data-letter="(.)"', part)
        assert found == [option["letter"] for option in options]


def test_a_form_for_a_person_names_the_code_and_asks_for_none() -> None:
    page = page_of(small_form("Apprentice 07"))
    assert 'data-person="Apprentice 07"' in page
    assert 'class="code-input"' not in page
    assert 'class="code-input"' in page_of(small_form())


def test_texts_of_the_bank_cannot_become_elements() -> None:
    hostile = "<script>alert(1)</script><img src=x onerror=alert(1)>\"'</section>"
    form = small_form(hostile, title=hostile, edition=hostile, constants=[hostile])
    question = deepcopy(form["questions"][0]["question"])
    question.update(stem=hostile, caution=hostile, table=table(hostile), sheet=table(hostile))
    question["key"]["options"][0]["text"] = hostile
    form["questions"][0]["question"] = question
    elements = Reader(page_of(form)).elements
    assert [tag for tag, _ in elements].count("script") == 1
    assert "img" not in {tag for tag, _ in elements}


def table(text: str) -> dict[str, Any]:
    return {"title": text, "columns": [text, text], "rows": [[text, text]]}


def test_links_and_pictures_in_a_text_leave_their_words() -> None:
    form = small_form()
    stem = "See [the term](term:solvent_trap) and ![a picture](https://example.invalid/x.png)."
    form["questions"][0]["question"] = {**form["questions"][0]["question"], "stem": stem}
    page = page_of(form)
    assert "See the term and a picture." in page
    assert "example.invalid" not in page


def test_the_same_form_gives_the_same_bytes_and_a_page_stays_small(form: dict[str, Any]) -> None:
    made = sitting_page(form, fonts=FONTS)
    assert sitting_page(deepcopy(form), fonts=FONTS) == made
    assert len(made) < 210_000 + 2_600 * len(form["questions"])


def test_a_missing_file_of_the_theme_is_named(tmp_path: Path) -> None:
    with pytest.raises(OSError, match="type.js"):
        sitting_page(small_form(), fonts=tmp_path / "fonts_print")


def test_the_page_has_no_script_that_marks() -> None:
    text = "".join((THEME / "assets" / "js" / f"{name}.js").read_text("utf-8") for name in SCRIPTS)
    assert "Guidecoat.share" not in text
