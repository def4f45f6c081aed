"""Items and records that ask the same thing, directly or through others, under one name."""

from collections.abc import Iterable, Mapping


def twin_groups(twins: Mapping[str, Iterable[str]]) -> Mapping[str, str]:
    """Return for every name that has a twin the first name of all that belong together.

    twins  for an item the items or records, such as procedures/mix_filler, that ask the same
    """
    near: dict[str, set[str]] = {}
    for name, others in twins.items():
        for other in others:
            near.setdefault(name, set()).add(other)
            near.setdefault(other, set()).add(name)
    group: dict[str, str] = {}
    for name in sorted(near):
        if name not in group:
            waiting = [name]
            while waiting:
                one = waiting.pop()
                group[one] = name
                waiting += sorted(near[one] - group.keys())
    return group
