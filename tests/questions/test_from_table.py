"""Look-ups in a printed table: one clear answer, of one kind, with the rows beside it as slips."""

from fractions import Fraction

import pytest

from generator.questions.derived.from_table import look_up
from generator.questions.drawing.seeded_random import SeededRandom
from generator.questions.question import ChoiceKey, NumericKey
from tests.questions.small_bank import FULL, bank_of

LABELS = [str(number) for number in range(40)]
HEAD = "title: Guns\nobjective: filler/shape\nsource: common_practice\n"
SIZES = {80: "201", 120: "125", 180: "82", 240: "58.5"}


def draws(folder, table):
    bank = bank_of(folder, {"tables/one.yml": table})
    return [look_up(bank, bank.tables["one"], SeededRandom(label)) for label in LABELS]


@pytest.fixture(scope="module")
def grades(tmp_path_factory):
    return draws(tmp_path_factory.mktemp("grades"), FULL["tables/grades.yml"])


def test_the_key_stands_in_the_row_that_was_asked_for(grades):
    asked = set()
    for derived, exhibit in grades:
        grade = int(derived.stem.rsplit(" ", 1)[1].rstrip("?"))
        asked.add(grade)
        assert isinstance(derived.key, NumericKey)
        assert derived.key.shown == SIZES[grade]
        assert derived.key.exact == Fraction(SIZES[grade])
        assert (str(grade), SIZES[grade]) in exhibit.rows
    assert asked == set(SIZES)


def test_the_stem_names_table_column_unit_and_row(grades):
    stems = {derived.stem for derived, _ in grades}
    assert "Use the table 'Grades'. What is the mean size in µm for P grade 80?" in stems


def test_only_the_printed_figure_passes(grades):
    for derived, _ in grades:
        key = derived.key
        assert key.band.low == key.band.high == key.exact
        assert key.band_text == f"{key.shown}\u00a0µm only"


def test_the_nearest_rows_are_the_slips(grades):
    near = {"201": {"125", "82"}, "125": {"201", "82"}, "82": {"125", "58.5"}}
    near["58.5"] = {"82", "125"}
    for derived, _ in grades:
        assert {slip.shown for slip in derived.key.slips} == near[derived.key.shown]
        assert len(derived.key.slips) == 2
        for slip in derived.key.slips:
            (grade,) = [grade for grade, size in SIZES.items() if size == slip.shown]
            assert slip.feedback == f"That is the row for P grade {grade}."
            assert not derived.key.band.holds(Fraction(slip.shown))


def test_the_rounding_step_is_the_last_printed_figure(grades):
    steps = {derived.key.shown: derived.key.step for derived, _ in grades}
    assert steps == {"201": 1, "125": 1, "82": 1, "58.5": Fraction(1, 10)}


def test_a_column_of_words_makes_a_choice(tmp_path):
    table = HEAD + (
        "columns: [{name: Gun, unit: text}, {name: Feed, unit: text}]\n"
        "rows: [[Small, Cup above], [Middle, Cup below], [Large, Pot]]\n"
        "look_up: [{from: Gun, to: Feed}]\n"
    )
    feeds = {"small": "Cup above", "middle": "Cup below", "large": "Pot"}
    for derived, _ in draws(tmp_path, table):
        assert isinstance(derived.key, ChoiceKey)
        (right,) = [option for option in derived.key.options if option.right]
        gun = derived.stem.rsplit(" ", 1)[1].strip("?'").lower()
        assert right.text == feeds[gun]
        assert {option.text for option in derived.key.options} == set(feeds.values())


def test_a_value_that_stands_in_two_rows_is_never_asked_about(tmp_path):
    table = HEAD + (
        "columns: [{name: Gun, unit: text}, {name: Share, unit: percent}]\n"
        "rows: [[Small, 20], [Small, 30], [Middle, 40], [Large, 50]]\n"
        "look_up: [{from: Gun, to: Share}]\n"
    )
    for derived, _ in draws(tmp_path, table):
        assert "'Small'?" not in derived.stem


def test_one_table_asks_for_one_kind_of_answer(tmp_path):
    table = HEAD + (
        "columns: [{name: Gun, unit: text}, {name: Feed, unit: text},"
        " {name: Part, unit: percent}]\n"
        "rows: [[Small, Above, 20], [Middle, Below, 30], [Large, Pot, 40], [Wide, Tank, 20 up]]\n"
        "look_up: [{from: Gun, to: Feed}, {from: Gun, to: Part}]\n"
    )
    kinds = {derived.kind for derived, _ in draws(tmp_path, table)}
    assert kinds == {"numeric"}


@pytest.mark.parametrize(
    "rows", ["[[Small, 20], [Large, 30]]", "[[Small, 20], [Middle, 20], [Large, 30]]"]
)
def test_a_table_with_too_few_values_beside_the_key_gives_no_question(tmp_path, rows):
    table = HEAD + (
        "columns: [{name: Gun, unit: text}, {name: Share, unit: percent}]\n"
        f"rows: {rows}\nlook_up: [{{from: Gun, to: Share}}]\n"
    )
    assert set(draws(tmp_path, table)) == {None}


def test_a_table_without_look_ups_gives_no_question(tmp_path):
    table = FULL["tables/grades.yml"].replace("look_up:", "# look_up:")
    assert set(draws(tmp_path, table)) == {None}
