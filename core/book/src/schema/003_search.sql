-- By what a property is found, drawn from its record: all of this can be made anew. Where the reading of addresses, names or numbers changes,
-- a new step of the schema, empty if need be, has it drawn anew.

CREATE TABLE address (
  id BLOB NOT NULL,             -- the property
  place INTEGER NOT NULL,       -- 0 the address the firm writes to; from 1 its other addresses
  key TEXT NOT NULL,            -- what all spellings of it come to
  house TEXT NOT NULL,
  street TEXT NOT NULL,         -- the street's name, in its kept form
  line TEXT NOT NULL,           -- as written, like the three below
  town TEXT NOT NULL,
  region TEXT NOT NULL,
  postcode TEXT NOT NULL,
  PRIMARY KEY (id, place)
) WITHOUT ROWID;
CREATE INDEX address_by_key ON address (key);
CREATE INDEX address_by_house ON address (house, street);
CREATE INDEX address_by_street ON address (street, house);

CREATE TABLE person (
  id BLOB NOT NULL,             -- the property
  place INTEGER NOT NULL,       -- which of its people
  name TEXT NOT NULL,           -- as written
  PRIMARY KEY (id, place)
) WITHOUT ROWID;
CREATE TABLE name_word (
  id BLOB NOT NULL,             -- the property
  place INTEGER NOT NULL,       -- which of its people
  word TEXT NOT NULL,           -- one word of the name, folded
  PRIMARY KEY (word, id, place)
) WITHOUT ROWID;
CREATE INDEX name_word_by_property ON name_word (id);

CREATE TABLE phone (
  id BLOB NOT NULL,             -- the property
  place INTEGER NOT NULL,
  number TEXT NOT NULL,         -- as written
  digits TEXT NOT NULL,
  last_seven TEXT NOT NULL,
  backwards TEXT NOT NULL,      -- the digits, last one first
  PRIMARY KEY (id, place)
) WITHOUT ROWID;
CREATE INDEX phone_by_digits ON phone (digits);
CREATE INDEX phone_by_last_seven ON phone (last_seven);
CREATE INDEX phone_by_backwards ON phone (backwards);

-- Each street's name and each word of a name once, for what is typed with errors.
CREATE TABLE known_street (street TEXT PRIMARY KEY, times INTEGER NOT NULL) WITHOUT ROWID;
CREATE TRIGGER street_comes AFTER INSERT ON address BEGIN
  INSERT INTO known_street VALUES (new.street, 1) ON CONFLICT (street) DO UPDATE SET times = times + 1;
END;
CREATE TRIGGER street_goes AFTER DELETE ON address BEGIN
  UPDATE known_street SET times = times - 1 WHERE street = old.street;
  DELETE FROM known_street WHERE street = old.street AND times = 0;
END;
CREATE TABLE known_word (word TEXT PRIMARY KEY, times INTEGER NOT NULL) WITHOUT ROWID;
CREATE TRIGGER word_comes AFTER INSERT ON name_word BEGIN
  INSERT INTO known_word VALUES (new.word, 1) ON CONFLICT (word) DO UPDATE SET times = times + 1;
END;
CREATE TRIGGER word_goes AFTER DELETE ON name_word BEGIN
  UPDATE known_word SET times = times - 1 WHERE word = old.word;
  DELETE FROM known_word WHERE word = old.word AND times = 0;
END;

-- Where properties stand. The tree keeps its numbers in 32 bits and rounds outward; the exact ones stand beside them.
CREATE VIRTUAL TABLE position USING rtree (
  number, south, north, west, east, +id BLOB, +latitude REAL, +longitude REAL
);
CREATE TABLE position_of (id BLOB PRIMARY KEY, number INTEGER NOT NULL) WITHOUT ROWID;
