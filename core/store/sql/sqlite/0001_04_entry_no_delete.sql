CREATE TRIGGER entry_no_delete BEFORE DELETE ON entry
BEGIN
    SELECT RAISE(ABORT, 'entries are never removed');
END
