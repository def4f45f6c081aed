"""Does a printed key agree with its printed paper? Question by question, in words where not."""

import re
from collections.abc import Iterator

from tests.printing.pdf_reading import squeezed
from tests.read_back.numeric_answers import number_disagreements, stated_number
from tests.read_back.options import read_list, read_order, read_sides
from tests.read_back.pages import (
    Part,
    answers_at_a_glance,
    guide_parts,
    key_parts,
    paper_parts,
)
from tests.read_back.plain_bank import PlainBank, bare
from tests.read_back.precedence import dangers, followed, keeps, right_orders, scored_pairs
from tests.read_back.right_options import options_of
from tests.read_back.values import NotOnPaper

BOXES = "Write one letter in each box"
SEE = "see below"
LETTERS_STATED = re.compile(r" Key ((?:[A-J] )+)A (?:Right|Wrong): ")
PAIR = re.compile(r"– ([A-J]) before ([A-J]) \((protects people|saves the work)\)")
COUNT = re.compile(r"(\d+) orders? (?:is|are) right\.")

Outcome = tuple[str, list[str]]
"""The answer as the key's question states it, and what does not agree."""


def disagreements(bank: PlainBank, paper: str, key: str, guide: str) -> list[str]:
    """Derive the answer of every question of a paper and compare it with what is printed.

    paper, key, guide  the texts read from the three documents; a guide may be empty
    """
    asked, answered, guided = paper_parts(paper), key_parts(key), guide_parts(guide)
    if not asked or asked.keys() != answered.keys():
        return [f"paper {sorted(asked)} and key {sorted(answered)} do not have the same questions"]
    found, shorts = [], {}
    for number, part in asked.items():
        answer = answered[number]
        shorts[number], wrong = _compared(bank, part, answer, guided.get(number))
        if part.marks != answer.marks:
            wrong.append(f"{part.marks} marks on the paper, {answer.marks} on the key")
        if part.must != answer.must:
            wrong.append("paper and key do not agree on whether it must be right")
        found += [f"question {number}, {answer.heading}: {words}" for words in wrong]
    return found + list(_list_disagreements(answers_at_a_glance(key), shorts, asked))


def _compared(bank: PlainBank, paper: Part, key: Part, guide: Part | None) -> Outcome:
    if bare(_stem_start(bank, key.heading)) not in paper.tight:
        return "?", ["another question stands on the paper"]
    if paper.heading == "number and unit":
        return _number(bank, paper, key)
    if paper.heading == "put in order":
        return _order(bank, paper, key)
    if paper.heading == "match":
        return _match(bank, paper, key)
    if paper.heading == "written answer":
        return _written(bank, paper, key, guide)
    return _letters(bank, paper, key)


def _stem_start(bank: PlainBank, name: str) -> str:
    """Return the words of a hand-written stem as far as its first drawn value."""
    item = bank.items.get(name)
    return item["stem"].split("{")[0] if item else ""


def _number(bank: PlainBank, paper: Part, key: Part) -> Outcome:
    stated = stated_number(key)
    if stated is None:
        return "?", ["the key states no number"]
    try:
        return stated.short, list(number_disagreements(bank, key.heading, stated, paper))
    except NotOnPaper as error:
        return stated.short, [str(error)]


def _letters(bank: PlainBank, paper: Part, key: Part) -> Outcome:
    options = options_of(bank, key.heading, paper.tight)
    shown = read_list(paper.tight, options.texts)
    stated = LETTERS_STATED.search(f" {key.body}")
    if not shown or stated is None:
        return "?", ["options or answer cannot be read"]
    right = [letter for letter, text in shown.items() if text in options.right]
    wrong = []
    if paper.heading == "one answer" and len(right) != 1:
        wrong.append(f"{len(right)} options are right")
    if stated[1].split() != right:
        wrong.append(f"right on the paper is {right}, the key says {stated[1]}")
    for letter, text in shown.items():
        verdict = "Right" if letter in right else "Wrong"
        if f"{letter}{verdict}:{text}" not in key.tight:
            wrong.append(f"the key does not call {letter} {verdict.lower()}")
    return stated[1].strip(), wrong


def _order(bank: PlainBank, paper: Part, key: Part) -> Outcome:
    name = key.heading.split("/")
    record = bank.procedures[name[1]] if name[0] == "procedures" else bank.items[key.heading]
    texts = {step["step"]: bare(step["action"]) for step in record["steps"]}
    shown = read_list(squeezed(paper.body.split(BOXES)[0]), texts.values())
    by_text = {text: letter for letter, text in shown.items()}
    letters = {step: by_text[text] for step, text in texts.items() if text in by_text}
    tight = key.tight.split("Onerightorder")[-1]
    stated = read_order(tight, shown)
    if not shown or sorted(stated) != sorted(shown):
        return "?", ["steps or order cannot be read"]

    def lettered(pairs: set[tuple[str, str]]) -> set[tuple[str, str]]:
        return {(letters[a], letters[b]) for a, b in pairs if a in letters and b in letters}

    scored = lettered(followed(scored_pairs(record)))
    told = {(a, b): says for a, b, says in PAIR.findall(key.body)}
    wrong = []
    if not keeps(stated, scored):
        wrong.append(f"the order {stated} breaks a pair of the record")
    if followed(set(told)) != scored:
        wrong.append("the pairs of the key are not those of the record")
    if any(told.get(pair) != "protects people" for pair in lettered(dangers(record))):
        wrong.append("a pair that protects people is not told as one")
    count = COUNT.search(key.body)
    if count is None or int(count[1]) != right_orders(stated, scored):
        wrong.append(f"{right_orders(stated, scored)} orders are right, the key says another count")
    return " ".join(stated), wrong


def _match(bank: PlainBank, paper: Part, key: Part) -> Outcome:
    item = bank.items[key.heading]
    partner = {bare(pair["left"]): bare(pair["right"]) for pair in item["pairs"]}
    spare = [bare(text) for text in item.get("spare", [])]
    left, right = read_sides(paper.tight, list(partner), [*partner.values(), *spare])
    by_text = {text: letter for letter, text in right.items()}
    if not left or any(partner[text] not in by_text for text in left.values()):
        return "?", ["the two sides cannot be read"]
    wrong, short = [], []
    for number, text in left.items():
        found = re.search(rf"{number}{re.escape(text)}:([A-J])", key.tight)
        letter = found[1] if found else "?"
        short.append(f"{number}{letter}")
        expected = by_text[partner[text]]
        if f"{number}{text}:{expected}{partner[text]}" not in key.tight:
            wrong.append(f"{number} goes with {expected}, the key says {letter}")
    return " ".join(short), wrong


def _written(bank: PlainBank, paper: Part, key: Part, guide: Part | None) -> Outcome:
    item = bank.items[key.heading]
    points = [(bare(point["text"]), point["marks"]) for point in item["points"]]
    on_key = "".join(f"–{text}{n}mark{'' if n == '1' else 's'}" for text, n in points)
    wrong = []
    if f"Markingpoints{on_key}Modelanswer" not in key.tight:
        wrong.append("the key's points are not those of the item")
    on_guide = "".join(text + n for text, n in points)
    if guide is None or f"PointMostGiven{on_guide}Modelanswer" not in guide.tight:
        wrong.append("the marking guide's points are not those of the item")
    if sum(int(n) for _, n in points) != paper.marks:
        wrong.append("the points do not make up the marks on the paper")
    if guide is not None and guide.marks != paper.marks:
        wrong.append(f"{paper.marks} marks on the paper, {guide.marks} on the guide")
    return SEE, wrong


def _list_disagreements(
    glance: str, shorts: dict[int, str], asked: dict[int, Part]
) -> Iterator[str]:
    """Say where the list at the top is not what stands below; its columns come in any order."""
    left = {
        number: re.compile(
            rf"{'must ' if part.must else ''}{number} {_loose(shorts[number])}"
            rf"(?: \*)? {part.marks}(?: |$)"
        )
        for number, part in asked.items()
    }
    place = 0
    while left:
        found = [(n, m) for n, pattern in left.items() if (m := pattern.match(glance, place))]
        if not found:
            number = min(left)
            yield f"question {number}: the list at the top does not say {shorts[number]}"
            return
        number, match = found[0]
        place = match.end()
        del left[number]
    if place < len(glance):
        yield f"the list at the top says more than the questions: {glance[place:]}"


def _loose(text: str) -> str:
    """Return the pattern of a text in which a reader of PDF may have put spaces."""
    return " ?".join(re.escape(sign) for sign in squeezed(text))
