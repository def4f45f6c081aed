"""What a class got wrong together: the commonest slips, and must-pass questions missed."""

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from generator.reports.answered_papers import SatPaper
from generator.reports.slip_sentences import Slip, slips_of

# blanks and what waits are told in counts elsewhere
NOT_SLIPS = ("blank", "waiting")


@dataclass(frozen=True, slots=True)
class ClassSlip:
    """A slip that several people made on the same item.

    made   papers with it
    asked  papers on which the item stood
    """

    item: str
    objective: str
    slip: Slip
    made: int
    asked: int


@dataclass(frozen=True, slots=True)
class GateMiss:
    """Must-pass questions on one hazard that were missed; counted in questions.

    hazard     in words; empty in issues from before questions named their hazard
    objective  where no hazard is named
    """

    hazard: str
    objective: str
    missed: int
    asked: int


def commonest_slips(papers: Iterable[SatPaper]) -> tuple[ClassSlip, ...]:
    """Return the slips that two people or more made, commonest first."""
    asked, made = Counter[str](), Counter[tuple[str, str, Slip]]()
    for paper in papers:
        met: set[tuple[str, str, Slip]] = set()
        for answer in paper.counted:
            item = str(answer.question["id"])
            # what a person wrote differs; the slip behind it is the same
            met |= {
                (item, answer.objective, Slip(slip.kind, slip.text, _option(slip)))
                for slip in slips_of(answer)
                if slip.kind not in NOT_SLIPS
            }
        asked.update({str(answer.question["id"]) for answer in paper.counted})
        made.update(met)
    found = [
        ClassSlip(item, objective, slip, times, asked[item])
        for (item, objective, slip), times in made.items()
        if times > 1
    ]
    return tuple(
        sorted(found, key=lambda slip: (-slip.made, slip.asked, slip.item, slip.slip.text))
    )


def _option(slip: Slip) -> str:
    return slip.took if slip.kind == "option" else ""


def gate_misses(papers: Sequence[SatPaper]) -> tuple[GateMiss, ...]:
    """Return the hazards of which somebody missed a must-pass question, most missed first.

    Where a question names no hazard its objective stands for one.
    """
    asked, missed = Counter[tuple[str, str]](), Counter[tuple[str, str]]()
    for paper in papers:
        for answer in paper.gate:
            if not answer.waits:
                what = (answer.hazard, "" if answer.hazard else answer.objective)
                asked[what] += 1
                missed[what] += answer.lost
    found = [GateMiss(*what, times, asked[what]) for what, times in missed.items() if times]
    return tuple(sorted(found, key=lambda m: (-m.missed, m.asked, m.hazard, m.objective)))
