/**
 * The devices that may come in over the network, each by a token of its own. The store holds only the token's SHA-256,
 * so who reads the file or a backup cannot come in by it.
 */
import { createHash, randomBytes, randomUUID } from 'node:crypto';
import { words } from '../../words/words.ts';
import type { Db } from '../store/tables.ts';

/** A device that is paired. */
export interface Device {
  readonly household: string;
  readonly id: string;
  readonly name: string;
  /** ISO 8601 times, UTC. */
  readonly pairedAt: string;
  /** Known to the hour. */
  readonly seenAt: string;
}

/** Most devices of one household at a time. */
export const MOST_DEVICES = 100;
/** How old "last seen" may be before it is written anew, ms: once an hour, not at every request. */
const SEEN_FRESH = 60 * 60_000;
/** How long a device that was put out is remembered, ms. */
const REMEMBERED = 30 * 24 * 60 * 60_000;
/** How long an invitation is good, ms. */
const INVITED = 7 * 24 * 60 * 60_000;
/** An invitation is a device that has no name yet. */
const UNNAMED = '';

/** A household has as many devices as it may. */
export class TooManyDevices extends Error {
  constructor() {
    super(words().access.refusal.tooManyDevices(MOST_DEVICES));
    this.name = 'TooManyDevices';
  }
}

export interface Devices {
  /**
   * Lets a device in. A name that another has is told apart by a number.
   * @returns the device and its token, which is kept nowhere: this is the one time that it can be read
   * @throws TooManyDevices
   */
  add(household: string, name: string): Promise<{ device: Device; token: string }>;
  /**
   * Invites a device: for a household that is made where its server is not at hand. One that was not taken is void.
   * @returns a secret of 128 bits, to be kept nowhere, good for one device and seven days
   */
  invite(household: string): Promise<string>;
  /**
   * Lets the device in that an invitation was for.
   * @returns as `add`; undefined where there is no such invitation, or no longer
   */
  accept(invitation: string, name: string): Promise<{ device: Device; token: string } | undefined>;
  /** The device of a token, unless it was put out or never was. */
  byToken(token: string): Promise<Device | undefined>;
  /** Those that may come in, in the order in which they were paired. */
  list(household: string): Promise<Device[]>;
  /** @returns the device under its new name; undefined where there is none */
  rename(household: string, id: string, name: string): Promise<Device | undefined>;
  /** Puts a device out; its token is good for nothing from here on. @returns whether it was in */
  revoke(household: string, id: string): Promise<boolean>;
  /** Notes that a device is here now. @returns whether that was written: at most once an hour */
  saw(device: Device): Promise<boolean>;
}

/**
 * @param clock the time in ms since 1970
 * @param fault turns what the database throws into a StoreError where it is a fault of file or disk
 */
export function devicesIn(
  db: Db,
  clock: () => number,
  fault: (error: unknown) => unknown = (error) => error,
): Devices {
  const at = (ms: number) => new Date(ms).toISOString();

  async function told<T>(work: () => Promise<T>): Promise<T> {
    try {
      return await work();
    } catch (error) {
      throw fault(error);
    }
  }

  async function list(household: string): Promise<Device[]> {
    const rows = await db
      .selectFrom('devices')
      .selectAll()
      .where('household', '=', household)
      .where('revoked_at', 'is', null)
      .where('name', '<>', UNNAMED)
      .orderBy('created_at')
      .orderBy('id')
      .execute();
    return rows.map(deviceFrom);
  }

  async function add(household: string, name: string): Promise<{ device: Device; token: string }> {
    const there = await list(household);
    if (there.length >= MOST_DEVICES) throw new TooManyDevices();
    await db
      .deleteFrom('devices')
      .where('household', '=', household)
      .where('revoked_at', '<', at(clock() - REMEMBERED))
      .execute();
    const token = randomBytes(32).toString('base64url');
    const now = at(clock());
    const row = {
      household,
      id: randomUUID(),
      name: apart(name, there),
      token_hash: hashOf(token),
      created_at: now,
      seen_at: now,
      revoked_at: null,
    };
    await db.insertInto('devices').values(row).execute();
    return { device: deviceFrom(row), token };
  }

  async function byToken(token: string): Promise<Device | undefined> {
    const row = await db
      .selectFrom('devices')
      .selectAll()
      .where('token_hash', '=', hashOf(token))
      .where('revoked_at', 'is', null)
      .where('name', '<>', UNNAMED)
      .executeTakeFirst();
    return row && deviceFrom(row);
  }

  async function invite(household: string): Promise<string> {
    await db.deleteFrom('devices').where('household', '=', household).where('name', '=', UNNAMED).execute();
    const secret = randomBytes(16).toString('base64url');
    const now = at(clock());
    await db
      .insertInto('devices')
      .values({
        household,
        id: randomUUID(),
        name: UNNAMED,
        token_hash: hashOf(secret),
        created_at: now,
        seen_at: now,
        revoked_at: null,
      })
      .execute();
    return secret;
  }

  async function accept(
    secret: string,
    name: string,
  ): Promise<{ device: Device; token: string } | undefined> {
    const row = await db
      .selectFrom('devices')
      .select('household')
      .where('token_hash', '=', hashOf(secret))
      .where('name', '=', UNNAMED)
      .executeTakeFirst();
    if (!row) return undefined;
    const token = randomBytes(32).toString('base64url');
    const now = at(clock());
    // One statement, so that of two who come with it one is let in.
    const taken = await db
      .updateTable('devices')
      .set({
        name: apart(name, await list(row.household)),
        token_hash: hashOf(token),
        created_at: now,
        seen_at: now,
      })
      .where('token_hash', '=', hashOf(secret))
      .where('name', '=', UNNAMED)
      .where('created_at', '>', at(clock() - INVITED))
      .returningAll()
      .executeTakeFirst();
    return taken && { device: deviceFrom(taken), token };
  }

  /** Sets a column of one device that is in. @returns whether there is one */
  async function set(
    household: string,
    id: string,
    value: { name: string } | { revoked_at: string } | { seen_at: string },
  ): Promise<boolean> {
    const { numUpdatedRows } = await db
      .updateTable('devices')
      .set(value)
      .where('household', '=', household)
      .where('id', '=', id)
      .where('revoked_at', 'is', null)
      .executeTakeFirst();
    return numUpdatedRows > 0n;
  }

  async function rename(household: string, id: string, name: string): Promise<Device | undefined> {
    const there = await list(household);
    const device = there.find((d) => d.id === id);
    if (!device) return undefined;
    const others = there.filter((d) => d.id !== id);
    const named = { ...device, name: apart(name, others) };
    return (await set(household, id, { name: named.name })) ? named : undefined;
  }

  return {
    add: (household, name) => told(() => add(household, name)),
    invite: (household) => told(() => invite(household)),
    accept: (invitation, name) => told(() => accept(invitation, name)),
    byToken: (token) => told(() => byToken(token)),
    list: (household) => told(() => list(household)),
    rename: (household, id, name) => told(() => rename(household, id, name)),
    revoke: (household, id) => told(() => set(household, id, { revoked_at: at(clock()) })),
    async saw({ household, id, seenAt }) {
      if (clock() - Date.parse(seenAt) < SEEN_FRESH) return false;
      return told(() => set(household, id, { seen_at: at(clock()) }));
    },
  };
}

/** A token is 256 random bits, so a hash without salt or stretching cannot be turned back. */
function hashOf(token: string): string {
  return createHash('sha256').update(token).digest('hex');
}

/** "Phone", or "Phone 2" where a device is called so already. */
function apart(name: string, there: readonly Device[]): string {
  const taken = new Set(there.map((d) => d.name));
  if (!taken.has(name)) return name;
  let number = 2;
  while (taken.has(`${name} ${number}`)) number += 1;
  return `${name} ${number}`;
}

function deviceFrom(row: {
  household: string;
  id: string;
  name: string;
  created_at: string;
  seen_at: string;
}): Device {
  const { household, id, name, created_at, seen_at } = row;
  return { household, id, name, pairedAt: created_at, seenAt: seen_at };
}
