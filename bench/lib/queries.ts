/** What keepers type to find a food: plain names, several words, plurals, slips, and what the tables do not have. */
import type { Language } from '../../src/words/manner.ts';

const QUERIES: Readonly<Record<Language, readonly string[]>> = {
  en: [
    ...['rolled oats', 'sunflower seeds', 'dried carrot', 'pumpkin seed', 'split peas', 'mealworms'],
    ...['red lentils', 'flaxseed', 'dandelion leaves', 'chick peas', 'buckwheat', 'hemp seed', 'brocoli'],
    ...['egg powder', 'brown rice', 'millet', 'parsley dried', 'pearl barley', 'sesame', 'stinging nettle'],
    ...['dried apple rings', 'walnut', 'sun flower kernals', 'rose hips', 'spelt', 'sweet potato'],
  ],
  de: [
    ...[
      'Haferflocken',
      'Sonnenblumenkerne',
      'Karotte getrocknet',
      'Kürbiskerne',
      'Schälerbsen',
      'Mehlwürmer',
    ],
    ...[
      'rote Linsen',
      'Leinsamen',
      'Löwenzahnblätter',
      'Kichererbsen',
      'Buchweizen',
      'Hanfsamen',
      'Brokkoli',
    ],
    ...['Eipulver', 'Naturreis', 'Hirse', 'Petersilie getrocknet', 'Gerstengraupen', 'Sesam', 'Brennnessel'],
    ...['Apfelringe', 'Walnüsse', 'Sonenblumenkerne', 'Hagebutten', 'Dinkel', 'Süßkartoffel'],
  ],
  nl: [
    ...['havervlokken', 'zonnebloempitten', 'wortel gedroogd', 'pompoenpitten', 'spliterwten', 'meelwormen'],
    ...['rode linzen', 'lijnzaad', 'paardenbloemblad', 'kikkererwten', 'boekweit', 'hennepzaad', 'broccoli'],
    ...[
      'eipoeder',
      'zilvervliesrijst',
      'gierst',
      'peterselie gedroogd',
      'parelgort',
      'sesamzaad',
      'brandnetel',
    ],
    ...['appelringen', 'walnoten', 'zonebloempit', 'rozenbottel', 'spelt', 'zoete aardappel'],
  ],
};

export const LANGUAGES_TYPED = Object.keys(QUERIES) as Language[];

/** Every text that stands in the box while the queries of a language are typed, letter by letter. */
export function asTyped(language: Language): string[] {
  return QUERIES[language].flatMap((query) =>
    Array.from(query, (_, i) =>
      Array.from(query)
        .slice(0, i + 1)
        .join(''),
    ),
  );
}
