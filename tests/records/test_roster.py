"""A class as a table: read whole, or refused with the place of everything that is wrong."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.records import ROSTER_RULES, Person, read_roster
from generator.records.people.roster import MOST_PEOPLE

TABLE_RULES = {"csv-quote", "csv-control"}


def said(text):
    people, problems = read_roster(text, "people.csv")
    assert people == () or problems == ()
    return [f"{p.place}: {p.message} [{p.rule}]" for p in problems]


def test_people_come_in_the_order_of_their_rows():
    people, problems = read_roster("code,name\nApprentice 02,Ann\nApprentice 01,\n", "people.csv")
    assert problems == ()
    assert people == (Person("Apprentice 02", "Ann"), Person("Apprentice 01", ""))


@pytest.mark.parametrize(
    "text",
    [
        "code\nA1\nA2\n",
        "\ufeffCode;Name\r\nA1;Ann\r\nA2;Ben\r\n",
        "name\tcode\nAnn\tA1\nBen\tA2",
        '# bay 2\n\ncode,name\n\nA1,Ann\n\nA2,"Ben, junior"\n',
    ],
)
def test_a_name_may_be_left_out_and_any_usual_separator_will_do(text):
    people, problems = read_roster(text, "people.csv")
    assert problems == ()
    assert [person.code for person in people] == ["A1", "A2"]


@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("", "people.csv:1:1: this roster is empty [roster-empty]"),
        ("\n\n", "people.csv:1:1: this roster is empty [roster-empty]"),
        ("code,name\n", "people.csv:1:1: nobody is on this roster [roster-empty]"),
        ("code,phone\nA1,7\n", "people.csv:1:6: a roster has no column 'phone' [roster-columns]"),
        ("code,code\nA1,A1\n", "people.csv:1:6: the column 'code' is there twice [roster-columns]"),
        ("name\nAnn\n", "people.csv:1:1: a roster needs a column named code [roster-columns]"),
        (
            "code,name\nA1\n",
            "people.csv:2:1: this row has 1 cell, the header has 2 [roster-row]",
        ),
        (
            "code,name\nA1,Ann,Bay 2\n",
            "people.csv:2:1: this row has 3 cells, the header has 2 [roster-row]",
        ),
        ("code,name\n,Ann\n", "people.csv:2:1: this person has no code [person-code]"),
        ("code\n../01\n", "people.csv:2:1: '../01' cannot be a code [person-code]"),
        ('code\nA 1 \n"A/1"\n', "people.csv:3:1: 'A/1' cannot be a code [person-code]"),
        (
            "code\nA1\nB1\na1\n",
            "people.csv:4:1: 'a1' is there already, in line 2 [person-repeated]",
        ),
        (
            "code\nA 1\nA-1\n",
            "people.csv:3:1: 'A-1' is there already, in line 2 [person-repeated]",
        ),
        (
            "code,name\n=1+1,Ann\n",
            "people.csv:2:1: '=1+1' would run as a formula in a spreadsheet [roster-formula]",
        ),
        (
            "code,name\nA1,@sum\n",
            "people.csv:2:4: '@sum' would run as a formula in a spreadsheet [roster-formula]",
        ),
        ('code,name\nA1,"Ann\n', "people.csv:2:4: a quoted cell is never closed [csv-quote]"),
    ],
)
def test_what_is_wrong_is_said_at_its_place(text, message):
    assert said(text) == [message]


def test_every_fault_of_a_roster_is_shown_at_once():
    text = "code,name\nA1,Ann\nA1,Ben\n,Cat\n+1,Dan\nA2\n"
    assert [line.rpartition("[")[2] for line in said(text)] == [
        "roster-row]",
        "person-repeated]",
        "person-code]",
        "roster-formula]",
    ]


def test_a_class_of_the_largest_size_is_read_and_one_more_is_not():
    rows = "".join(f"A{number}\n" for number in range(MOST_PEOPLE))
    assert len(read_roster(f"code\n{rows}", "people.csv")[0]) == MOST_PEOPLE
    assert said(f"code\n{rows}B1\n") == [
        f"people.csv:{MOST_PEOPLE + 2}:1: {MOST_PEOPLE + 1} people are on this roster; "
        f"{MOST_PEOPLE} is the most for one issue [roster-size]"
    ]


@given(st.text(max_size=80))
def test_any_text_gives_people_or_problems_with_pages_and_never_both(text):
    people, problems = read_roster(text, "people.csv")
    assert bool(people) != bool(problems)
    assert {problem.rule for problem in problems} <= set(ROSTER_RULES) | TABLE_RULES
    assert len({person.code for person in people}) == len(people)


@given(st.lists(st.integers(0, 999), unique=True, min_size=1, max_size=20))
def test_codes_of_letters_and_digits_are_read_as_they_stand(numbers):
    codes = [f"Apprentice {number}" for number in numbers]
    people, problems = read_roster("code\n" + "\n".join(codes), "people.csv")
    assert problems == ()
    assert [person.code for person in people] == codes


@pytest.mark.parametrize("code", ["\u0410nna", "\uff21nna", "Anna\u0661", "Ann\u03b1", "A\u00b2"])
def test_a_code_with_signs_that_only_look_like_others_is_refused(code):
    (line,) = said(f"code\n{code}\n")
    assert "look like others and are not [person-code]" in line


@pytest.mark.parametrize(
    ("one", "other"), [("Ace", "\u0430\u0441\u0435"), ("pax", "\u0440\u0430\u0445")]
)
def test_two_codes_that_look_the_same_are_the_same_person(one, other):
    assert said(f"code\n{one}\n{other}\n") == [
        f"people.csv:3:1: '{other}' is there already, in line 2 [person-repeated]"
    ]


def test_an_accent_that_is_a_sign_of_its_own_becomes_one_letter():
    people, problems = read_roster("code\nA\u0301lvaro 1\n", "people.csv")
    assert problems == ()
    assert people == (Person("\u00c1lvaro 1"),)
