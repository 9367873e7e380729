/**
 * Whether figures can be true: of one food (`checkFigures`) and beside a food like it. A warning never changes a
 * figure. Tolerances are set so that the open tables themselves rarely trip them; `checks.test.ts` holds the rates.
 */
import { atwaterGeneral, modifiedAtwater, nitrogenFreeExtract } from '../../nutrition/energy.ts';
import { nutrient, type Tag } from '../../nutrition/nutrients.ts';
import type { Figures, Food, FoodGroup } from '../food.ts';
import { besideLike } from './beside.ts';
import { round, told, type Warning } from './warning.ts';

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
  const found: Warning[] = [];
  for (const tag of new Set([...Object.keys(low), ...Object.keys(high)] as Tag[])) {
    const [value, l, h] = [composition[tag], low[tag], high[tag]];
    const name = nutrient(tag).name;
    const say = (message: string) => found.push({ check: 'bounds', tags: [tag], message });
    if (l !== undefined && h !== undefined && l > h * (1 + 1e-9))
      say(
        `${name} is at least ${round(l)} and at most ${round(h)}, which cannot both be; check minimum and maximum.`,
      );
    else if (value !== undefined && l !== undefined && value < l * 0.99)
      say(`${name} is ${round(value)}, below its own minimum of ${round(l)}.`);
    else if (value !== undefined && h !== undefined && value > h * 1.01)
      say(`${name} is ${round(value)}, above its own maximum of ${round(h)}.`);
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
  const list = parts
    .filter(({ value }) => value > 0)
    .map(({ tag, value }) => told(tag, value))
    .join(' + ');
  return [
    {
      check: 'sum',
      tags: parts.map(({ tag }) => tag),
      message: `100 g cannot hold ${round(sum)} g: ${list}. One of them may be per another weight.`,
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
    const message = `${told(part, some)} is more than the ${told(whole, all)} it is part of.`;
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
  const message = `Crude fibre ${round(crude)} g is above dietary fibre ${round(dietary)} g, yet it is always the smaller; the two may be swapped.`;
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
  const message = `Energy is ${round(energy)} kcal per 100 g, but protein, fat and carbohydrate give about ${round(general)} (4/9/4) or ${round(modified)} (3.5/8.5/3.5, fibre left out). Is the energy in kJ, or per another weight?`;
  return [{ check: 'energy', tags: ['ENERC_KCAL', 'PROCNT', 'FAT', 'CHOCDF'], message }];
}

function stillFresh(f: Figures, { like, group }: About): Warning[] {
  const most = group === 'fruit' ? DRIED_FRUIT_MOISTURE : DRIED_MOISTURE;
  const water = least(f, 'WATER');
  if (water !== undefined && water > most) {
    const message = `A dried food keeps below about ${most} % moisture, and this has ${round(water)} %; the figures may be of the fresh food.`;
    return [{ check: 'dried', tags: ['WATER'], message }];
  }
  const tags: Tag[] = ['PROCNT', 'FAT', 'CHOCDF'];
  const parts = tags.map((tag) => f.composition[tag]).filter((value) => value !== undefined);
  if (water === undefined && parts.length === tags.length) {
    const solids = parts.reduce((sum, part) => sum + part, f.composition.ASH ?? 0);
    if (solids < 60) {
      const message = `Protein, fat and carbohydrate make only ${round(solids)} g of 100 g, so over a third would be water; a dried food has less. The figures may be of the fresh food.`;
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
  const message = `These are nearly the figures of ${like.name} with ${round(fresh.WATER)} % water (${told(first.tag, first.own)} against ${round(first.its)}); dried, each would be several times higher.`;
  return [{ check: 'dried', tags: shared.map(({ tag }) => tag), message }];
}
