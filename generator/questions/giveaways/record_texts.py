"""What the questions of procedures and faults ask and tell, over all that they may draw."""

from collections.abc import Iterator, Mapping

from generator.bank import Bank, Entry, closure
from generator.bank.models import Fault, Procedure
from generator.questions.drawing import scored_procedure
from generator.questions.giveaways.told_text import Asked, PaperText


def procedure_text(record: Procedure, name: str, of: str) -> PaperText:
    """Return the texts of a question on a procedure; any step of it may be shown."""
    label = name.rpartition("/")[2]
    scored = scored_procedure(record)
    steps = scored.steps
    orders = tuple((steps[first], steps[then]) for first, then in scored.reasons)
    title = record.title
    asked: tuple[Asked, ...] = ()
    shown = tuple(steps.values())
    if label == "order":
        return PaperText(name, of, title=title, shown=shown, orders=orders)
    if label == "goes_wrong":
        slips = [p for p in record.pairs if p.scores and p.goes_wrong]
        texts = {step.step: step.action for step in record.steps}
        asked = tuple(
            Asked(p.goes_wrong or "", f"{title} {texts[p.then]} {texts[p.first]}", plain=True)
            for p in slips
        )
        shown = tuple(p.goes_wrong or "" for p in slips)
    elif label == "missing":
        asked = tuple(_missing(title, steps))
    else:
        after = closure(scored.reasons)
        critical = {f"{p.first}_before_{p.then}": (p.first, p.then) for p in record.pairs}
        pairs = [critical[label]] if label in critical else sorted(scored.reasons)
        asked = tuple(
            Asked(
                steps[first],
                f"{title} {steps[then]}",
                tuple(steps[later] for earlier, later in sorted(after) if earlier == then),
                plain=True,
            )
            for first, then in pairs
            if first in steps and then in steps
        )
    return PaperText(name, of, asked, (), title, shown, (), () if label == "goes_wrong" else orders)


def _missing(title: str, steps: Mapping[str, str]) -> Iterator[Asked]:
    texts = tuple(steps.values())
    for place in range(1, len(texts) - 1):
        yield Asked(texts[place], f"{title} {texts[place - 1]} {texts[place + 1]}", plain=True)


def fault_text(bank: Bank, entry: Entry[Fault], name: str, of: str) -> PaperText:
    """Return the texts of a question on a fault.

    A look-alike stands among the options of the name, so that a text which tells its name strikes
    it out.
    """
    fault = entry.record
    label = name.rpartition("/")[2]
    look = f"{fault.look} {fault.place_and_time}"
    alike = [bank.faults[n.fault].record for n in fault.look_alikes if n.fault in bank.faults]
    if label == "name":
        struck = (Asked(other.title, other.look, plain=True) for other in alike)
        return PaperText(name, of, (Asked(fault.title, look), *struck), (look,))
    if label == "cause":
        causes = tuple(cause.text for cause in fault.causes if cause.asked)
        return PaperText(name, of, tuple(Asked(text, look) for text in causes), (look,), "", causes)
    told = f"{fault.title}: {fault.look}"
    if label == "remedy":
        return PaperText(name, of, (Asked(fault.remedy, told),), (told,), "", (fault.remedy,))
    looks = tuple(f"{other.title}: {other.look}" for other in (fault, *alike))
    return PaperText(name, of, (Asked(fault.look, fault.title),), (), "", looks)
