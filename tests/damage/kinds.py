"""Every kind of damage, in the order of the table."""

from tests.damage import lines, meaning, names, signs
from tests.damage.damage import Kind

KINDS: dict[str, Kind] = {**lines.KINDS, **names.KINDS, **meaning.KINDS, **signs.KINDS}
