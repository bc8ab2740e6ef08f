CREATE INDEX search_key_learner ON search_key (learner)
