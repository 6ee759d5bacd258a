-- The line of demarcation that a service left, as a tape showed it on a later day: mm from the scalp.
ALTER TABLE service ADD COLUMN line_mm DOUBLE PRECISION CHECK (line_mm >= 0);
ALTER TABLE service ADD COLUMN line_on TEXT CHECK (line_on LIKE '____-__-__'
    AND ((line_mm IS NULL AND line_on IS NULL) OR (line_mm IS NOT NULL AND line_on IS NOT NULL)));
