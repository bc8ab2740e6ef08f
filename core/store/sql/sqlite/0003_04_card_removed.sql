CREATE TRIGGER card_removed AFTER DELETE ON card
BEGIN
    UPDATE card_count SET cards = cards - 1;
END
