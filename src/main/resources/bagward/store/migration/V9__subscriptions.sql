-- Which client of ours has a lasting session at a broker, and what it is subscribed to there. A broker keeps both, and the
-- messages for them, until it is told otherwise; written before it is asked for, and deleted after it was ended.
CREATE TABLE broker_session (
    id     INTEGER PRIMARY KEY,
    broker TEXT    NOT NULL,
    client TEXT    NOT NULL,
    UNIQUE (broker, client)
) STRICT;

CREATE TABLE subscription (
    session INTEGER NOT NULL REFERENCES broker_session (id),
    filter  TEXT    NOT NULL,
    PRIMARY KEY (session, filter)
) STRICT, WITHOUT ROWID;
