-- Also keeps INSERT OR REPLACE from removing a row, which would not ask the trigger above.
CREATE TRIGGER entry_in_order BEFORE INSERT ON entry
WHEN NEW.seq IS NOT (SELECT COALESCE(MAX(seq) + 1, 0) FROM entry)
BEGIN
    SELECT RAISE(ABORT, 'entries are only added at the end');
END
