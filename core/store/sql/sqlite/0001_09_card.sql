-- Derived: one learner as the list shows them, in the order of sort_key's bytes.
CREATE TABLE card (
    learner TEXT PRIMARY KEY,
    patient TEXT NOT NULL,
    sort_key BLOB NOT NULL,
    json TEXT NOT NULL
) STRICT, WITHOUT ROWID
