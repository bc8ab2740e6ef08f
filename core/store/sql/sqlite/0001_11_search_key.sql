-- Derived: folded words; a search matches their beginnings, byte by byte.
CREATE TABLE search_key (
    key BLOB NOT NULL,
    learner TEXT NOT NULL REFERENCES card (learner) ON DELETE CASCADE,
    PRIMARY KEY (key, learner)
) STRICT, WITHOUT ROWID
