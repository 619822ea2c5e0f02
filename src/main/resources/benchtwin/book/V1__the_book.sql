-- The book. What is entered is only ever added to; what is derived from it stands in "state" and in the index of notes,
-- and can be worked out again at any time.

CREATE TABLE entry (
  id         INTEGER PRIMARY KEY,
  entered_at TEXT NOT NULL,              -- UTC, ISO 8601, thousandths of a second
  by_whom    TEXT,
  what       TEXT NOT NULL,              -- the act, in words
  program    TEXT NOT NULL               -- which build of the program wrote it
);

CREATE TABLE thing (
  id       INTEGER PRIMARY KEY,
  kind     TEXT NOT NULL CHECK (kind IN
             ('head', 'shaft', 'grip', 'sleeve', 'weight', 'club', 'player', 'gauge', 'job')),
  tag      TEXT NOT NULL CHECK (length(tag) BETWEEN 1 AND 80),
  folded   TEXT NOT NULL,                -- the tag as it is looked up: no case, no width, no accents kept apart
  entry_id INTEGER NOT NULL REFERENCES entry (id),
  UNIQUE (kind, tag)
);
CREATE INDEX thing_by_folded ON thing (folded);

CREATE TABLE event (
  id          INTEGER PRIMARY KEY,
  entry_id    INTEGER NOT NULL REFERENCES entry (id),
  thing_id    INTEGER NOT NULL REFERENCES thing (id),
  kind        TEXT NOT NULL,
  happened_at TEXT,                      -- a day or a UTC instant; blank where nobody wrote it down
  job_id      INTEGER REFERENCES thing (id),
  facts       TEXT NOT NULL DEFAULT '{}' CHECK (json_valid(facts)),
  words       TEXT,
  sheet_key   TEXT,                      -- of a row that was imported: which row of the thing it is
  sheet       TEXT CHECK (sheet IS NULL OR json_valid(sheet))
);
CREATE INDEX event_by_thing ON event (thing_id);
CREATE INDEX event_by_job ON event (job_id) WHERE job_id IS NOT NULL;

CREATE TABLE reading (
  id          INTEGER PRIMARY KEY,
  event_id    INTEGER NOT NULL REFERENCES event (id),
  quantity    TEXT NOT NULL,             -- with its unit at the end: loft_deg, length_mm
  value       REAL,                      -- blank only where a correction takes a reading back
  uncertainty REAL CHECK (uncertainty >= 0),
  unit        TEXT NOT NULL,
  condition   TEXT NOT NULL DEFAULT '{}' CHECK (json_valid(condition)),
  gauge       TEXT,
  station     TEXT,
  measured_at TEXT,
  by_whom     TEXT,
  note        TEXT,
  corrects    INTEGER UNIQUE REFERENCES reading (id),
  CHECK (value IS NOT NULL OR corrects IS NOT NULL)
);
CREATE INDEX reading_by_event ON reading (event_id);
CREATE INDEX reading_by_gauge ON reading (gauge) WHERE gauge IS NOT NULL;

CREATE TABLE note (
  id       INTEGER PRIMARY KEY,
  entry_id INTEGER NOT NULL REFERENCES entry (id),
  thing_id INTEGER NOT NULL REFERENCES thing (id),
  text     TEXT NOT NULL CHECK (length(text) BETWEEN 1 AND 20000)
);
CREATE INDEX note_by_thing ON note (thing_id);
CREATE VIRTUAL TABLE note_words USING fts5 (text, content = 'note', content_rowid = 'id',
  tokenize = 'unicode61 remove_diacritics 2');
CREATE TRIGGER note_is_indexed AFTER INSERT ON note BEGIN
  INSERT INTO note_words (rowid, text) VALUES (new.id, new.text);
END;

CREATE TABLE state (
  thing_id INTEGER PRIMARY KEY REFERENCES thing (id),
  kind     TEXT NOT NULL,
  standing TEXT NOT NULL,
  owner    TEXT,                         -- whose it is: a player's tag
  derived  TEXT NOT NULL CHECK (json_valid(derived))
);
CREATE INDEX state_by_kind ON state (kind);     -- in order of entry, so that none has to be sorted
CREATE INDEX state_by_owner ON state (owner) WHERE owner IS NOT NULL;

CREATE TRIGGER entry_stays   BEFORE UPDATE ON entry   BEGIN SELECT RAISE(ABORT, 'entries are never changed'); END;
CREATE TRIGGER entry_kept    BEFORE DELETE ON entry   BEGIN SELECT RAISE(ABORT, 'entries are never deleted'); END;
CREATE TRIGGER thing_stays   BEFORE UPDATE ON thing   BEGIN SELECT RAISE(ABORT, 'tags are never changed'); END;
CREATE TRIGGER thing_kept    BEFORE DELETE ON thing   BEGIN SELECT RAISE(ABORT, 'things are never deleted'); END;
CREATE TRIGGER event_stays   BEFORE UPDATE ON event   BEGIN SELECT RAISE(ABORT, 'events are never changed'); END;
CREATE TRIGGER event_kept    BEFORE DELETE ON event   BEGIN SELECT RAISE(ABORT, 'events are never deleted'); END;
CREATE TRIGGER reading_stays BEFORE UPDATE ON reading BEGIN SELECT RAISE(ABORT, 'readings are never changed'); END;
CREATE TRIGGER reading_kept  BEFORE DELETE ON reading BEGIN SELECT RAISE(ABORT, 'readings are never deleted'); END;
CREATE TRIGGER note_stays    BEFORE UPDATE ON note    BEGIN SELECT RAISE(ABORT, 'notes are never changed'); END;
CREATE TRIGGER note_kept     BEFORE DELETE ON note    BEGIN SELECT RAISE(ABORT, 'notes are never deleted'); END;

PRAGMA application_id = 1651799857;      -- "btw1"
PRAGMA user_version = 1;
