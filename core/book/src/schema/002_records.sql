-- What counts now, drawn from the ink: all of this can be made anew.

-- One row for each subject whose last word is not that it is taken back.
CREATE TABLE record (
  property BLOB NOT NULL,       -- empty for what is the firm's own
  kind TEXT NOT NULL,
  id BLOB NOT NULL,
  born_time INTEGER NOT NULL,   -- its first line
  born_device BLOB NOT NULL,
  time INTEGER NOT NULL,        -- the line that stands
  device BLOB NOT NULL,
  value TEXT NOT NULL,          -- JSON
  PRIMARY KEY (property, kind, id)
);
CREATE UNIQUE INDEX record_by_id ON record (id, kind);

-- Which property leads to which.
CREATE TABLE joined (
  id BLOB PRIMARY KEY,
  kept BLOB NOT NULL
) WITHOUT ROWID;
CREATE INDEX joined_by_kept ON joined (kept);

-- Properties that were erased.
CREATE TABLE erased (
  id BLOB PRIMARY KEY,
  clock INTEGER NOT NULL        -- milliseconds since 1970
) WITHOUT ROWID;

-- Which content a picture or letter needs.
CREATE TABLE content_use (
  id BLOB PRIMARY KEY,
  property BLOB NOT NULL,
  sha256 BLOB NOT NULL
) WITHOUT ROWID;
CREATE INDEX content_use_by_sha256 ON content_use (sha256);
CREATE INDEX content_use_by_property ON content_use (property);

-- Visits by day.
CREATE TABLE visit (
  id BLOB PRIMARY KEY,
  property BLOB NOT NULL,
  day TEXT NOT NULL,            -- yyyy-mm-dd
  open INTEGER NOT NULL
) WITHOUT ROWID;
CREATE INDEX visit_by_property ON visit (property, day);
CREATE INDEX visit_open ON visit (day) WHERE open;

-- Reminders that are still to be done, by day.
CREATE TABLE due (
  id BLOB PRIMARY KEY,
  property BLOB NOT NULL,
  day TEXT NOT NULL             -- yyyy-mm-dd
) WITHOUT ROWID;
CREATE INDEX due_by_day ON due (day);

-- What the firm's own counts of defects are taken from.
CREATE TABLE part (
  id BLOB PRIMARY KEY,
  structure BLOB NOT NULL,
  part_kind TEXT NOT NULL
) WITHOUT ROWID;
CREATE INDEX part_by_kind ON part (part_kind);
CREATE TABLE defect_seen (
  id BLOB NOT NULL,             -- the mark
  part BLOB NOT NULL,
  defect TEXT NOT NULL,
  PRIMARY KEY (part, id, defect)
) WITHOUT ROWID;
CREATE INDEX defect_seen_by_mark ON defect_seen (id);
CREATE TABLE top_covering (
  id BLOB PRIMARY KEY,          -- the stack
  structure BLOB NOT NULL,
  covering TEXT NOT NULL
) WITHOUT ROWID;
CREATE INDEX top_covering_by_structure ON top_covering (structure, covering);
