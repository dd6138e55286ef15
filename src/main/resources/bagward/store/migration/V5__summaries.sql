-- Ten minutes of a series. from_at: ms since 1970-01-01 UTC. covered: ms of them for which a reading stood.
-- mean: weighted by time, over what is covered. readings: how many were measured in them.
CREATE TABLE summary_ten_minutes (
    series   INTEGER NOT NULL REFERENCES series (id),
    from_at  INTEGER NOT NULL,
    readings INTEGER NOT NULL,
    mean     REAL    NOT NULL,
    minimum  REAL    NOT NULL,
    maximum  REAL    NOT NULL,
    covered  INTEGER NOT NULL,
    PRIMARY KEY (series, from_at)
) STRICT, WITHOUT ROWID;

-- The same of a day of the station's zone. day: days since 1970-01-01.
CREATE TABLE summary_day (
    series   INTEGER NOT NULL REFERENCES series (id),
    day      INTEGER NOT NULL,
    from_at  INTEGER NOT NULL,
    to_at    INTEGER NOT NULL,
    readings INTEGER NOT NULL,
    mean     REAL    NOT NULL,
    minimum  REAL    NOT NULL,
    maximum  REAL    NOT NULL,
    covered  INTEGER NOT NULL,
    PRIMARY KEY (series, day)
) STRICT, WITHOUT ROWID;

-- Days of a series whose summaries do not show all readings yet. raised: grows each time a reading comes.
CREATE TABLE summary_due (
    series INTEGER NOT NULL REFERENCES series (id),
    day    INTEGER NOT NULL,
    raised INTEGER NOT NULL,
    PRIMARY KEY (series, day)
) STRICT, WITHOUT ROWID;

CREATE INDEX summary_due_by_day ON summary_due (day);

-- One row: readings before this may be gone, ms since 1970-01-01 UTC.
CREATE TABLE readings_kept (
    only_row INTEGER PRIMARY KEY CHECK (only_row = 1),
    since_at INTEGER NOT NULL
) STRICT;

-- What was stored before there were summaries is due: by the day in UTC and its neighbours, which hold every zone.
INSERT INTO summary_due (series, day, raised)
SELECT series, day + shift, 1
FROM (SELECT DISTINCT series, measured_at / 86400000 AS day FROM reading),
     (SELECT -1 AS shift UNION ALL SELECT 0 UNION ALL SELECT 1)
WHERE true
ON CONFLICT DO NOTHING;
