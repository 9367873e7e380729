/** Labels that mix marks of decimals and of thousands. */
import type { Snippet } from './snippet.ts';

export const thousands: readonly Snippet[] = [
  {
    name: '1,500 UI beside decimal commas',
    language: 'es',
    text: 'Vitamina A 1,500 UI/kg, proteína 12,5 %, yodo 1,5 mg/kg',
    figures: 'PROCNT=12.5 ID=150',
    questions: ['number:0:1,500'],
  },
  {
    name: '12,500 IE neben Dezimalkommas',
    language: 'de',
    text: 'Vitamin A 12,500 IE/kg\nRohprotein 17,5 %\nZink 1.500 mg/kg',
    figures: 'PROCNT=17.5 ZN=150',
    questions: ['number:0:12,500'],
  },
  {
    name: '1.250 mg in a label with points',
    language: 'en',
    text: 'Calcium 1.250 mg per 100 g\nFat 5.5 g per 100 g',
    figures: 'FAT=5.5',
    questions: ['number:0:1.250'],
  },
  {
    name: 'three decimals shown elsewhere',
    language: 'en',
    text: 'Per 100 g\nCalcium 1.250 g\nIron 0.125 g',
    figures: 'CA=1250 FE=125',
  },
  {
    name: '3,000 kcal dans une étiquette à virgules',
    language: 'fr',
    text: 'Énergie 3,500 kcal/kg\nProtéines brutes 17,5 %',
    figures: 'ENERC_KCAL=350 PROCNT=17.5',
  },
  {
    name: '10,000 UI à côté de virgules',
    language: 'fr',
    text: 'Vitamine A 10,000 UI/kg\nMatières grasses 5,5 %',
    figures: 'FAT=5.5',
    questions: ['number:0:10,000'],
  },
  {
    name: "8,000 IE naast komma's",
    language: 'nl',
    text: 'Vitamine A 8,000 IE/kg\nRuw eiwit 16,5 %',
    figures: 'PROCNT=16.5',
    questions: ['number:0:8,000'],
  },
  {
    name: "6.000 IE naast komma's",
    language: 'nl',
    text: 'Vitamine A 6.000 IE/kg\nRuw eiwit 16,5 %',
    figures: 'VITA_IU=600 PROCNT=16.5',
  },
  {
    name: '2,400 mg entre comas',
    language: 'es',
    text: 'Por 100 g\nCalcio 2,400 mg\nGrasas 5,5 g',
    figures: 'FAT=5.5',
    questions: ['number:1:2,400'],
  },
];
