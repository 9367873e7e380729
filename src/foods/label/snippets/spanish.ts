/** Labels in Spanish. */
import type { Snippet } from './snippet.ts';

export const spanish: readonly Snippet[] = [
  {
    name: 'componentes analíticos',
    language: 'es',
    text: 'Componentes analíticos: proteína bruta 17 %, grasa bruta 5,5 %, fibra bruta 8 %, ceniza bruta 4,2 %, calcio 0,8 %',
    figures: 'PROCNT=17 FAT=5.5 FIBC=8 ASH=4.2 CA=800',
  },
  {
    name: 'información nutricional',
    language: 'es',
    text: 'Información nutricional por 100 g\nValor energético 1580 kJ / 377 kcal\nGrasas 6,5 g\nde las cuales saturadas 1,1 g\nHidratos de carbono 60 g\nde los cuales azúcares 1 g\nFibra alimentaria 9 g\nProteínas 11 g\nSal 0,05 g',
    figures: 'ENERC_KCAL=377 FAT=6.5 FASAT=1.1 CHOCDF=69 SUGAR=1 FIBTG=9 PROCNT=11 NA=20',
  },
  {
    name: 'por ración (30 g)',
    language: 'es',
    text: 'Por ración (30 g)\nProteínas 3,3 g\nGrasas 1,5 g',
    figures: 'PROCNT=11 FAT=5',
  },
  {
    name: 'sobre materia seca',
    language: 'es',
    text: 'Análisis sobre materia seca: proteína bruta 20 %, grasa bruta 5 %\nHumedad 10 %',
    figures: 'PROCNT=18 FAT=4.5 WATER=10',
  },
  {
    name: 'análisis garantizado',
    language: 'es',
    text: 'Análisis garantizado\nProteína cruda (mín.) 16 %\nGrasa cruda (mín.) 4 %\nFibra cruda (máx.) 9 %\nHumedad máx. 12 %',
    figures: 'PROCNT>=16 FAT>=4 FIBC<=9 WATER<=12',
  },
  {
    name: 'aditivos por kg',
    language: 'es',
    text: 'Aditivos nutricionales por kg: vitamina A 12 000 UI, vitamina D3 1 200 UI, cobre (sulfato de cobre) 8 mg, hierro 50 mg, yodo 1,5 mg',
    figures: 'VITA_IU>=1200 VITD_IU>=120 CU>=0.8 FE>=5 ID>=150',
  },
  {
    name: 'fibra sin clase',
    language: 'es',
    text: 'Proteína bruta 16 %; fibra 9 %; humedad 10 %',
    figures: 'PROCNT=16 WATER=10',
    questions: ['name:fibre'],
  },
  {
    name: 'trazas y omega 6',
    language: 'es',
    text: 'por 100 g\nazúcares trazas\nomega 6 2 g\nalmidón 40 g',
    figures: 'STARCH=40',
    unread: [1, 2],
  },
  {
    name: 'dos columnas en espacios',
    language: 'es',
    text: 'Valores medios   por 100 g   por ración (25 g)\nGrasas           8,0 g       2,0 g\nProteínas        20 g        5 g',
    figures: 'FAT=8 PROCNT=20',
  },
  {
    name: 'una cifra para dos columnas',
    language: 'es',
    text: 'Valores medios   por 100 g   por ración (25 g)\nGrasas           8,0 g       2,0 g\nProteínas        20 g',
    figures: 'FAT=8',
    questions: ['column:2:PROCNT:g'],
  },
  {
    name: 'menos de',
    language: 'es',
    text: 'por 100 g\nSal menos de 0,1 g\nAzúcares < 0,5 g\nGrasas 4 g',
    figures: 'NA<=40 SUGAR<=0.5 SUGAR>=0 FAT=4',
  },
  {
    name: 'cada 250 g',
    language: 'es',
    text: 'Proteínas 6,25 g por 250 g\nHumedad 10 %',
    figures: 'PROCNT=2.5 WATER=10',
  },
];
