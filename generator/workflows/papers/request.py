"""What somebody asks for who wants new papers, held against the bank and the records."""

from collections.abc import Sequence
from dataclasses import dataclass

from generator.assembly import form_labels
from generator.records import Person
from generator.workflows.papers.paper_files import PaperSettings


@dataclass(frozen=True, slots=True)
class Request:
    """What was asked for.

    labels  one for each form
    people  who each form is for, in the order of the seats; nobody for papers without names
    """

    blueprint: str
    seed: str
    labels: tuple[str, ...]
    people: tuple[Person, ...]
    settings: PaperSettings

    @property
    def codes(self) -> tuple[str, ...]:
        """Return the code of the person of each form; empty where a form is for nobody."""
        return tuple(person.code for person in self.people) or ("",) * len(self.labels)

    @property
    def seats(self) -> tuple[tuple[str, str], ...]:
        """Return label and code of each form."""
        return tuple(zip(self.labels, self.codes, strict=True))


def request_papers(
    blueprint: str,
    seed: str,
    *,
    people: Sequence[Person] = (),
    forms: int = 1,
    settings: PaperSettings | None = None,
) -> Request:
    """Return the request for papers of a blueprint.

    people  who gets a form each; where nobody is named, `forms` tells how many there are
    """
    labels = form_labels(len(people) or forms)
    return Request(blueprint, seed, labels, tuple(people), settings or PaperSettings())
