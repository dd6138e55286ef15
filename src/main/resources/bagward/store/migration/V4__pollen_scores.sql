-- document: one entry as JSON; scored_at is when the score was taken, recorded_at when it was entered.
CREATE TABLE pollen_entry (
    id          INTEGER PRIMARY KEY,
    house       TEXT    NOT NULL,
    scored_at   INTEGER NOT NULL,
    recorded_at INTEGER NOT NULL,
    entered_by  TEXT    NOT NULL,
    document    TEXT    NOT NULL CHECK (json_valid(document))
) STRICT;
