-- For tests only: what a later version of the book may do.
ALTER TABLE thing ADD COLUMN drawer TEXT;
CREATE TABLE bench (id INTEGER PRIMARY KEY, name TEXT NOT NULL);
INSERT INTO bench SELECT id, 'bench of ' || tag FROM thing WHERE kind = 'player';
DELETE FROM state;
PRAGMA user_version = -2;
