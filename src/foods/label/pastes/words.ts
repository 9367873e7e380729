/** Words that drawn pastes are made of, by language, written apart from the reader's own table. */
import type { Tag } from '../../../nutrition/nutrients.ts';
import type { Language } from '../reading.ts';

/** Nutrients by the names labels give them: feeds, foods, or both. */
export interface Named {
  readonly tag: Tag;
  readonly on: 'feed' | 'food' | 'both' | 'additive';
  readonly names: Readonly<Record<Language, readonly string[]>>;
}

export const NAMED: readonly Named[] = [
  {
    tag: 'PROCNT',
    on: 'both',
    names: {
      en: ['Protein', 'Crude protein', 'Total protein'],
      de: ['Eiweiß', 'Rohprotein', 'Protein'],
      fr: ['Protéines', 'Protéine brute', 'Protéines brutes'],
      nl: ['Eiwitten', 'Ruw eiwit', 'Eiwit'],
      es: ['Proteínas', 'Proteína bruta', 'Proteína cruda'],
    },
  },
  {
    tag: 'FAT',
    on: 'both',
    names: {
      en: ['Fat', 'Crude fat', 'Crude oils and fats'],
      de: ['Fett', 'Rohfett', 'Rohöle und -fette', 'Fettgehalt'],
      fr: ['Matières grasses', 'Matières grasses brutes', 'Huiles et matières grasses brutes', 'Lipides'],
      nl: ['Vetten', 'Ruw vet', 'Ruwe oliën en vetten'],
      es: ['Grasas', 'Grasa bruta', 'Grasas totales', 'Aceites y grasas brutos'],
    },
  },
  {
    tag: 'FIBC',
    on: 'feed',
    names: {
      en: ['Crude fibre', 'Crude fiber'],
      de: ['Rohfaser'],
      fr: ['Cellulose brute', 'Fibres brutes'],
      nl: ['Ruwe celstof'],
      es: ['Fibra bruta', 'Fibra cruda'],
    },
  },
  {
    tag: 'ASH',
    on: 'feed',
    names: {
      en: ['Crude ash', 'Inorganic matter'],
      de: ['Rohasche', 'Anorganische Stoffe'],
      fr: ['Cendres brutes', 'Matière inorganique'],
      nl: ['Ruwe as', 'Anorganische stof'],
      es: ['Ceniza bruta', 'Materia inorgánica'],
    },
  },
  {
    tag: 'FIBTG',
    on: 'food',
    names: {
      en: ['Dietary fibre', 'Fibre'],
      de: ['Ballaststoffe'],
      fr: ['Fibres alimentaires', 'Fibres'],
      nl: ['Voedingsvezel', 'Vezels'],
      es: ['Fibra alimentaria', 'Fibra'],
    },
  },
  {
    tag: 'CHOCDF',
    on: 'food',
    names: {
      en: ['Carbohydrate'],
      de: ['Kohlenhydrate'],
      fr: ['Glucides'],
      nl: ['Koolhydraten'],
      es: ['Hidratos de carbono'],
    },
  },
  {
    tag: 'SUGAR',
    on: 'food',
    names: {
      en: ['of which sugars', 'Sugars'],
      de: ['davon Zucker', 'Zucker'],
      fr: ['dont sucres', 'Sucres'],
      nl: ['waarvan suikers', 'Suikers'],
      es: ['de los cuales azúcares', 'Azúcares'],
    },
  },
  {
    tag: 'FASAT',
    on: 'food',
    names: {
      en: ['of which saturates', 'Sat. Fat'],
      de: ['davon gesättigte Fettsäuren'],
      fr: ['dont acides gras saturés'],
      nl: ['waarvan verzadigde vetzuren'],
      es: ['de las cuales saturadas'],
    },
  },
  {
    tag: 'CA',
    on: 'both',
    names: { en: ['Calcium'], de: ['Calcium'], fr: ['Calcium'], nl: ['Calcium'], es: ['Calcio'] },
  },
  {
    tag: 'P',
    on: 'feed',
    names: { en: ['Phosphorus'], de: ['Phosphor'], fr: ['Phosphore'], nl: ['Fosfor'], es: ['Fósforo'] },
  },
  {
    tag: 'FE',
    on: 'additive',
    names: { en: ['Iron'], de: ['Eisen'], fr: ['Fer'], nl: ['IJzer'], es: ['Hierro'] },
  },
  {
    tag: 'ZN',
    on: 'additive',
    names: { en: ['Zinc'], de: ['Zink'], fr: ['Zinc'], nl: ['Zink'], es: ['Zinc'] },
  },
  {
    tag: 'VITA_IU',
    on: 'additive',
    names: {
      en: ['Vitamin A'],
      de: ['Vitamin A'],
      fr: ['Vitamine A'],
      nl: ['Vitamine A'],
      es: ['Vitamina A'],
    },
  },
  {
    tag: 'ENERC_KCAL',
    on: 'food',
    names: { en: ['Energy'], de: ['Brennwert'], fr: ['Énergie'], nl: ['Energie'], es: ['Valor energético'] },
  },
];

type Words = Readonly<Record<Language, readonly string[]>>;

export const PER: Words = {
  en: ['per', 'in'],
  de: ['pro', 'je'],
  fr: ['pour', 'par'],
  nl: ['per'],
  es: ['por'],
};
export const NUTRITION: Words = {
  en: ['Nutrition', 'Typical values', 'Nutrition information'],
  de: ['Nährwerte', 'Durchschnittliche Nährwerte'],
  fr: ['Valeurs nutritionnelles moyennes'],
  nl: ['Voedingswaarde', 'Gemiddelde voedingswaarde'],
  es: ['Información nutricional', 'Valores medios'],
};
export const CONSTITUENTS: Words = {
  en: ['Analytical constituents'],
  de: ['Analytische Bestandteile'],
  fr: ['Constituants analytiques'],
  nl: ['Analytische bestanddelen'],
  es: ['Componentes analíticos'],
};
export const ADDITIVES: Words = {
  en: ['Nutritional additives', 'Additives'],
  de: ['Ernährungsphysiologische Zusatzstoffe', 'Zusatzstoffe'],
  fr: ['Additifs nutritionnels', 'Additifs'],
  nl: ['Nutritionele toevoegingsmiddelen'],
  es: ['Aditivos nutricionales', 'Aditivos'],
};
export const INGREDIENTS: Words = {
  en: ['Ingredients', 'Composition'],
  de: ['Zutaten', 'Zusammensetzung'],
  fr: ['Ingrédients', 'Composition'],
  nl: ['Ingrediënten', 'Samenstelling'],
  es: ['Ingredientes', 'Composición'],
};
export const GRAINS: Words = {
  en: ['oats', 'wheat', 'peas', 'dried carrot'],
  de: ['Haferflocken', 'Weizen', 'Erbsen', 'Karotten getrocknet'],
  fr: ['avoine', 'blé', 'pois', 'carottes séchées'],
  nl: ['haver', 'tarwe', 'erwten', 'gedroogde wortel'],
  es: ['avena', 'trigo', 'guisantes', 'zanahoria seca'],
};
export const DRY: Words = {
  en: [
    'on a dry basis',
    '% DM',
    'in dry matter',
    'dry matter basis',
    'calculated on dry matter',
    'moisture-free basis',
  ],
  de: ['bezogen auf die Trockenmasse', 'in % der TS', 'in der Trockensubstanz', 'i. Tr.', 'i. d. TS'],
  fr: ['% de la MS', 'sur matière sèche', 'sur sec', 'exprimé sur la matière sèche'],
  nl: ['in de droge stof', 'op basis van droge stof', 'droge stof', '% van de droge stof'],
  es: ['s.m.s.', 'sobre materia seca', '% de la MS', 'en base seca'],
};
/** Cooked and made up; the last of each is not in the reader's table. */
export const PREPARED: Words = {
  en: ['cooked', 'as prepared', 'made up with water', 'when cooked', 'simmered'],
  de: ['zubereitet', 'gekocht', 'zubereitetes Produkt', 'gedünstet'],
  fr: ['de produit cuit', 'préparé', 'après cuisson', 'mijoté'],
  nl: ['bereid', 'gekookt', 'bereid product', 'gestoofd'],
  es: ['cocido', 'de producto preparado', 'guisado'],
};
/** Denominators with no weight; the last of each is not in the reader's table. */
export const PIECE: Words = {
  en: ['tablet', 'bar', 'pack', '100 kcal', '1000 kcal', '100 ml', 'gribble'],
  de: ['Tablette', 'Riegel', 'Packung', '100 kcal', '100 ml', 'Schwupps'],
  fr: ['comprimé', 'barre', 'sachet', '100 kcal', '100 ml', 'louchette'],
  nl: ['tablet', 'reep', 'zakje', '100 kcal', '100 ml', 'knoeffel'],
  es: ['comprimido', 'barrita', 'paquete', '100 kcal', '100 ml', 'puñadito'],
};
export const SERVING: Words = {
  en: ['serving'],
  de: ['Portion'],
  fr: ['portion'],
  nl: ['portie'],
  es: ['ración'],
};
export const MIN: Words = {
  en: ['min.', 'Minimum', 'Min'],
  de: ['mind.', 'Minimum', 'min.'],
  fr: ['min.', 'Minimum', 'mini'],
  nl: ['min.', 'Minimum', 'minimaal'],
  es: ['mín.', 'Mínimo'],
};
export const MAX: Words = {
  en: ['max.', 'Maximum', 'Max'],
  de: ['max.', 'Maximum', 'höchstens'],
  fr: ['max.', 'Maximum', 'maxi'],
  nl: ['max.', 'Maximum', 'maximaal'],
  es: ['máx.', 'Máximo'],
};
export const DAILY: Words = {
  en: ['% NRV', '% RI*', '% RI'],
  de: ['% NRV', '% RM*'],
  fr: ['% VNR', '% AR*'],
  nl: ['% RI*'],
  es: ['% VRN', '% IR*'],
};
export const ENERGY_SHARE: Words = {
  en: ['% of energy', '% kcal', '% of calories'],
  de: ['% der Energie', 'Energie %', '% kcal'],
  fr: ['% de l’énergie', '% kcal'],
  nl: ['% van de energie', '% kcal'],
  es: ['% de la energía', '% kcal'],
};
export const TITLES: readonly string[] = [
  'Wiesenkorn Knabbermix',
  'Burrowell Pellets',
  'Petit Terrier Délice',
  'Hazelhof Korrels',
  'Pradera Viva',
  'Best before 12 2027',
  'Net weight 500 g',
  'Nettogewicht 400 g',
  'Poids net 250 g',
  'Always provide fresh water.',
  'Kühl und trocken lagern.',
];
