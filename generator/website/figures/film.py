"""Figures of film: layers to scale, and what is left of a wet film."""

from fractions import Fraction

from generator.quantities import number_text
from generator.refinishing import dry_film
from generator.refinishing import film_stack as film_of_layers
from generator.website.figures.drawing import box, figure_frame, line, words

# dry film of each layer in µm, from the metal up; the example of the relation `film_stack`
LAYERS = (
    ("Primer", 20, "mid"),
    ("Surfacer", 60, "soft"),
    ("Colour", 15, "dark"),
    ("Clear", 50, "clear-layer"),
)
SANDED_OFF = 25
SCALE = 1.8
FLOOR = 256.0
WET = Fraction(100)
SOLIDS = (Fraction(30), Fraction(45), Fraction(60))
UNIT = "\u00a0µm"


def film_stack() -> str:
    """Draw the film before and after blocking and colour, to scale, layer by layer."""
    names = [(name, Fraction(film)) for name, film, _ in LAYERS]
    first, second, third, fourth = (film for _, film in names)
    total = film_of_layers(first, second, third, fourth, Fraction(SANDED_OFF))
    shapes = [*_layer(14, FLOOR, 20, "mid"), *_sanded_surfacer(14, FLOOR - 20 * SCALE)]
    shapes += [
        words(60, FLOOR + 46, "in primer", "middle"),
        words(190, FLOOR + 46, "finished", "middle"),
    ]
    shapes += [box(x, FLOOR, 92, 24, "metal") for x in (14, 144)]
    floor = FLOOR
    for name, film, kind in LAYERS:
        kept = film - SANDED_OFF if name == "Surfacer" else film
        shapes += _layer(144, floor, kept, kind)
        shapes.append(words(246, floor - kept * SCALE / 2 + 5, f"{name} {kept}{UNIT}"))
        floor -= kept * SCALE
    shapes.append(words(190, floor - 10, f"{number_text(total)}{UNIT}", "middle", strong=True))
    shapes.append(words(246, FLOOR + 17, "Metal"))
    says = ", ".join(f"{name.lower()} {number_text(film)} µm" for name, film in names)
    return figure_frame(
        "film_stack",
        "Layers of a repair, to scale",
        f"From the metal up: {says}; {SANDED_OFF} µm of surfacer is sanded off; "
        f"{number_text(total)} µm in all.",
        FLOOR + 60,
        shapes,
    )


def _layer(x: float, floor: float, film: int, kind: str) -> list[str]:
    return [box(x, floor - film * SCALE, 92, film * SCALE, kind)]


def _sanded_surfacer(x: float, floor: float) -> list[str]:
    film = next(film for name, film, _ in LAYERS if name == "Surfacer")
    left, gone = (film - SANDED_OFF) * SCALE, SANDED_OFF * SCALE
    return [
        box(x, floor - left, 92, left, "soft"),
        box(x + 1, floor - left - gone, 90, gone, "ghost"),
        words(x + 46, floor - left - gone / 2 + 5, f"{SANDED_OFF}{UNIT}", "middle"),
        words(x + 46, floor - left - gone - 26, "sanded", "middle"),
        words(x + 46, floor - left - gone - 9, "off", "middle"),
    ]


def wet_dry_bars() -> str:
    """Draw one wet film beside what is left of it at three volume solids."""
    base, unit = 232, 1.9
    shapes = [
        box(16, base - 100 * unit, 70, 100 * unit, "soft"),
        words(51, base - 100 * unit / 2 + 5, "100", "middle", True),
    ]
    shapes += [words(51, base + 22, "wet", "middle"), words(51, base + 40, "µm", "middle")]
    for place, solids in enumerate(SOLIDS):
        left = dry_film(WET, solids)
        x, height = 116 + place * 82, float(left) * unit
        shapes += [
            box(x, base - 100 * unit, 64, 100 * unit, "ghost"),
            box(x, base - height, 64, height, "dark"),
        ]
        shapes += [words(x + 32, base - height - 8, number_text(left), "middle", True)]
        shapes += [
            words(x + 32, base + 22, f"{number_text(solids)} %", "middle"),
            words(x + 32, base + 40, "solids", "middle"),
        ]
    shapes.append(line(8, base, 356, base))
    found = ", ".join(f"{number_text(dry_film(WET, s))} µm at {number_text(s)} %" for s in SOLIDS)
    return figure_frame(
        "wet_dry_bars",
        "What is left of 100 µm of wet film",
        f"100 µm wet dries to {found} volume solids; the rest is solvent that leaves.",
        280,
        shapes,
    )
