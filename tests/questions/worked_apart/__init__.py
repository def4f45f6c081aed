"""Numeric items of the bank worked a second time, from the trade's own sums, a module a topic.

Nothing here knows the items' formulas or the relations. Each entry takes the numbers of a
question in the units that stand on the paper, and gives the answer in the answer's unit, before
rounding: an exact fraction, or a float where a root, a logarithm or the circle comes in.
Percents are numbers out of 100.

sums            what several topics share: percents, films, degrees, sizes of two systems
preparation     cleaning, bare metal, filler, primers
abrasives       grades and discs
mixing          parts, percents, the scale
film            wet and dry film, solids, coats
paint_needed    spreading rates and losses
orders          material, money and booth time
sizes           one system in another
climate         dew point, temperatures, vapour beside its limit
booth_air       flow, air changes, the filter gauge
curing          the rule of thumb, holds, windows, lamps
spraying        strokes, transfer, pressure, cups, colour and gloss
health          masks, vapour over a day, noise
solvent_records VOC and the logs
"""

from tests.questions.worked_apart import (
    abrasives,
    booth_air,
    climate,
    curing,
    film,
    health,
    mixing,
    orders,
    paint_needed,
    preparation,
    sizes,
    solvent_records,
    spraying,
)
from tests.questions.worked_apart.sums import Working

TOPICS = (
    preparation,
    abrasives,
    mixing,
    film,
    paint_needed,
    orders,
    sizes,
    climate,
    booth_air,
    curing,
    spraying,
    health,
    solvent_records,
)
WORKED_APART: dict[str, Working] = {
    name: working for topic in TOPICS for name, working in topic.WORKED.items()
}
"""The second working of each item by its name."""
