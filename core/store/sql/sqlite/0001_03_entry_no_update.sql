CREATE TRIGGER entry_no_update BEFORE UPDATE ON entry
BEGIN
    SELECT RAISE(ABORT, 'entries are never changed');
END
