"""The units that pages know are those of the generator, exact, in the same order."""

import json
from fractions import Fraction

from generator.marking.answers.unit_words import plain_spelling
from generator.quantities import UNITS
from generator.website.pages.units_script import units_script


def test_the_script_holds_every_unit_with_its_exact_size() -> None:
    text = units_script()
    rows = json.loads(text[text.index("=[") + 1 : text.rindex(";")])
    assert [row[0] for row in rows] == list(UNITS)
    for name, symbol, spellings, factor, offset, _, point, _ in rows:
        unit = UNITS[name]
        assert (Fraction(factor), Fraction(offset)) == (unit.factor, unit.offset)
        assert (symbol, bool(point)) == (unit.symbol, unit.point)
        assert plain_spelling(unit.name) in spellings


def test_units_measure_alike_in_the_script_where_their_dimensions_do() -> None:
    text = units_script()
    rows = json.loads(text[text.index("=[") + 1 : text.rindex(";")])
    for row in rows:
        alike = {other[0] for other in rows if other[5] == row[5]}
        assert alike == {
            name for name, unit in UNITS.items() if unit.dimension == UNITS[row[0]].dimension
        }
