"""Forty different faults in one bank: forty messages, each at its place, and nothing overwritten.

A mark such as «key-count» stands in front of the character where its message must point; it is
taken out before the file is written.
"""

import json
import re
from pathlib import Path

from click.testing import CliRunner, Result
from pytest import MonkeyPatch

from generator.command_line.main import main
from generator.diagnostics.report import WIDEST
from tests.bank.small_bank import put, small_project

MARK = re.compile(r"«([a-z-]+)»")
HEAD = "  level: apply\n  use: study\n  source: common_practice\n"
TWO_OPTIONS = """\
  options:
    - {text: A straightedge, right: true, feedback: It tips on a rock.}
    - {text: A magnet, feedback: It shows thickness.}
"""
HARMLESS = "  harmless: Nobody touches anything.\n"
STEPS = """\
  steps:
    - {step: wash, action: Wash}
    - {step: dry, action: Dry}
    - {step: sand, action: Sand}
"""
WET = """\
  stem: How thick is {wet}?
  given: {wet: {unit: um, values: [50, 60]}}
"""
SLIPS = "  slips: [{formula: wet * 3, feedback: You took three times.}]\n"
KEY = "  answer: {formula: wet * 2, unit: um, round_to: 1}\n"
# the 501st character is one too many
LONG = "wet + " * 83 + "we«formula-size»t + wet"

FILES = {
    "glossary.yml": """\
gel_time: {term: gel time, meaning: Soon., «unknown-key»meening: Soon}
pot_life: {«missing-key»term: pot life}
flash: {term: flash, meaning: Soon., «repeated-key»term: flash off}
cure: {term: cure, meaning: Soon., see: [«unknown-term»curing_time]}
bake: {term: bake, meaning: «yaml-anchor»*soon}
dry: {term: «yaml-tag»!!str dry, meaning: Soon.}
""",
    "sources.yml": """\
wall_chart: {document: Wall chart 1, title: Filler chart, status: «unknown-choice»hearsay}
film_slides: {document: Slides 4, title: Film slides, status: restated}
old_notes: {document: Notes, title: Notes of an old hand, status: from_memory}
""",
    "blueprints/open.yml": "title: Open\ncells: [«yaml-form»{count: 3\n",
    "faults/empty.yml": "«file-empty»# nothing yet\n",
    "faults/bytes.yml": "title: «file-unreadable»(byte FF)\n",
    "procedures/tabbed.yml": "title: Tabs\nsteps:\n«yaml-tab»\t- wash\n",
    "faults/stained_filler.yml": """\
title: Stained filler
objective: filler/mix
source: «unknown-source»wall_chrat, panel 5
look: Brown spots
place_and_time: Over filler
causes: [{family: material, text: Too much hardener}]
prevention: Weigh the hardener.
remedy: Sand off and seal.
look_alikes: [{fault: «unknown-fault»hard_filler, difference: It is hard.}]
""",
    "tables/hardener_by_heat.yml": """\
title: Hardener by shop heat
objective: filler/mix
source: common_practice
columns: [{name: Shop heat, unit: degC}, {name: Hardener, unit: «unknown-unit»percents}]
rows:
  - [15, 3]
  - «table-shape»[20]
""",
    "procedures/mix_filler.yml": """\
title: Mix polyester filler
objective: «unknown-objective»filler/mixing
source: common_practice
harmless: Nobody touches anything.
steps:
  - {step: wear, action: Put goggles on}
  - {step: open, action: Open the tins}
  - {step: weigh, action: Weigh on the board}
pairs:
  - «danger-without-hazard»first: wear
    then: open
    class: danger
    reason: Paste burns eyes.
    goes_wrong: Paste reaches bare eyes
    harm: skin_eye_harm
  - «pair-unexplained»first: open
    then: weigh
    class: ruins
    reason: Closed tins give nothing.
    harm: wasted_mix
  - first: «unknown-step»weight
    then: weigh
    class: habit
    reason: So it is done.
""",
    "items/filler/shape.yml": (
        "two_keys:\n  kind: choice\n" + HEAD + "  stem: What shows a rock?\n  options:\n"
        "    «key-count»- {text: A straightedge, right: true, feedback: It tips on a rock.}\n"
        "    - {text: A block, right: true, feedback: It tips too.}\n"
        "leaning:\n  kind: choice\n" + HEAD + "  stem: What shows a rock?\n" + TWO_OPTIONS
        + "    - {text: «combined-option»All of the above, feedback: Only one does.}\n"
        "echo:\n  kind: choice\n" + HEAD + "  stem: What shows a rock?\n" + TWO_OPTIONS
        + "    - {text: A wet rag, feedback: «feedback-repeats-option»A wet rag.}\n"
        "twice:\n  kind: order\n" + HEAD + "  stem: Put these in order.\n" + HARMLESS + STEPS
        + "    - {step: «repeated-step»wash, action: Wash again}\n"
        "  pairs: [{first: dry, then: sand, class: ruins, reason: Wet paper clogs.}]\n"
        "turned:\n  kind: order\n" + HEAD + "  stem: Put these in order.\n" + HARMLESS + STEPS
        + "  pairs: [«order-against-listing»{first: dry, then: wash, class: ruins, reason: So.}]\n"
        "shapeless:\n  kind: choice\n" + HEAD
        + "  stem: What shows a rock?\n  options: «wrong-shape»A straightedge\n"
        "valueless:\n  kind: written\n" + HEAD + "  stem: Say why.\n  model: So.\n"
        "  points: [{text: It spans, marks: «wrong-value»two}]\n"
        "remembered:\n  kind: written\n  level: recall\n  use: exam\n"
        "  source: «memory-keys-exam»old_notes, page 2\n  stem: Say why.\n  model: So.\n"
        "  points: [{text: It spans, marks: 1}]\n"
    ),
    "items/film_build/coats.yml": (
        "misspelt:\n  kind: numeric\n" + HEAD + WET + SLIPS
        + "  answer: {formula: «formula-name»wet_flim(wet), unit: um, round_to: 1}\n"
        "dotted:\n  kind: numeric\n" + HEAD + WET + SLIPS
        + "  answer: {formula: wet«formula-syntax».unit, unit: um, round_to: 1}\n"
        "imported:\n  kind: numeric\n" + HEAD + WET + SLIPS
        + "  answer: {formula: \"«formula-name»__import__('os')\", unit: um, round_to: 1}\n"
        "powerful:\n  kind: numeric\n" + HEAD + WET + SLIPS
        + "  answer: {formula: wet ** «formula-power»999999, unit: um, round_to: 1}\n"
        "long:\n  kind: numeric\n" + HEAD + WET + SLIPS
        + f"  answer: {{formula: {LONG}, unit: um, round_to: 1}}\n"
        + "called:\n  kind: numeric\n" + HEAD + WET + SLIPS
        + "  answer: {formula: «formula-call»wet_film(wet), unit: um, round_to: 1}\n"
        "mixed:\n  kind: numeric\n" + HEAD + WET + SLIPS
        + "  answer: {formula: «formula-units»wet * wet, unit: um, round_to: 1}\n"
        "narrow:\n  kind: numeric\n" + HEAD + WET + SLIPS
        + "  answer: {formula: wet, unit: um, round_to: 1,"
        " tolerance: «tolerance-too-small»0.1 um}\n"
        "passing:\n  kind: numeric\n" + HEAD + WET + KEY
        + "  slips: [{formula: «slip-in-band»wet + wet, feedback: You added.}]\n"
        "empty:\n  kind: numeric\n" + HEAD + WET + SLIPS + KEY
        + "  require:\n    «nothing-to-draw»- wet > 60 um\n"
        "hidden:\n  kind: numeric\n" + HEAD + SLIPS + KEY
        + "  stem: How thick is it?\n"
        "  given: {wet: «given-not-shown»{unit: um, values: [50, 60]}}\n"
    ),
    "course/film_build.md": """\
# Film build

```«lesson-block»procedures mix_filler
```

See [flash](term:«lesson-name»flash_off_time).
""",
}  # fmt: skip


def unmarked(path: str, text: str) -> tuple[str, list[tuple[str, int, int, str]]]:
    """Return a file's text without marks, and path, line, column and rule of each mark."""
    shown = path if path.startswith("course/") else f"question_bank/{path}"
    expected = []
    lines = []
    for number, line in enumerate(text.split("\n"), start=1):
        while match := MARK.search(line):
            expected.append((shown, number, match.start() + 1, match[1]))
            line = line[: match.start()] + line[match.end() :]
        lines.append(line)
    return "\n".join(lines), expected


def broken_project(folder: Path) -> tuple[Path, list[tuple[str, int, int, str]]]:
    root = small_project(folder)
    expected = []
    for path, text in FILES.items():
        plain, places = unmarked(path, text)
        put(root, path, plain)
        expected += places
    return root, sorted(expected)


def run(root: Path, monkeypatch: MonkeyPatch, *arguments: str) -> Result:
    monkeypatch.chdir(root)
    result = CliRunner().invoke(main, arguments)
    assert result.exception is None or isinstance(result.exception, SystemExit)
    return result


def test_forty_faults_bring_forty_errors_each_at_its_place(
    tmp_path: Path, monkeypatch: MonkeyPatch
) -> None:
    root, expected = broken_project(tmp_path)
    assert len(set(expected)) == 40
    result = run(root, monkeypatch, "check", "--format", "json")
    assert result.exit_code == 1
    found = [
        (p["path"], p["line"], p["column"], p["rule"])
        for p in json.loads(result.stdout)["problems"]
        if p["severity"] == "error"
    ]
    assert found == expected


def test_each_of_the_forty_is_one_headline_with_its_line_and_a_caret(
    tmp_path: Path, monkeypatch: MonkeyPatch
) -> None:
    root, expected = broken_project(tmp_path)
    lines = run(root, monkeypatch, "check").stdout.split("\n")
    heads = [number for number, line in enumerate(lines) if ": error: " in line]
    assert len(heads) == 40
    for head, (path, line, column, rule) in zip(heads, expected, strict=True):
        assert lines[head].startswith(f"{path}:{line}:{column}: error: ")
        assert lines[head].endswith(f"[{rule}]")
        if lines[head + 1].startswith("    ") and "hint:" not in lines[head + 1]:
            caret = lines[head + 2].expandtabs(1).index("^")
            source = (root / path).read_text("utf-8", "surrogateescape").split("\n")[line - 1]
            if len(source) <= WIDEST:
                assert caret == column - 1 + 4
            else:
                # of a long line only the part around the fault is shown
                assert len(lines[head + 1]) <= WIDEST + 6
                assert lines[head + 1][caret : caret + 20] == source[column - 1 : column + 19]
    assert "Traceback" not in "\n".join(lines)


def test_a_build_of_a_broken_bank_leaves_the_earlier_site_untouched(
    tmp_path: Path, monkeypatch: MonkeyPatch
) -> None:
    root, expected = broken_project(tmp_path)
    page = root / "site" / "index.html"
    page.parent.mkdir()
    page.write_bytes(b"<p>earlier</p>\r\n")
    before = {path: (path.stat().st_mtime_ns, path.stat().st_ino) for path in (page, page.parent)}
    result = run(root, monkeypatch, "build")
    assert result.exit_code == 1
    assert result.stderr.count(": error: ") == len(expected) == 40
    assert result.stderr.endswith("40 errors; nothing was written\n")
    after = {path: (path.stat().st_mtime_ns, path.stat().st_ino) for path in (page, page.parent)}
    assert after == before
    assert page.read_bytes() == b"<p>earlier</p>\r\n"
    assert not (root / "printed").exists()
    assert [path.name for path in root.iterdir() if path.name.startswith(".")] == []
