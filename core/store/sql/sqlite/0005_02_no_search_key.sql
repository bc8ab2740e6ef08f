-- Search keys lie in segments from now on.
DROP TABLE search_key
