-- The wrapped keys of the subjects, beside the entries: destroying one erases a person from the
-- record. An empty text is a key that was destroyed.
CREATE TABLE subject_key (
    place INTEGER PRIMARY KEY AUTOINCREMENT,
    id TEXT NOT NULL UNIQUE,
    patient TEXT NOT NULL,
    text TEXT NOT NULL
) STRICT
