-- What lies open so that people can sign in: wrapped secrets, public keys, keys of epochs sealed
-- to them. No name and no role.
CREATE TABLE access (
    kind TEXT NOT NULL,
    id TEXT NOT NULL,
    text TEXT NOT NULL,
    PRIMARY KEY (kind, id)
) STRICT, WITHOUT ROWID
