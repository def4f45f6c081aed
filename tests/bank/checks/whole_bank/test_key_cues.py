"""Cues over the bank: counted where one option stands out, said where chance cannot explain it."""

import pytest

from generator.bank.checks.whole_bank.key_cues import FEWEST, Count, begins_unlike, longest
from generator.bank.models import ChoiceItem


def choice(*texts: str) -> ChoiceItem:
    options = [
        {"text": text, "feedback": "So.", "right": str(not n).lower()}
        for n, text in enumerate(texts)
    ]
    return ChoiceItem.model_validate(
        {
            "kind": "choice",
            "level": "recall",
            "use": "study",
            "source": "common_practice",
            "stem": "Why?",
            "options": options,
        }
    )


@pytest.mark.parametrize(
    ("texts", "place"),
    [
        (("Wipe it", "Sand it", "Sand the rest"), 0),
        (("Sand it", "Sand the rest", "Wipe it"), 2),
        (("No, it is wet", "Yes, it is dry", "Yes: it is dull"), 0),
        (("An ax", "A saw", "A file"), None),
        (("Wipe it", "Sand it", "Dry it"), None),
        (("Wipe it", "Wipe on", "Sand it", "Sand on"), None),
        (("Wipe it", "Sand it"), None),
    ],
)
def test_one_option_begins_unlike_all_the_others(texts: tuple[str, ...], place: int | None) -> None:
    assert begins_unlike(choice(*texts)) == place


def test_the_longest_option_is_one_alone() -> None:
    assert longest(choice("Wipe", "Sand it", "Dry")) == 1
    assert longest(choice("Wipe it", "Sand it", "Dry")) is None


def count(shown: int, keys: int) -> Count:
    return Count(shown, (None,) * keys, shown / 4, (shown * 3 / 16) ** 0.5)  # type: ignore[arg-type]


@pytest.mark.parametrize(("shown", "keys"), [(400, 121), (100, 36), (FEWEST, 7)])
def test_clearly_more_than_chance_is_told(shown: int, keys: int) -> None:
    assert count(shown, keys).is_clear


@pytest.mark.parametrize(("shown", "keys"), [(400, 120), (100, 35), (FEWEST, 6), (FEWEST - 1, 11)])
def test_what_chance_allows_is_not(shown: int, keys: int) -> None:
    assert not count(shown, keys).is_clear
