"""Every relation says what it is, where it comes from, and what its equation really gives."""

import re
from fractions import Fraction
from pathlib import Path

import pytest
import yaml

from generator.diagnostics import OutsideValidity
from generator.formulas import evaluate, parse_formula
from generator.quantities import UNITS, Quantity, unit_named
from generator.refinishing import CATALOGUE
from tests.refinishing import suitable_air_and_cure
from tests.refinishing.suitable_arguments import SUITABLE as SUITABLE_ELSEWHERE
from tests.some import some

SOURCES = yaml.safe_load(
    (Path(__file__).parents[2] / "question_bank" / "sources.yml").read_text("utf-8")
)
PROSE = re.compile(r", with|rounded up|dew point of|table|nearest|or none|least of")
RELATIONS = sorted(CATALOGUE)
SUITABLE = SUITABLE_ELSEWHERE | suitable_air_and_cure.SUITABLE
PARTS = (Fraction(5), Fraction(2), Fraction(1))
TWO_PARTS = PARTS[:2]
GRADES = {"p_grade": 320, "cami_grade": 240, "from_grade": 180, "to_grade": 320}
LARGER_BY_NATURE = {"wet_film": 150, "poured_base": 90, "poured_hardener": 90, "dry_bulb": 90}


def arguments_for(name):
    given = {}
    for place, parameter in enumerate(CATALOGUE[name].parameters):
        if parameter.kind == "ratio":
            given[parameter.name] = TWO_PARTS if name == "split_total_with_percent" else PARTS
        elif parameter.name in GRADES:
            given[parameter.name] = Fraction(GRADES[parameter.name])
        elif parameter.name == "coats":
            given[parameter.name] = Fraction(3)
        elif parameter.name == "pressure":
            given[parameter.name] = Fraction(1000)
        else:
            given[parameter.name] = Fraction(LARGER_BY_NATURE.get(parameter.name, 20 + 2 * place))
    if name == "dry_film":
        given["wet_film"] = Fraction(60)
    if name == "humidity_from_wet_bulb":
        given["dry_bulb"], given["wet_bulb"] = Fraction(24), Fraction(18)
    return given | {key: Fraction(value) for key, value in SUITABLE.get(name, {}).items()}


def equations(name):
    return [one.split(" = ", 1) for one in CATALOGUE[name].facts.equation.split("; ")]


def test_all_relations_of_the_trade_are_there():
    assert len(CATALOGUE) == 148
    assert all(CATALOGUE[name].name == name for name in CATALOGUE)


@pytest.mark.parametrize("name", RELATIONS)
def test_a_relation_names_a_source_that_the_list_holds_with_the_same_status(name):
    facts = CATALOGUE[name].facts
    if facts.status == "definition":
        assert facts.source == "common_practice"
    else:
        assert SOURCES[facts.source]["status"] == facts.status
    assert facts.place


@pytest.mark.parametrize("name", RELATIONS)
def test_a_relation_carries_its_whole_record(name):
    relation = CATALOGUE[name]
    assert relation.function.__doc__.startswith(("Return", "Split", "Turn"))
    assert relation.sentence[0].isupper() and not relation.sentence.startswith("Return")
    assert relation.sentence.count(".") == 1
    assert set(relation.notes) == {"Valid", "Deviates", "Checked"}
    record = relation.function.__doc__
    labels = [
        line.partition(":")[0] for line in record.splitlines() if re.match(r"[A-Z]\w+: ", line)
    ]
    wanted = ["Relation", "Valid", "Deviates", "Checked", "Source"]
    assert labels == wanted + (["Caution"] if relation.facts.caution else [])


@pytest.mark.parametrize("name", RELATIONS)
def test_names_are_unambiguous_and_metadata_names_results(name):
    relation = CATALOGUE[name]
    inputs = {parameter.name for parameter in relation.parameters}
    assert not inputs & set(relation.results)
    assert [result for result, _ in equations(name)] == list(relation.results)
    assert set(relation.facts.rounding) <= set(relation.results)
    assert set(relation.facts.limit) <= set(relation.facts.rounding)
    assert set(relation.results.values()) <= set(UNITS.values())


LIMITED = some(name for name in RELATIONS if CATALOGUE[name].facts.limit)


@pytest.mark.parametrize("name", LIMITED)
def test_a_maximum_rounds_down_and_a_minimum_up(name):
    facts = CATALOGUE[name].facts
    for result, limit in some(facts.limit.items()):
        assert facts.rounding[result] == {"maximum": "down", "minimum": "up"}[limit]


@pytest.mark.parametrize(
    "name", [n for n in RELATIONS if not PROSE.search(CATALOGUE[n].facts.equation)]
)
def test_the_printed_equation_gives_what_the_function_gives(name):
    given = arguments_for(name)
    results = CATALOGUE[name].call(given)
    numbers = {**given, **results, "π": Fraction("3.14159265358979323846")}
    if "parts" in given:
        sizes = [*given["parts"], Fraction(0)]
        numbers |= dict(zip(("base_part", "hardener_part", "thinner_part"), sizes, strict=False))
        numbers["all_parts"] = sum(given["parts"])
    for result, expression in some(equations(name)):
        python = expression.replace("×", "*").replace("÷", "/").replace(" %", "")
        python = python.replace("²", "**2").replace("³", "**3")
        python = re.sub(r"(?<![\w.*])(\d+(?:\.\d+)?)", r"Fraction('\1')", python)
        assert eval(python, {"Fraction": Fraction, **numbers}) == results[result]  # noqa: S307


@pytest.mark.parametrize("name", RELATIONS)
def test_results_are_exact_numbers_under_their_own_names(name):
    relation = CATALOGUE[name]
    results = relation.call(arguments_for(name))
    assert list(results) == list(relation.results)
    assert all(type(number) is Fraction for number in results.values())


@pytest.mark.parametrize("name", RELATIONS)
def test_whole_python_numbers_give_the_same_exact_results(name):
    given = arguments_for(name)
    plain = {
        key: tuple(map(int, value)) if isinstance(value, tuple) else int(value)
        for key, value in given.items()
    }
    answer = CATALOGUE[name].function(**plain)
    numbers = answer if isinstance(answer, tuple) else (answer,)
    assert list(numbers) == list(CATALOGUE[name].call(given).values())
    assert all(isinstance(number, (Fraction, int)) for number in numbers)


# every temperature difference can be met, so its conversion refuses none
@pytest.mark.parametrize("name", [n for n in RELATIONS if n != "difference_to_kelvin"])
def test_every_relation_refuses_a_number_no_job_can_have(name):
    first = CATALOGUE[name].parameters[0]
    bad = (Fraction(0), Fraction(0)) if first.kind == "ratio" else Fraction(-999)
    with pytest.raises(OutsideValidity) as refused:
        CATALOGUE[name].call({**arguments_for(name), first.name: bad})
    assert re.fullmatch(r"[A-Z].+\.", str(refused.value))


@pytest.mark.parametrize("name", RELATIONS)
def test_every_working_reads_as_words_and_ends_in_the_result(name):
    relation = CATALOGUE[name]
    given = arguments_for(name)
    lines = relation.working(given, relation.results)
    assert len(lines) % 3 == 0 and lines
    assert not [line for line in lines if "_" in line]
    assert all(re.search(r" [=≈] -?\d", line) for line in lines[2::3])


def test_an_unknown_argument_is_a_mistake_of_the_caller():
    with pytest.raises(TypeError):
        CATALOGUE["mil_to_um"].call({"film": Fraction(1), "colour": Fraction(1)})


def test_a_formula_reaches_the_relations_in_any_unit():
    formula, _ = parse_formula("wet_film(dry_film, volume_solids)")
    values = {
        "dry_film": Quantity(Fraction(2), unit_named("mil")),
        "volume_solids": Quantity(Fraction(40), unit_named("percent")),
    }
    found = evaluate(formula, values, CATALOGUE).to(unit_named("um"))
    assert found.number == Fraction("50.8") * 100 / 40
