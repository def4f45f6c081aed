"""An invented form with one question of every kind, in the plain JSON of a drawn question."""

from typing import Any


def _question(kind: str, key: dict[str, Any], stem: str, **more: Any) -> dict[str, Any]:
    base: dict[str, Any] = {
        "id": f"film_build/trial/{kind}",
        "kind": kind,
        "module": "film_build",
        "objective": "trial",
        "level": "apply",
        "pool": "exam",
        "safety": False,
        "stem": stem,
        "caution": None,
        "sheet": None,
        "table": None,
        "sources": [{"tag": "common_practice", "text": None, "key": None}],
        "minutes": 1.5,
        "key": key,
    }
    return base | more


NUMERIC = _question(
    "numeric",
    {
        "shown": "128",
        "unit": "um",
        "unit_symbol": "µm",
        "step": "1",
        "low": "127.83",
        "high": "128.83",
        "band_text": "127.8 to 128.8 µm",
        "working": [
            "wet film = dry film × (1 + thinner) ÷ volume solids",
            "= 70 µm × 1.10 ÷ 0.60 = 128.33 µm",
            "to the nearest 1 µm: 128 µm",
        ],
        "slips": [
            {
                "shown": "42",
                "low": "41.5",
                "high": "42.5",
                "says": "Multiplied by the solids; wet film is thicker than dry film.",
            },
            {
                "shown": "117",
                "low": "116.5",
                "high": "117.5",
                "says": "Left out the thinner, which leaves the film as it dries.",
            },
        ],
        "says": "The part of the film that stays behind is the solids alone.",
    },
    "The sheet asks for 70\u00a0µm of dry film. The mix holds 60\u00a0% solids by volume and you "
    "add 10\u00a0% thinner. What wet film should the comb gauge show, in µm to the nearest "
    "1\u00a0µm?",
    safety=True,
    caution="Check the gauge with the **air-fed hood** still on: wet two-pack film gives off "
    "isocyanate.",
    sheet={
        "title": "Made-up data sheet, two-pack surfacer",
        "rows": [
            ["Volume solids of the mix", "60 %"],
            ["Mixing ratio by volume", "4 : 1 : 1"],
            ["Dry film per coat", "60 to 80 µm"],
        ],
    },
    sources=[
        {"tag": "published", "text": "Wet film slides, worked example 3", "key": "film_slides"},
    ],
)

CHOICE = _question(
    "choice",
    {
        "options": [
            {
                "letter": "A",
                "text": "Degrease it",
                "right": True,
                "says": "Sanding first would grind road film into the scratches.",
            },
            {
                "letter": "B",
                "text": "Sand it with P320",
                "right": False,
                "says": "The paper loads up and presses grease into the metal.",
            },
            {
                "letter": "C",
                "text": "Blow it off and mask it",
                "right": False,
                "says": "Air moves dust; grease stays and the tape lifts.",
            },
        ]
    },
    "A trailer door comes in from the road. What comes **first**?",
)

MULTIPLE = _question(
    "multiple_response",
    {
        "options": [
            {
                "letter": "A",
                "text": "The can is marked with the ratio 4:1",
                "right": False,
                "says": "The ratio says nothing about the state of the paint.",
            },
            {
                "letter": "B",
                "text": "The mix has warmed up in the pot",
                "right": True,
                "says": "Heat shows that the cure is under way.",
            },
            {
                "letter": "C",
                "text": "The mix strings from the stick",
                "right": True,
                "says": "Strings show that it has begun to gel.",
            },
            {
                "letter": "D",
                "text": "The lid of the hardener is clean",
                "right": False,
                "says": "A clean lid is good care and tells nothing of the mix.",
            },
        ]
    },
    "Which signs tell you that a mixed pot is past its pot life? Choose all that apply.",
    table={
        "title": "Pot life at three temperatures",
        "columns": ["Shop temperature", "Pot life"],
        "rows": [["15 °C", "75 min"], ["20 °C", "60 min"], ["30 °C", "30 min"]],
    },
)

ORDER = _question(
    "order",
    {
        "steps": [
            {"letter": "A", "text": "Spread the filler in thin passes"},
            {"letter": "B", "text": "Put on goggles and gloves"},
            {"letter": "C", "text": "Key the bed with P80"},
            {"letter": "D", "text": "Fold in the hardener paste"},
            {"letter": "E", "text": "Shape it with a block"},
        ],
        "pairs": [
            {
                "first": "B",
                "then": "D",
                "class": "danger",
                "reason": "Peroxide paste burns eyes, so cover them before the tin is open.",
            },
            {
                "first": "C",
                "then": "D",
                "class": "ruins",
                "reason": "The mix gels in minutes, so the bed is ready first.",
            },
            {
                "first": "D",
                "then": "A",
                "class": "ruins",
                "reason": "Filler without hardener stays soft.",
            },
            {
                "first": "A",
                "then": "E",
                "class": "ruins",
                "reason": "You can only shape what is on the panel.",
            },
        ],
        "orders": 2,
        "one_order": ["B", "C", "D", "A", "E"],
        "rule": "Any order that keeps these pairs is right.",
    },
    "Put the steps of filling a dent in order.",
)

MATCH = _question(
    "match",
    {
        "left": [
            {"number": "1", "text": "Pin-size burst domes in the last coat"},
            {"number": "2", "text": "Round craters with a clear rim"},
            {"number": "3", "text": "A rough skin like citrus peel"},
        ],
        "right": [
            {"letter": "A", "text": "Silicone or oil on the surface"},
            {"letter": "B", "text": "Solvent trapped under a skin"},
            {"letter": "C", "text": "Water in the tank of the lift"},
            {"letter": "D", "text": "Droplets too dry to flow out"},
        ],
        "answers": {"1": "B", "2": "A", "3": "D"},
        "says": {
            "1": "The skin closes before the solvent is out.",
            "2": "Paint draws back from the speck.",
            "3": "Too little thinner or too far a gun.",
        },
    },
    "Match each fault with its cause.",
)

WRITTEN = _question(
    "written",
    {
        "points": [
            {"text": "Names the exhaust filter and its pressure drop", "marks": 1},
            {"text": "Says to stop spraying until the flow is back", "marks": 1},
        ],
        "model": "The exhaust filter is loaded. Stop, change it, and read the gauge again.",
    },
    "The booth gauge reads twice its usual value. Say what it means and what you do.",
    sources=[{"tag": "from_memory", "text": None, "key": None}],
)

KINDS = (NUMERIC, CHOICE, MULTIPLE, ORDER, MATCH, WRITTEN)

# What only the key may show: feedback, working, bands, model answers, sources.
SECRETS = (
    "128.33",
    "127.8",
    "128.8",
    "wet film =",
    "Multiplied by the solids",
    "stays behind",
    "grind road film",
    "Heat shows",
    "Peroxide paste",
    "gels in minutes",
    "Any order that keeps",
    "closes before the solvent",
    "Names the exhaust filter",
    "is loaded",
    "worked example 3",
    "From memory",
)


def form_of(*questions: dict[str, Any], **more: Any) -> dict[str, Any]:
    """Number the questions into a form; every question is worth as many marks as it has points."""
    entries = [
        {
            "number": number,
            "marks": sum(point["marks"] for point in question["key"].get("points", [{"marks": 1}])),
            "question": question,
        }
        for number, question in enumerate(questions, 1)
    ]
    base: dict[str, Any] = {
        "title": "Film build and filler check",
        "blueprint": "film_and_filler",
        "form": "A",
        "edition": "1",
        "seed": "2026-spec",
        "minutes": 40,
        "pass_percent": 80,
        "pass_marks": 16,
        "questions": entries,
        "constants": [["1 mil", "25.4 µm"], ["1 US gal", "3.785 L"], "Water: 1.00 g/mL at 4 °C"],
        "cautions": ["No open tins in the room. Paint work waits until the paper is handed in."],
    }
    return base | more


def full_form() -> dict[str, Any]:
    """Return a form of twenty questions with every kind in it."""
    choices = (CHOICE, NUMERIC, MULTIPLE, ORDER, MATCH)
    return form_of(*KINDS, *choices, *choices, CHOICE, CHOICE, NUMERIC, WRITTEN)


def issued_form() -> dict[str, Any]:
    """Return the full form with all that an issue adds: id, gate, luck and mastery."""
    return full_form() | {
        "form_id": "3F7KQ2MZ",
        "gate": [2, 7, 12],
        "person": "",
        "guesser_passes": 0.00024,
        "mastery_marks": 21,
    }
