-- The first book. A shipped step is never edited: a change is a new step.
-- {identity} and {blob} are put in by dialect.cpp; everything else is SQL that SQLite and PostgreSQL both take.
-- Dates are ISO text (YYYY-MM-DD), moments ISO text with "Z", an offset, or neither when the camera named none.

CREATE TABLE schema_step (
    version INTEGER PRIMARY KEY,
    name TEXT NOT NULL,
    kempt TEXT NOT NULL -- the version of Kempt that applied it; a later book tells an earlier Kempt what it needs
);

CREATE TABLE client (
    id {identity},
    name TEXT NOT NULL CHECK (name <> ''),
    folded_name TEXT NOT NULL CHECK (folded_name <> ''), -- without case and accents, for the search
    note TEXT NOT NULL,
    since TEXT NOT NULL CHECK (since LIKE '____-__-__'),
    photo_consent INTEGER NOT NULL CHECK (photo_consent IN (0, 1)),
    consent_on TEXT CHECK (consent_on LIKE '____-__-__')
);
CREATE INDEX client_by_name ON client (folded_name);

CREATE TABLE visit (
    id {identity},
    client BIGINT NOT NULL REFERENCES client (id) ON DELETE CASCADE,
    visited_on TEXT NOT NULL CHECK (visited_on LIKE '____-__-__'),
    wet INTEGER NOT NULL CHECK (wet IN (0, 1)),
    styled INTEGER NOT NULL CHECK (styled IN (0, 1)),
    product INTEGER NOT NULL CHECK (product IN (0, 1)),
    note TEXT NOT NULL
);
CREATE INDEX visit_by_client ON visit (client, visited_on);
CREATE INDEX visit_by_day ON visit (visited_on);

CREATE TABLE photo (
    id {identity},
    visit BIGINT NOT NULL REFERENCES visit (id) ON DELETE CASCADE,
    view TEXT NOT NULL CHECK (view IN
        ('front hairline', 'left temple', 'right temple', 'crown', 'nape', 'lengths', 'ends')),
    shot INTEGER NOT NULL CHECK (shot >= 1),
    file_name TEXT NOT NULL,
    format TEXT NOT NULL CHECK (format IN ('jpeg', 'png', 'webp', 'tiff', 'heic')),
    sha256 TEXT NOT NULL UNIQUE CHECK (length(sha256) = 64 AND sha256 = lower(sha256)),
    width INTEGER NOT NULL CHECK (width >= 1),
    height INTEGER NOT NULL CHECK (height >= 1),
    taken TEXT CHECK (taken LIKE '____-__-__T__:__:__%'),
    quality_level TEXT NOT NULL CHECK (quality_level IN ('', 'good', 'usable', 'refused')),
    quality_findings TEXT NOT NULL,
    thumbnail {blob} NOT NULL,
    UNIQUE (visit, view, shot)
);

-- In a table of their own, so that lists do not drag them along.
CREATE TABLE photo_bytes (
    photo BIGINT PRIMARY KEY REFERENCES photo (id) ON DELETE CASCADE,
    bytes {blob} NOT NULL CHECK (length(bytes) > 0)
);

-- Lines and regions are JSON arrays of [x, y] in upright pixels.
CREATE TABLE marks (
    id {identity},
    photo BIGINT NOT NULL REFERENCES photo (id) ON DELETE CASCADE,
    view TEXT NOT NULL CHECK (view IN
        ('front hairline', 'left temple', 'right temple', 'crown', 'nape', 'lengths', 'ends')),
    edge_line TEXT NOT NULL CHECK (edge_line LIKE '[%]'),
    hair_side_x DOUBLE PRECISION,
    hair_side_y DOUBLE PRECISION,
    hair_taps TEXT NOT NULL CHECK (hair_taps LIKE '[%]'),
    scalp_taps TEXT NOT NULL CHECK (scalp_taps LIKE '[%]'),
    shine_region TEXT NOT NULL CHECK (shine_region LIKE '[%]'),
    strand_line TEXT NOT NULL CHECK (strand_line LIKE '[%]'),
    region TEXT NOT NULL CHECK (region LIKE '[%]'),
    anchors TEXT NOT NULL CHECK (anchors LIKE '[%]'),
    sheet TEXT NOT NULL CHECK (sheet IN ('', 'hem', 'combings', 'strand')),
    scale_points TEXT NOT NULL CHECK (scale_points LIKE '[%]'),
    scale_mm DOUBLE PRECISION NOT NULL,
    CHECK ((hair_side_x IS NULL AND hair_side_y IS NULL) OR (hair_side_x IS NOT NULL AND hair_side_y IS NOT NULL)),
    CHECK ((scale_points = '[]' AND scale_mm = 0) OR (scale_points <> '[]' AND scale_mm > 0)),
    UNIQUE (id, photo)
);
CREATE INDEX marks_by_photo ON marks (photo);

-- The unit goes with the name.
CREATE TABLE reading_name (
    name TEXT PRIMARY KEY,
    unit TEXT NOT NULL,
    lowest DOUBLE PRECISION NOT NULL, -- no value of that name lies outside
    highest DOUBLE PRECISION          -- none: no upper bound
);
INSERT INTO reading_name (name, unit, lowest, highest) VALUES
    ('edge_coverage', '%', 0, 100),
    ('edge_strands', '1/cm', 0, NULL),
    ('fill_depth', 'mm', 0, NULL),
    ('bare_length', 'mm', 0, NULL),
    ('length_density', 'mm/mm2', 0, NULL);

-- One measurement of one photo, and where its readings came from. Append-only.
CREATE TABLE run (
    id {identity},
    photo BIGINT NOT NULL REFERENCES photo (id) ON DELETE CASCADE,
    marks BIGINT NOT NULL,
    analysis_version INTEGER NOT NULL CHECK (analysis_version >= 1),
    options TEXT NOT NULL,
    card TEXT NOT NULL,
    photo_sha256 TEXT NOT NULL CHECK (length(photo_sha256) = 64),
    measured_at TEXT NOT NULL CHECK (measured_at LIKE '____-__-__T__:__:__%Z'),
    FOREIGN KEY (marks, photo) REFERENCES marks (id, photo) ON DELETE CASCADE -- marks of that very photo
);
CREATE INDEX run_by_photo ON run (photo);
CREATE INDEX run_by_marks ON run (marks, photo);

-- Exactly one of the two: a value with its interval, or a refusal with its reason.
CREATE TABLE reading (
    id {identity},
    run BIGINT NOT NULL REFERENCES run (id) ON DELETE CASCADE,
    name TEXT NOT NULL REFERENCES reading_name (name),
    value DOUBLE PRECISION,
    low DOUBLE PRECISION,
    high DOUBLE PRECISION,
    refusal_code TEXT,
    refusal_text TEXT,
    CHECK ((value IS NOT NULL AND low IS NOT NULL AND high IS NOT NULL AND low <= value AND value <= high
            AND refusal_code IS NULL AND refusal_text IS NULL)
        OR (value IS NULL AND low IS NULL AND high IS NULL
            AND refusal_code IS NOT NULL AND refusal_code <> '' AND refusal_text IS NOT NULL AND refusal_text <> '')),
    UNIQUE (run, name)
);
CREATE INDEX reading_by_name ON reading (name);

CREATE TABLE grade (
    id {identity},
    visit BIGINT NOT NULL REFERENCES visit (id) ON DELETE CASCADE,
    zone TEXT NOT NULL CHECK (zone <> ''),
    quality TEXT NOT NULL CHECK (quality <> ''),
    value INTEGER NOT NULL CHECK (value BETWEEN 0 AND 4),
    round INTEGER NOT NULL CHECK (round >= 1),
    UNIQUE (visit, zone, quality, round)
);

CREATE TABLE service (
    id {identity},
    client BIGINT NOT NULL REFERENCES client (id) ON DELETE CASCADE,
    visit BIGINT REFERENCES visit (id) ON DELETE SET NULL,
    done_on TEXT NOT NULL CHECK (done_on LIKE '____-__-__'),
    kind TEXT NOT NULL CHECK (kind <> ''),
    note TEXT NOT NULL
);
CREATE INDEX service_by_client ON service (client, kind, done_on);
CREATE INDEX service_by_day ON service (done_on);
CREATE INDEX service_by_visit ON service (visit);

CREATE TABLE target (
    id {identity},
    client BIGINT NOT NULL REFERENCES client (id) ON DELETE CASCADE,
    view TEXT NOT NULL CHECK (view IN
        ('front hairline', 'left temple', 'right temple', 'crown', 'nape', 'lengths', 'ends')),
    reading TEXT NOT NULL REFERENCES reading_name (name),
    value DOUBLE PRECISION NOT NULL CHECK (value >= 0),
    UNIQUE (client, view, reading)
);

CREATE TABLE setting (
    name TEXT PRIMARY KEY CHECK (name <> ''),
    value TEXT NOT NULL
);
