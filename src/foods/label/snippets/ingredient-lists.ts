/** Labels whose list of ingredients gives shares in percent. */
import type { Snippet } from './snippet.ts';

export const ingredientLists: readonly Snippet[] = [
  {
    name: 'ingredients',
    language: 'en',
    text: 'Ingredients: oats 30 %, pea protein 12 %, sugar 5 %, salt 1 %, calcium 0.5 %\nProtein 15 %',
    figures: 'PROCNT=15',
    unread: [0],
  },
  {
    name: 'ingredients, share first',
    language: 'en',
    text: 'Ingredients: 30 % oats, 12 % peas, 5 % sugar, 1 % salt.\nProtein 15 %',
    figures: 'PROCNT=15',
    unread: [0],
  },
  {
    name: 'a list under no heading',
    language: 'en',
    text: 'Oats 30 %, peas 20 %, salt 1 %, sugar 3 %\nCrude protein 15 %',
    figures: 'PROCNT=15',
    questions: ['list:0'],
    missed: [0],
  },
  {
    name: 'ingredients over two lines',
    language: 'en',
    text: 'Ingredients: oats 30 %,\npeas 20 %, salt 1 %, sugar 3 %.\nProtein 15 %',
    figures: 'PROCNT=15',
    unread: [0, 1],
  },
  {
    name: 'composition of known words only',
    language: 'en',
    text: 'Composition: sugar 30 %, salt 2 %',
    figures: '',
    questions: ['list:0'],
  },
  {
    name: 'Zutaten',
    language: 'de',
    text: 'Zutaten: Haferflocken 40 %, Zucker 12 %, Salz 1 %.\nNährwerte je 100 g: Eiweiß 12 g, Zucker 11 g',
    figures: 'PROCNT=12 SUGAR=11',
    unread: [0],
  },
  {
    name: 'Zusammensetzung, dann Analyse in einer Zeile',
    language: 'de',
    text: 'Zusammensetzung: Hafer 40 %, Zucker 5 %, Calcium 1 %. Analytische Bestandteile: Rohprotein 15 %, Rohfaser 8 %',
    figures: 'PROCNT=15 FIBC=8',
    missed: [0],
  },
  {
    name: 'composition et constituants',
    language: 'fr',
    text: 'Composition : avoine 40 %, sucre 5 %, sel 1 %. Constituants analytiques : protéines brutes 15 %',
    figures: 'PROCNT=15',
    missed: [0],
  },
  {
    name: 'ingrédients, un par ligne',
    language: 'fr',
    text: 'Ingrédients\nAvoine 40 %\nSucre 5 %\nSel 1 %\nAnalyse\nProtéines 15 %',
    figures: 'PROCNT=15',
    unread: [1, 2, 3],
  },
  {
    name: 'samenstelling',
    language: 'nl',
    text: 'Samenstelling: haver 40 %, suiker 5 %, calcium 1 %\nAnalytische bestanddelen: ruw eiwit 15 %, vezels 8 %',
    figures: 'PROCNT=15 FIBC=8',
    unread: [0],
  },
  {
    name: 'ingredientes, uno por línea',
    language: 'es',
    text: 'Ingredientes:\nAvena 40 %\nAzúcar 5 %\nSal 1 %\nComponentes analíticos:\nProteína bruta 15 %',
    figures: 'PROCNT=15',
    unread: [1, 2, 3],
  },
  {
    name: 'composición con análisis',
    language: 'es',
    text: 'Composición: proteína bruta 17 %, grasa bruta 5 %',
    figures: 'PROCNT=17 FAT=5',
  },
];
