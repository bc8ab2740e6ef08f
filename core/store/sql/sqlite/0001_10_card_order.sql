CREATE INDEX card_order ON card (sort_key, learner)
