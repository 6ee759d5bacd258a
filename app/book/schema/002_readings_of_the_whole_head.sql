-- Readings of shine, tone, ends, combed-out strands and pattern, and what a run found besides its readings: Lab of root,
-- mid and end, lines of demarcation, traced strands, how the light stood (JSON; '{}' when there is nothing).
INSERT INTO reading_name (name, unit, lowest, highest) VALUES
    ('shine_contrast', '-', 0, 1),
    ('shine_width', 'mm', 0, NULL),
    ('luster', '1/mm', 0, NULL),
    ('alignment', '-', 0, 1),
    ('tone_spread', 'dE00', 0, NULL),
    ('tone_level', 'level', 1, 10),
    ('hem_unevenness', 'mm', 0, NULL),
    ('see_through', '%', 0, 100),
    ('flyaway', '%', 0, 100),
    ('strands', 'count', 0, NULL),
    ('strand_median', 'mm', 0, NULL),
    ('short_share', '%', 0, 100),
    ('curve_diameter', 'mm', 0, NULL),
    ('wave_ratio', '-', 1, NULL),
    ('strand_length', 'mm', 0, NULL);

ALTER TABLE run ADD COLUMN details TEXT NOT NULL DEFAULT '{}';
