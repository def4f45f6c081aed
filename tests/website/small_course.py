"""A small course with one question of each kind, for the tests of pages."""

from generator.bank.models import Fault, Hazard, Module, Procedure, Source, Table, Term
from generator.refinishing.catalogue import CATALOGUE
from generator.website.context.course import Course
from tests.website.small_questions import (
    CHOICE,
    MATCH,
    ORDER,
    SEVERAL,
    WET_FILM,
    WITH_UNIT,
    WRITTEN,
)


def module() -> Module:
    """Return the one module of the small course."""
    names = (
        "convert_units",
        "read_gauges",
        "dry_from_wet",
        "coats",
        "thin_and_thick",
        "total_build",
        "order_material",
    )
    return Module.model_validate(
        {
            "module": "film_build",
            "title": "Film build and paint needed",
            "code": "M14",
            "objectives": [
                {
                    "objective": name,
                    "text": f"Be sure about {name.replace('_', ' ')}",
                    "standard": "Nine of ten right",
                }
                for name in names
            ],
        }
    )


LESSON = """# Film build

```objectives film_build
```

## Why it matters

A thin film wears through.
A thick film [traps solvent](term:solvent_trap), says [the manual](source:to_1_1_8).

```caution
Wet two-pack paint gives off isocyanate.
Air-fed protection stays on until the booth is clear.
```

## How to check

```procedure wet_check
```

```table films
```

```question film_build/read_gauges/zero
```

## Sums

```worked wet_film
dry_film: 70 um
volume_solids: 60 percent
thinner: 10 percent
```

## Fault

```fault popping
```

## Check yourself

[Questions on this lesson](film_build-questions)

## Sources

```sources
```
"""


def small_course() -> Course:
    """Return a course with one module, one lesson and one question of each kind."""
    return Course(
        title="Guidecoat training course",
        modules=(module(),),
        lessons={"film_build": LESSON},
        procedures={"wet_check": _procedure()},
        faults={"popping": _fault()},
        tables={"films": _table()},
        sources=_sources(),
        hazards={"solvent_vapor": _hazard()},
        terms={
            "solvent_trap": Term.model_validate(
                {"term": "Trapped solvent", "meaning": "Solvent held under a skin of paint."}
            )
        },
        questions={
            "film_build": (
                (CHOICE,),
                (SEVERAL,),
                WET_FILM,
                (ORDER,),
                (MATCH,),
                (WRITTEN,),
                (WITH_UNIT,),
            )
        },
    )


def _sources() -> dict[str, Source]:
    made_up = {"document": "Made-up note", "title": "A note for the tests", "status": "restated"}
    found = {
        relation.facts.source: Source.model_validate(made_up)
        for relation in CATALOGUE.values()
        if relation.facts.source != "common_practice"
    }
    manual = {"document": "USAF TO 1-1-8", "title": "Organic coatings", "status": "read"}
    return {**found, "to_1_1_8": Source.model_validate(manual)}


def _hazard() -> Hazard:
    return Hazard.model_validate(
        {
            "title": "Solvent vapor",
            "hurts": "It makes you dizzy.",
            "guards": ["Moving air", "A mask that fits"],
            "first_aid": "Go out to fresh air.",
            "caution": "Have the air moving before the can is open.",
            "source": "common_practice",
        }
    )


def _procedure() -> Procedure:
    return Procedure.model_validate(
        {
            "title": "Check a wet film with a comb",
            "objective": "film_build/read_gauges",
            "source": "to_1_1_8, 6.3",
            "wears": ["solvent_vapor"],
            "cautions": ["Keep breathing protection on while the film is wet."],
            "throughout": ["The comb is clean and straight."],
            "never": ["Drag the comb along the panel."],
            "steps": [
                {"step": "protect", "action": "Put on breathing protection and gloves"},
                {
                    "step": "push",
                    "action": "Push the comb square into the wet film",
                    "meets": ["solvent_vapor"],
                },
                {"step": "read", "action": "Read the last wetted tooth"},
                {"step": "repeat", "action": "Repeat at the far edge", "optional": "true"},
            ],
            "pairs": [
                {
                    "first": "protect",
                    "then": "push",
                    "class": "danger",
                    "reason": "Wet film gives off vapour.",
                    "goes_wrong": "You breathe the vapour",
                    "harm": "breathing_harm",
                }
            ],
        }
    )


def _fault() -> Fault:
    return Fault.model_validate(
        {
            "title": "Solvent popping",
            "other_names": ["boil"],
            "objective": "film_build/thin_and_thick",
            "source": "to_1_1_8, table 4-1",
            "look": "Pin-size domes and burst holes in the film",
            "place_and_time": "Worst where the coat is thick",
            "causes": [{"family": "method", "text": "Wet coats piled up", "asked": "true"}],
            "prevention": "Let each coat flash as the data sheet says",
            "remedy": "Let it cure hard, sand below the holes, recoat",
            "look_alikes": [{"fault": "pinholes", "difference": "There before colour goes on"}],
        }
    )


def _table() -> Table:
    return Table.model_validate(
        {
            "title": "Dry film by layer",
            "objective": "film_build/total_build",
            "source": "to_1_1_8, table 5-2",
            "columns": [{"name": "Layer", "unit": "text"}, {"name": "Dry film", "unit": "um"}],
            "rows": [["Surfacer", "60"], ["Colour", "20"]],
        }
    )
