/** Labels with another quantity printed before "per 100 g". */
import type { Snippet } from './snippet.ts';

export const columnsBefore: readonly Snippet[] = [
  {
    name: 'bar before 100 g',
    language: 'en',
    text: 'Per bar\nProtein 5 g\nFat 3 g\nPer 100 g\nDietary fibre 9 g\nStarch 40 g',
    figures: 'FIBTG=9 STARCH=40',
    questions: ['each:Per bar'],
  },
  {
    name: 'pack beside 100 g',
    language: 'en',
    text: 'Typical values\tper pack\tper 100 g\nProtein\t48 g\t12 g\nFat\t16 g\t4 g',
    figures: 'PROCNT=12 FAT=4',
    questions: ['each:per pack'],
  },
  {
    name: 'a line that is not understood before the heading',
    language: 'en',
    text: 'One nibble stick gives you\nProtein 5 g\nper 100 g\nFat 12 g',
    figures: 'FAT=12',
    questions: ['per'],
  },
  {
    name: 'Messlöffel vor 100 g',
    language: 'de',
    text: 'Pro Messlöffel\nCalcium 120 mg\nNährwerte pro 100 g\nEiweiß 12 g',
    figures: 'PROCNT=12',
    questions: ['each:Pro Messlöffel'],
  },
  {
    name: 'Tablette, dann 100 g',
    language: 'de',
    text: 'Angaben\tje Tablette\tje 100 g\nCalcium\t200 mg\t40 g\nEisen\t5 mg\t1 g',
    figures: 'CA=40000 FE=1000',
    questions: ['each:je Tablette'],
  },
  {
    name: 'par sachet, puis pour 100 g',
    language: 'fr',
    text: 'Par sachet : protéines 3 g, lipides 1 g\nPour 100 g : amidon 40 g',
    figures: 'STARCH=40',
    questions: ['each:Par sachet'],
  },
  {
    name: 'une cuillère, puis 100 g',
    language: 'fr',
    text: 'Par cuillère à soupe\nFibres alimentaires 2 g\nPour 100 g\nProtéines 12 g',
    figures: 'PROCNT=12',
    questions: ['each:Par cuillère à soupe'],
  },
  {
    name: 'per reep, daarna per 100 g',
    language: 'nl',
    text: 'Per reep (25 g)\nEiwit 5 g\nPer 100 g\nVet 12 g',
    figures: 'PROCNT=20 FAT=12',
  },
  {
    name: 'por sobre, después por 100 g',
    language: 'es',
    text: 'Por sobre\nCalcio 90 mg\nPor 100 g\nProteínas 12 g',
    figures: 'PROCNT=12',
    questions: ['each:Por sobre'],
  },
  {
    name: 'additives stand apart from what was printed before',
    language: 'en',
    text: 'Energy 377 kcal\nProtein 12 %\nAdditives per kg: iron 50 mg',
    figures: 'PROCNT=12 FE>=5',
    questions: ['per'],
  },
];
