"""The questions an apprentice meets on the site: never one from the exam pool."""

from generator.bank import Bank
from generator.questions.plain import Plain, as_plain
from generator.questions.pool import Askable, askables

NUMERIC_VARIANTS = 6
DERIVED_VARIANTS = 2


def study_questions(bank: Bank) -> dict[str, list[list[Plain]]]:
    """Return the study questions of each module; each inner list holds the variants of one."""
    found: dict[str, list[list[Plain]]] = {module.module: [] for module in bank.modules}
    for askable in askables(bank):
        if askable.use in ("study", "both") and askable.module in found:
            found[askable.module].append(_variants(askable))
    return found


def _variants(askable: Askable) -> list[Plain]:
    wanted = DERIVED_VARIANTS if askable.is_derived else 1
    if askable.kind == "numeric":
        wanted = NUMERIC_VARIANTS
    found: dict[object, Plain] = {}
    taken: list[tuple[tuple[str, str], ...]] = []
    for number in range(1, wanted + 1):
        question = askable.make(f"study-{number}", taken)
        if question is not None:
            taken.append(question.draw)
            found.setdefault((question.stem, question.draw), as_plain(question))
    return list(found.values())
