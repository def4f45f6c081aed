"""An analysis as plain data for programs: nothing is rounded."""

from dataclasses import asdict
from typing import Any

from generator.marking.analysis.decision import Decision
from generator.marking.analysis.item_analysis import ClassAnalysis, ItemAnalysis
from generator.marking.analysis.option_counts import OptionUse
from generator.marking.analysis.scores import Figure

Plain = dict[str, Any]
_FIGURES = ("mean", "variance", "sample_variance", "alpha", "kr20", "kr21", "sem")
_ITEM_FIGURES = ("facility", "item_total", "item_rest", "alpha_if_dropped")


def analysis_as_plain(analysis: ClassAnalysis) -> Plain:
    """Return the JSON form; a figure that is not defined is null, and `reasons` says why."""
    return {
        "people": analysis.people,
        "trust": analysis.trust,
        **_values(analysis, _FIGURES),
        "reasons": _reasons(analysis, _FIGURES),
        "decision": _decision(analysis.decision),
        "items": [item_as_plain(item) for item in analysis.items],
    }


def item_as_plain(item: ItemAnalysis) -> Plain:
    """Return the JSON form of one item, as `analysis_as_plain` gives it."""
    return {
        "name": item.name,
        "right": item.right,
        **_values(item, _ITEM_FIGURES),
        "facility_interval": item.facility_interval and list(item.facility_interval),
        "item_rest_interval": item.item_rest_interval and list(item.item_rest_interval),
        "reasons": _reasons(item, _ITEM_FIGURES),
        "band": item.band,
        "options": [_option(use) for use in item.options],
        "flags": list(item.flags),
    }


def _option(use: OptionUse) -> Plain:
    return {**asdict(use), **_values(use, ("rest",)), "reasons": _reasons(use, ("rest",))}


def _decision(decision: Decision | None) -> Plain | None:
    if decision is None:
        return None
    names = ("agreement", "by_chance", "kappa")
    return {
        "cut": decision.cut,
        "passed": decision.passed,
        **_values(decision, names),
        "reasons": _reasons(decision, names),
    }


def _values(record: object, names: tuple[str, ...]) -> dict[str, float | None]:
    return {name: _figure(record, name).value for name in names}


def _reasons(record: object, names: tuple[str, ...]) -> dict[str, str]:
    return {name: reason for name in names if (reason := _figure(record, name).reason)}


def _figure(record: object, name: str) -> Figure:
    figure = getattr(record, name)
    assert isinstance(figure, Figure)
    return figure
