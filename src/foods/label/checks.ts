/**
 * Whether figures can be true: of one food (`checkFigures`) and beside a food like it. A warning never changes a
 * figure. Tolerances are set so that the open tables themselves rarely trip them; `checks.test.ts` holds the rates.
 */

import { atwaterGeneral, modifiedAtwater, nitrogenFreeExtract } from '../../nutrition/energy.ts';
import { nutrient, type Tag } from '../../nutrition/nutrients.ts';
import { words } from '../../words/words.ts';
import type { Figures, Food, FoodGroup } from '../food.ts';
import { besideLike } from './beside.ts';
import { told, type Warning } from './warning.ts';

export interface About {
  /** It also tells whether the food is dried. */
  readonly name?: string;
  readonly group?: FoodGroup;
  /** A food of the tables that should be much the same. */
  readonly like?: Food;
}

/** What the parts may add up to over 100 g, or one part over the whole it belongs to: rounding, and nitrogen factors. */
const SUM_LEEWAY = 3;
const PART_LEEWAY = 0.5;
const PART_SHARE = 0.05;
/** Energy and its parts may differ by this share and this many kcal/100 g: rounding, digestibility, organic acids. */
const ENERGY_SHARE = 0.2;
const ENERGY_LEEWAY = 15;
/** Most moisture of a food that keeps dry, percent (common practice, no source). */
const DRIED_MOISTURE = 20;
/** Soft dried fruit is moister: SR28 has 30.9 % for apricots (09032) and prunes (09291). */
const DRIED_FRUIT_MOISTURE = 35;

const DRIED_WORDS =
  /\b(?:dried|dehydrated|freeze-dried|getrocknete?[rsnm]?|trocken\w*|séché(?:e|s|es)?|déshydraté(?:e|s|es)?|gedroogde?|seco|seca|secos|secas|deshidratad[oa]s?|desecad[oa]s?)(?![\p{L}])/iu;

/** Warnings about figures per 100 g as fed, each in a sentence or two with the figures. Empty when nothing is odd. */
export function checkFigures(figures: Figures, about: About = {}): readonly Warning[] {
  const dried = about.name !== undefined && DRIED_WORDS.test(about.name);
  return [
    ...boundsCross(figures),
    ...sumOver(figures),
    ...partsOver(figures),
    ...crudeOver(figures),
    ...energyOff(figures),
    ...(dried ? stillFresh(figures, about) : []),
    ...(about.like ? besideLike(figures, about.like) : []),
  ];
}

/** The least an amount can be, by value or bound. */
function least(f: Figures, tag: Tag): number | undefined {
  return f.composition[tag] ?? f.low?.[tag];
}

function boundsCross({ composition, low = {}, high = {} }: Figures): Warning[] {
  const t = words().label.reading.checks;
  const found: Warning[] = [];
  for (const tag of new Set([...Object.keys(low), ...Object.keys(high)] as Tag[])) {
    const [value, l, h] = [composition[tag], low[tag], high[tag]];
    const name = nutrient(tag).name;
    const say = (message: string) => found.push({ check: 'bounds', tags: [tag], message });
    if (l !== undefined && h !== undefined && l > h * (1 + 1e-9)) say(t.bounds(name, l, h));
    else if (value !== undefined && l !== undefined && value < l * 0.99) say(t.belowLeast(name, value, l));
    else if (value !== undefined && h !== undefined && value > h * 1.01) say(t.aboveMost(name, value, h));
  }
  return found;
}

function sumOver(f: Figures): Warning[] {
  const known = (tags: readonly Tag[]) =>
    tags.flatMap((tag) => {
      const value = least(f, tag);
      return value === undefined ? [] : [{ tag, value }];
    });
  const parts = known(['WATER', 'PROCNT', 'FAT', 'ASH']);
  // Carbohydrate by difference holds the fibre, the sugars and the starch: take the largest that is known.
  const [rest] = known(['CHOCDF', 'FIBTG', 'FIBC', 'SUGAR', 'STARCH']).sort((a, b) => b.value - a.value);
  if (rest) parts.push(rest);
  const sum = parts.reduce((total, { value }) => total + value, 0);
  if (sum <= 100 + SUM_LEEWAY) return [];
  const list = parts.filter(({ value }) => value > 0).map(({ tag, value }) => told(tag, value));
  return [
    {
      check: 'sum',
      tags: parts.map(({ tag }) => tag),
      message: words().label.reading.checks.sum(sum, list),
    },
  ];
}

const PARTS: readonly (readonly [part: Tag, whole: Tag])[] = [
  ['SUGAR', 'CHOCDF'],
  ['STARCH', 'CHOCDF'],
  ['FIBTG', 'CHOCDF'],
  ['FASAT', 'FAT'],
  ['FAMS', 'FAT'],
  ['FAPU', 'FAT'],
  ['F18D2CN6', 'FAT'],
  ['F18D3N3', 'FAT'],
];

function partsOver(f: Figures): Warning[] {
  return PARTS.flatMap(([part, whole]): Warning[] => {
    const some = least(f, part);
    const all = f.composition[whole] ?? f.high?.[whole];
    if (some === undefined || all === undefined || some <= all * (1 + PART_SHARE) + PART_LEEWAY) return [];
    const message = words().label.reading.checks.part(told(part, some), told(whole, all));
    return [
      { check: 'part', tags: [part, whole], message: message.charAt(0).toUpperCase() + message.slice(1) },
    ];
  });
}

function crudeOver(f: Figures): Warning[] {
  const crude = least(f, 'FIBC');
  const dietary = f.composition.FIBTG ?? f.high?.FIBTG;
  if (crude === undefined || dietary === undefined || crude <= dietary * (1 + PART_SHARE) + PART_LEEWAY)
    return [];
  const message = words().label.reading.checks.fibre(crude, dietary);
  return [{ check: 'fibre', tags: ['FIBC', 'FIBTG'], message }];
}

function energyOff(f: Figures): Warning[] {
  const c = f.composition;
  const { ENERC_KCAL: energy, PROCNT: protein, FAT: fat } = c;
  if (energy === undefined || protein === undefined || fat === undefined) return [];
  const water = c.WATER;
  const ash = c.ASH;
  const carbohydrate =
    c.CHOCDF ?? (water === undefined ? undefined : Math.max(0, 100 - water - protein - fat - (ash ?? 0)));
  if (carbohydrate === undefined) return [];
  const fibre = c.FIBTG ?? c.FIBC ?? 0;
  const nfe =
    water !== undefined && ash !== undefined
      ? Math.max(0, nitrogenFreeExtract({ moisture: water, protein, fat, crudeFibre: fibre, ash }))
      : Math.max(0, carbohydrate - fibre);
  const general = atwaterGeneral({ protein, fat, carbohydrate });
  const modified = modifiedAtwater({ protein, fat, nfe });
  const low = Math.min(general, modified) * (1 - ENERGY_SHARE) - ENERGY_LEEWAY;
  const high = Math.max(general, modified) * (1 + ENERGY_SHARE) + ENERGY_LEEWAY;
  if (energy >= low && energy <= high) return [];
  const message = words().label.reading.checks.energy(energy, general, modified);
  return [{ check: 'energy', tags: ['ENERC_KCAL', 'PROCNT', 'FAT', 'CHOCDF'], message }];
}

function stillFresh(f: Figures, { like, group }: About): Warning[] {
  const most = group === 'fruit' ? DRIED_FRUIT_MOISTURE : DRIED_MOISTURE;
  const water = least(f, 'WATER');
  if (water !== undefined && water > most) {
    const message = words().label.reading.checks.damp(most, water);
    return [{ check: 'dried', tags: ['WATER'], message }];
  }
  const tags: Tag[] = ['PROCNT', 'FAT', 'CHOCDF'];
  const parts = tags.map((tag) => f.composition[tag]).filter((value) => value !== undefined);
  if (water === undefined && parts.length === tags.length) {
    const solids = parts.reduce((sum, part) => sum + part, f.composition.ASH ?? 0);
    if (solids < 60) {
      const message = words().label.reading.checks.thin(solids);
      return [{ check: 'dried', tags, message }];
    }
  }
  const fresh = like?.composition;
  if (!like || fresh?.WATER === undefined || fresh.WATER < 50) return [];
  const shared = (['PROCNT', 'CHOCDF', 'FIBTG', 'ASH', 'ENERC_KCAL'] as const).flatMap((tag) => {
    const [own, its] = [f.composition[tag], fresh[tag]];
    return own !== undefined && its !== undefined && its >= 0.5 ? [{ tag, own, its }] : [];
  });
  const [first] = shared;
  if (!first || shared.length < 2) return [];
  if (shared.some(({ own, its }) => Math.abs(own / its - 1) > 0.25)) return [];
  const message = words().label.reading.checks.nearlyFresh(
    like.name,
    fresh.WATER,
    told(first.tag, first.own),
    first.its,
  );
  return [{ check: 'dried', tags: shared.map(({ tag }) => tag), message }];
}
