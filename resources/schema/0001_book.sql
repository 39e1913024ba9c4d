-- SPDX-License-Identifier: GPL-3.0-or-later
--
-- Schema 1 of a book: one SQLite file for one station (application_id 0x57424B31, "WBK1").
-- Run whole in one transaction that also sets user_version to 1. Never edited once released.
--
-- A book is a log. Every change appends one row to "revision"; no row is ever changed or deleted.
-- What stands is the newest revision of each subject; what was first written is its first.
-- "body" is JSON with sorted keys and without blanks; what is not given is left out:
--
--   observation   hour [days since 1970-01-01 at the station, minutes after midnight], instant (UTC, seconds
--                 since 1970), zone (IANA name), offset (s, local = UTC + offset),
--                 dry wet maximum minimum [digits, decimals, "C" or "F"]: [615,1,"F"] is 61.5 °F as read,
--                 dry_below_scale wet_below_scale, wick "water" or "ice", wick_care "wetted" or "changed",
--                 pressure [digits, decimals] in hPa, weather "none" or names joined by ';', wind (Beaufort),
--                 repeats [{wet, dry}, …], note, observer, origin, quality, missing_reason, withdrawn,
--                 paper {book, page} (there: copied from a page of the paper register), read_back
--   station       name, invented, hour_window (minutes)
--   period        from (UTC, seconds; absent: since ever) and what differs from then on: position [degrees
--                 north, degrees east], elevation (m), zone, hours [minutes after midnight, …], hour_rule,
--                 exposure, own_coefficient {water, ice, uncertainty}, mean_pressure (hPa; 0: none any more),
--                 surroundings, joined (the record goes on across the change), withdrawn
--   thermometer   name, liquid, unit, step, lowest, highest [digits, decimals], withdrawn
--   fitting       from, dry, wet (thermometers), withdrawn
--   correction    thermometer, from, points [[reading, add], …], uncertainty, source, withdrawn
--   absence       first_day, last_day (dates, both included), reason, deputy, note, withdrawn
--   diary         date, kind, note, withdrawn
--   pair_check    date, dry, wet (thermometers), dry_at_ice wet_at_ice dry_in_bath wet_in_bath (as an
--                 observation's dry), observer, note, withdrawn
--   salt_check    date, sensor, temperature [digits, decimals] in °C, readings [[salt, [digits, decimals]], …],
--                 observer, note, withdrawn
--   side_by_side  name, purpose, from, to (dates), uncertainty (% RH), exposure, decision, note, withdrawn
--   beside_reading  comparison (a side_by_side), instant, humidity [digits, decimals], temperature, other_dry
--                 other_wet own_dry own_wet (as an observation's dry), other_wick own_wick, pressure, wind, note,
--                 withdrawn
--   month_signing month ("2025-03"), at (UTC, s), by, note, open_queries, numbers (summary.csv as signed), readings
--                 [[observation, its revisions then], …], withdrawn
--   limit         name, from, value (absent: the built-in one), withdrawn
--
-- A kind that a reader does not know is kept and passed over.
--
-- The chain. checksum = SHA-256 of, one after the other:
--   the checksum of the row before (32 zero bytes before the first),
--   sequence (8 bytes, most significant first),
--   id, kind, subject, each as its length in bytes (8 bytes, most significant first) and its bytes,
--   recorded_at (8 bytes, two's complement, most significant first),
--   who, why, body, each as length and bytes; text is UTF-8.
-- "chain" holds the last checksum and the number of rows, so that rows missing at the end are noticed too.

CREATE TABLE chain (
    one INTEGER PRIMARY KEY CHECK (one = 1),
    head BLOB NOT NULL CHECK (length(head) = 32),
    count INTEGER NOT NULL CHECK (count >= 0)
) STRICT;

INSERT INTO chain (one, head, count) VALUES (1, zeroblob(32), 0);

CREATE TABLE revision (
    sequence INTEGER PRIMARY KEY CHECK (sequence >= 1),          -- place in the book, without gaps
    id BLOB NOT NULL UNIQUE CHECK (length(id) = 16),             -- UUID of this change
    kind TEXT NOT NULL CHECK (kind <> ''),
    subject BLOB NOT NULL CHECK (length(subject) = 16),          -- UUID of what is described
    recorded_at INTEGER NOT NULL,                                -- UTC, seconds since 1970
    who TEXT NOT NULL,
    why TEXT NOT NULL,
    body TEXT NOT NULL CHECK (substr(body, 1, 1) = '{' AND substr(body, -1, 1) = '}'),
    checksum BLOB NOT NULL CHECK (length(checksum) = 32)
) STRICT;

CREATE INDEX revision_by_subject ON revision (subject, sequence);
CREATE INDEX revision_of_facts ON revision (sequence) WHERE kind <> 'observation';

CREATE TRIGGER revision_is_never_changed BEFORE UPDATE ON revision
BEGIN
    SELECT RAISE(ABORT, 'a revision is never changed');
END;

CREATE TRIGGER revision_is_never_deleted BEFORE DELETE ON revision
BEGIN
    SELECT RAISE(ABORT, 'a revision is never deleted');
END;

CREATE TRIGGER revision_follows_the_last BEFORE INSERT ON revision
WHEN NEW.sequence IS NOT (SELECT coalesce(max(sequence), 0) + 1 FROM revision)
BEGIN
    SELECT RAISE(ABORT, 'a revision is appended after the last one');
END;

CREATE TRIGGER chain_is_never_deleted BEFORE DELETE ON chain
BEGIN
    SELECT RAISE(ABORT, 'the chain is never deleted');
END;

-- A finding aid over the newest revision of each observation; can be made again from the revisions.
CREATE TABLE observation (
    subject BLOB PRIMARY KEY NOT NULL CHECK (length(subject) = 16),
    sequence INTEGER NOT NULL UNIQUE REFERENCES revision (sequence), -- the newest
    revisions INTEGER NOT NULL CHECK (revisions >= 1),
    instant INTEGER NOT NULL,     -- UTC, seconds since 1970
    filed_day INTEGER NOT NULL,   -- days since 1970-01-01 at the station
    hour_day INTEGER,             -- observing hour: none for an extra reading
    hour_minute INTEGER,
    live INTEGER NOT NULL CHECK (live IN (0, 1)), -- 0: withdrawn
    CHECK ((hour_day IS NULL) = (hour_minute IS NULL))
) STRICT;

CREATE INDEX observation_by_instant ON observation (live, instant, sequence);
CREATE INDEX observation_by_day ON observation (live, filed_day, instant, sequence);
CREATE UNIQUE INDEX observation_by_hour ON observation (hour_day, hour_minute)
    WHERE live = 1 AND hour_day IS NOT NULL;

-- For people with nothing but a SQLite shell: SELECT * FROM reading ORDER BY time_utc;
-- The program itself never asks it: it trusts no schema (trusted_schema=OFF), and then SQLite refuses the JSON
-- functions within a view. For the same reason no CHECK above uses them.
CREATE VIEW reading AS
SELECT
    strftime('%Y-%m-%dT%H:%M:%SZ', json_extract(r.body, '$.instant'), 'unixepoch') AS time_utc,
    date(o.filed_day * 86400, 'unixepoch') AS local_date,
    CASE WHEN o.hour_minute IS NOT NULL
         THEN printf('%02d:%02d', o.hour_minute / 60, o.hour_minute % 60) END AS hour,
    CASE WHEN json_extract(r.body, '$.dry') IS NOT NULL
         THEN printf('%.*f', json_extract(r.body, '$.dry[1]'),
                     json_extract(r.body, '$.dry[0]') / CAST('1e' || json_extract(r.body, '$.dry[1]') AS REAL))
         END AS dry,
    json_extract(r.body, '$.dry[2]') AS dry_unit,
    CASE WHEN json_extract(r.body, '$.wet') IS NOT NULL
         THEN printf('%.*f', json_extract(r.body, '$.wet[1]'),
                     json_extract(r.body, '$.wet[0]') / CAST('1e' || json_extract(r.body, '$.wet[1]') AS REAL))
         END AS wet,
    json_extract(r.body, '$.wet[2]') AS wet_unit,
    json_extract(r.body, '$.wick') AS wick,
    CASE WHEN json_extract(r.body, '$.pressure') IS NOT NULL
         THEN printf('%.*f', json_extract(r.body, '$.pressure[1]'),
                     json_extract(r.body, '$.pressure[0]')
                         / CAST('1e' || json_extract(r.body, '$.pressure[1]') AS REAL))
         END AS pressure_hpa,
    json_extract(r.body, '$.weather') AS weather,
    json_extract(r.body, '$.wind') AS wind_beaufort,
    json_extract(r.body, '$.origin') AS origin,
    json_extract(r.body, '$.quality') AS quality,
    json_extract(r.body, '$.missing_reason') AS missing_reason,
    json_extract(r.body, '$.observer') AS observer,
    json_extract(r.body, '$.note') AS note,
    o.revisions AS revisions,
    r.who AS who,
    r.why AS why
FROM observation o JOIN revision r ON r.sequence = o.sequence
WHERE o.live = 1;
