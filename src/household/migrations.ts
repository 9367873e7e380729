/**
 * The database's shape, step by step. A step, once released, is never changed; a new shape is a new step.
 * `PRAGMA user_version` holds the number of the last step taken.
 */
import type Database from 'better-sqlite3';
import { sayPrintedLists } from './say-printed-lists.ts';
import { sayProteinFactors } from './say-protein-factors.ts';
import { FOUND_FIT, MORE_INDEXES } from './store/tables.ts';
import { toRecords } from './to-records.ts';

/** Step n stands at index n - 1. */
const STEPS: readonly (string | ((db: Database.Database) => void))[] = [
  `
  CREATE TABLE foods (
    id TEXT PRIMARY KEY,
    name TEXT NOT NULL,
    kind TEXT NOT NULL CHECK (kind IN ('mix', 'pellet')),
    food_group TEXT,
    price_per_kg REAL,
    source TEXT NOT NULL,
    invented INTEGER NOT NULL CHECK (invented IN (0, 1)),
    composition TEXT NOT NULL CHECK (json_valid(composition)),
    sd TEXT NOT NULL CHECK (json_valid(sd))
  );
  CREATE TABLE profiles (
    id TEXT PRIMARY KEY,
    name TEXT NOT NULL,
    species TEXT NOT NULL,
    life_stage TEXT NOT NULL,
    fibre TEXT NOT NULL CHECK (fibre IN ('FIBTG', 'FIBC', 'none')),
    about TEXT NOT NULL,
    bounds TEXT NOT NULL CHECK (json_valid(bounds))
  );
  CREATE TABLE animals (
    id TEXT PRIMARY KEY,
    name TEXT NOT NULL,
    species TEXT NOT NULL,
    invented INTEGER NOT NULL CHECK (invented IN (0, 1))
  );
  CREATE TABLE mixes (
    id TEXT PRIMARY KEY,
    name TEXT NOT NULL,
    animal_id TEXT REFERENCES animals (id) ON DELETE SET NULL,
    profile_id TEXT NOT NULL,
    updated_at TEXT NOT NULL,
    problem TEXT NOT NULL CHECK (json_valid(problem)),
    shares TEXT NOT NULL CHECK (json_valid(shares)),
    held TEXT NOT NULL CHECK (json_valid(held))
  );
  -- Ids of all foods a mix names, in the mix or beside it; reference foods among them, hence no foreign key.
  CREATE TABLE mix_foods (
    mix_id TEXT NOT NULL REFERENCES mixes (id) ON DELETE CASCADE,
    food_id TEXT NOT NULL,
    PRIMARY KEY (mix_id, food_id)
  ) WITHOUT ROWID;
  CREATE INDEX mix_foods_by_food ON mix_foods (food_id);
  `,
  // Guaranteed bounds of a label, and the sources, choices and borrowed amounts that a food's figures rest on.
  `
  ALTER TABLE foods ADD COLUMN low TEXT NOT NULL DEFAULT '{}' CHECK (json_valid(low));
  ALTER TABLE foods ADD COLUMN high TEXT NOT NULL DEFAULT '{}' CHECK (json_valid(high));
  ALTER TABLE foods ADD COLUMN evidence TEXT NOT NULL DEFAULT '{}' CHECK (json_valid(evidence));
  -- What the screens formulate counts the published variation and heeds the caution list.
  UPDATE mixes SET problem = json_set(problem, '$.variation', 'published', '$.cautions', 'apply');
  `,
  // What an animal is fed, needs and refuses; mixes made for several animals; versions of a mix.
  `
  ALTER TABLE animals ADD COLUMN life_stage TEXT NOT NULL DEFAULT 'adult';
  ALTER TABLE animals ADD COLUMN profile_id TEXT NOT NULL DEFAULT 'hamster-adult';
  ALTER TABLE animals ADD COLUMN refuses TEXT NOT NULL DEFAULT '[]' CHECK (json_valid(refuses));
  ALTER TABLE animals ADD COLUMN daily_grams REAL;
  UPDATE animals SET profile_id = coalesce(
    (SELECT profile_id FROM mixes WHERE animal_id = animals.id ORDER BY mixes.rowid LIMIT 1), profile_id);
  CREATE TABLE mix_animals (
    mix_id TEXT NOT NULL REFERENCES mixes (id) ON DELETE CASCADE,
    animal_id TEXT NOT NULL REFERENCES animals (id) ON DELETE CASCADE,
    place INTEGER NOT NULL,
    PRIMARY KEY (mix_id, animal_id)
  ) WITHOUT ROWID;
  CREATE INDEX mix_animals_by_animal ON mix_animals (animal_id);
  INSERT INTO mix_animals (mix_id, animal_id, place)
    SELECT id, animal_id, 0 FROM mixes WHERE animal_id IS NOT NULL;
  ALTER TABLE mixes DROP COLUMN animal_id;
  CREATE TABLE mix_versions (
    id TEXT PRIMARY KEY,
    mix_id TEXT NOT NULL REFERENCES mixes (id) ON DELETE CASCADE,
    name TEXT NOT NULL,
    problem TEXT NOT NULL CHECK (json_valid(problem)),
    shares TEXT NOT NULL CHECK (json_valid(shares)),
    kept_at TEXT NOT NULL
  );
  CREATE INDEX mix_versions_by_mix ON mix_versions (mix_id);
  `,
  // The kitchen's objects, each as JSON: they are read and written one at a time and searched in memory.
  `
  CREATE TABLE lots (id TEXT PRIMARY KEY, body TEXT NOT NULL CHECK (json_valid(body)));
  CREATE TABLE offers (id TEXT PRIMARY KEY, body TEXT NOT NULL CHECK (json_valid(body)));
  CREATE TABLE drying_runs (id TEXT PRIMARY KEY, body TEXT NOT NULL CHECK (json_valid(body)));
  CREATE TABLE batches (id TEXT PRIMARY KEY, body TEXT NOT NULL CHECK (json_valid(body)));
  CREATE TABLE kitchen (id TEXT PRIMARY KEY CHECK (id = 'kitchen'), body TEXT NOT NULL CHECK (json_valid(body)));
  `,
  sayProteinFactors,
  toRecords,
  sayPrintedLists,
  // Weighings, feedings, trials, notes, pictures and the keeper are records like any others; a Pouchful that does not know
  // them must not open the file.
  '',
  MORE_INDEXES.join(';'),
  FOUND_FIT.join(';'),
];

/** The number of the newest step. */
export const SCHEMA_VERSION = STEPS.length;

/**
 * Brings a database to the newest shape: all steps that are missing in one transaction, or none of them.
 * @param upTo the last step to take; an older shape is asked for by tests alone
 * @returns the step at which it stood; 0 for a new file
 * @throws Error when the file was written by a newer Pouchful
 */
export function migrate(db: Database.Database, upTo: number = SCHEMA_VERSION): number {
  const at = db.pragma('user_version', { simple: true }) as number;
  if (at > SCHEMA_VERSION) {
    throw new Error(
      `the household file has version ${at}, this Pouchful knows versions up to ${SCHEMA_VERSION}; use the newer Pouchful`,
    );
  }
  if (at >= upTo) return at;
  db.transaction(() => {
    for (const step of STEPS.slice(at, upTo)) {
      if (typeof step === 'string') db.exec(step);
      else step(db);
    }
    db.pragma(`user_version = ${upTo}`);
  }).immediate();
  return at;
}
