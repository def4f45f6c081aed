"""One question with its key and working, as text for the terminal."""

from generator.issued import (
    ForKey,
    IssuedQuestion,
    IssuedSource,
    MatchAnswerKey,
    NumericAnswerKey,
    OptionsAnswerKey,
    OrderAnswerKey,
    WrittenAnswerKey,
)
from generator.wording import TAG_WORDS


def question_text(question: IssuedQuestion) -> str:
    """Write a question with its key, its working and its sources."""
    lines = [question["stem"], ""]
    for exhibit in (question["sheet"], question["table"]):
        if exhibit:
            lines += [exhibit["title"], *("  " + " | ".join(r) for r in exhibit["rows"]), ""]
    if question["caution"]:
        lines += [f"Caution: {question['caution']}", ""]
    lines += _KEYS.of(question)
    lines += [f"Caution, with the feedback: {caution['text']}" for caution in question["cautions"]]
    lines += ["", *(f"Source: {_source(s)}" for s in question["sources"])]
    return "\n".join(lines)


def _source(source: IssuedSource) -> str:
    return "; ".join(filter(None, (TAG_WORDS[source["tag"]], source["text"])))


def _numeric(key: NumericAnswerKey) -> list[str]:
    slips = [f"  {slip['shown']}: {slip['says']}" for slip in key["slips"]]
    answer = f"Key: {key['shown']} {key['unit_symbol']}".rstrip()
    working = [f"  {line}" for line in key["working"]]
    return [f"{answer} (accept {key['band_text']})", "Working:", *working, "Known slips:", *slips]


def _options(key: OptionsAnswerKey) -> list[str]:
    return [
        f"{'*' if option['right'] else ' '} {option['letter']}  {option['text']}: {option['says']}"
        for option in key["options"]
    ]


def _order(key: OrderAnswerKey) -> list[str]:
    steps = [f"  {step['letter']}  {step['text']}" for step in key["steps"]]
    pairs = [f"  {p['first']} before {p['then']}: {p['reason']}" for p in key["pairs"]]
    return [*steps, f"{key['rule']} {key['orders']} orders are right.", *pairs]


def _match(key: MatchAnswerKey) -> list[str]:
    left = [f"  {row['number']}  {row['text']}" for row in key["left"]]
    right = [f"  {row['letter']}  {row['text']}" for row in key["right"]]
    joined = ", ".join(f"{number}-{letter}" for number, letter in key["answers"].items())
    return [*left, *right, f"Key: {joined}"]


def _written(key: WrittenAnswerKey) -> list[str]:
    return [*(f"  {p['marks']} for: {p['text']}" for p in key["points"]), f"Model: {key['model']}"]


_KEYS = ForKey(
    numeric=_numeric,
    choice=_options,
    multiple_response=_options,
    order=_order,
    match=_match,
    written=_written,
)
