-- For tests only: a later version that fails half way.
ALTER TABLE thing ADD COLUMN drawer TEXT;
PRAGMA user_version = 2;
INSERT INTO bench (name) VALUES ('there is no such table');
