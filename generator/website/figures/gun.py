"""Overlap of gun strokes: how many layers each strip of a panel gets."""

from fractions import Fraction

from generator.website.figures.drawing import box, figure_frame, line, words

PANEL, FAN = 60, 20
HALF, QUARTER = 50, 25
TOP, SCALE = 88.0, 3.0
KIND_OF_LAYERS = {1: "soft", 2: "mid"}
COLUMN = 30.0


def overlap_bands() -> str:
    """Draw the strokes at half and at quarter overlap beside the layers that they leave."""
    shapes = []
    for x, overlap, name in ((12.0, HALF, "Half overlap"), (196.0, QUARTER, "Quarter overlap")):
        shapes.append(words(x + 76, 20, name, "middle", strong=True))
        shapes.append(words(x + COLUMN, 44, "strokes", "middle"))
        shapes.append(words(x + 112, 44, "layers", "middle"))
        shapes += _strokes(x, overlap)
        shapes += _layers(x + 84, overlap)
    shapes.append(line(184, 8, 184, TOP + PANEL * SCALE + 30, "thin"))
    even, uneven = (sorted({layers for _, _, layers in bands(o)}) for o in (HALF, QUARTER))
    return figure_frame(
        "overlap_bands",
        "Layers on a panel at half and at quarter overlap",
        f"At half overlap every strip of the panel gets {even[0]} layers. At quarter overlap "
        f"strips of {uneven[0]} and {uneven[1]} layers follow each other, which shows as stripes.",
        TOP + PANEL * SCALE + 44,
        shapes,
    )


def bands(overlap: int) -> list[tuple[Fraction, Fraction, int]]:
    """Return each strip of the panel from its top: start, end and number of layers."""
    strokes = _stroke_edges(overlap)
    edges = sorted({edge for stroke in strokes for edge in stroke} | {Fraction(0), Fraction(PANEL)})
    inside = [edge for edge in edges if 0 <= edge <= PANEL]
    return [
        (start, end, sum(top <= start and end <= bottom for top, bottom in strokes))
        for start, end in zip(inside, inside[1:], strict=False)
    ]


def _stroke_edges(overlap: int) -> list[tuple[Fraction, Fraction]]:
    """Return top and bottom of each stroke; the first is aimed at the top edge of the panel."""
    half_fan = Fraction(FAN, 2)
    spacing = Fraction(FAN * (100 - overlap), 100)
    centres = [spacing * place for place in range(int(PANEL / spacing) + 1)]
    return [(centre - half_fan, centre + half_fan) for centre in centres]


def _strokes(x: float, overlap: int) -> list[str]:
    shapes = [box(x, TOP, COLUMN * 2, PANEL * SCALE, "ghost")]
    for place, (top, bottom) in enumerate(_stroke_edges(overlap)):
        left = x + 3 + place % 2 * COLUMN
        height = float(bottom - top) * SCALE
        shapes.append(box(left, TOP + float(top) * SCALE, COLUMN - 6, height, "soft"))
        shapes.append(box(left, TOP + float(top) * SCALE, COLUMN - 6, height, "ghost"))
        middle = TOP + float(top + bottom) / 2 * SCALE
        shapes.append(words(left + COLUMN / 2 - 3, middle + 5, str(place + 1), "middle"))
    return shapes


def _layers(x: float, overlap: int) -> list[str]:
    shapes = []
    for start, end, layers in bands(overlap):
        height = float(end - start) * SCALE
        top = TOP + float(start) * SCALE
        shapes.append(box(x, top, 40, height, KIND_OF_LAYERS[layers]))
        shapes.append(line(x, top, x + 40, top))
        shapes.append(words(x + 48, top + height / 2 + 5, str(layers)))
    return shapes
