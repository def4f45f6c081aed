"""Source tags as readers see them."""

from collections.abc import Iterable, Mapping

from generator.bank import Bank, Entry
from generator.bank.models import Critical, Source, SourceTag
from generator.questions.question import ShownCritical, ShownSource

# readers put the words for the tag in front of these
COMMON_PRACTICE = "the product's data sheet governs"
FROM_MEMORY = "never decides a mark in an exam paper"


def shown_sources(bank: Bank, tags: Iterable[SourceTag]) -> tuple[ShownSource, ...]:
    """Return each tag with its document, clause and standing in words."""
    return tuple(shown_source(bank.sources, tag) for tag in tags)


def shown_source(sources: Mapping[str, Entry[Source]], tag: SourceTag) -> ShownSource:
    """Return one tag in words; a document known from memory is never shown as published."""
    if tag.key == "common_practice":
        return ShownSource("common_practice", "", COMMON_PRACTICE)
    if tag.key == "from_memory" or tag.key not in sources:
        return ShownSource("from_memory", "", FROM_MEMORY)
    source = sources[tag.key].record
    said_already = not tag.place or source.document.endswith(f", {tag.place}")
    text = source.document if said_already else f"{source.document}, {tag.place}"
    if source.status == "from_memory":
        return ShownSource("from_memory", tag.key, f"{text} (from memory, not read again)")
    standing = " (as restated in another text)" if source.status == "restated" else ""
    return ShownSource("published", tag.key, text + standing)


def shown_critical(bank: Bank, critical: Critical | None) -> ShownCritical | None:
    """Return the hazard behind a critical question as a reader sees it."""
    if critical is None:
        return None
    entry = bank.hazards.get(critical.hazard)
    return ShownCritical(
        critical.hazard, entry.record.title if entry else critical.hazard, critical.reason
    )


def place_title(bank: Bank, place: str) -> str:
    """Return the title of a place whose rule is asked, or nothing."""
    entry = bank.places.get(place)
    return entry.record.title if entry else place
