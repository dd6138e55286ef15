-- A check of a humidity sensor over two saturated salts. checked_at: from then on its correction holds.
-- Never edited: a check that was wrong is withdrawn.
CREATE TABLE sensor_check (
    id          INTEGER PRIMARY KEY,
    sensor      TEXT    NOT NULL,
    checked_at  INTEGER NOT NULL,
    recorded_at INTEGER NOT NULL,
    entered_by  TEXT    NOT NULL,
    document    TEXT    NOT NULL CHECK (json_valid(document))
) STRICT;

CREATE TABLE sensor_check_withdrawn (
    sensor_check INTEGER PRIMARY KEY REFERENCES sensor_check (id),
    recorded_at  INTEGER NOT NULL,
    entered_by   TEXT    NOT NULL,
    reason       TEXT    NOT NULL
) STRICT;
