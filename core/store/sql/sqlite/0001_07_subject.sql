-- Derived: whose record an entry is part of; '' for nobody's.
CREATE TABLE subject (
    patient TEXT NOT NULL,
    seq INTEGER NOT NULL,
    PRIMARY KEY (patient, seq)
) STRICT, WITHOUT ROWID
