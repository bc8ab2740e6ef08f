-- Derived: the order of the cards and the words they are found by, in rows that are closed as a
-- whole. See core/ledger/cardindex.h.
CREATE TABLE segment (
    name TEXT PRIMARY KEY,
    bytes BLOB NOT NULL
) STRICT
