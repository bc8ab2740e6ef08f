-- Derived: the right edge of the Merkle tree, and the one before the last entry, with which the
-- last entry proves the edge when the file is opened.
CREATE TABLE right_edge (
    one INTEGER PRIMARY KEY CHECK (one = 1),
    edge TEXT NOT NULL,
    previous TEXT NOT NULL,
    tick INTEGER NOT NULL
) STRICT
