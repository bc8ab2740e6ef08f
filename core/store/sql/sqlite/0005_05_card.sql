-- Derived: one learner as the list shows them, readable without a key only by the random ids.
CREATE TABLE card (
    learner TEXT PRIMARY KEY,
    patient TEXT NOT NULL,
    bytes BLOB NOT NULL
) STRICT
