-- A service is planned (done 0) or done (1). Only what was done changes the hair; of a planned one whose day has passed
-- it is asked whether it was done. In an older book the day alone told: what was written for a day until today counted
-- as done and goes on so, because a stop may hang on it; what is still to come counted for nothing and is planned.
ALTER TABLE service ADD COLUMN done INTEGER NOT NULL DEFAULT 1 CHECK (done IN (0, 1));
UPDATE service SET done = 0 WHERE done_on > '{today}';

-- The day on which she said since when every service is in the record. NULL: an earlier Kempt did not keep it; asked
-- again.
ALTER TABLE client_profile ADD COLUMN history_told_on TEXT CHECK (history_told_on LIKE '____-__-__');
