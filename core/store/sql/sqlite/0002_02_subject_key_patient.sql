CREATE INDEX subject_key_patient ON subject_key (patient, place)
