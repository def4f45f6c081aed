"""The units that a learner may type, as a script for the pages."""

import json
from dataclasses import astuple
from typing import Any

from generator.marking.answers import APART, spellings
from generator.quantities import UNITS, Unit
from generator.website.figures import mist_patterns


def units_script() -> str:
    """Write every unit with its spellings and its exact size, in the order they are looked up."""
    rows = ",\n".join(
        json.dumps(_row(unit), ensure_ascii=False, separators=(",", ":")) for unit in UNITS.values()
    )
    head = "/* Units: name, symbol, spellings, factor, offset, what it measures, point, apart. */\n"
    return f"{head}Guidecoat.units=[\n{rows}\n];\n"


def patterns_script() -> str:
    """Write the speck tiles of all panels; without script the style sheet shows a plain mist."""
    return f"Guidecoat.patterns={json.dumps(mist_patterns())};\n"


def _row(unit: Unit) -> list[Any]:
    return [
        unit.name,
        unit.symbol,
        sorted(spellings(unit)),
        str(unit.factor),
        str(unit.offset),
        " ".join(str(power) for power in astuple(unit.dimension)),
        int(unit.point),
        int(unit.name in APART),
    ]
