-- Services with where on the hair, how and with what result; what a client told of herself, of her days, and on the day
-- of a service. Places are mm from the scalp as the hair was on that day; without to_mm: to the ends (of a cut: the
-- length that was left is not known). sections: JSON list of head sections, '[]' is all of it. Empty text: not written
-- down.
ALTER TABLE service ADD COLUMN from_mm DOUBLE PRECISION NOT NULL DEFAULT 0 CHECK (from_mm >= 0);
ALTER TABLE service ADD COLUMN to_mm DOUBLE PRECISION CHECK (to_mm >= from_mm);
ALTER TABLE service ADD COLUMN sections TEXT NOT NULL DEFAULT '[]' CHECK (sections LIKE '[%]');
ALTER TABLE service ADD COLUMN strength TEXT NOT NULL DEFAULT '' CHECK (strength IN ('', 'mild', 'regular', 'super'));
ALTER TABLE service ADD COLUMN minutes DOUBLE PRECISION CHECK (minutes >= 0);
ALTER TABLE service ADD COLUMN most_minutes DOUBLE PRECISION CHECK (most_minutes >= 0);
ALTER TABLE service ADD COLUMN temperature_c DOUBLE PRECISION CHECK (temperature_c >= 0);
ALTER TABLE service ADD COLUMN passes INTEGER CHECK (passes >= 0);
ALTER TABLE service ADD COLUMN strand_test TEXT NOT NULL DEFAULT '' CHECK (strand_test IN ('', 'passed', 'failed'));
ALTER TABLE service ADD COLUMN patch_test TEXT NOT NULL DEFAULT '' CHECK (patch_test IN ('', 'passed', 'failed'));
ALTER TABLE service ADD COLUMN patch_test_on TEXT CHECK (patch_test_on LIKE '____-__-__');
ALTER TABLE service ADD COLUMN patch_test_where TEXT NOT NULL DEFAULT '';
ALTER TABLE service ADD COLUMN result TEXT NOT NULL DEFAULT '';
ALTER TABLE service ADD COLUMN reaction INTEGER CHECK (reaction IN (0, 1));
ALTER TABLE service ADD COLUMN at_home INTEGER CHECK (at_home IN (0, 1));

-- An age goes with the day on which it was told, a length with the day on which it was measured.
CREATE TABLE client_profile (
    client BIGINT PRIMARY KEY REFERENCES client (id) ON DELETE CASCADE,
    born TEXT CHECK (born LIKE '____-__-__'),
    age_years DOUBLE PRECISION CHECK (age_years >= 0),
    age_on TEXT CHECK (age_on LIKE '____-__-__'),
    length_mm DOUBLE PRECISION CHECK (length_mm > 0),
    length_on TEXT CHECK (length_on LIKE '____-__-__'),
    texture TEXT NOT NULL CHECK (texture IN ('', 'fine', 'medium', 'coarse')),
    hair_group TEXT NOT NULL CHECK (hair_group IN ('', 'african', 'asian', 'caucasian')),
    whole_history INTEGER NOT NULL CHECK (whole_history IN (0, 1)), -- every service of her life is in the book
    history_from TEXT CHECK (history_from LIKE '____-__-__'),       -- else every service from this day on
    CHECK ((age_years IS NULL AND age_on IS NULL) OR (age_years IS NOT NULL AND age_on IS NOT NULL)),
    CHECK ((length_mm IS NULL AND length_on IS NULL) OR (length_mm IS NOT NULL AND length_on IS NOT NULL))
);

-- As told on a day. NULL: not asked. heat_asked: the heat tools below are all of them, none of them too.
CREATE TABLE daily_life (
    id {identity},
    client BIGINT NOT NULL REFERENCES client (id) ON DELETE CASCADE,
    told_on TEXT NOT NULL CHECK (told_on LIKE '____-__-__'),
    minutes_a_day DOUBLE PRECISION CHECK (minutes_a_day >= 0),
    heat_asked INTEGER NOT NULL CHECK (heat_asked IN (0, 1)),
    swims_a_week DOUBLE PRECISION CHECK (swims_a_week >= 0),
    washes_a_week DOUBLE PRECISION CHECK (washes_a_week >= 0),
    hard_water INTEGER CHECK (hard_water IN (0, 1)),
    covers_hair INTEGER CHECK (covers_hair IN (0, 1)),
    tight_headwear INTEGER CHECK (tight_headwear IN (0, 1)),
    covers_at_night INTEGER CHECK (covers_at_night IN (0, 1)),
    tight_styles INTEGER CHECK (tight_styles IN (0, 1)),
    style_hurts INTEGER CHECK (style_hurts IN (0, 1)),
    added_hair INTEGER CHECK (added_hair IN (0, 1)),
    style_weeks DOUBLE PRECISION CHECK (style_weeks >= 0),
    UNIQUE (client, told_on)
);

CREATE TABLE heat_tool (
    id {identity},
    daily_life BIGINT NOT NULL REFERENCES daily_life (id) ON DELETE CASCADE,
    name TEXT NOT NULL CHECK (name <> ''),
    temperature_c DOUBLE PRECISION CHECK (temperature_c >= 0),
    times_a_week DOUBLE PRECISION NOT NULL CHECK (times_a_week >= 0),
    on_wet_hair INTEGER CHECK (on_wet_hair IN (0, 1))
);
CREATE INDEX heat_tool_by_day ON heat_tool (daily_life);

-- Answers before a service, and counts by hand, of a day. value: yes 1, no 0, or hairs.
CREATE TABLE answer (
    id {identity},
    client BIGINT NOT NULL REFERENCES client (id) ON DELETE CASCADE,
    answered_on TEXT NOT NULL CHECK (answered_on LIKE '____-__-__'),
    question TEXT NOT NULL CHECK (question <> ''),
    value INTEGER NOT NULL CHECK (value >= 0),
    UNIQUE (client, question, answered_on)
);
