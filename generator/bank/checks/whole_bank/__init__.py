"""What records owe one another: names, sources, places, plans and questions kept apart."""

from generator.bank.checks.whole_bank import (
    blueprints,
    citing,
    critical,
    documents,
    giveaways,
    honesty,
    invented_people,
    key_cues,
    named_questions,
    places,
    record_names,
    references,
    waivers,
)
from generator.bank.checks.whole_bank.honesty import is_from_memory

FILES = (
    record_names,
    references,
    honesty,
    citing,
    places,
    critical,
    blueprints,
    giveaways,
    named_questions,
    documents,
    invented_people,
    key_cues,
    waivers,
)

__all__ = ["FILES", "is_from_memory"]
