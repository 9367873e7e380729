/** Labels with percentages of a daily need or of the energy, which are none of the weight. */
import type { Snippet } from './snippet.ts';

export const shares: readonly Snippet[] = [
  {
    name: 'percent of the daily value alone',
    language: 'en',
    text: 'Per serving (30 g)\nProtein 24 % DV\nFat 10 % DV',
    figures: '',
  },
  {
    name: 'percent of energy',
    language: 'en',
    text: 'Protein 30 % of energy, fat 20 % of energy',
    figures: '',
  },
  {
    name: 'energy distribution',
    language: 'en',
    text: 'Energy distribution: protein 30 %, fat 20 %\nAnalytical constituents: protein 17 %, fat 5 %',
    figures: 'PROCNT=17 FAT=5',
    questions: ['percent:0:PROCNT', 'percent:0:FAT'],
  },
  {
    name: '% of calories over a table',
    language: 'en',
    text: 'Macronutrients (% of calories)\nProtein 30 %\nFat 20 %',
    figures: '',
    questions: ['percent:1:PROCNT', 'percent:2:FAT'],
  },
  {
    name: 'grams and a percentage of nobody knows what',
    language: undefined,
    text: 'Protein 5 g 10 %',
    figures: '',
    questions: ['per', 'percent:0:PROCNT'],
  },
  {
    name: 'Energie% als Spalte',
    language: 'de',
    text: 'Nährstoff\tg je 100 g\tEnergie%\nEiweiß\t17 g\t30 %\nFett\t5 g\t20 %',
    figures: 'PROCNT=17 FAT=5',
  },
  {
    name: 'Energie % über allem',
    language: 'de',
    text: 'Energie %\nEiweiß 30 %\nFett 20 %',
    figures: '',
    questions: ['percent:1:PROCNT', 'percent:2:FAT'],
  },
  {
    name: '% Tagesbedarf',
    language: 'de',
    text: 'Je Portion (30 g): Eisen 2 mg (14 % des Tagesbedarfs), Eiweiß 12 % des Tagesbedarfs',
    figures: 'FE=6.66666666667',
  },
  {
    name: 'répartition calorique',
    language: 'fr',
    text: 'Répartition calorique : protéines 30 %, lipides 20 %',
    figures: '',
    questions: ['percent:0:PROCNT', 'percent:0:FAT'],
  },
  {
    name: '% AJR',
    language: 'fr',
    text: 'Pour 100 g\nCalcium 120 mg 15 % AJR\nProtéines 24 % AJR',
    figures: 'CA=120',
  },
  {
    name: 'energieprocenten',
    language: 'nl',
    text: 'Energieprocenten\nEiwit 30 %\nVet 20 %',
    figures: '',
    questions: ['percent:1:PROCNT', 'percent:2:FAT'],
  },
  {
    name: '% ADH',
    language: 'nl',
    text: 'Per 100 g\nIJzer 2 mg 14 % ADH\nEiwit 12 g',
    figures: 'FE=2 PROCNT=12',
  },
  {
    name: 'distribución calórica',
    language: 'es',
    text: 'Distribución calórica\nProteínas 30 %\nGrasas 20 %',
    figures: '',
    questions: ['percent:1:PROCNT', 'percent:2:FAT'],
  },
  {
    name: '% VRN sin otra cifra',
    language: 'es',
    text: 'Por 100 g\t% VRN\nCalcio\t120 mg\t15 %\nHierro\t\t14 %',
    figures: 'CA=120',
    unread: [2],
  },
];
