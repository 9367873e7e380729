/**
 * Foods that may be offered to a keeper for a dry mix. Any row of the tables can be chosen by hand; what the program
 * brings up of itself must be a plain food that is fed dry.
 */
import type { ReferenceFood } from './reference.ts';

/** A dry mix takes no food damper than this, g of water per 100 g (common practice, no source). */
const DAMPEST = 20;

/**
 * Groups of the USDA table whose plain rows are fed dry: fruits (09), vegetables (11), nuts and seeds (12), legumes
 * (16), grains (20). Of spices, dairy and the rest only what stands among the foods keepers use (common practice, no source).
 */
const GROUPS: ReadonlySet<string> = new Set(['09', '11', '12', '16', '20']);

/**
 * Words of a title, whole or as the table shortens them, that tell of something made: salted, sweetened, fried or
 * roasted, ground to flour or paste, mixed, extracted, raised. Flour falls through a mix and is left.
 */
const MADE = [
  /\b(with|w\/) ?salt|\bsalted|\bseason|\bsmoke|\bflav|\bhoney|\bglaz|\bcand(ied|y)|\bswe?e?te?ne?d|\bswtnd|\bsugar|\bsyrup/i,
  /\broasted|\brs?te?d\b|\brsted|\btoasted|\btstd|\bfried|\boil\b|\bcrunchy|\bpopped|\bchips?\b/i,
  /\bflour|\bflr\b|\bstarch|\bcornstarch|\bmeal\b|\bcornmeal|\bpowder|\bpdr\b|\bgranules|\bbutter\b|\bpaste|\btahini/i,
  /\bmix(ed|ture)?\b|\bmxd\b|\bformulated|\bprot(ein)?\b.*\b(conc|isolate)|\bisolate|\bconcentrate|\bextender|\bmeatless|\bveg[a-z]* (patt|burg)/i,
  /\bself-rising|\bnoodles|\bpasta|\bmacaroni|\bspaghetti|\btapioca|\bsemolina|\bsul(f|ph)ur|\bagar\b|\btofu|\bprep\b|\bunprep|\bau gratin/i,
];

/** Whether the program may bring a food up of itself: dry, plain, of a group that is fed dry. */
export function isFedDry(food: ReferenceFood): boolean {
  if (!food.suggestible || !isDry(food)) return false;
  if (food.plain) return true;
  return GROUPS.has(food.tableGroup) && !MADE.some((words) => words.test(food.tableName));
}

/** Dry enough for a mix; a food of unknown moisture is taken for damp. */
function isDry({ composition }: ReferenceFood): boolean {
  return (composition.WATER ?? 100) <= DAMPEST;
}
