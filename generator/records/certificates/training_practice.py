"""The hands-on part of a training certificate: for each piece of work, the last look at it."""

from collections.abc import Iterator, Mapping, Sequence

from generator.records.certificates.painter_topics import TOPICS, HandsOn
from generator.records.practice import Observation


def latest_looks(seen: Sequence[Observation]) -> Mapping[str, Observation]:
    """Return the last look at each piece of work that the certificate asks for, in its order.

    seen  observations of one person, oldest first
    """
    latest = {look.procedure: look for look in seen}
    wanted = [piece.procedure for topic in TOPICS for piece in topic.hands_on]
    return {name: latest[name] for name in wanted if name in latest}


def missing_practice(code: str, looks: Mapping[str, Observation], signer: str) -> Iterator[str]:
    """Say what the hands-on part lacks, each time with the commands that supply it."""
    for topic in TOPICS:
        for piece in topic.hands_on:
            for lack in _lacks(piece, looks.get(piece.procedure)):
                work = f"hands-on, {piece.work} ({topic.clause})"
                yield f"{work}: {lack}; {_watch(code, piece, signer)}"


def _lacks(piece: HandsOn, look: Observation | None) -> Iterator[str]:
    if look is None:
        yield "nobody has watched it"
        return
    on = f"in observation {look.number} of {look.observed}"
    if undone := look.steps_that_were("no"):
        yield f"{on} not done: {'; '.join(step.action for step in undone)}"
    starred = [step.action for step in look.steps_that_were("not_seen") if step.critical]
    if starred:
        yield f"{on} a starred step was not seen: {'; '.join(starred)}"
    done = len(look.steps_that_were("yes"))
    # two steps of nine is no look at the work
    if not undone and not starred and 2 * done <= len(look.steps):
        yield f"{on} only {done} of {len(look.steps)} steps were seen, not most of them"


def _watch(code: str, piece: HandsOn, signer: str) -> str:
    return (
        f"guidecoat records sheet {piece.procedure}, watch the work, then "
        f'guidecoat records observe "{code}" {piece.procedure} --observer "{signer}" '
        "--date DAY STEP=yes ..."
    )
