"""The database's shape, one step per version; a step that has shipped is never edited.

People stand in one table; everything else names them by the number of their row, so that a person
can be taken out of the file whole. What is long or many is packed: the answers of a sitting, the
findings of a marking and the questions of a form are one value each, not a row each.
"""

FIRST = """
CREATE TABLE people (
    id INTEGER PRIMARY KEY,
    code TEXT NOT NULL UNIQUE CHECK (code <> ''),
    name TEXT NOT NULL DEFAULT '',
    role TEXT NOT NULL DEFAULT 'learner' CHECK (role IN ('learner', 'trainer', 'marker', 'lead')),
    added TEXT NOT NULL
) STRICT;
CREATE TABLE issues (
    id INTEGER PRIMARY KEY,
    blueprint TEXT NOT NULL,
    title TEXT NOT NULL,
    seed TEXT NOT NULL,
    edition TEXT NOT NULL,
    bank_hash TEXT NOT NULL,
    settings TEXT NOT NULL,
    issued TEXT NOT NULL,
    state TEXT NOT NULL CHECK (state IN ('pending', 'issued', 'voided')),
    void_reason TEXT NOT NULL DEFAULT '',
    voided TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE TABLE questions (
    id INTEGER PRIMARY KEY,
    digest BLOB NOT NULL UNIQUE,
    item TEXT NOT NULL,
    version TEXT NOT NULL,
    objective TEXT NOT NULL,
    content TEXT NOT NULL
) STRICT;
CREATE TABLE forms (
    id INTEGER PRIMARY KEY,
    issue INTEGER NOT NULL REFERENCES issues (id),
    label TEXT NOT NULL,
    person INTEGER REFERENCES people (id) ON DELETE SET NULL,
    content BLOB NOT NULL,
    questions BLOB NOT NULL,
    UNIQUE (issue, label)
) STRICT;
CREATE TABLE corrections (
    id INTEGER PRIMARY KEY,
    issue INTEGER NOT NULL REFERENCES issues (id),
    item TEXT NOT NULL,
    change TEXT NOT NULL,
    reason TEXT NOT NULL CHECK (reason <> ''),
    decided_by INTEGER REFERENCES people (id) ON DELETE SET NULL,
    decided TEXT NOT NULL
) STRICT;
CREATE TABLE sittings (
    id INTEGER PRIMARY KEY,
    form INTEGER NOT NULL REFERENCES forms (id),
    person INTEGER REFERENCES people (id) ON DELETE SET NULL,
    responses BLOB NOT NULL,
    entered TEXT NOT NULL,
    marker INTEGER REFERENCES people (id) ON DELETE SET NULL,
    replaced INTEGER NOT NULL DEFAULT 0 CHECK (replaced IN (0, 1))
) STRICT;
CREATE TABLE markings (
    id INTEGER PRIMARY KEY,
    sitting INTEGER NOT NULL REFERENCES sittings (id),
    correction INTEGER REFERENCES corrections (id),
    marked TEXT NOT NULL,
    points TEXT NOT NULL,
    most INTEGER NOT NULL,
    verdict TEXT NOT NULL
        CHECK (verdict IN ('passed', 'must_pass_missed', 'not_passed', 'unfinished')),
    marks TEXT NOT NULL,
    findings BLOB NOT NULL,
    replaced INTEGER NOT NULL DEFAULT 0 CHECK (replaced IN (0, 1))
) STRICT;
CREATE TABLE observations (
    id INTEGER PRIMARY KEY,
    person INTEGER NOT NULL REFERENCES people (id) ON DELETE CASCADE,
    procedure TEXT NOT NULL,
    title TEXT NOT NULL,
    steps TEXT NOT NULL,
    job TEXT NOT NULL DEFAULT '',
    note TEXT NOT NULL DEFAULT '',
    observer INTEGER REFERENCES people (id) ON DELETE SET NULL,
    observed TEXT NOT NULL,
    entered TEXT NOT NULL
) STRICT;
CREATE TABLE dated_facts (
    id INTEGER PRIMARY KEY,
    person INTEGER NOT NULL REFERENCES people (id) ON DELETE CASCADE,
    kind TEXT NOT NULL CHECK (kind IN ('fit_test', 'medical', 'painter_training',
        'isocyanate_training', 'sign_off', 'retest')),
    subject TEXT NOT NULL DEFAULT '',
    done TEXT NOT NULL,
    due TEXT NOT NULL DEFAULT '',
    entered TEXT NOT NULL
) STRICT;
CREATE TABLE certificates (
    id INTEGER PRIMARY KEY,
    person INTEGER NOT NULL REFERENCES people (id) ON DELETE CASCADE,
    trainer INTEGER REFERENCES people (id) ON DELETE SET NULL,
    content TEXT NOT NULL,
    issued TEXT NOT NULL
) STRICT;
CREATE TABLE diary (
    id INTEGER PRIMARY KEY,
    at TEXT NOT NULL,
    action TEXT NOT NULL,
    detail TEXT NOT NULL
) STRICT;
CREATE INDEX questions_of_item ON questions (item, version);
CREATE INDEX forms_of_person ON forms (person);
CREATE UNIQUE INDEX sitting_that_stands ON sittings (form, person)
    WHERE replaced = 0 AND person IS NOT NULL;
CREATE INDEX sittings_of_form ON sittings (form);
CREATE INDEX sittings_of_person ON sittings (person);
CREATE INDEX sittings_of_marker ON sittings (marker);
CREATE UNIQUE INDEX marking_that_stands ON markings (sitting) WHERE replaced = 0;
CREATE INDEX markings_of_sitting ON markings (sitting);
CREATE INDEX facts_of_person ON dated_facts (person, kind);
CREATE INDEX observations_of_person ON observations (person);
CREATE INDEX certificates_of_person ON certificates (person);
"""

FORM_IDS = """
ALTER TABLE forms ADD COLUMN form_id TEXT NOT NULL DEFAULT '';
CREATE INDEX forms_by_id ON forms (form_id);
"""

# what was entered by mistake is taken out, never deleted; what a value was before stays with it
SECOND_THOUGHTS = """
ALTER TABLE sittings ADD COLUMN sat TEXT NOT NULL DEFAULT '';
ALTER TABLE observations ADD COLUMN taken_out TEXT NOT NULL DEFAULT '';
ALTER TABLE dated_facts ADD COLUMN taken_out TEXT NOT NULL DEFAULT '';
CREATE TABLE amendments (
    id INTEGER PRIMARY KEY,
    person INTEGER REFERENCES people (id) ON DELETE CASCADE,
    what TEXT NOT NULL,
    place INTEGER NOT NULL,
    before TEXT NOT NULL,
    after TEXT NOT NULL,
    reason TEXT NOT NULL CHECK (reason <> ''),
    at TEXT NOT NULL
) STRICT;
CREATE INDEX amendments_of_person ON amendments (person);
CREATE TABLE erased_codes (digest BLOB PRIMARY KEY) STRICT;
"""

STEPS: tuple[str, ...] = (FIRST, FORM_IDS, SECOND_THOUGHTS)
