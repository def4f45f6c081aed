"""Matching the inputs of a call with what its relation takes."""

from dataclasses import dataclass

from generator.diagnostics import did_you_mean
from generator.formulas.catalogue_protocol import CatalogueEntry, CatalogueParameter
from generator.formulas.syntax import Argument, CallNode, FormulaProblem


@dataclass(frozen=True, slots=True)
class Bound:
    """One parameter with the inputs given for it; none means that the default holds."""

    parameter: CatalogueParameter
    arguments: tuple[Argument, ...]


def bind(
    call: CallNode, entry: CatalogueEntry
) -> tuple[tuple[Bound, ...], tuple[FormulaProblem, ...]]:
    """Return each parameter its inputs, and every problem of the call."""
    given: dict[str, tuple[Argument, ...]] = {}
    problems: list[FormulaProblem] = []
    parameters = {parameter.name: parameter for parameter in entry.parameters}
    order = list(entry.parameters)
    for position, argument in enumerate(call.arguments):
        target = parameters.get(argument.name) if argument.name else _at(position, order)
        if target is None:
            problems.append(_no_place(call, argument, entry))
        elif target.name in given and (argument.name or target.kind != "quantities"):
            message = f"'{target.name}' of {entry.name} is given twice"
            problems.append(FormulaProblem(message, argument.column, "formula-call"))
        else:
            given[target.name] = (*given.get(target.name, ()), argument)
    if not problems:
        problems.extend(_missing(call, entry, given))
    bound = tuple(Bound(p, given[p.name]) for p in order if p.name in given)
    defaults = tuple(Bound(p, ()) for p in order if p.name not in given and p.default is not None)
    return bound + defaults, tuple(problems)


def _at(position: int, order: list[CatalogueParameter]) -> CatalogueParameter | None:
    if position < len(order):
        return order[position]
    return order[-1] if order and order[-1].kind == "quantities" else None


def _no_place(call: CallNode, argument: Argument, entry: CatalogueEntry) -> FormulaProblem:
    names = [parameter.name for parameter in entry.parameters]
    if argument.name:
        message = f"{entry.name} has no input named '{argument.name}'"
        hint = did_you_mean(argument.name, names) or f"it takes {', '.join(names)}"
        return FormulaProblem(message, argument.column, "formula-call", hint)
    message = f"{entry.name} takes {_counted(len(names))}, and this is one too many"
    hint = f"it takes {', '.join(names)}" if names else ""
    return FormulaProblem(message, argument.column, "formula-call", hint)


def _missing(
    call: CallNode, entry: CatalogueEntry, given: dict[str, tuple[Argument, ...]]
) -> tuple[FormulaProblem, ...]:
    missing = [
        f"'{parameter.name}'"
        for parameter in entry.parameters
        if parameter.name not in given and parameter.default is None
    ]
    if not missing:
        return ()
    message = f"{entry.name} also needs {' and '.join(missing)}"
    return (FormulaProblem(message, call.column, "formula-call"),)


def _counted(count: int) -> str:
    return "1 input" if count == 1 else f"{count} inputs"


def pick_result(call: CallNode, entry: CatalogueEntry) -> str | FormulaProblem:
    """Return the name of the result that the call asks for."""
    names = list(entry.results)
    if not call.result and len(names) == 1:
        return names[0]
    listed = ", ".join(names)
    if not call.result:
        message = f"{entry.name} has several results, and none is picked"
        hint = f"write {entry.name}(...)['{names[0]}']; the results are {listed}"
        return FormulaProblem(message, call.column, "formula-call", hint)
    if call.result in entry.results:
        return call.result
    message = f"{entry.name} has no result named '{call.result}'"
    hint = did_you_mean(call.result, names) or f"the results are {listed}"
    return FormulaProblem(message, call.result_column, "formula-call", hint)
