/**
 * Words that head the columns of a keeper's table and are no nutrients (these are in `foods/label/nutrient-words.ts`),
 * in English, German, French, Dutch and Spanish, spellings parted by "|"; accents and case do not count.
 * They are common practice, no source.
 */
import type { FoodGroup } from '../../../foods/food.ts';
import { keyOf } from '../../../foods/label/tokens.ts';
import type { Tag } from '../../../nutrition/nutrients.ts';

/** What a column holds. A tagname is an amount of that nutrient. */
export type Role =
  | 'name'
  | 'share'
  | 'grams'
  | 'price'
  | 'group'
  | 'source'
  | 'dry matter'
  | 'salt'
  | 'net-carbohydrate'
  | 'none'
  | Tag;

const COLUMNS: Readonly<Partial<Record<Role, string>>> = {
  name: 'food|foods|food name|name|ingredient|ingredients|item|foodstuff|feedstuff|component|components|raw material|product|seed|what|description|lebensmittel|futter|futtermittel|zutat|zutaten|bezeichnung|komponente|komponenten|einzelfuttermittel|rohstoff|rohstoffe|saat|saaten|sorte|produkt|aliment|aliments|nom|ingredient|matiere premiere|matieres premieres|composant|denomination|produit|designation|voedingsmiddel|voer|ingredienten|naam|grondstof|grondstoffen|voedsel|onderdeel|zaad|alimento|alimentos|nombre|ingrediente|ingredientes|materia prima|materias primas|componente|producto',
  share:
    'share|shares|percentage|percent|proportion|pct|part of mix|share of mix|portion of mix|in mix|mix|inclusion|inclusion rate|ratio|anteil|anteile|prozent|mischungsanteil|anteil mischung|anteil an der mischung|gewichtsanteil|anteil in der mischung|mischung|part|parts|pourcentage|part du melange|taux|taux d incorporation|aandeel|procent|aandeel in mengsel|mengsel|verhouding|percentage mix|porcentaje|proporcion|parte|partes|participacion|cuota|mezcla',
  grams:
    'grams|gram|weight|amount|quantity|qty|mass|gramm|gewicht|menge|masse|einwaage|poids|quantite|grammes|gramme|hoeveelheid|grammen|peso|cantidad|gramos|masa',
  price:
    'price|cost|price per kilo|costs|unit price|preis|kosten|kilopreis|einkaufspreis|prix|cout|prix au kilo|prijs|kiloprijs|kostprijs|precio|coste|costo|precio por kilo',
  group:
    'group|category|kind|type|food group|class|gruppe|kategorie|art|groupe|categorie|famille|groep|categorie|soort|grupo|categoria|tipo|clase',
  source:
    'source|sources|reference|data source|origin|where from|quelle|quellen|herkunft|datenquelle|provenance|origine|bron|bronnen|herkomst|fuente|fuentes|origen|procedencia|referencia',
  none: 'note|notes|comment|comments|remark|remarks|no|nr|number|#|id|notiz|notizen|bemerkung|bemerkungen|kommentar|anmerkung|nummer|remarque|remarques|commentaire|note|numero|opmerking|opmerkingen|notitie|nota|notas|comentario|comentarios|observaciones',
};

/**
 * Abbreviations that feed tables print: Weende analysis in German (XP, XL, XF, XA; RP, RFe, RFa, RA), French (MAT, MG, CB,
 * MM, MS), Dutch (RE, RVET, RC, RAS, DS) and Spanish (PB, EE, FB, CZ, MS), and signs of the elements. Where one stands for
 * several, all are named and the keeper is asked.
 */
const SIGNS: Readonly<Record<string, readonly Role[]>> = {
  Ca: ['CA'],
  P: ['P'],
  Na: ['NA'],
  K: ['K'],
  Mg: ['MG'],
  Fe: ['FE'],
  Zn: ['ZN'],
  Cu: ['CU'],
  Mn: ['MN'],
  Se: ['SE'],
  I: ['ID'],
  XP: ['PROCNT'],
  CP: ['PROCNT'],
  RP: ['PROCNT'],
  MAT: ['PROCNT'],
  RE: ['PROCNT'],
  PB: ['PROCNT'],
  XL: ['FAT'],
  CF: ['FAT', 'FIBC'],
  RFe: ['FAT'],
  RFett: ['FAT'],
  RVET: ['FAT'],
  EE: ['FAT'],
  MG: ['FAT', 'MG'],
  XF: ['FIBC'],
  RFa: ['FIBC'],
  CB: ['FIBC'],
  RC: ['FIBC'],
  FB: ['FIBC'],
  XA: ['ASH'],
  RA: ['ASH'],
  RAS: ['ASH'],
  MM: ['ASH'],
  DM: ['dry matter'],
  TS: ['dry matter'],
  TM: ['dry matter'],
  DS: ['dry matter'],
  MS: ['dry matter'],
};

const GROUPS: Readonly<Record<FoodGroup, string>> = {
  seed: 'seed|seeds|grain|grains|seeds and grains|cereal|cereals|seeds grains|saat|saaten|samen|getreide|samen und getreide|saaten und getreide|graine|graines|cereales|graines et cereales|zaad|zaden|graan|granen|zaden en granen|semilla|semillas|cereal|granos|semillas y cereales|samereien|oilseeds|oil seeds|olsaaten',
  legume:
    'legume|legumes|pulse|pulses|beans|hulsenfrucht|hulsenfruchte|leguminosen|legumineuse|legumineuses|legumes secs|peulvrucht|peulvruchten|legumbre|legumbres|leguminosas',
  vegetable:
    'vegetable|vegetables|veg|veggies|dried vegetables|gemuse|trockengemuse|groente|groenten|verdura|verduras|hortalizas|legumes verts',
  herb: 'herb|herbs|flower|flowers|herbs and flowers|leaves|krauter|kraut|bluten|krauter und bluten|blatter|herbe|herbes|fleurs|herbes et fleurs|plantes|kruid|kruiden|bloemen|kruiden en bloemen|hierba|hierbas|flores|hierbas y flores',
  animal:
    'animal|animal protein|protein|insects|insect|meat|tierisch|tierisches|tierisches protein|tierisches eiweiss|insekten|tiereiweiss|animales|proteine animale|proteines animales|insectes|dierlijk|dierlijk eiwit|dierlijke eiwitten|insecten|proteina animal|insectos',
  nut: 'nut|nuts|nuss|nusse|noix|noot|noten|nuez|nueces|frutos secos|fruits a coque',
  fruit: 'fruit|fruits|berries|obst|fruchte|beeren|baies|bessen|fruta|frutas|bayas',
};

/** The whole name is such a word, perhaps with what it is the sum of: no food is called so. */
const TOTAL =
  /^(?:grand |sub ?)?(?:totals?|sums?|sum total|mix total|total mix|total weight|gesamt(?:summe|menge|anteil|mischung|gewicht)?|summen?|insgesamt|zusammen|totalen?|totaal|totales|totaux|somme|som|suma|en total|au total|average|mean|weighted average|durchschnitt|mittelwert|moyenne|gemiddelde|promedio|Σ|∑)(?: (?:of )?(?:the )?(?:mix|mixture|all|mischung|melange|mélange|mengsel|mezcla|g|%))?[\s:.,%()\d]*$/iu;

const UNKNOWN =
  /^(?:[-–—−?.*…x×/]+|n ?\/? ?[ab]\.?|n\. ?[ab]\.?|n\.? ?d\.?|n\.? ?v\.? ?t\.?|k\.? ?a\.?|s\/d|nc|n\.c\.|unknown|unbekannt|onbekend|inconnue?|desconocid[oa]|none given|not known|not given|not available|no data|keine angaben?|geen gegevens|geen|non disponible|sin datos|missing|null|nan|tbd|#\S+[!?]?)$/iu;

const TRACES = /^(?:tr\.?|traces?|spuren|sporen|trazas)$/i;

const letters = (text: string) => plainKey(text.replace(/\([^)]*\)|\[[^\]]*\]/g, ' '));

/** Words alone, without case, accents and signs. */
export function plainKey(text: string): string {
  return keyOf(text)
    .replace(/[^\p{L}\p{N}#]+/gu, ' ')
    .trim();
}

function lookUp<T extends string>(lists: Readonly<Partial<Record<T, string>>>): ReadonlyMap<string, T> {
  return new Map(
    (Object.entries(lists) as [T, string][]).flatMap(([meaning, spellings]) =>
      spellings.split('|').map((s): [string, T] => [plainKey(s), meaning]),
    ),
  );
}

const byWords = lookUp(COLUMNS);
const byGroup = lookUp(GROUPS);

/** What a heading says by words that are no nutrient's. */
export function roleOfWords(heading: string): Role | undefined {
  return byWords.get(letters(heading)) ?? byWords.get(plainKey(heading));
}

/** What an abbreviation may stand for; empty for none that is known. */
export function rolesOfSign(word: string): readonly Role[] {
  return Object.hasOwn(SIGNS, word) ? (SIGNS[word] ?? []) : [];
}

export function groupOfWords(text: string): FoodGroup | undefined {
  return byGroup.get(plainKey(text));
}

/** Whether a row is called a sum or a mean of the others. */
export function isTotal(name: string): boolean {
  return TOTAL.test(
    name
      .replace(/\([^)]*\)|\[[^\]]*\]/g, ' ')
      .replace(/\s+/g, ' ')
      .trim(),
  );
}

/** Whether a cell says that nothing is known. */
export function saysUnknown(text: string): boolean {
  return text === '' || UNKNOWN.test(text);
}

export function saysTraces(text: string): boolean {
  return TRACES.test(text);
}

/** Units, weights and bases that may stand in a heading beside a name. */
export const MEASURE_WORDS = new Set(
  'g gr gram grams mg ug mcg µg μg kg kcal kj mj iu ie ui per je pro in of par pour por cada 100 100g 1kg dm ts tm ms ds the and'.split(
    ' ',
  ),
);
