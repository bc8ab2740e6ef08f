-- Derived: where the entry of a command is, so that a repeat finds it.
CREATE TABLE command (
    id TEXT PRIMARY KEY,
    seq INTEGER NOT NULL UNIQUE
) STRICT, WITHOUT ROWID
