/** Labels in German. */
import type { Snippet } from './snippet.ts';

export const german: readonly Snippet[] = [
  {
    name: 'zwei Abschnitte mit eigener Menge',
    language: 'de',
    text: 'Nährwerte je 100 g: Eiweiß 12 g, Fett 5,5 g\nZusatzstoffe/kg: Vitamin A (E672) 12.000 I.E., Zink (Zinkoxid) 60 mg\nErnährungsphysiologische Zusatzstoffe pro kg: Kupfer 8 mg\nCalcium 0,9 %',
    figures: 'PROCNT=12 FAT=5.5 VITA_IU>=1200 ZN>=6 CU>=0.8 CA=900',
  },
  {
    name: 'Menge hinter dem Anteil',
    language: 'de',
    text: 'Eiweiß 12 g (24 % der Referenzmenge) pro 100 g',
    figures: 'PROCNT=12',
  },
  {
    name: 'Spaltenköpfe untereinander',
    language: 'de',
    text: 'Nährwerte\npro 100 g\npro Portion (30 g)\nEiweiß 12 g 3,6 g\nFett 6 g 1,8 g',
    figures: 'PROCNT=12 FAT=6',
  },
  {
    name: 'Alleinfutter in einer Zeile',
    language: 'de',
    text: 'Analytische Bestandteile: Rohprotein 17,0 %, Rohfett 5,5 %, Rohfaser 8,2 %, Rohasche 4,1 %, Calcium 0,75 %, Phosphor 0,5 %',
    figures: 'PROCNT=17 FAT=5.5 FIBC=8.2 ASH=4.1 CA=750 P=500',
  },
  {
    name: 'Zusatzstoffe je kg',
    language: 'de',
    text: 'Zusatzstoffe je kg: Vitamin A (3a672a) 12 000 IE, Vitamin D3 1200 IE, Kupfer (als Kupfer(II)-sulfat, Pentahydrat) 8 mg, Zink 60 mg',
    figures: 'VITA_IU>=1200 VITD_IU>=120 CU>=0.8 ZN>=6',
  },
  {
    name: 'Nährwerttabelle mit zwei Spalten',
    language: 'de',
    text: 'Nährwerte\tpro 100 g\tpro Portion (30 g)\t% NRV*\nEnergie\t1.580 kJ / 377 kcal\t474 kJ / 113 kcal\t6 %\nFett\t4,5 g\t1,4 g\t2 %\ndavon gesättigte Fettsäuren\t0,6 g\t0,2 g\t1 %\nKohlenhydrate\t60 g\t18 g\t7 %\ndavon Zucker\t1,2 g\t0,4 g\t0 %\nBallaststoffe\t9,1 g\t2,7 g\nEiweiß\t12 g\t3,6 g\t7 %\nSalz\t0,25 g\t0,08 g\t1 %',
    figures: 'ENERC_KCAL=377 FAT=4.5 FASAT=0.6 SUGAR=1.2 FIBTG=9.1 PROCNT=12 NA=100 CHOCDF=69.1',
  },
  {
    name: 'Fett mit gesättigten in einer Zeile',
    language: 'de',
    text: 'Je 100 g: Fett 4,5 g, davon gesättigte Fettsäuren 0,6 g; Eiweiß 11,5 g',
    figures: 'FAT=4.5 FASAT=0.6 PROCNT=11.5',
  },
  {
    name: 'in der Trockensubstanz',
    language: 'de',
    text: 'Gehalte in der Trockensubstanz\nRohprotein 20 %\nRohfett 5 %\nFeuchtigkeit 10 %',
    figures: 'PROCNT=18 FAT=4.5 WATER=10',
  },
  {
    name: 'i. Tr. an einem Wert',
    language: 'de',
    text: 'Fett 20 % i. Tr.\nWasser 50 %\nProtein 12 %',
    figures: 'FAT=10 WATER=50 PROCNT=12',
  },
  {
    name: 'i. Tr. ohne Feuchte',
    language: 'de',
    text: 'Rohprotein 20 % i. Tr.\nRohfett 5 %',
    figures: 'FAT=5',
    questions: ['moisture'],
  },
  {
    name: 'mind. und max.',
    language: 'de',
    text: 'Rohprotein mind. 16 %\nRohfett max. 6 %\nRohfaser 8 bis 10 %\nFeuchte höchstens 11,5 %',
    figures: 'PROCNT>=16 FAT<=6 FIBC>=8 FIBC<=10 WATER<=11.5',
  },
  {
    name: 'Kohlenhydrate ohne Ballaststoffe',
    language: 'de',
    text: 'Nährwerte je 100 g\nKohlenhydrate 62 g\nEiweiß 11 g',
    figures: 'PROCNT=11',
    questions: ['carbohydrate'],
  },
  {
    name: 'Kohlenhydrate ohne Ballaststoffe, beantwortet',
    language: 'de',
    text: 'Nährwerte je 100 g\nKohlenhydrate 62 g\nEiweiß 11 g',
    figures: 'PROCNT=11 CHOCDF>=62',
    answers: { carbohydrate: 'without fibre' },
  },
  {
    name: 'Energie nur in kJ',
    language: 'de',
    text: 'Brennwert 1.255,2 kJ je 100 g',
    figures: 'ENERC_KCAL=300',
  },
  {
    name: 'umsetzbare Energie je kg',
    language: 'de',
    text: 'Umsetzbare Energie 3.400 kcal/kg\nRohprotein 17 %',
    figures: 'ENERC_KCAL=340 PROCNT=17',
  },
  {
    name: 'mg/kg, g/kg, ppm und Promille',
    language: 'de',
    text: 'Calcium 8 g/kg\nSelen 0,2 mg/kg\nJod 1 ppm\nNatrium 2 ‰\nMagnesium 1.500 mg/kg',
    figures: 'CA=800 SE=20 ID=100 NA=200 MG=150',
  },
  {
    name: 'Spuren und Buchstaben statt Ziffern',
    language: 'de',
    text: 'je 100 g\nZucker Spuren\nEiweiß 1O,5 g\nSalz 0,5 g',
    figures: 'NA=200',
    unread: [1, 2],
  },
  {
    name: 'Schweizer Tausender',
    language: 'de',
    text: "Vitamin A 12'000 IE/kg\nRohasche 4 %",
    figures: 'VITA_IU=1200 ASH=4',
  },
];
