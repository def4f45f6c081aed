"""What was seen and dated: observations of work, dated facts, what is due, how long to keep it."""

from generator.records.practice.amending import (
    KINDS,
    Kind,
    entries_of,
    entry_of,
    put_back,
    replace_fact,
    replace_observation,
    take_out,
)
from generator.records.practice.dated_facts import (
    KIND_WORDS,
    RENEWALS,
    DatedFact,
    add_fact,
    all_facts,
    doubts_about,
    facts_of,
)
from generator.records.practice.due import due_list, why_due
from generator.records.practice.observations import (
    Observation,
    all_observations,
    observations_of,
    observe,
    observed_steps,
)
from generator.records.practice.observed_steps import SEEN_WORDS, seen_of, sheet_steps
from generator.records.practice.retention import NOTE, PERIODS

__all__ = [
    "DatedFact",
    "KINDS",
    "KIND_WORDS",
    "Kind",
    "NOTE",
    "Observation",
    "PERIODS",
    "RENEWALS",
    "SEEN_WORDS",
    "add_fact",
    "all_facts",
    "all_observations",
    "doubts_about",
    "due_list",
    "entries_of",
    "entry_of",
    "facts_of",
    "observations_of",
    "observe",
    "observed_steps",
    "put_back",
    "replace_fact",
    "replace_observation",
    "seen_of",
    "sheet_steps",
    "take_out",
    "why_due",
]
