"""Cautions on a page: each hazard is told in full once, and named where it comes up again."""

from collections.abc import Sequence
from typing import NamedTuple

from markupsafe import Markup

from generator.bank.models import Hazard
from generator.questions import lower_start
from generator.website.context.page_context import PageContext
from generator.website.context.prose import plain_words


class Told(NamedTuple):
    """A hazard as a box shows it; `anchor` is where its full text is on this page."""

    anchor: str
    hazard: Hazard


class CautionBox(NamedTuple):
    """What one box says.

    fresh  hazards that this page has not told yet
    again  hazards told further up
    texts  cautions of the author's own that this page has not said yet
    """

    fresh: tuple[Told, ...]
    again: tuple[Told, ...]
    texts: tuple[str, ...]

    @property
    def is_empty(self) -> bool:
        """Return whether there is nothing to show."""
        return not (self.fresh or self.again or self.texts)


def caution_box(draft: PageContext, names: Sequence[str], texts: Sequence[str] = ()) -> CautionBox:
    """Return what a box at this place of the page says, and note it as told."""
    hazards = draft.course.hazards
    known = [name for name in dict.fromkeys(names) if name in hazards]
    fresh = [name for name in known if name not in draft.told]
    again = [name for name in known if name in draft.told]
    new = [text for text in dict.fromkeys(t.strip() for t in texts) if text not in draft.cautions]
    draft.told.update(fresh)
    draft.cautions += new
    return CautionBox(
        tuple(Told(hazard_anchor(name), hazards[name]) for name in fresh),
        tuple(Told(hazard_anchor(name), hazards[name]) for name in again),
        tuple(text for text in new if text),
    )


def hazard_anchor(name: str) -> Markup:
    """Return the anchor of a hazard's full text."""
    return Markup("hazard-" + name.replace("_", "-"))


def caution_words(draft: PageContext, box: CautionBox) -> str:
    """Return what a search finds of a box."""
    if box.is_empty:
        return ""
    fresh = (
        f"{told.hazard.title}. {plain_words(told.hazard.caution, draft)}" for told in box.fresh
    )
    texts = (plain_words(line, draft) for text in box.texts for line in text.splitlines())
    words = ["Caution", *fresh, *texts]
    if box.again:
        head = "Also" if box.fresh or box.texts else "Here too"
        words.append(f"{head}: {', '.join(lower_start(t.hazard.title) for t in box.again)}.")
    return " ".join(words)
