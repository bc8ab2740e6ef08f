-- No table changes. From here on a paper is signed by who handed it out, and a sign-off names the
-- root it was given on. A program of before writes both without, so it has to refuse the record.
PRAGMA user_version = 6
