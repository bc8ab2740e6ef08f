-- Derived: the version of the fold that made the derived rows.
CREATE TABLE fold (
    one INTEGER PRIMARY KEY CHECK (one = 1),
    version INTEGER NOT NULL
) STRICT
