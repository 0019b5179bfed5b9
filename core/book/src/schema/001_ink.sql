-- What is kept for good: the ink, the keys that seal it, and what lies outside it.

-- What this copy of the book knows of itself: the device it writes as.
CREATE TABLE own (
  name TEXT PRIMARY KEY,
  value BLOB NOT NULL
) WITHOUT ROWID;

-- The journal. Lines are added, never changed and never removed.
CREATE TABLE ink (
  time INTEGER NOT NULL,        -- hybrid logical time: milliseconds since 1970 times 65536, plus a counter
  device BLOB NOT NULL,
  act INTEGER NOT NULL,         -- time of the first line written in the same transaction
  clock INTEGER NOT NULL,       -- what the device's clock said, milliseconds since 1970
  odd INTEGER NOT NULL,         -- 0; -1 the clock was far behind, 1 far ahead
  kind TEXT NOT NULL,
  subject BLOB NOT NULL,
  property BLOB,                -- whose key seals the value; NULL for what is the firm's own
  visit BLOB,
  value BLOB,                   -- JSON, sealed where there is a property; NULL takes the subject back; empty: erased before it came here
  undoes_time INTEGER,
  undoes_device BLOB,
  PRIMARY KEY (time, device)
);
CREATE INDEX ink_by_subject ON ink (subject, kind);
CREATE INDEX ink_by_property ON ink (property);
CREATE INDEX ink_by_visit ON ink (visit) WHERE visit IS NOT NULL;
CREATE INDEX ink_by_act ON ink (act, device);
CREATE INDEX ink_by_undone ON ink (undoes_time, undoes_device) WHERE undoes_time IS NOT NULL;

-- Which earlier lines a line takes the place of.
CREATE TABLE supersedes (
  older_time INTEGER NOT NULL,
  older_device BLOB NOT NULL,
  time INTEGER NOT NULL,
  device BLOB NOT NULL,
  PRIMARY KEY (older_time, older_device, time, device)
) WITHOUT ROWID;
CREATE INDEX supersedes_by_line ON supersedes (time, device);

CREATE TRIGGER ink_is_not_changed BEFORE UPDATE ON ink BEGIN SELECT raise(ABORT, 'ink is never changed'); END;
CREATE TRIGGER ink_is_not_removed BEFORE DELETE ON ink BEGIN SELECT raise(ABORT, 'ink is never removed'); END;
CREATE TRIGGER ink_is_not_replaced BEFORE INSERT ON ink
  WHEN EXISTS (SELECT 1 FROM ink WHERE time = new.time AND device = new.device)
  BEGIN SELECT raise(ABORT, 'ink is never replaced'); END;
CREATE TRIGGER supersedes_is_not_changed BEFORE UPDATE ON supersedes BEGIN SELECT raise(ABORT, 'ink is never changed'); END;
CREATE TRIGGER supersedes_is_not_removed BEFORE DELETE ON supersedes BEGIN SELECT raise(ABORT, 'ink is never removed'); END;

-- One key for each property. To erase a property is to destroy its key.
CREATE TABLE property_key (
  property BLOB PRIMARY KEY,
  key BLOB NOT NULL
) WITHOUT ROWID;

-- Pictures and letters on the disk, each sealed under a key of its own.
CREATE TABLE content (
  sha256 BLOB PRIMARY KEY,
  key BLOB NOT NULL,
  size INTEGER NOT NULL         -- bytes, before sealing
) WITHOUT ROWID;

-- Half-typed words. They are no records and leave no ink.
CREATE TABLE draft (
  key TEXT PRIMARY KEY,
  property BLOB,                -- with whose erasure they go
  text TEXT NOT NULL
) WITHOUT ROWID;
