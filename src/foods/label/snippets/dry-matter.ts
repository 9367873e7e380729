/** Labels in dry matter, in all the words for it, and figures with a "per kg" of their own under such a heading. */
import type { Snippet } from './snippet.ts';

export const dryMatter: readonly Snippet[] = [
  {
    name: 'on a dry basis',
    language: 'en',
    text: 'Analysis on a dry basis: protein 20 %, fat 5 %\nMoisture 10 %',
    figures: 'PROCNT=18 FAT=4.5 WATER=10',
  },
  {
    name: '% DM behind each figure',
    language: 'en',
    text: 'Protein 20 % DM\nFat 5 % DM\nMoisture 10 %',
    figures: 'PROCNT=18 FAT=4.5 WATER=10',
  },
  {
    name: 'dry matter beside unknown words',
    language: 'en',
    text: 'Analysis of our tasty kibble on dry matter: protein 20 %, fat 5 %',
    figures: '',
    questions: ['basis:of our tasty kibble on dry matter:', 'moisture'],
  },
  {
    name: 'a figure with its own "per kg" under a dry-matter heading',
    language: 'en',
    text: 'Dry matter basis\nProtein 20 %\nCalcium 8 g/kg\nMoisture 10 %',
    figures: 'PROCNT=18 CA=720 WATER=10',
  },
  {
    name: 'as fed beside dry matter',
    language: 'en',
    text: 'Nutrient\tAs fed\tDry matter\nProtein\t18 %\t20 %\nFat\t4.5 %\t5 %\nMoisture\t10 %',
    figures: 'PROCNT=18 FAT=4.5 WATER=10',
  },
  {
    name: 'dry matter as a footnote',
    language: 'en',
    text: 'Per 100 g\nProtein 20 g\nFat 5 g\n* All values calculated on dry matter.',
    figures: '',
    questions: ['basis:calculated on dry matter.'],
  },
  {
    name: 'bezogen auf die Trockenmasse',
    language: 'de',
    text: 'Rohprotein 20 %, Rohfett 5 % (bezogen auf die Trockenmasse)\nFeuchte 10 %',
    figures: 'FAT=4.5 WATER=10',
    questions: ['basis:... dry matter'],
  },
  {
    name: 'in % der TS',
    language: 'de',
    text: 'Gehalte in % der TS\nRohprotein 20 %\nRohfett 5 %\nCalcium 8 g/kg\nWasser 10 %',
    figures: 'PROCNT=18 FAT=4.5 CA=720 WATER=10',
  },
  {
    name: 'Trockenmasse mit Schreibfehler',
    language: 'de',
    text: 'Gehalte bezogen auf die Trockenmase\nRohprotein 20 %\nRohfett 5 %',
    figures: '',
    questions: ['basis:bezogen auf die Trockenmase'],
  },
  {
    name: '% de la MS',
    language: 'fr',
    text: 'Protéines brutes 20 % de la MS ; matières grasses 5 % de la MS\nHumidité 10 %',
    figures: 'PROCNT=18 FAT=4.5 WATER=10',
  },
  {
    name: 'sur sec, vitamine par kg',
    language: 'fr',
    text: 'Analyse sur sec\nProtéines brutes 20 %\nCalcium 8 g/kg\nHumidité 10 %',
    figures: 'PROCNT=18 CA=720 WATER=10',
  },
  {
    name: 'droge stof als kop',
    language: 'nl',
    text: 'Droge stof: ruw eiwit 20 %, ruw vet 5 %\nVocht 10 %',
    figures: 'PROCNT=18 FAT=4.5 WATER=10',
  },
  {
    name: 'mg per kg droge stof',
    language: 'nl',
    text: 'In de droge stof\nRuw eiwit 20 %\nIJzer 100 mg/kg\nVocht 10 %',
    figures: 'PROCNT=18 FE=9 WATER=10',
  },
  {
    name: 's.m.s.',
    language: 'es',
    text: 'Proteína bruta 20 % s.m.s.\nGrasa bruta 5 % s.m.s.\nHumedad 10 %',
    figures: 'PROCNT=18 FAT=4.5 WATER=10',
  },
  {
    name: 'base seca, y después por kg',
    language: 'es',
    text: 'Análisis en base seca\nProteína bruta 20 %\nPor kg\nCalcio 8 g\nHumedad 10 %',
    figures: '',
    questions: ['basis:en base seca then Por kg', 'moisture'],
  },
];
