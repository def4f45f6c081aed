"""Figures of film: layers to scale, and what is left of a wet film."""

from fractions import Fraction

from generator.quantities import number_text
from generator.refinishing.film import dry_film
from generator.refinishing.film_build import film_stack as film_of_layers
from generator.website.drawing import box, figure_frame, line, words

# dry film of each layer in µm, from the metal up; the example of the relation `film_stack`
LAYERS = (
    ("Primer", 20, "mid"),
    ("Surfacer", 60, "soft"),
    ("Colour", 15, "dark"),
    ("Clear", 50, "clear-layer"),
)
SANDED_OFF = 25
SCALE = 1.7
WET = Fraction(100)
SOLIDS = (Fraction(30), Fraction(45), Fraction(60))
UNIT = "\u00a0µm"


def film_stack() -> str:
    """Draw four layers on metal to scale, with the film that sanding takes."""
    names = [(name, Fraction(film)) for name, film, _ in LAYERS]
    first, second, third, fourth = (film for _, film in names)
    total = film_of_layers(first, second, third, fourth, Fraction(SANDED_OFF))
    shapes, floor = [box(20, 268, 190, 26, "metal"), words(222, 286, "Metal")], 268.0
    for name, film, kind in LAYERS:
        height = film * SCALE
        if name == "Surfacer":
            left = (film - SANDED_OFF) * SCALE
            shapes += [box(20, floor - left, 190, left, kind)]
            shapes += [
                box(215, floor - height, 5, height, "ghost"),
                words(228, floor - height / 2 - 6, f"{name} {film}{UNIT}"),
            ]
            shapes += [words(228, floor - height / 2 + 12, f"less {SANDED_OFF} sanded off")]
            floor -= left
            continue
        shapes.append(box(20, floor - height, 190, height, kind))
        shapes.append(words(228, floor - height / 2 + 5, f"{name} {film}{UNIT}"))
        floor -= height
    shapes += [line(12, 268, 12, floor), line(8, 268, 16, 268), line(8, floor, 16, floor)]
    shapes.append(
        words(20, floor - 12, f"{number_text(total)}{UNIT} of dry film in all", strong=True)
    )
    says = ", ".join(f"{name.lower()} {number_text(film)} µm" for name, film in names)
    return figure_frame(
        "film_stack",
        "Layers of a repair, to scale",
        f"From the metal up: {says}; {SANDED_OFF} µm of surfacer is sanded off; "
        f"{number_text(total)} µm in all.",
        306,
        shapes,
    )


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
