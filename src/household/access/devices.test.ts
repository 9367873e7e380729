/** Devices and their tokens in the store. */
import Database from 'better-sqlite3';
import { Kysely, SqliteDialect } from 'kysely';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { CREATE_TABLES, type Db } from '../store/tables.ts';
import { type Devices, devicesIn, MOST_DEVICES, TooManyDevices } from './devices.ts';

const HOUR = 60 * 60_000;
let file: Database.Database;
let db: Db;
let devices: Devices;
let now: number;

beforeEach(() => {
  file = new Database(':memory:');
  for (const statement of CREATE_TABLES) file.exec(statement);
  for (const household of ['home', 'shelter'])
    file
      .prepare("INSERT INTO households (id, name, epoch, seq) VALUES (?, ?, 'e', 0)")
      .run(household, household);
  db = new Kysely({ dialect: new SqliteDialect({ database: file }) });
  now = Date.UTC(2026, 2, 20);
  devices = devicesIn(db, () => now);
});
afterEach(() => db.destroy());

it('knows a device by its token, of which only the hash is kept', async () => {
  const { device, token } = await devices.add('home', 'Kitchen phone');
  expect(device).toMatchObject({
    household: 'home',
    name: 'Kitchen phone',
    pairedAt: '2026-03-20T00:00:00.000Z',
  });
  expect(Buffer.from(token, 'base64url')).toHaveLength(32);
  expect(await devices.byToken(token)).toEqual(device);
  expect(await devicesIn(db, () => now).byToken(token)).toEqual(device);
  expect(JSON.stringify(file.prepare('SELECT * FROM devices').all())).not.toContain(token);
  for (const other of ['', 'x', token.slice(1), `${token}A`, token.toLowerCase()])
    expect(await devices.byToken(other)).toBeUndefined();
  const [row] = file.prepare('SELECT token_hash FROM devices').pluck().all() as string[];
  expect(await devices.byToken(row ?? '')).toBeUndefined();
});

it('tells devices of one name apart, in one household', async () => {
  const named = async (household: string) => (await devices.add(household, 'Phone')).device.name;
  expect([await named('home'), await named('home'), await named('home'), await named('shelter')]).toEqual([
    'Phone',
    'Phone 2',
    'Phone 3',
    'Phone',
  ]);
});

it('puts a device out at once and for good', async () => {
  const { device, token } = await devices.add('home', 'Phone');
  const other = await devices.add('home', 'Tablet');
  expect(await devices.revoke('shelter', device.id)).toBe(false);
  expect(await devices.revoke('home', device.id)).toBe(true);
  expect(await devices.revoke('home', device.id)).toBe(false);
  expect(await devices.byToken(token)).toBeUndefined();
  expect(await devices.byToken(other.token)).toEqual(other.device);
  expect(await devices.list('home')).toEqual([other.device]);
  expect(await devices.rename('home', device.id, 'x')).toBeUndefined();
});

it('names a device anew, in its own household alone', async () => {
  const { device } = await devices.add('home', 'Phone');
  now += 1;
  await devices.add('home', 'Tablet');
  expect(await devices.rename('shelter', device.id, 'x')).toBeUndefined();
  expect(await devices.rename('home', device.id, 'Phone')).toEqual(device);
  expect((await devices.rename('home', device.id, 'Tablet'))?.name).toBe('Tablet 2');
  expect((await devices.list('home')).map((d) => d.name)).toEqual(['Tablet 2', 'Tablet']);
});

it('writes when a device was seen once an hour at most', async () => {
  const { token } = await devices.add('home', 'Phone');
  const seen = async () => {
    const device = await devices.byToken(token);
    return device && devices.saw(device);
  };
  expect(await seen()).toBe(false);
  now += HOUR - 1;
  expect(await seen()).toBe(false);
  now += 1;
  expect(await seen()).toBe(true);
  expect(await seen()).toBe(false);
  expect((await devices.list('home'))[0]?.seenAt).toBe('2026-03-20T01:00:00.000Z');
});

it('has room for a number of devices that one household can look through', async () => {
  for (let i = 0; i < MOST_DEVICES; i++) await devices.add('home', `Phone ${i}`);
  await expect(devices.add('home', 'One more')).rejects.toThrow(TooManyDevices);
  await devices.add('shelter', 'Phone');
  const [first] = await devices.list('home');
  await devices.revoke('home', first?.id ?? '');
  expect((await devices.add('home', 'One more')).device.name).toBe('One more');
});

it('forgets a device 30 days after it was put out', async () => {
  const { device } = await devices.add('home', 'Phone');
  await devices.revoke('home', device.id);
  const rows = () => file.prepare('SELECT count(*) FROM devices').pluck().get();
  now += 30 * 24 * HOUR;
  await devices.add('home', 'Tablet');
  expect(rows()).toBe(2);
  now += 1;
  await devices.add('home', 'Laptop');
  expect(rows()).toBe(2);
});

it('invites one device, for seven days, by a secret of which only the hash is kept', async () => {
  await devices.add('home', 'Phone');
  const secret = await devices.invite('home');
  expect(Buffer.from(secret, 'base64url')).toHaveLength(16);
  expect(JSON.stringify(file.prepare('SELECT * FROM devices').all())).not.toContain(secret);
  // It is no device yet.
  expect(await devices.byToken(secret)).toBeUndefined();
  expect((await devices.list('home')).map((d) => d.name)).toEqual(['Phone']);
  expect(await devices.accept(`${secret}x`, 'Phone')).toBeUndefined();
  now += 7 * 24 * HOUR - 1;
  const [one, other] = await Promise.all([devices.accept(secret, 'Phone'), devices.accept(secret, 'Thief')]);
  expect([one, other].filter((letIn) => letIn !== undefined)).toHaveLength(1);
  const taken = one ?? other;
  expect(await devices.byToken(taken?.token ?? '')).toEqual(taken?.device);
  expect(taken?.device.household).toBe('home');
  expect(await devices.accept(secret, 'Late')).toBeUndefined();
  expect(await devices.list('home')).toHaveLength(2);
  const late = await devices.invite('shelter');
  now += 7 * 24 * HOUR;
  expect(await devices.accept(late, 'Phone')).toBeUndefined();
});

it('makes an invitation void that was not taken, by the next', async () => {
  const first = await devices.invite('home');
  const second = await devices.invite('home');
  const other = await devices.invite('shelter');
  expect(await devices.accept(first, 'Phone')).toBeUndefined();
  expect((await devices.accept(second, 'Phone'))?.device.household).toBe('home');
  expect((await devices.accept(other, 'Phone'))?.device.household).toBe('shelter');
});
