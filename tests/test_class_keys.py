"""A class of thirty: every printed key follows from the printed paper, and nobody can copy.

Papers, keys and marking guides are set as PDF and read back by an independent library. Each
answer is derived from the text of the paper: sums are worked apart from the numbers on it, right
options come from the plain records, orders and pairs from the stated pairs.
"""

import re
from collections import Counter, defaultdict
from dataclasses import dataclass
from decimal import Decimal
from itertools import pairwise

import pytest

from generator.assembly import assemble, form_as_plain
from generator.assembly.forms.forms import form_labels
from generator.bank.numbers.numeric_solution import Solution, all_sets, solve
from generator.printing import answer_key, marking_guide, question_paper
from generator.quantities import number_text
from generator.questions.drawing.numeric import draw_of, prepared
from generator.refinishing.catalogue import CATALOGUE
from tests.printing.pdf_reading import FONTS
from tests.questions.worked_apart import WORKED_APART
from tests.read_back.agreement import disagreements
from tests.read_back.numeric_answers import stated_number, values_on_paper
from tests.read_back.pages import (
    TASKS,
    Part,
    guide_parts,
    key_parts,
    paper_parts,
    printed_text,
)
from tests.read_back.plain_bank import plain_bank
from tests.read_back.values import NUMBER
from tests.real import BANK, real_askables, real_bank
from tests.some import some

PEOPLE = tuple(f"Apprentice {number:02d}" for number in range(1, 31))
# together they touch every kind of question, of items, jobs, faults and tables
BLUEPRINTS = ("numbers_only", "mid_course", "painter_training")
DERIVED = {
    "procedures": {"order", "next", "before", "missing", "goes_wrong"},
    "faults": {"name", "cause", "remedy", "look_alike"},
    "tables": {"look_up"},
}


@dataclass(frozen=True, slots=True)
class Sheets:
    """The texts read from one person's documents; the guide is empty without written questions."""

    paper: str
    key: str
    guide: str


@pytest.fixture(scope="module")
def records():
    return plain_bank(BANK)


@pytest.fixture(scope="module")
def bank():
    return real_bank()


@pytest.fixture(scope="module")
def classes(bank):
    """The documents of each person of a class, in the order of the roster, by blueprint."""
    known = real_askables()
    return {name: class_of(bank, name, known) for name in BLUEPRINTS}


def class_of(bank, name, known):
    labels = form_labels(len(PEOPLE))
    built = assemble(bank, bank.blueprints[name], "spring", labels, PEOPLE, known=known)
    return [sheets_of(form_as_plain(form)) for form in built.forms]


def sheets_of(form):
    documents = (
        document(form, paper="a4", fonts=FONTS)
        for document in (question_paper, answer_key, marking_guide)
    )
    return Sheets(*(printed_text(document) if document else "" for document in documents))


@pytest.mark.parametrize("name", BLUEPRINTS)
def test_every_key_of_the_class_follows_from_its_paper(records, classes, name):
    assert len(classes[name]) == len(PEOPLE)
    for person, sheets in zip(PEOPLE, classes[name], strict=True):
        assert f"For {person} Date" in sheets.paper
        assert disagreements(records, sheets.paper, sheets.key, sheets.guide) == [], person


def test_the_classes_touch_every_kind_of_question(classes):
    tasks, derived = Counter(), defaultdict(set)
    for sheets in (sheets for papers in classes.values() for sheets in papers):
        tasks.update(part.heading for part in paper_parts(sheets.paper).values())
        for part in key_parts(sheets.key).values():
            first, *_, last = part.heading.split("/")
            derived[first].add(last)
    assert tasks.keys() == set(TASKS.split("|"))
    assert min(tasks.values()) >= 10
    assert {kind: derived[kind] & asked for kind, asked in DERIVED.items()} == DERIVED


def test_no_sum_that_an_exam_may_draw_is_left_unworked(records):
    sums = {
        name
        for name, item in records.items.items()
        if item["kind"] == "numeric" and item["use"] != "study"
    }
    assert len(sums) > 280
    assert sums - WORKED_APART.keys() == set()


@pytest.fixture(scope="module")
def numbers(records, classes):
    """Values read off the paper and answer read off the key of each sum, in roster order."""
    found = defaultdict(list)
    for name, papers in classes.items():
        for seat, sheets in enumerate(papers):
            asked, answered = paper_parts(sheets.paper), key_parts(sheets.key)
            for number, part in answered.items():
                if asked[number].heading == "number and unit" and part.heading in records.items:
                    read = values_on_paper(records, part.heading, asked[number])
                    values = tuple(sorted(read.items()))
                    found[name, part.heading].append((seat, values, stated_number(part).shown))
    return found


@pytest.fixture(scope="module")
def grids(bank, numbers):
    """How many sets of values and how many keys each of these sums has."""
    return {name: sizes(prepared(bank.items[name])) for _, name in numbers}


def sizes(item):
    solved = (solve(item, values, CATALOGUE) for values in all_sets(item))
    found = [s for s in solved if isinstance(s, Solution)]
    keys = {number_text(s.key, item.step) for s in found}
    return len({draw_of(s.values) for s in found}), len(keys)


def test_nobody_shares_values_or_a_key_while_the_grid_allows_it(numbers, grids):
    shared = 0
    for (_, name), papers in numbers.items():
        sets, keys = grids[name]
        assert len({key for _, _, key in papers}) == min(len(papers), keys), name
        assert len({values for _, values, _ in papers}) == min(len(papers), sets), name
        shared += len(papers) > keys
    # some grids have fewer keys than the class has people
    assert 0 < shared < len(numbers)


def test_neighbours_never_have_the_same_values_or_key(numbers, grids):
    beside = 0
    for (_, name), papers in numbers.items():
        if grids[name][1] == 1:
            continue
        for (seat, values, key), (other, other_values, other_key) in pairwise(papers):
            assert values != other_values and key != other_key, name
            beside += other == seat + 1
    assert beside > 50


def other_letter(letter):
    return "B" if letter == "A" else "A"


def spoilt_key(task, part):
    """Return the body of a key with one figure, letter, pair or point of it changed."""
    body = f" {part.body}"
    if task == "number and unit":
        changed = re.sub(
            r" Key ([-−]?)(\d)", lambda m: f" Key {m[1]}{9 - int(m[2])}", body, count=1
        )
    elif task in ("one answer", "one or more answers"):
        changed = re.sub(
            r" Key ([A-J])(?= )", lambda m: f" Key {other_letter(m[1])}", body, count=1
        )
    elif task == "put in order":
        changed = re.sub(r"– (\w) before (\w) ", r"– \2 before \1 ", body, count=1)
    elif task == "match":
        changed = re.sub(r"(?<=: )([A-J])(?= )", lambda m: other_letter(m[1]), body, count=1)
    else:
        changed = body.replace("Marking points – ", "Marking points – Not ", 1)
    assert changed != body
    return changed


def about(number, found):
    return [words for words in found if words.startswith(f"question {number},")]


@pytest.mark.parametrize("name", BLUEPRINTS)
def test_one_wrong_figure_or_letter_on_a_key_is_noticed(records, classes, name):
    sheets = classes[name][0]
    asked, answered = paper_parts(sheets.paper), key_parts(sheets.key)
    for number, part in some(answered.items()):
        wrong = sheets.key.replace(part.body, spoilt_key(asked[number].heading, part).strip())
        assert about(number, disagreements(records, sheets.paper, wrong, sheets.guide)), part


def test_one_wrong_end_of_what_passes_is_noticed(records, classes):
    sheets = classes["numbers_only"][0]
    moved = 0
    for number, part in key_parts(sheets.key).items():
        item = records.items.get(part.heading)
        by = 2 * Decimal(item["answer"]["round_to"] if item else 1)
        accept = stated_number(part).accept
        for end in re.finditer(NUMBER, accept):
            other = Decimal(end[0].replace("−", "-")) + by
            changed = f"{accept[: end.start()]}{other}{accept[end.end() :]}"
            body = part.body.replace(f"Accept {accept}", f"Accept {changed}", 1)
            wrong = sheets.key.replace(part.body, body)
            assert about(number, disagreements(records, sheets.paper, wrong, sheets.guide)), part
            moved += 1
    assert moved > 30


def test_two_options_exchanged_on_a_paper_are_noticed(records, classes):
    sheets = classes["mid_course"][0]
    exchanged = Counter()
    for number, part in paper_parts(sheets.paper).items():
        if part.heading not in ("one answer", "one or more answers", "put in order"):
            continue
        start, first, second = re.match(r"(.*) A (.+?) B (.+?)(?= C |$)", part.body).groups()
        rest = part.body[len(f"{start} A {first} B {second}") :]
        body = f"{start} A {second} B {first}{rest}"
        wrong = sheets.paper.replace(part.body, body)
        assert about(number, disagreements(records, wrong, sheets.key, sheets.guide)), part
        exchanged[part.heading] += 1
    assert min(exchanged.values()) >= 1 and len(exchanged) == 3


def test_one_wrong_line_in_the_list_at_the_top_is_noticed(records, classes):
    sheets = classes["mid_course"][0]
    top, rest = sheets.key.split("Question 1 ", 1)
    lines = list(re.finditer(r"(?<= )([A-D])(?= 1 )", top))
    assert len(lines) > 20
    for line in lines:
        changed = top[: line.start()] + other_letter(line[1]) + top[line.end() :]
        wrong = f"{changed}Question 1 {rest}"
        assert disagreements(records, sheets.paper, wrong, sheets.guide) != []


def test_a_question_that_must_be_right_on_one_sheet_only_is_noticed(records, classes):
    sheets = classes["mid_course"][0]
    wrong = sheets.key.replace("MUST BE RIGHT ", "", 1)
    assert len(disagreements(records, sheets.paper, wrong, sheets.guide)) == 1
    wrong = re.sub(r" must (?=\d)", " ", sheets.key, count=1)
    assert "list at the top" in disagreements(records, sheets.paper, wrong, sheets.guide)[0]


def test_a_point_changed_on_the_marking_guide_is_noticed(records, classes):
    sheets = classes["mid_course"][0]
    guided = guide_parts(sheets.guide)
    assert guided
    for number, part in guided.items():
        wrong = sheets.guide.replace(part.body, part.body.replace("Given ", "Given Not ", 1))
        assert about(number, disagreements(records, sheets.paper, sheets.key, wrong))


def with_other_value(part: Part, value: str) -> str:
    """Return the body of a paper with one value that was read on it made three times as large."""
    figure = re.match(NUMBER, value)[0]
    other = str(3 * int(figure)) if figure.isdigit() else f"9{figure.lstrip('-−')}"
    return re.sub(rf"(?<![\d.:]){re.escape(figure)}(?!\d|\.\d)", other, part.body, count=1)


def test_one_wrong_number_on_a_paper_is_noticed(records, classes):
    changed = 0
    for sheets in classes["numbers_only"][:3]:
        asked, answered = paper_parts(sheets.paper), key_parts(sheets.key)
        for number, key in answered.items():
            if key.heading not in records.items:
                continue
            part = asked[number]
            bodies = [
                with_other_value(part, value)
                for value in values_on_paper(records, key.heading, part).values()
            ]
            papers = [sheets.paper.replace(part.body, body) for body in bodies]
            # a value that the sum does not need changes nothing, but one of them always does
            assert any(
                about(number, disagreements(records, paper, sheets.key, sheets.guide))
                for paper in papers
            ), key
            changed += 1
    assert changed > 50
