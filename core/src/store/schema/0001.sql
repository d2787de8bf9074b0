-- Entries as they came. `seq` is the order of arrival on this device; raw IS NULL says erased.
CREATE TABLE entries (
  seq INTEGER PRIMARY KEY,
  log BLOB NOT NULL,
  device BLOB NOT NULL,
  n INTEGER NOT NULL,
  stamp INTEGER NOT NULL,
  cook BLOB,
  raw BLOB,
  UNIQUE (log, device, n)
) STRICT;
CREATE INDEX entries_by_cook ON entries (cook, seq);

-- Entries that are to be erased whenever they come.
CREATE TABLE erased (log BLOB, device BLOB, n INTEGER, PRIMARY KEY (log, device, n)) STRICT, WITHOUT ROWID;

-- The loser where two entries came under one name: kept, never folded.
CREATE TABLE forks (
  log BLOB NOT NULL, device BLOB NOT NULL, n INTEGER NOT NULL, stamp INTEGER NOT NULL, raw BLOB NOT NULL,
  PRIMARY KEY (log, device, n, stamp, raw)
) STRICT, WITHOUT ROWID;

-- Who this device is, and other single values.
CREATE TABLE meta (name TEXT PRIMARY KEY, value BLOB NOT NULL) STRICT, WITHOUT ROWID;

-- Acts that came with a token: what they answered, so that a second posting adds nothing.
CREATE TABLE once (token TEXT PRIMARY KEY, at INTEGER NOT NULL, outcome TEXT NOT NULL) STRICT, WITHOUT ROWID;

-- What rang on this device.
CREATE TABLE rung (id BLOB PRIMARY KEY, at INTEGER NOT NULL, calls INTEGER NOT NULL) STRICT, WITHOUT ROWID;
CREATE INDEX rung_by_time ON rung (at);

-- Probe readings that are not yet sealed in a chunk.
CREATE TABLE live (
  source TEXT NOT NULL, sensor TEXT NOT NULL, at INTEGER NOT NULL, temp INTEGER NOT NULL,
  PRIMARY KEY (source, sensor, at, temp)
) STRICT, WITHOUT ROWID;

-- Sealed runs of probe readings, each announced by an entry.
CREATE TABLE chunks (
  hash BLOB PRIMARY KEY, source TEXT NOT NULL, sensor TEXT NOT NULL,
  first INTEGER NOT NULL, last INTEGER NOT NULL, count INTEGER NOT NULL, bytes BLOB NOT NULL
) STRICT;
CREATE INDEX chunks_by_series ON chunks (source, sensor, last);

-- Caches: folded state by name, and one line a cook. Either may be dropped at any time.
CREATE TABLE cache (
  name BLOB PRIMARY KEY, fold INTEGER NOT NULL, seq INTEGER NOT NULL, state BLOB NOT NULL
) STRICT, WITHOUT ROWID;
CREATE TABLE cooks (
  cook BLOB PRIMARY KEY, name TEXT NOT NULL, started INTEGER NOT NULL, finished INTEGER, demo INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX cooks_by_start ON cooks (started);
