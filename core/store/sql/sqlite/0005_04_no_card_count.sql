DROP TABLE card_count
