-- The record itself: exactly the bytes that are hashed. Everything else can be made from it again.
CREATE TABLE entry (
    seq INTEGER PRIMARY KEY CHECK (seq >= 0),
    bytes BLOB NOT NULL
) STRICT
