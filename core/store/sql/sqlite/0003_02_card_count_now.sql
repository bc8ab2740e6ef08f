INSERT INTO card_count (one, cards) SELECT 1, count(*) FROM card
