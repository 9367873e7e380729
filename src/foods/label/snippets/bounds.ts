/** Labels with least and most as headings of columns and sections. */
import type { Snippet } from './snippet.ts';

export const bounds: readonly Snippet[] = [
  {
    name: 'guaranteed minimums',
    language: 'en',
    text: 'Guaranteed minimums: crude protein 16 %, crude fat 4 %\nGuaranteed maximums: crude fiber 9 %, moisture 12 %',
    figures: 'PROCNT>=16 FAT>=4 FIBC<=9 WATER<=12',
  },
  {
    name: 'min and max as columns',
    language: 'en',
    text: 'Analysis\tMin\tMax\nCrude protein\t16 %\t18 %\nCrude fat\t4 %\t6 %',
    figures: 'PROCNT>=16 FAT>=4 PROCNT<=18 FAT<=6',
  },
  {
    name: 'min and max as columns, one cell blank',
    language: 'en',
    text: 'Analysis\tMin\tMax\nCrude protein\t16 %\t18 %\nCrude fibre\t\t9 %',
    figures: 'PROCNT>=16 PROCNT<=18',
    questions: ['column:2:FIBC:%'],
  },
  {
    name: 'min before the first name',
    language: 'en',
    text: 'Min. crude protein 16 %, crude fat 4 %, max. crude fibre 9 %',
    figures: 'PROCNT>=16 FAT>=4 FIBC<=9',
  },
  {
    name: 'Minimum und Maximum als Abschnitte',
    language: 'de',
    text: 'Minimum:\nRohprotein 16 %\nRohfett 4 %\nMaximum:\nRohfaser 9 %\nFeuchte 12 %',
    figures: 'PROCNT>=16 FAT>=4 FIBC<=9 WATER<=12',
  },
  {
    name: 'garantierte Mindestgehalte',
    language: 'de',
    text: 'Garantierte Mindestgehalte\nRohprotein 16 %\nRohfett 4 %',
    figures: 'PROCNT>=16 FAT>=4',
  },
  {
    name: 'typisch, min, max',
    language: 'de',
    text: 'Analyse\ttypisch\tmin\tmax\nRohprotein\t17 %\t16 %\t18 %\nRohfett\t5 %\t4 %\t6 %',
    figures: 'PROCNT=17 FAT=5 PROCNT>=16 FAT>=4 PROCNT<=18 FAT<=6',
  },
  {
    name: 'Minimum mit Schreibfehler',
    language: 'de',
    text: 'Minium\nRohprotein 16 %',
    figures: '',
    questions: ['basis:Minium'],
  },
  {
    name: 'teneurs maximales',
    language: 'fr',
    text: 'Teneurs maximales : cellulose brute 9 %, humidité 12 %',
    figures: 'FIBC<=9 WATER<=12',
  },
  {
    name: 'mini et maxi',
    language: 'fr',
    text: 'Protéine brute mini 16 %\nCellulose brute maxi 9 %',
    figures: 'PROCNT>=16 FIBC<=9',
  },
  {
    name: 'minimaal en maximaal als kolommen',
    language: 'nl',
    text: 'Gehalten\tMinimaal\tMaximaal\nRuw eiwit\t16 %\t18 %\nRuw vet\t4 %\t6 %',
    figures: 'PROCNT>=16 FAT>=4 PROCNT<=18 FAT<=6',
  },
  {
    name: 'minimum, daarna toevoegingsmiddelen',
    language: 'nl',
    text: 'Maximum: ruwe celstof 9 %, vocht 12 %\nToevoegingsmiddelen per kg: ijzer 50 mg',
    figures: 'FE>=5 FIBC<=9 WATER<=12',
  },
  {
    name: 'mínimos y máximos',
    language: 'es',
    text: 'Mínimos: proteína bruta 16 %, grasa bruta 4 %. Máximos: fibra bruta 9 %, humedad 12 %',
    figures: 'PROCNT>=16 FAT>=4 FIBC<=9 WATER<=12',
  },
  {
    name: 'columnas mín. y máx. en una línea',
    language: 'es',
    text: 'Nutriente Mín. Máx.\nCalcio 0,6 % 0,9 %',
    figures: 'CA>=600 CA<=900',
  },
];
