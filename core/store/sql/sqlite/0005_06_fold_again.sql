-- The cards are made again from the entries.
DELETE FROM fold
