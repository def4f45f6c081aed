"""Reports on paper: one page where they can be, tagged, with words for every picture."""

from io import BytesIO

import pytest
from pypdf import PdfReader

from generator.printing import report
from generator.reports import person_report
from generator.reports.fixed_words import NOT_SAID_CLASS, NOT_SAID_PERSON, NOT_SAID_PROFILE
from tests.printing.pdf_reading import (
    FONTS,
    font_descriptors,
    page_texts,
    squeezed,
    tags,
    whole_text,
)
from tests.reports.real_reports import real_reports
from tests.reports.toy_forms import NAMES, answer, paper_of, took

KINDS = ("person", "class", "profile")
DISCLAIMERS = (NOT_SAID_PERSON, NOT_SAID_CLASS, *NOT_SAID_PROFILE)


def made(content, **more):
    """Set a report."""
    return report(content, **({"paper": "a4", "fonts": FONTS} | more))


def texts_of(value):
    """Return every text inside plain data, without drawings and names for links."""
    if isinstance(value, str):
        return [value]
    if isinstance(value, dict):
        skipped = ("strip", "in_words", "kind", "module", "objective", "asked", "foot")
        return [t for name, inner in value.items() if name not in skipped for t in texts_of(inner)]
    return [t for inner in value for t in texts_of(inner)] if isinstance(value, list) else []


@pytest.mark.parametrize("kind", KINDS)
def test_every_sentence_of_a_report_stands_on_its_paper(kind):
    content = real_reports("new_hire_check", 4)[kind]
    text = squeezed(whole_text(made(content)))
    missing = [t for t in texts_of(content) if squeezed(t.replace("`", "")) not in text]
    assert missing == []


@pytest.mark.parametrize("large", [False, True])
@pytest.mark.parametrize("kind", KINDS)
def test_a_report_is_tagged_accessible_and_the_same_every_time(kind, large):
    content = real_reports("new_hire_check", 4)[kind]
    pdf = made(content, large_print=large)
    root = PdfReader(BytesIO(pdf)).trailer["/Root"]
    assert root["/MarkInfo"]["/Marked"] and root["/Lang"] == "en"
    assert b"pdfuaid" in root["/Metadata"].get_data()
    assert [name for name, _ in tags(pdf)].count("/Table") >= 1
    assert all("/FontFile2" in d or "/FontFile3" in d for d in font_descriptors(pdf))
    assert made(content, large_print=large) == pdf


def test_each_strip_of_the_panel_says_what_it_shows():
    content = real_reports("new_hire_check", 4)["person"]
    said = [str(e["/Alt"]) for name, e in tags(made(content)) if name == "/Figure" and "/Alt" in e]
    assert said == [module["in_words"] for module in content["modules"]]


@pytest.mark.parametrize("every", [1, 2, 3])
@pytest.mark.parametrize("blueprint", ["new_hire_check", "final_paper"])
@pytest.mark.parametrize("paper", ["a4", "letter"])
def test_a_person_gets_one_page_however_much_went_wrong(blueprint, every, paper):
    content = real_reports(blueprint, 1, every)["person"]
    (page,) = page_texts(made(content, paper=paper))
    assert all(squeezed(note) in squeezed(page) for note in content["notes"])
    must = [r for g in content["slips"] for r in g["rows"] if "*" in r["numbers"]]
    assert all(squeezed(row["text"]) in squeezed(page) for row in must)
    numbers = [n for g in content["slips"] for r in g["rows"] for n in r["numbers"].split(", ")]
    assert all(number in page for number in numbers)


def test_what_does_not_fit_the_page_is_said_to_stand_on_screen():
    content = real_reports("final_paper", 1, 1)["person"]
    assert "The page on screen gives every reason." in whole_text(made(content))
    short = real_reports("new_hire_check", 4)["person"]
    assert "The page on screen" not in whole_text(made(short))


def test_a_class_of_thirty_fits_one_page():
    content = real_reports("new_hire_check", 30)["class"]
    (page,) = page_texts(made(content))
    assert all(row["who"] in page for row in content["people"])


def test_a_class_of_a_hundred_goes_on_and_leaves_nobody_out():
    content = real_reports("new_hire_check", 4)["class"]
    rows = [content["people"][0] | {"who": f"Apprentice {n:03}"} for n in range(1, 101)]
    text = whole_text(made(content | {"people": rows}))
    assert all(row["who"] in text for row in rows)


@pytest.mark.parametrize("kind", KINDS)
def test_the_title_of_the_file_names_nobody(kind):
    content = real_reports("new_hire_check", 4)[kind]
    title = PdfReader(BytesIO(made(content))).metadata.title
    assert title.startswith("New-hire check: ")
    assert "Apprentice" not in title


@pytest.mark.parametrize("kind", KINDS)
def test_what_is_not_said_about_a_person_stands_on_each_report(kind):
    text = squeezed(whole_text(made(real_reports("new_hire_check", 4)[kind])))
    assert any(squeezed(sentence) in text for sentence in DISCLAIMERS)


def test_markup_in_a_reason_is_set_as_text_and_light_markup_is_read():
    paper = paper_of([answer(1, 0, findings=took("B", "#panic() $x$ **No** `4:1`."))])
    text = whole_text(made(person_report(paper, NAMES)))
    assert "#panic() $x$ No 4:1." in text


@pytest.mark.parametrize("answers", [[], [answer(1)], [answer(1, findings={"left_out": True})]])
def test_a_paper_with_next_to_nothing_on_it_is_still_set(answers):
    content = person_report(paper_of(answers), NAMES)
    assert content["title"] in whole_text(made(content))
