/** The table of devices as Kysely sees it. */
import type { Kysely } from 'kysely';

interface DevicesTable {
  household: string;
  id: string;
  name: string;
  /** SHA-256 of the token, hexadecimal. */
  token_hash: string;
  created_at: string;
  seen_at: string;
  revoked_at: string | null;
}

export type Db = Kysely<{ devices: DevicesTable }>;

/** Id of the one household of a file. */
export const HOME = 'home';
