-- What was put into the outbox, in that order. document: a message, a line of the alarm journal or a trial, as JSON.
CREATE TABLE parcel (
    number   INTEGER PRIMARY KEY AUTOINCREMENT,
    id       TEXT    NOT NULL UNIQUE,
    put_at   INTEGER NOT NULL,
    document TEXT    NOT NULL CHECK (json_valid(document))
) STRICT;

-- States of alarms that people were told, kept longer than the parcels. raised_at: ISO 8601.
CREATE TABLE told (
    person    TEXT    NOT NULL,
    rule      TEXT    NOT NULL,
    subject   TEXT    NOT NULL,
    raised_at TEXT    NOT NULL,
    news      TEXT    NOT NULL,
    number    INTEGER NOT NULL,
    told_at   INTEGER NOT NULL,
    PRIMARY KEY (person, rule, subject, raised_at, news, number)
) STRICT, WITHOUT ROWID;

-- One parcel on one channel. next_try counts while it waits; changed_at is the last try or the end.
CREATE TABLE delivery (
    parcel     INTEGER NOT NULL REFERENCES parcel (number) ON DELETE CASCADE,
    channel    TEXT    NOT NULL,
    state      TEXT    NOT NULL CHECK (state IN ('waiting', 'handed-over', 'given-up')),
    tries      INTEGER NOT NULL,
    next_try   INTEGER NOT NULL,
    changed_at INTEGER NOT NULL,
    trouble    TEXT    NOT NULL,
    PRIMARY KEY (parcel, channel)
) STRICT, WITHOUT ROWID;

CREATE INDEX delivery_waiting ON delivery (channel, parcel) WHERE state = 'waiting';

-- How far a reader of the alarm journal has come: the id of the last event it took.
CREATE TABLE journal_mark (
    reader TEXT    PRIMARY KEY,
    event  INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
