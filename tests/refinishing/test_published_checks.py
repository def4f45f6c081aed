"""Published figures and worked examples, asked of the public relations by what they mean.

Sources: each check names its own; the references stand at the head of the file of checks.
"""

from collections.abc import Callable

from tests.refinishing.conftest import CHECK, NOTE
from tests.refinishing.published_checks import Check, judge


def test_the_relations_meet_a_published_check(
    published_check: Check, record_property: Callable[[str, str], None]
) -> None:
    verdict = judge(published_check)
    record_property(CHECK, published_check.name)
    unused = f"not asked for: {', '.join(verdict.unused)}" if verdict.unused else ""
    record_property(NOTE, " ".join(filter(None, (verdict.reason, unused))))
    assert verdict.problems == ()
