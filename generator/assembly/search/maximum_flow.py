"""The most that can flow through a small network (augmenting paths, breadth first)."""

from collections import defaultdict, deque
from collections.abc import Hashable, Mapping

Edge = tuple[Hashable, Hashable]


def largest_flow(capacity: Mapping[Edge, int], source: Hashable, sink: Hashable) -> int:
    """Return the largest flow from source to sink.

    capacity  what each edge (from, to) can carry
    """
    room = dict(capacity)
    near: dict[Hashable, list[Hashable]] = defaultdict(list)
    for start, end in capacity:
        near[start].append(end)
        near[end].append(start)
        room.setdefault((end, start), 0)
    flow = 0
    while path := _path(room, near, source, sink):
        amount = min(room[edge] for edge in path)
        for start, end in path:
            room[start, end] -= amount
            room[end, start] += amount
        flow += amount
    return flow


def _path(
    room: Mapping[Edge, int],
    near: Mapping[Hashable, list[Hashable]],
    source: Hashable,
    sink: Hashable,
) -> list[Edge]:
    came: dict[Hashable, Hashable] = {source: source}
    waiting = deque([source])
    while waiting and sink not in came:
        node = waiting.popleft()
        for other in near[node]:
            if other not in came and room[node, other] > 0:
                came[other] = node
                waiting.append(other)
    if sink not in came:
        return []
    path = []
    node = sink
    while node != source:
        path.append((came[node], node))
        node = came[node]
    return path
