"""Set several documents side by side: the engine works outside Python's lock, so threads do."""

import os
from collections.abc import Callable, Iterable, Iterator
from concurrent.futures import ThreadPoolExecutor
from typing import TypeVar

T = TypeVar("T")
# each keeps an engine with its fonts, of about 40 MB
MOST_AT_ONCE = 4


def side_by_side(jobs: Iterable[Callable[[], T]]) -> Iterator[T]:
    """Yield what each job gives, in the order of the jobs; the first one that raises ends it."""
    with ThreadPoolExecutor(min(os.cpu_count() or 1, MOST_AT_ONCE)) as pool:
        begun = [pool.submit(job) for job in jobs]
        try:
            for one in begun:
                yield one.result()
        finally:
            for one in begun:
                one.cancel()
