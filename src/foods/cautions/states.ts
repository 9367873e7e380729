/**
 * Words for what was done to a food ("dried", "séché"), and words that only describe it, in five languages. A caution
 * that names one of a family means them all, and a state may stand anywhere in the name: "apricot (dried)".
 */
import { fold, type Language } from './words.ts';

type Family =
  | 'raw'
  | 'uncooked'
  | 'cooked'
  | 'canned'
  | 'steamed'
  | 'extruded'
  | 'roasted'
  | 'dried'
  | 'freezeDried'
  | 'fresh'
  | 'sprouted'
  | 'pitted';

/** Written as the bare form; `inflected` adds the endings of the language. */
const FAMILIES: Readonly<Record<Family, Readonly<Record<Language, string>>>> = {
  raw: {
    en: 'raw',
    de: 'roh',
    fr: 'cru',
    nl: 'rauw',
    es: 'crudo',
  },
  uncooked: {
    en: 'uncooked unboiled unckd',
    de: 'ungekocht ungegart',
    fr: 'incuit',
    nl: 'ongekookt',
    es: 'incocido',
  },
  cooked: {
    en: 'cooked boiled ckd bld precooked simmered',
    de: 'gekocht gegart vorgekocht abgekocht',
    fr: 'cuit bouilli précuit',
    nl: 'gekookt voorgekookt gegaard',
    es: 'cocido hervido precocido',
  },
  canned: {
    en: 'canned cnd tinned',
    de: 'konserve dose',
    fr: 'conserve appertisé',
    nl: 'blik',
    es: 'enlatado conserva',
  },
  steamed: { en: 'steamed', de: 'gedämpft gedünstet', fr: 'étuvé', nl: 'gestoomd', es: 'vaporizado' },
  extruded: { en: 'extruded', de: 'extrudiert', fr: 'extrudé', nl: 'geëxtrudeerd', es: 'extruido' },
  roasted: {
    en: 'roasted rstd toasted',
    de: 'geröstet getoastet',
    fr: 'torréfié grillé toasté',
    nl: 'geroosterd getoast',
    es: 'tostado',
  },
  dried: {
    en: 'dried dry dehydrated dehyd desiccated sundried airdried',
    de: 'getrocknet trocken gedörrt luftgetrocknet sonnengetrocknet dehydriert',
    fr: 'sec sèche séché déshydraté',
    nl: 'gedroogd droog droge zongedroogd luchtgedroogd',
    es: 'seco desecado deshidratado',
  },
  freezeDried: {
    en: 'freezedried',
    de: 'gefriergetrocknet',
    fr: 'lyophilisé',
    nl: 'gevriesdroogd',
    es: 'liofilizado',
  },
  fresh: { en: 'fresh frsh', de: 'frisch', fr: 'frais fraîche', nl: 'vers', es: 'fresco' },
  sprouted: {
    en: 'sprout sprouts sprouted sprouting germinated',
    de: 'sprossen keimling keimlinge gekeimt angekeimt',
    fr: 'germe germé pousse',
    nl: 'scheuten kiemen taugé gekiemd ontkiemd',
    es: 'brote brotes germinado',
  },
  pitted: {
    en: 'pitted stoned stoneless destoned',
    de: 'entsteint entkernt kernlos steinlos',
    fr: 'dénoyauté',
    nl: 'ontpit',
    es: 'deshuesado',
  },
};

/** Families whose words may stand anywhere in the name of a food. */
const ANYWHERE: readonly Family[] = ['raw', 'cooked', 'dried', 'fresh'];

/** What a name may hold beside the words that count. */
const BESIDE: Readonly<Record<Language, string>> = {
  en: 'of the a from in organic bio natural whole chopped sliced diced halved halves ground crushed cut pieces piece rings ring slices slice chunks chips strips cubes natural pure premium large small big mini jumbo extra soft semi sun air freeze oven low moisture unsulphured unsulfured unsweetened seedless ripe mature mixed red white black green yellow brown golden dark light sweet bitter wild',
  de: 'von vom der die das aus bio natur ganz gehackt geschnitten gewürfelt halbiert gemahlen geschält gewaschen stücke stück ringe scheiben hälften würfel streifen ungeschwefelt geschwefelt weich halb sanft ungesüßt reif rot weiß schwarz grün gelb braun dunkel hell süß bitter wild groß klein',
  fr: 'de du des d la le les l bio biologique nature naturel entier entière haché coupé tranché moulu broyé épluché morceau morceaux rondelles rondelle tranches cubes lamelles moitiés moelleux mou doux douce mûr rouge blanc blanche noir vert jaune brun amer sauvage grand petit soufré',
  nl: 'van de het uit bio biologisch natuurlijk heel hele gehakt gesneden gemalen geschild stukjes stukje stukken ringen schijfjes schijven blokjes helften ongezwaveld gezwaveld zacht half rijp rood rode wit witte zwart groen geel bruin donker zoet bitter wild groot klein',
  es: 'de del la el los las l bio ecológico orgánico natural entero picado cortado troceado molido pelado trozos trozo rodajas rodaja anillos tiras cubos mitades blando maduro rojo blanco negro verde amarillo moreno oscuro dulce amargo silvestre grande pequeño',
};

/** Describing words that may stand before or behind what they describe; forms that no ending makes stand after a slash. */
const ADJECTIVES: Readonly<Record<Language, string>> = {
  en: 'red white black green yellow brown golden dark sweet bitter wild hot candied powdered ground',
  de: 'rot weiß schwarz grün gelb braun süß bitter wild scharf kandiert dick',
  fr: 'rouge blanc/blanche noir vert jaune doux/douce amer/amère sauvage fort confit',
  nl: 'rood/rode wit/witte zwart groen geel/gele bruin zoet bitter wild heet/hete',
  es: 'rojo blanco negro verde amarillo dulce amargo silvestre picante confitado',
};

/** The word with the endings that an adjective of the language takes on, folded. */
function inflected(word: string, language: Language): string[] {
  const bare = fold(word);
  switch (language) {
    case 'en':
      return [bare];
    case 'de':
      return ['', 'e', 'er', 'es', 'en', 'em'].map((ending) => bare + ending);
    case 'fr':
      return ['', 's', 'x', 'e', 'es'].map((ending) => bare + ending);
    case 'nl':
      return ['', 'e', 's'].map((ending) => bare + ending);
    case 'es':
      return bare.endsWith('o')
        ? ['o', 'a', 'os', 'as'].map((ending) => bare.slice(0, -1) + ending)
        : [bare, `${bare}s`, `${bare}es`];
  }
}

const LANGUAGES: readonly Language[] = ['en', 'de', 'fr', 'nl', 'es'];

function formsIn(lists: Readonly<Record<Language, string>>): Map<string, Set<Language>> {
  const forms = new Map<string, Set<Language>>();
  for (const language of LANGUAGES)
    for (const word of lists[language].split(' '))
      for (const form of inflected(word, language))
        forms.set(form, (forms.get(form) ?? new Set()).add(language));
  return forms;
}

const familyOf = new Map<string, Family>();
const wordsOf = new Map<Family, ReadonlySet<string>>();
const languagesOf = new Map<string, Set<Language>>();
const besides = formsIn(BESIDE);
const adjectives = new Map<string, Set<string>>();
for (const language of LANGUAGES)
  for (const word of ADJECTIVES[language].split(' ')) {
    const forms = word.split('/').flatMap((form) => inflected(form, language));
    for (const form of forms) adjectives.set(form, new Set([...(adjectives.get(form) ?? []), ...forms]));
  }
for (const family of Object.keys(FAMILIES) as Family[]) {
  const forms = formsIn(FAMILIES[family]);
  wordsOf.set(family, new Set(forms.keys()));
  for (const [form, languages] of forms) {
    familyOf.set(form, family);
    languagesOf.set(form, languages);
  }
}
// What is freeze-dried is dried; what is dried may be soft.
wordsOf.set('dried', new Set([...(wordsOf.get('dried') ?? []), ...(wordsOf.get('freezeDried') ?? [])]));
const rawOrUncooked = new Set([...(wordsOf.get('raw') ?? []), ...(wordsOf.get('uncooked') ?? [])]);
for (const [form, languages] of besides) if (!languagesOf.has(form)) languagesOf.set(form, languages);

/**
 * All words of the family that a folded word belongs to, in every language; undefined for any other word.
 * @param wide true where "raw" takes in "uncooked": so in "raw beans", not where "raw" is said of fresh fruit
 */
export function familyWords(word: string, wide = false): ReadonlySet<string> | undefined {
  const family = familyOf.get(word);
  if (!family) return undefined;
  return wide && family === 'raw' ? rawOrUncooked : wordsOf.get(family);
}

/** Whether a folded word says that a food is fresh, in which case it cannot be dried too. */
export function saysFresh(word: string): boolean {
  const family = familyOf.get(word);
  return family === 'fresh' || family === 'raw';
}

/** Whether a folded word says that a food is dried. */
export function saysDried(word: string): boolean {
  return wordsOf.get('dried')?.has(word) ?? false;
}

/** Whether a folded word tells a state that may stand anywhere in the name ("dried", "crudo"). */
export function standsAnywhere(word: string): boolean {
  const family = familyOf.get(word);
  return family !== undefined && ANYWHERE.includes(family);
}

/** Whether a folded word only describes or joins, so that a phrase may run across it. */
export function onlyDescribes(word: string): boolean {
  return familyOf.has(word) || besides.has(word);
}

/** Whether a folded word describes what stands on either side of it. */
export function isAdjective(word: string): boolean {
  return adjectives.has(word);
}

/** All forms of a describing word, in the languages that have it; undefined for any other word. */
export function adjectiveForms(word: string): ReadonlySet<string> | undefined {
  return adjectives.get(word);
}

/** Words of states that make a caution count; a slip in them is forgiven. */
export function tellingStates(): string[] {
  return (['dried', 'raw', 'uncooked'] as const).flatMap((family) => [...(wordsOf.get(family) ?? [])]);
}

/** The languages in which a folded word describes or joins. */
export function languagesSaying(word: string): ReadonlySet<Language> | undefined {
  return languagesOf.get(word);
}

/** Beginnings of German and Dutch compounds that tell that a food is dried ("Trockenaprikosen"). */
export const DRIED_BEGINNINGS: readonly string[] = ['trocken', 'dorr', 'back', 'soft', 'droog'];

/** Endings of German and Dutch compounds that make another food of it ("Linsensprossen"). */
export const MADE_ENDINGS: ReadonlySet<string> = new Set(
  'sprossen keimlinge flocken vlokken kiemen scheuten starke zetmeel'.split(' '),
);

/** Endings of German and Dutch compounds that only tell how a food is cut ("Apfelstücke"). */
export const CUT_ENDINGS: readonly string[] =
  'stucke stuck stuckchen wurfel scheiben streifen halften schnitze ringe spalten stukjes stukken schijfjes schijven blokjes reepjes partjes ringen'.split(
    ' ',
  );
