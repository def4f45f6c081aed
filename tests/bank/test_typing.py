"""Typing: nodes become records, or problems that stand where the author must look."""

import pytest

from generator.bank.models import Blueprint, ChoiceItem, NumericItem, Outline, Procedure, Term
from generator.bank.models.fields import Record
from generator.bank.reading.record_reading import RENAMED, as_mapping, read_record
from generator.bank.reading.yaml_source import read_yaml
from generator.bank.schemas import record_schemas

CHOICE = """\
kind: choice
level: recall
use: study
source: common_practice
stem: What shows a rock?
options:
  - {text: A straightedge, right: true, feedback: It tips.}
  - {text: A magnet, feedback: It shows thickness.}
"""


def found(kind: type[Record], text: str) -> list[str]:
    """Return 'line:column rule message hint' of every problem of a record."""
    node, problems = read_yaml(text, "a.yml")
    assert node is not None
    _, more = read_record(kind, node)
    return [
        f"{p.place.line}:{p.place.column} {p.rule}: {p.message}"
        + (f" / {p.hint}" if p.hint else "")
        for p in (*problems, *more)
    ]


def test_a_sound_record_is_typed_and_has_no_problem() -> None:
    node, _ = read_yaml(CHOICE, "a.yml")
    assert node is not None
    record, problems = read_record(ChoiceItem, node)
    assert problems == ()
    assert record is not None
    assert [option.right for option in record.options] == [True, False]
    assert record.source[0].key == "common_practice"


def test_a_missing_name_says_what_to_add() -> None:
    assert found(Term, "term: gel time\n") == [
        "1:1 missing-key: 'meaning' is missing here / add 'meaning: ...' below 'term'"
    ]


def test_a_missing_name_is_looked_for_below_the_one_that_comes_before_it() -> None:
    assert found(Term, "see: [a]\nother_names: [b]\nterm: c\n") == [
        "2:1 missing-key: 'meaning' is missing here / add 'meaning: ...' below 'other_names'"
    ]
    assert found(Term, "see: [a]\nmeaning: b\n") == [
        "1:1 missing-key: 'term' is missing here / add 'term: ...' below 'see'"
    ]


def test_a_name_missing_deep_inside_is_reported_at_its_own_entry() -> None:
    broken = CHOICE.replace("text: A magnet, ", "")
    assert found(ChoiceItem, broken) == [
        "8:6 missing-key: 'text' is missing here / add 'text: ...' below 'feedback'"
    ]


def test_an_old_name_is_told_once_with_the_new_one() -> None:
    old = CHOICE.replace("use: study", "pool: study").replace("feedback: It tip", "says: It tip")
    assert sorted(found(ChoiceItem, old)) == [
        "3:1 unknown-key: 'pool' is not a name that belongs here / it is called 'use' now",
        "7:41 unknown-key: 'says' is not a name that belongs here / it is called 'feedback' now",
    ]


@pytest.mark.parametrize(
    ("old", "new"), [(old, new) for old, names in RENAMED.items() for new in names]
)
def test_every_new_name_belongs_to_some_record(old: str, new: str) -> None:
    schemas = "".join(record_schemas().values())
    assert f'"{new}": {{' in schemas
    assert old != new


@pytest.mark.parametrize(
    ("kind", "text", "expected"),
    [
        (Term, "term: a\nmeaning: b\nmeening: c\n", "did you mean 'meaning'?"),
        (
            Term,
            "term: a\nmeaning: b\nqq: c\n",
            "the names are term, other_names, meaning, see",
        ),
        (ChoiceItem, CHOICE.replace("right: true", "rigth: true"), "did you mean 'right'?"),
        (
            ChoiceItem,
            CHOICE + "sheet: {title: t, row: [[a, b]], rows: []}\n",
            "did you mean 'rows'?",
        ),
    ],
)
def test_an_unknown_name_brings_the_names_of_its_own_level(
    kind: type[Record], text: str, expected: str
) -> None:
    (line,) = (line for line in found(kind, text) if "unknown-key" in line)
    assert line.endswith(f" / {expected}")


def test_unknown_names_inside_named_values_lists_and_aliased_fields_get_the_right_hints() -> None:
    item = """\
kind: numeric
level: apply
use: study
source: common_practice
stem: How thick?
given:
  wet: {unit: um, values: [1], valeus: [2]}
answer: {formula: wet, unit: um, round_to: 1, tolerence: 1 um}
slips: [{formula: wet, feedback: x, formla: y}]
"""
    assert [line.rpartition(" / ")[2] for line in found(NumericItem, item)] == [
        "did you mean 'values'?",
        "did you mean 'tolerance'?",
        "did you mean 'formula'?",
    ]
    pairs = "pairs: [{first: a, then: b, clas: ruins, class: ruins, reason: r}]"
    steps = "steps: [{step: a, action: x}, {step: b, action: y}, {step: c, action: z}]"
    text = f"title: t\nobjective: o/p\nsource: common_practice\n{steps}\n{pairs}\n"
    assert found(Procedure, text) == [
        "5:29 unknown-key: 'clas' is not a name that belongs here / did you mean 'class'?"
    ]


def test_an_unknown_word_brings_the_words_and_the_nearest() -> None:
    assert found(ChoiceItem, CHOICE.replace("recall", "recal")) == [
        "2:8 unknown-choice: 'recal' is not one of recall, apply, diagnose / did you mean 'recall'?"
    ]


@pytest.mark.parametrize(
    ("old", "new", "line"),
    [
        ("stem: What shows a rock?", "stem: [a]", "5:7 wrong-value: a piece of text is expected"),
        ("stem: What shows a rock?", "stem:", "5:6 wrong-value: this is empty; write the text"),
        ("stem: What shows a rock?", "stem: '  '", "5:7 wrong-value: this is empty"),
        ("right: true", "right: yes", "7:35 wrong-value: 'yes' is neither 'true' nor 'false'"),
        ("source: common_practice", "source: []", "4:9 wrong-value: name a source"),
        ("source: common_practice", "source: A Chart", "4:9 wrong-value: 'A Chart' does not begin"),
    ],
)
def test_a_value_that_does_not_fit_is_reported_at_the_value(old: str, new: str, line: str) -> None:
    (said,) = found(ChoiceItem, CHOICE.replace(old, new))
    assert said.startswith(line)


def test_a_text_for_a_list_and_a_list_for_names_are_wrong_shapes() -> None:
    text = CHOICE.partition("options:")[0]
    assert found(ChoiceItem, text + "options: none\n") == [
        "6:10 wrong-shape: a list is expected here; begin each entry with '- '"
    ]
    assert found(ChoiceItem, text + "options: [none, [a]]\n") == [
        "6:11 wrong-shape: names with values are expected here, such as 'name: value'",
        "6:17 wrong-shape: names with values are expected here, such as 'name: value'",
    ]


def test_a_list_of_the_wrong_length_says_the_length() -> None:
    assert found(Outline, "modules: []\n") == ["1:10 list-length: 'modules' needs at least 1 entry"]
    short = CHOICE.rpartition("  - {")[0]
    assert found(ChoiceItem, short) == ["7:3 list-length: 'options' needs at least 2 entries"]
    long = CHOICE + "  - {text: A rag, feedback: It wipes.}\n" * 5
    assert found(ChoiceItem, long) == ["7:3 list-length: 'options' takes at most 6 entries"]


def test_a_list_with_a_broken_entry_is_not_called_too_short() -> None:
    broken = CHOICE.replace("feedback: It tips.", "sais: It tips.")
    assert [line.partition(" ")[2].partition(":")[0] for line in found(ChoiceItem, broken)] == [
        "missing-key",
        "unknown-key",
    ]


@pytest.mark.parametrize(
    ("kind", "text"),
    [
        (Term, "term: *gone\nmeaning: *gone\nsee: *gone\n"),
        (Term, "term: a\nmeaning: b\nsee: [c, *gone]\n"),
        (Term, "term: a\n<<: *gone\n"),
        (Blueprint, "title: t\nminutes: *gone\npass_percent: 80\ncells: [*gone]\n"),
        (ChoiceItem, CHOICE.replace("source: common_practice", "source: [common_practice, *gone]")),
        (ChoiceItem, CHOICE + "sheet: {title: t, rows: [[a, *gone]]}\n"),
        (ChoiceItem, CHOICE.replace("kind: choice", "kind: *gone")),
    ],
)
def test_what_the_reader_reported_is_not_reported_again(kind: type[Record], text: str) -> None:
    assert {line.split()[1] for line in found(kind, text)} == {"yaml-anchor:"}


@pytest.mark.parametrize(
    ("text", "what"), [("[a]", "a list is here"), ("word", "a piece of text is here")]
)
def test_a_file_that_holds_no_names_says_what_it_holds(text: str, what: str) -> None:
    node, _ = read_yaml(text, "a.yml")
    assert node is not None
    mapping, (problem,) = as_mapping(node)
    assert mapping is None
    assert problem.message.endswith(what)


def test_a_part_already_reported_brings_no_second_message_about_its_shape() -> None:
    node, problems = read_yaml("*gone", "a.yml")
    assert node is not None
    assert len(problems) == 1
    assert as_mapping(node) == (None, ())
