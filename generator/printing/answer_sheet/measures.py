"""The measures of an answer sheet, in millimetres, from the top left of its frame.

The frame has a corner mark in each corner and is the same on both papers, so that one sheet
prints on either at full size and one reader finds its way on both.
"""

from dataclasses import dataclass
from typing import Final

LAYOUT: Final = 1
FRAME_WIDTH: Final = 186.0
FRAME_HEIGHT: Final = 245.0
CORNER: Final = 9.9
# The code of the form: left, top and size on the first page and, between the marks, on later ones.
CODE_FIRST: Final = (FRAME_WIDTH - 19.0, 15.0, 18.0)
CODE_LATER: Final = (150.0, 0.0, 11.0)
RING_LINE: Final = 0.28
# What stands between the bottom marks, and clear of them.
FIELDS_END: Final = FRAME_HEIGHT - CORNER - 2.0
PLACES: Final = 6
POINT: Final = "."
PAPERS: Final = {
    "a4": {"width": 210.0, "height": 297.0, "left": 12.0, "top": 21.0},
    "letter": {"width": 215.9, "height": 279.4, "left": 14.95, "top": 12.0},
}


@dataclass(frozen=True, slots=True)
class Measures:
    """Sizes of one edition of the sheet, all in mm.

    bubble        diameter of a ring
    across, down  widest distance of rings side by side, and the distance from row to row
    least_across  narrowest distance at which two rings still stand apart
    label         room for the number at the left of a field
    caption       height of the line above a grid
    box           height of the boxes to write a number in
    head, line    height of the first page's title and name, and of a line of its rules
    signs         of text that stand on such a line at least
    later         where the fields begin on the pages after the first
    """

    columns: int
    gutter: float
    bubble: float
    across: float
    down: float
    least_across: float
    label: float
    caption: float
    box: float
    head: float
    line: float
    signs: int
    later: float

    @property
    def column(self) -> float:
        """Return the width of a column of fields."""
        return (FRAME_WIDTH - self.gutter * (self.columns - 1)) / self.columns


NORMAL: Final = Measures(
    columns=4,
    gutter=2.0,
    bubble=4.2,
    across=6.2,
    down=5.5,
    least_across=5.0,
    label=7.6,
    caption=4.4,
    box=6.4,
    head=27.0,
    line=4.4,
    signs=98,
    later=14.0,
)
LARGE: Final = Measures(
    columns=2,
    gutter=6.0,
    bubble=7.0,
    across=9.4,
    down=8.2,
    least_across=7.8,
    label=14.0,
    caption=8.0,
    box=9.0,
    head=31.0,
    line=7.8,
    signs=54,
    later=14.0,
)
