-- One quantity of one sensor. unit: canonical unit of the quantity, as an ASCII code.
CREATE TABLE series (
    id       INTEGER PRIMARY KEY,
    sensor   TEXT NOT NULL,
    quantity TEXT NOT NULL,
    unit     TEXT NOT NULL,
    UNIQUE (sensor, quantity)
) STRICT;

-- measured_at: ms since 1970-01-01 UTC. flags: bits, 1 humidity capped, 2 clipped, 4 time of arrival.
CREATE TABLE reading (
    series      INTEGER NOT NULL REFERENCES series (id),
    measured_at INTEGER NOT NULL,
    value       REAL    NOT NULL,
    flags       INTEGER NOT NULL,
    PRIMARY KEY (series, measured_at)
) STRICT, WITHOUT ROWID;

-- digest: SHA-256 of topic, payload and reason. Equal messages are one row that counts them.
CREATE TABLE quarantine (
    id       INTEGER PRIMARY KEY,
    digest   BLOB    NOT NULL UNIQUE,
    topic    TEXT    NOT NULL,
    payload  BLOB    NOT NULL,
    reason   TEXT    NOT NULL,
    first_at INTEGER NOT NULL,
    last_at  INTEGER NOT NULL,
    messages INTEGER NOT NULL
) STRICT;

CREATE INDEX quarantine_by_time ON quarantine (last_at, messages);

CREATE TABLE heard_topic (
    topic    TEXT PRIMARY KEY,
    messages INTEGER NOT NULL,
    last_at  INTEGER NOT NULL,
    sample   TEXT    NOT NULL
) STRICT, WITHOUT ROWID;

CREATE INDEX heard_topic_by_time ON heard_topic (last_at);

-- document: one change as JSON; done_at is when it was done, recorded_at when it was entered.
CREATE TABLE register_change (
    id          INTEGER PRIMARY KEY,
    tag         TEXT    NOT NULL,
    done_at     INTEGER NOT NULL,
    recorded_at INTEGER NOT NULL,
    entered_by  TEXT    NOT NULL,
    document    TEXT    NOT NULL CHECK (json_valid(document))
) STRICT;

-- document: one alarm that is not normal as JSON.
CREATE TABLE alarm (
    rule     TEXT NOT NULL,
    subject  TEXT NOT NULL,
    document TEXT NOT NULL CHECK (json_valid(document)),
    PRIMARY KEY (rule, subject)
) STRICT, WITHOUT ROWID;

CREATE TABLE alarm_event (
    id       INTEGER PRIMARY KEY,
    at       INTEGER NOT NULL,
    rule     TEXT    NOT NULL,
    subject  TEXT    NOT NULL,
    document TEXT    NOT NULL CHECK (json_valid(document))
) STRICT;
