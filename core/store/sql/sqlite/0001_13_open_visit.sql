-- Derived: the one visit that is open on this workstation.
CREATE TABLE open_visit (
    one INTEGER PRIMARY KEY CHECK (one = 1),
    visit TEXT NOT NULL,
    patient TEXT NOT NULL
) STRICT
