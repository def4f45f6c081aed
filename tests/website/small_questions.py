"""One solved question of each kind, in the plain form that pages are built from."""

from typing import Any

PUBLISHED = [{"tag": "published", "text": "USAF TO 1-1-8, table 4-1", "key": "to_1_1_8"}]
PRACTICE = [{"tag": "common_practice", "text": "Common practice in the trade", "key": ""}]


def question(kind: str, name: str, stem: str, key: dict[str, Any], **more: Any) -> dict[str, Any]:
    """Return a solved question with the fields that every kind has."""
    plain = {
        "id": f"film_build/{name}",
        "kind": kind,
        "module": "film_build",
        "objective": f"film_build/{name.partition('/')[0]}",
        "level": "apply",
        "pool": "study",
        "safety": False,
        "critical": None,
        "place": "",
        "stem": stem,
        "hands_on": False,
        "caution": None,
        "cautions": [],
        "sheet": None,
        "table": None,
        "sources": PRACTICE,
        "minutes": 1.5,
        "key": key,
    }
    return {**plain, **more}


def wet_film(dry: int, wet: str, low: str, high: str, slip: str) -> dict[str, Any]:
    """Return one variant of the wet-film question."""
    return question(
        "numeric",
        "dry_from_wet/target",
        f"The sheet asks for **{dry} µm** of dry film. What should the comb gauge show wet,"
        " in µm to the nearest 1 µm?",
        {
            "shown": wet,
            "unit": "um",
            "unit_symbol": "µm",
            "step": "1",
            "low": low,
            "high": high,
            "band_text": f"{low} to {high} µm",
            "working": ["wet film = dry film ÷ volume solids", f"wet film = {dry} µm ÷ 60 %"],
            "slips": [
                {
                    "shown": slip,
                    "low": str(int(slip) - 1),
                    "high": str(int(slip) + 1),
                    "says": "You multiplied by the solids. Wet film is always thicker than dry.",
                }
            ],
            "says": "Thinner leaves the film and takes its height with it.",
        },
        pool="both",
        sources=PUBLISHED,
        sheet={
            "title": "Made-up data sheet, two-pack surfacer",
            "rows": [["Volume solids of the mix", "60 %"], ["Dry film", f"{dry} µm"]],
        },
    )


def options(*texts: tuple[str, bool, str]) -> dict[str, Any]:
    """Return the key of a choice from (text, right, says)."""
    return {
        "options": [
            {"letter": "ABCDEF"[place], "text": text, "right": right, "says": says}
            for place, (text, right, says) in enumerate(texts)
        ]
    }


CHOICE = question(
    "choice",
    "read_gauges/zero",
    "What do you do **before** you read a dry-film gauge on a panel?",
    options(
        ("Check it on a bare plate and a known shim", True, "A gauge drifts; two points show it."),
        ("Warm it in your hand for a minute", False, "Heat moves the reading; it proves nothing."),
        ("Set it to the last job's reading", False, "That copies the last error onto this panel."),
    ),
)
SEVERAL = question(
    "multiple_response",
    "coats/thin_edges",
    "Which of these make a film thinner than planned? Choose all that apply.",
    options(
        (
            "More thinner in the same wet film",
            True,
            "Less solid is left when the thinner has gone.",
        ),
        (
            "A gun held too far from the panel",
            True,
            "More of the paint dries or drifts in the air.",
        ),
        ("A slower pass", False, "A slower pass lays more paint in the same place."),
        ("A narrower overlap", True, "Each strip then gets fewer passes."),
    ),
    sources=PUBLISHED,
)
ORDER = question(
    "order",
    "total_build/readings",
    "Put the steps of a wet-film check in order.",
    {
        "steps": [
            {"letter": "A", "text": "Push the comb square into the wet film"},
            {"letter": "B", "text": "Put on breathing protection and gloves"},
            {"letter": "C", "text": "Read the last wetted tooth"},
            {"letter": "D", "text": "Wipe the comb clean"},
        ],
        "pairs": [
            {
                "first": "B",
                "then": "A",
                "class": "danger",
                "reason": "Wet two-pack film gives off vapour you must not breathe.",
            },
            {
                "first": "A",
                "then": "C",
                "class": "ruins",
                "reason": "There is nothing to read before the teeth are wetted.",
            },
            {
                "first": "C",
                "then": "D",
                "class": "ruins",
                "reason": "Wiping takes the reading away.",
            },
        ],
        "orders": 1,
        "one_order": ["B", "A", "C", "D"],
        "rule": "Any order that keeps these pairs is right.",
    },
    safety=True,
    caution="Wear what the safety data sheet names before you go near wet two-pack paint.",
)
MATCH = question(
    "match",
    "convert_units/names",
    "Pair each reading with what it is.",
    {
        "left": [{"number": "1", "text": "25.4 µm"}, {"number": "2", "text": "1000 µm"}],
        "right": [
            {"letter": "A", "text": "one millimetre"},
            {"letter": "B", "text": "one mil"},
            {"letter": "C", "text": "one inch"},
        ],
        "answers": {"1": "B", "2": "A"},
        "says": {
            "1": "A mil is a thousandth of an inch, 0.0254 mm.",
            "2": "A thousand micrometres make a millimetre.",
        },
    },
)
WRITTEN = question(
    "written",
    "thin_and_thick/why",
    "Say why a film that is too thick can fail although it covers well.",
    {
        "points": [
            {"text": "Solvent is trapped under a skin", "marks": 1},
            {"text": "The film cures unevenly and may crack or pop", "marks": 1},
        ],
        "model": "The top closes first, so solvent stays below; later it lifts, pops or cracks.",
    },
)


WITH_UNIT = question(
    "numeric",
    "order_material/with_unit",
    "A gauge from a US shop shows 3 mil. How thick is the film? Write the number with its unit.",
    {
        "shown": "76.2",
        "unit": "um",
        "unit_symbol": "µm",
        "step": "0.1",
        "low": "76.15",
        "high": "76.25",
        "band_text": "76.15 to 76.25 µm",
        "working": ["3 mil = 3 × 25.4 µm", "3 mil = 76.2 µm"],
        "slips": [
            {"shown": "3", "low": "2.9", "high": "3.1", "says": "A mil is not a micrometre."},
            {"shown": "0.0762", "low": "0.07", "high": "0.08", "says": "That is in millimetres."},
        ],
        "says": "A mil is 25.4 µm.",
    },
)
WET_FILM = (
    wet_film(70, "117", "116", "118", "42"),
    wet_film(60, "100", "99", "101", "36"),
    wet_film(45, "75", "74", "76", "27"),
)
