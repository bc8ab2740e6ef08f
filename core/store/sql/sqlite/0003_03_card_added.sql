CREATE TRIGGER card_added AFTER INSERT ON card
BEGIN
    UPDATE card_count SET cards = cards + 1;
END
