-- Packs and drawn signatures under the SHA-256 of their bytes.
CREATE TABLE blob (
    digest TEXT PRIMARY KEY,
    bytes BLOB NOT NULL
) STRICT
