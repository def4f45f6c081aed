"""A tiny bank written as YAML, so that each test shows the records it speaks about."""

from collections.abc import Mapping
from pathlib import Path
from textwrap import dedent, indent

from generator.bank import Bank, load_bank

FRAME = {
    "bank.yml": """
        title: Trailer bay
        edition: "1"
        """,
    "outline.yml": """
        modules:
          - module: cleaning
            title: Cleaning
            code: M04
            objectives:
              - {objective: wash, text: Wash a panel, standard: no road dirt left}
          - module: filler
            title: Filler
            code: M06
            lesson: filler
            objectives:
              - {objective: mix, text: Mix filler, standard: one colour}
              - {objective: shape, text: Shape filler, standard: no low spot}
          - module: film_build
            title: Film build
            code: M14
            objectives:
              - {objective: films, text: Work out films, standard: to 1 µm}
        """,
    "sources.yml": """
        panel_manual: {document: Panel manual 7, title: Panels, year: 1999, status: read}
        told_again: {document: Old norm, title: Norms, status: restated}
        old_book: {document: Old book, title: Paint, status: from_memory}
        """,
    "glossary.yml": """
        bed: {term: bed, meaning: The keyed metal that filler holds on to}
        """,
}

WET_FILM = """
kind: numeric
level: apply
use: both
source: panel_manual, section 3
stem: You need {dry} dry. What wet film is that, in µm to the nearest 1 µm?
sheet:
  title: Made-up sheet for {dry}
  rows:
    - [Volume solids, "{volume_solids}"]
given:
  dry: {unit: um, values: 50 to 80 step 5}
  volume_solids: {unit: percent, values: [40, 45, 60]}
answer:
  formula: wet_film(dry, volume_solids)
  unit: um
  round_to: 1
slips:
  - formula: dry * volume_solids
    feedback: You multiplied. The wet film is the thicker one.
  - formula: dry / (1 - volume_solids)
    feedback: You divided by the solvent.
feedback: Thinner leaves, solids stay.
"""

PASTE = """
kind: numeric
level: apply
use: exam
source: common_practice
stem: You weigh {filler} of filler at {share}. How much paste, in g to the nearest 0.1 g?
given:
  filler: {unit: g, values: [100, 150, 250]}
  share: {unit: percent, values: [2, 3]}
answer:
  formula: filler_hardener(filler, share)
  unit: g
  round_to: 0.1
slips:
  - formula: filler * share * 10
    feedback: You moved the point one place.
  - formula: filler
    feedback: That is the filler.
"""

FIRST_JOB = """
kind: choice
level: recall
use: study
source: common_practice
stem: What comes first on a panel from the road?
options:
  - {text: Degrease it, right: true, feedback: Dirt is sanded in otherwise.}
  - {text: Sand it, feedback: That drives the wax in.}
  - {text: Prime it, feedback: Primer does not hold on wax.}
  - {text: Mask it, feedback: Tape does not hold on wax.}
"""

TWO_RIGHT = """
kind: multiple_response
level: recall
use: exam
source: told_again
stem: Which of these keep you safe at the mixing bench? Choose all that apply.
options:
  - {text: Goggles, right: true, feedback: Paste spurts.}
  - {text: Gloves, right: true, feedback: Paste burns the skin.}
  - {text: A cap, feedback: It keeps hair out and no more.}
  - {text: A tack cloth, feedback: That is for the panel.}
"""

WASH_ORDER = """
kind: order
level: apply
use: exam
source: common_practice
stem: Put these steps in order.
steps:
  - {step: rinse, action: Rinse the dirt off}
  - {step: wash, action: Wash with soap}
  - {step: dry, action: Dry the panel}
  - {step: wipe, action: Wipe with cleaner}
  - {step: tape, action: Tape the edge}
pairs:
  - {first: rinse, then: wash, class: ruins, reason: Grit scratches under the sponge.}
  - {first: wash, then: dry, class: ruins, reason: Soap left to dry stays on.}
  - {first: dry, then: wipe, class: danger, reason: Cleaner on water splashes.}
  - {first: dry, then: tape, class: ruins, reason: Tape does not stick to water.}
  - {first: wipe, then: tape, class: habit, reason: Most painters wipe first.}
"""

PAPERS = """
kind: match
level: recall
use: study
source: common_practice
stem: Match each paper with its job.
pairs:
  - {left: P80, right: Shape filler, feedback: Coarse grain cuts filler.}
  - {left: P400, right: Sand surfacer, feedback: Fine grain leaves no marks.}
  - {left: P2000, right: Flat a clear coat, feedback: The finest of the three.}
spare: [Cut steel]
"""

WHY_BED = """
kind: written
level: recall
use: study
source: old_book
stem: Why is the bed keyed?
points:
  - {text: Filler grips in scratches, marks: 2}
  - {text: Smooth metal lets go, marks: 1}
model: Filler holds in the scratches of the bed.
"""

MIX_FILLER = """
title: Mix filler
objective: filler/mix
source: common_practice
cautions: [Peroxide paste burns eyes. Goggles on first.]
steps:
  - {step: goggles, action: Put goggles on}
  - {step: key, action: Key the bed}
  - {step: lamp, action: Warm the bed with a lamp, optional: true}
  - {step: knead, action: Knead the paste in its tube}
  - {step: weigh, action: Weigh filler and paste}
  - {step: fold, action: Fold until one colour shows}
  - {step: spread, action: Spread a tight coat}
pairs:
  - first: goggles
    then: knead
    class: danger
    reason: A tube can spurt.
    goes_wrong: Paste spurts into bare eyes
    harm: skin_eye_harm
  - first: key
    then: weigh
    class: ruins
    reason: The clock starts at the scale.
    goes_wrong: The mix gels before the bed is ready
    harm: wasted_mix
  - first: lamp
    then: weigh
    class: ruins
    reason: Warm metal shortens the time.
    goes_wrong: The mix goes off on the board
    harm: wasted_mix
  - first: knead
    then: weigh
    class: ruins
    reason: Paste separates in the tube.
    goes_wrong: The dose is weak and the filler stays soft
    harm: wrong_cure
  - first: weigh
    then: fold
    class: ruins
    reason: You cannot fold what is not there.
    goes_wrong: Paste goes in late and cures in stripes
    harm: wrong_cure
  - first: fold
    then: spread
    class: ruins
    reason: Streaks cure at two speeds.
    goes_wrong: Streaks stay soft on the panel
    harm: wrong_cure
"""

WASH_TRAILER = """
title: Wash a trailer wing
objective: cleaning/wash
source: panel_manual
steps:
  - {step: rinse, action: Rinse loose grit away}
  - {step: foam, action: Foam from the bottom upward}
  - {step: hose, action: Hose everything downward}
  - {step: towel, action: Towel the wing}
pairs:
  - first: rinse
    then: foam
    class: ruins
    reason: Grit scratches under foam.
    goes_wrong: Grit scratches the old finish
    harm: damage
  - first: foam
    then: hose
    class: ruins
    reason: Foam must be there to be hosed off.
    goes_wrong: Soap dries in and primer lets go
    harm: contamination
  - first: hose
    then: towel
    class: ruins
    reason: A towel drags grit along.
    goes_wrong: Water stands in the seam and rusts it
    harm: corrosion
  - first: rinse
    then: hose
    class: habit
    reason: Most people do.
"""


def fault(title: str, objective: str = "filler/shape", **more: str) -> str:
    """Write a fault record; `more` replaces or adds whole entries."""
    slug = title.lower()
    entries = {
        "title": title,
        "objective": objective,
        "source": "common_practice",
        "look": f"The film shows {slug} marks",
        "place_and_time": f"Seen on {slug} panels",
        "causes": f"[{{family: method, text: Work that brings {slug}, asked: true}}]",
        "prevention": f"Avoid what brings {slug}",
        "remedy": f"Sand the {slug} away",
        "remedy_asked": "true",
    }
    return "\n".join(f"{name}: {value}" for name, value in {**entries, **more}.items())


def items(**named: str) -> str:
    """Write an items file from bodies by name."""
    return "\n".join(f"{name}:\n{indent(dedent(body), '  ')}" for name, body in named.items())


def write_bank(folder: Path, files: Mapping[str, str]) -> Path:
    """Write a bank of the frame and the files given by their paths inside the bank."""
    for name, text in {**FRAME, **files}.items():
        path = folder / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(dedent(text).rstrip("\n") + "\n", "utf-8")
    return folder


def bank_of(folder: Path, files: Mapping[str, str]) -> Bank:
    """Return the bank of the frame and some files; a problem of reading fails the test."""
    bank, problems = load_bank(write_bank(folder, files))
    assert problems == ()
    assert bank is not None
    return bank


FULL = {
    "items/film_build/films.yml": items(wet=WET_FILM),
    "items/filler/mix.yml": items(paste=PASTE, safe=TWO_RIGHT, why=WHY_BED),
    "items/filler/shape.yml": items(papers=PAPERS),
    "items/cleaning/wash.yml": items(first=FIRST_JOB, order=WASH_ORDER),
    "procedures/mix_filler.yml": MIX_FILLER,
    "procedures/wash_trailer.yml": WASH_TRAILER,
    "faults/pinholes.yml": fault("Pinholes"),
    "faults/craters.yml": fault("Craters"),
    "faults/sags.yml": fault("Sags"),
    "faults/rings.yml": fault("Rings"),
    "tables/grades.yml": """
        title: Grades
        objective: filler/shape
        source: panel_manual, table 2
        columns:
          - {name: P grade, unit: one}
          - {name: Mean size, unit: um}
        rows: [[80, 201], [120, 125], [180, 82], [240, 58.5]]
        look_up: [{from: P grade, to: Mean size}]
        """,
}
"""One of everything: numeric, choice, multiple response, order, match, written, records."""
