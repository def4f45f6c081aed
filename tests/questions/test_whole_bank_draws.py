"""Every question of the real bank: solvable, one key, no slip that passes, no pair unkept."""

import re
from decimal import ROUND_CEILING, ROUND_FLOOR, ROUND_HALF_UP, Decimal, localcontext
from fractions import Fraction
from itertools import permutations

import pytest

from generator.bank.checks.numbers import numeric_entries
from generator.bank.numbers.numeric_solution import (
    Refusal,
    Solution,
    all_sets,
    corners,
    set_count,
    solve,
)
from generator.diagnostics import normal
from generator.issued import issued_question
from generator.quantities import Quantity
from generator.questions.drawing.numeric import draw_solution, numeric_key, prepared
from generator.questions.drawing.ordering import (
    drawable_subsets,
    order_key,
    scored_item,
    scored_procedure,
)
from generator.questions.drawing.seeded_random import SeededRandom
from generator.refinishing.catalogue import CATALOGUE
from tests.questions.worked_apart import WITH_A_ROUNDED_FACTOR, WORKED_APART
from tests.real import real_askables, real_bank
from tests.some import some

# two hundred misses in a row, the most that a draw tries, are then as good as impossible
LEAST_ACCEPTED = Fraction(1, 10)
MOST_SUBSETS = 40
DIRECTIONS = {"half": ROUND_HALF_UP, "up": ROUND_CEILING, "down": ROUND_FLOOR}
PLACEHOLDER = re.compile(r"\{[a-z_0-9]*\}?")


@pytest.fixture(scope="module")
def bank():
    return real_bank()


@pytest.fixture(scope="module")
def numeric(bank):
    return {entry.name: prepared(entry) for entry in numeric_entries(bank)}


@pytest.fixture(scope="module")
def solved(numeric):
    """Every set of every grid, solved; the bank's grids are small enough to leave none out."""
    return {
        name: [solve(item, values, CATALOGUE) for values in all_sets(item)]
        for name, item in numeric.items()
    }


@pytest.fixture(scope="module")
def asked():
    return real_askables()


@pytest.fixture(scope="module")
def choices(asked):
    """Each derived choice in twelve draws."""
    made = [a.make(f"form {n}", ()) for a in asked if a.is_derived for n in range(12)]
    return [question for question in made if question is not None and question.kind == "choice"]


def test_the_bank_has_numbers_to_draw(numeric, solved):
    assert len(numeric) >= 40
    assert sum(len(outcomes) for outcomes in solved.values()) > 1000


def test_every_corner_is_solved_unless_the_item_leaves_it_out(numeric):
    left_out = 0
    for name, item in numeric.items():
        for values in corners(item):
            outcome = solve(item, values, CATALOGUE)
            if isinstance(outcome, Refusal):
                assert outcome.rule == "not-required", f"{name} {values}: {outcome.message}"
                left_out += 1
    # some items do leave corners out, so the branch above is walked
    assert 0 < left_out < len(numeric)


def test_every_grid_is_walked_whole_so_all_its_draws_are_proved(numeric, solved):
    for name, item in some(numeric.items()):
        assert len(solved[name]) == set_count(item) <= 10_000, name


def test_no_set_of_any_grid_is_refused_but_those_left_out(solved):
    refused = {
        (name, outcome.message)
        for name, outcomes in solved.items()
        for outcome in outcomes
        if isinstance(outcome, Refusal) and outcome.rule != "not-required"
    }
    assert refused == set()


def test_enough_of_every_grid_is_accepted_that_a_draw_cannot_fail(solved):
    accepted = {
        name: Fraction(sum(isinstance(o, Solution) for o in outcomes), len(outcomes))
        for name, outcomes in solved.items()
    }
    assert {name for name, share in accepted.items() if share < LEAST_ACCEPTED} == set()
    assert min(accepted.values()) < 1, "no grid leaves a set out"


def test_a_draw_is_one_of_the_accepted_sets(numeric, solved):
    for name, item in some(numeric.items()):
        drawn = draw_solution(item, "whole bank", "seed")
        assert drawn in solved[name], name


def solutions(numeric, solved):
    for name, outcomes in solved.items():
        for outcome in outcomes:
            if isinstance(outcome, Solution):
                yield name, numeric[name], outcome


def test_the_key_passes_and_no_slip_does(numeric, solved):
    for name, item, solution in some(solutions(numeric, solved)):
        key = numeric_key(item, solution, "")
        printed = Fraction(key.shown)
        assert key.band.holds(printed), f"{name}: {key.shown} is outside {key.band_text}"
        if not item.is_count:
            reach = item.tolerance.around(key.exact)
            assert abs(printed - key.exact) <= max(reach, item.step), name
        shown = [slip.shown for slip in key.slips]
        assert len({key.shown, *shown}) == len(shown) + 1, f"{name}: {key.shown}, {shown}"
        for slip in key.slips:
            assert not key.band.holds(Fraction(slip.shown)), f"{name}: {slip.shown} passes"
            assert slip.band.holds(Fraction(slip.shown))


def rounded(exact, item):
    with localcontext() as digits:
        digits.prec = 60
        steps = Fraction(exact) / item.step
        whole = Decimal(steps.numerator) / Decimal(steps.denominator)
        return Fraction(whole.to_integral_value(DIRECTIONS[item.direction])) * item.step


def test_the_key_is_rounded_as_the_item_says(numeric, solved):
    for name, item, solution in some(solutions(numeric, solved)):
        assert rounded(solution.exact, item) == solution.key, name


def test_the_last_line_of_the_working_holds_the_printed_key(numeric, solved):
    for name, item, solution in some(solutions(numeric, solved)):
        key = numeric_key(item, solution, "")
        shown = f"{key.shown}\u00a0{key.unit.symbol}".rstrip()
        last = key.working[-1]
        assert last.endswith((f": {shown}", f": {key.shown}\u00a0{key.unit.singular}")), name
        assert len(key.working) > 1, name
        assert len(set(key.working)) == len(key.working), f"{name}: {key.working}"


def plain_numbers(values):
    return {
        name: value.number if isinstance(value, Quantity) else value.parts
        for name, value in values.items()
    }


def test_every_item_that_an_exam_may_draw_is_worked_a_second_time(bank):
    drawn = {entry.name for entry in numeric_entries(bank) if entry.record.use in ("exam", "both")}
    assert drawn - WORKED_APART.keys() == set()


@pytest.mark.parametrize("name", WORKED_APART)
def test_a_second_working_meets_the_key_on_every_draw(name, numeric, solved):
    answers = list(solutions(numeric, {name: solved[name]}))
    assert answers
    for _, item, solution in answers:
        again = WORKED_APART[name](plain_numbers(solution.values))
        assert rounded(again, item) == solution.key, solution.values
        if name in WITH_A_ROUNDED_FACTOR:
            assert float(again) == pytest.approx(float(solution.exact), rel=6e-3)
        elif isinstance(again, Fraction):
            assert again == solution.exact, solution.values
        else:
            assert again == pytest.approx(float(solution.exact), rel=1e-8), solution.values


def texts(value):
    """Return every text inside plain data."""
    if isinstance(value, str):
        yield value
    elif isinstance(value, dict):
        for inner in value.values():
            yield from texts(inner)
    elif isinstance(value, list):
        for inner in value:
            yield from texts(inner)


def test_no_placeholder_is_left_in_anything_shown(asked):
    for askable in some(asked):
        for form in ("A", "B"):
            question = askable.make(form, ())
            assert question is not None, askable.name
            left = [text for text in texts(issued_question(question)) if PLACEHOLDER.search(text)]
            assert left == [], askable.name


def test_every_drawn_value_is_shown_to_the_learner(asked):
    for askable in some(asked):
        if askable.kind == "numeric" and not askable.is_derived:
            question = askable.make("A", ())
            rows = question.exhibit.rows if question.exhibit else ()
            seen = " ".join([question.stem, *(cell for row in rows for cell in row)])
            missing = [shown for _, shown in question.draw if shown not in seen]
            assert missing == [], askable.name


def order_questions(bank):
    """Return name, scored steps and steps shown of every order question, thinned evenly."""
    for name, entry in bank.procedures.items():
        scored = scored_procedure(entry.record)
        subsets = drawable_subsets(scored)
        for subset in subsets[:: max(1, len(subsets) // MOST_SUBSETS)]:
            yield name, scored, subset
    for name, entry in bank.items.items():
        if getattr(entry.record, "kind", "") == "order":
            scored = scored_item(entry.record)
            yield name, scored, tuple(scored.steps)


def kept(order, pairs):
    spot = {name: place for place, name in enumerate(order)}
    return all(spot[first] < spot[then] for first, then in pairs)


def test_every_order_question_counts_the_orders_that_keep_its_pairs(bank):
    found = 0
    for name, scored, subset in order_questions(bank):
        key = order_key(scored, subset, SeededRandom(name))
        letters = [letter for letter, _ in key.steps]
        named = [(pair.first, pair.then) for pair in key.pairs]
        legal = sum(kept(order, named) for order in permutations(letters))
        assert key.orders == legal, name
        assert 1 <= key.orders <= 24, name
        assert kept(key.one_order, named), name
        assert not kept(letters, named), f"{name} is shown in a right order"
        found += 1
    assert found > 100


def test_every_named_pair_has_a_reason_and_follows_from_stated_pairs(bank):
    for name, scored, subset in order_questions(bank):
        key = order_key(scored, subset, SeededRandom(name))
        by_text = {text: step for step, text in scored.steps.items()}
        steps = {letter: by_text[text] for letter, text in key.steps}
        for pair in key.pairs:
            assert pair.reason, name
            assert reachable(scored.reasons, steps[pair.first], steps[pair.then]), name


def reachable(pairs, first, then):
    found, waiting = set(), [first]
    while waiting:
        step = waiting.pop()
        after = [b for a, b in pairs if a == step and b not in found]
        found.update(after)
        waiting += after
    return then in found


def whole_order(scored, label):
    """Return one order of all the steps that keeps every stated pair, drawn by a label."""
    stream, left, order = SeededRandom(label), list(scored.steps), []
    while left:
        free = [s for s in left if not any(b == s and a in left for a, b in scored.reasons)]
        step = stream.choose(free)
        left.remove(step)
        order.append(step)
    return order


def test_whoever_does_the_whole_job_right_is_right_on_every_part_of_it(bank):
    for name, scored, subset in order_questions(bank):
        key = order_key(scored, subset, SeededRandom(name))
        by_text = {scored.steps[step]: step for step in subset}
        letters = {by_text[text]: letter for letter, text in key.steps}
        named = [(pair.first, pair.then) for pair in key.pairs]
        for number in range(6):
            order = whole_order(scored, f"{name} {number}")
            assert kept([letters[step] for step in order if step in letters], named), name


def test_every_procedure_can_be_asked_as_an_order_question(bank, asked):
    names = {askable.name for askable in asked}
    missing = [name for name in bank.procedures if f"procedures/{name}/order" not in names]
    assert missing == []


def test_every_derived_choice_has_one_right_option_and_a_reason_for_each(choices):
    assert len(choices) > 1000
    for question in choices:
        options = question.key.options
        assert sum(option.right for option in options) == 1, question.name
        assert 3 <= len(options) <= 4, question.name
        assert len({normal(option.text) for option in options}) == len(options), question.name
        assert all(option.feedback.strip() for option in options), question.name
        assert all(normal(option.feedback) != normal(option.text) for option in options), (
            question.name
        )


def test_no_other_name_of_a_fault_is_a_wrong_name_for_it(bank, choices):
    by_title = {entry.record.title: entry.record for entry in bank.faults.values()}
    asked = [question for question in choices if question.name.endswith("/name")]
    assert len(asked) > 200
    for question in asked:
        (right,) = [by_title[option.text] for option in question.key.options if option.right]
        names = {normal(name) for name in (right.title, *right.other_names)}
        for option in question.key.options:
            if not option.right:
                other = by_title[option.text]
                assert normal(other.title) not in names, question.name
                assert normal(right.title) not in map(normal, other.other_names), question.name


def test_a_fault_is_not_named_in_the_question_that_asks_for_its_name(bank, choices):
    for question in some(choices):
        if question.name.endswith("/name"):
            (right,) = [option.text for option in question.key.options if option.right]
            assert normal(right) not in normal(question.stem), question.name


def test_what_rests_on_memory_is_never_for_exams(asked):
    for askable in some(asked):
        question = askable.make("A", ())
        if any(source.tag == "from_memory" for source in question.sources):
            assert askable.use == "study", askable.name


def test_all_drawn_kinds_stay_what_they_were_said_to_be(asked):
    for askable in some(asked):
        if askable.is_derived:
            kinds = {askable.make(f"form {number}", ()).kind for number in range(8)}
            assert kinds == {askable.kind}, askable.name
