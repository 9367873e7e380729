/** Tables as keepers write them, all invented, with what they mean. */
import type { Cell } from '../../../src/household/exchange/table/grid.ts';
import type { Tag } from '../../../src/nutrition/nutrients.ts';

export interface InventedTable {
  readonly what: string;
  /** Text as pasted or in a CSV file; or cells of a sheet. */
  readonly text?: string;
  readonly cells?: readonly (readonly Cell[])[];
  /** What must be asked, by id; other questions than these are a fault. */
  readonly answers: Readonly<Record<string, string>>;
  readonly rows: readonly InventedRow[];
  /** Sum of the shares where it is told. */
  readonly offHundred?: number;
}

export interface InventedRow {
  readonly name: string;
  readonly share?: number;
  readonly group?: string;
  readonly price?: number;
  readonly values?: Partial<Record<Tag, number>>;
  readonly low?: Partial<Record<Tag, number>>;
  readonly high?: Partial<Record<Tag, number>>;
}

const FED = { basis: 'as fed' } as const;

export const TABLES: readonly InventedTable[] = [
  {
    what: 'English, commas, quoted names, percent signs, a row of totals',
    text: 'Food,Share %,Crude protein %,Crude fat %,Crude fibre %\n"Oats, rolled",40%,11.5%,6.9%,10%\nPeas,30%,24%,1.5%,5.5%\n"Carrot\nflakes",30%,7%,2%,12%\nTotal,100%,,,\n',
    answers: FED,
    rows: [
      { name: 'Oats, rolled', share: 40, values: { PROCNT: 11.5, FAT: 6.9, FIBC: 10 } },
      { name: 'Peas', share: 30, values: { PROCNT: 24, FAT: 1.5, FIBC: 5.5 } },
      { name: 'Carrot flakes', share: 30, values: { PROCNT: 7, FAT: 2, FIBC: 12 } },
    ],
  },
  {
    what: 'German, semicolons, decimal commas, dry matter with moisture, prices, groups',
    text: '\ufeffFuttermittel;Anteil (%);Rohprotein (% TS);Rohfett (% TS);Rohfaser (% TS);Feuchte (%);Preis €/kg;Gruppe\r\nHafer;40,5;12,5;6,9;10,2;11;1,20;Getreide\r\nErbsen;30;25;1,5;5,5;12;2,5;Hülsenfrüchte\r\nMöhre;29,5;-;2;k.A.;10;;Gemüse\r\nSumme;100;;;;;;\r\n',
    answers: {},
    rows: [
      {
        name: 'Hafer',
        share: 40.5,
        group: 'seed',
        price: 1.2,
        values: { PROCNT: 11.125, FAT: 6.141, FIBC: 9.078, WATER: 11 },
      },
      {
        name: 'Erbsen',
        share: 30,
        group: 'legume',
        price: 2.5,
        values: { PROCNT: 22, FAT: 1.32, FIBC: 4.84, WATER: 12 },
      },
      { name: 'Möhre', share: 29.5, group: 'vegetable', values: { FAT: 1.8, WATER: 10 } },
    ],
  },
  {
    what: 'Dutch, tabs, grams, a title that says per 100 g, signs of the elements without a unit',
    text: 'Mijn mengsel, per 100 g\n\nGrondstof\tGram\tRuw eiwit\tRuw vet\tRuwe celstof\tCa\tP\nHaver\t120\t11,5\t6,9\t10\t54\t380\nErwten\t80\t24,1\t1,5\t5\t60\t390\nTotaal\t200',
    answers: { ...FED, unit: 'mg' },
    rows: [
      { name: 'Haver', share: 60, values: { PROCNT: 11.5, FAT: 6.9, FIBC: 10, CA: 54, P: 380 } },
      { name: 'Erwten', share: 40, values: { PROCNT: 24.1, FAT: 1.5, FIBC: 5, CA: 60, P: 390 } },
    ],
  },
  {
    what: 'French, parts of one, abbreviations of feed tables of which one means two things',
    text: 'Aliment;Part;MAT (%);MG (%);CB (%)\nAvoine;0,4;11;6;10\nPois;0,6;23;1,3;6',
    answers: { ...FED, 'share-means': 'fraction', 'column 3': 'FAT' },
    rows: [
      { name: 'Avoine', share: 40, values: { PROCNT: 11, FAT: 6, FIBC: 10 } },
      { name: 'Pois', share: 60, values: { PROCNT: 23, FAT: 1.3, FIBC: 6 } },
    ],
  },
  {
    what: 'Spanish, upright bars, fibre that does not say which, no word on what figures are per',
    text: '| Ingrediente | Proporción | Proteína bruta | Fibra | Calcio |\n|---|---|---|---|---|\n| Avena | 50 % | 11 g | 10 g | 54 mg |\n| Guisante | 50 % | 24 g | 5 g | 60 mg |',
    answers: { ...FED, 'column 4': 'FIBC', per: '100' },
    rows: [
      { name: 'Avena', share: 50, values: { PROCNT: 11, FIBC: 10, CA: 54 } },
      { name: 'Guisante', share: 50, values: { PROCNT: 24, FIBC: 5, CA: 60 } },
    ],
  },
  {
    what: 'no line of headings',
    text: 'Oats\t40\t11.5\nPeas\t60\t24',
    answers: {
      ...FED,
      'column 0': 'name',
      'column 1': 'share',
      'column 2': 'PROCNT',
      per: '100',
      protein: 'crude',
    },
    rows: [
      { name: 'Oats', share: 40, values: { PROCNT: 11.5 } },
      { name: 'Peas', share: 60, values: { PROCNT: 24 } },
    ],
  },
  {
    what: 'two tables in one sheet, of which the second is wanted',
    text: 'Winter\n\nFood;Share %;Crude protein %\nOats;50;11\nPeas;50;23\n\nSummer\nFood;Share %;Crude protein %\nBarley;70;10\nLentils;30;25',
    answers: { ...FED, table: '1' },
    rows: [
      { name: 'Barley', share: 70, values: { PROCNT: 10 } },
      { name: 'Lentils', share: 30, values: { PROCNT: 25 } },
    ],
  },
  {
    what: 'two tables side by side',
    cells: [
      ['Food', 'Share %', 'Fat %', '', 'Food', 'Share %', 'Fat %'],
      ['Oats', 50, 7, '', 'Barley', 100, 2],
      ['Peas', 50, 1.5],
    ],
    answers: { ...FED, table: '0' },
    rows: [
      { name: 'Oats', share: 50, values: { FAT: 7 } },
      { name: 'Peas', share: 50, values: { FAT: 1.5 } },
    ],
  },
  {
    what: 'units on a line of their own under merged headings',
    cells: [
      ['Food', 'Share', 'Per 100 g as fed', '', '', ''],
      ['', '', 'Crude protein', 'Crude fat', 'Calcium', 'Energy'],
      ['', '%', 'g', 'g', 'mg', 'kJ'],
      ['Oats', 60, 11.5, 6.9, 54, 1569],
      ['Peas', 40, 24, 1.5, 55, 1464.4],
    ],
    answers: {},
    rows: [
      { name: 'Oats', share: 60, values: { PROCNT: 11.5, FAT: 6.9, CA: 54, ENERC_KCAL: 375 } },
      { name: 'Peas', share: 40, values: { PROCNT: 24, FAT: 1.5, CA: 55, ENERC_KCAL: 350 } },
    ],
  },
  {
    what: 'percents of a spreadsheet, which are parts of one',
    cells: [
      ['Food', 'Share %', 'Crude protein %', 'Crude fat %'],
      ['Oats', 0.6, 0.115, 0.069],
      ['Peas', 0.4, 0.24, 0.015],
      ['Total', 1],
    ],
    answers: { ...FED, 'share-means': 'fraction', fraction: 'fraction' },
    rows: [
      { name: 'Oats', share: 60, values: { PROCNT: 11.5, FAT: 6.9 } },
      { name: 'Peas', share: 40, values: { PROCNT: 24, FAT: 1.5 } },
    ],
  },
  {
    what: 'thousands and decimals of three digits',
    text: 'Food;Grams;Vitamin A (IU/kg);Crude protein (g/kg)\nOats;1.200;2.500;115,5\nPeas;800;12.345,5;240',
    answers: { ...FED, mark: 'thousands' },
    rows: [
      { name: 'Oats', share: 60, values: { VITA_IU: 250, PROCNT: 11.55 } },
      { name: 'Peas', share: 40, values: { VITA_IU: 1234.55, PROCNT: 24 } },
    ],
  },
  {
    what: 'amounts in other weights, bounds and what is not known',
    text: 'Food\tCrude protein\tCrude fat\tCrude fibre\tCalcium\nOats\t6,25 g/250 g\t<0,5 %\tmin. 3 %\tn/a\nPeas\t24 %\t1-2 %\t\t0,1 %\nLinseed\t18 %\ttr\t?\t0 %',
    answers: FED,
    rows: [
      { name: 'Oats', values: { PROCNT: 2.5 }, high: { FAT: 0.5 }, low: { FIBC: 3 } },
      { name: 'Peas', values: { PROCNT: 24, CA: 100 }, low: { FAT: 1 }, high: { FAT: 2 } },
      { name: 'Linseed', values: { PROCNT: 18, CA: 0 } },
    ],
  },
  {
    what: 'least and most in columns of their own',
    text: 'Food;Crude protein min (%);Crude fat max (%)\nOats;11;7\nPeas;23;2',
    answers: FED,
    rows: [
      { name: 'Oats', low: { PROCNT: 11 }, high: { FAT: 7 } },
      { name: 'Peas', low: { PROCNT: 23 }, high: { FAT: 2 } },
    ],
  },
  {
    what: 'what each food brings to the mix, as the row of sums shows',
    text: 'Food,Share %,Crude protein %,Crude fat %\nOats,50,6,3.5\nPeas,30,7.5,0.6\nMealworm,20,10,6\nTotal,100,23.5,10.1',
    answers: { ...FED, per: 'mix' },
    rows: [
      { name: 'Oats', share: 50, values: { PROCNT: 12, FAT: 7 } },
      { name: 'Peas', share: 30, values: { PROCNT: 25, FAT: 2 } },
      { name: 'Mealworm', share: 20, values: { PROCNT: 50, FAT: 30 } },
    ],
  },
  {
    what: 'amounts in the grams of each row',
    text: 'Zutat;Menge (g);Rohprotein (g);Rohfett (g)\nHafer;50;6;3,5\nErbsen;150;36;3',
    answers: { ...FED, per: 'row' },
    rows: [
      { name: 'Hafer', share: 25, values: { PROCNT: 12, FAT: 7 } },
      { name: 'Erbsen', share: 75, values: { PROCNT: 24, FAT: 2 } },
    ],
  },
  {
    what: 'sections by group, and headings again on the second page',
    text: 'Lebensmittel;Anteil %;Rohfett %\nGetreide;;\nHafer;50;7\nHirse;20;4\nLebensmittel;Anteil %;Rohfett %\nHülsenfrüchte;;\nErbsen;30;1,5',
    answers: FED,
    rows: [
      { name: 'Hafer', share: 50, group: 'seed', values: { FAT: 7 } },
      { name: 'Hirse', share: 20, group: 'seed', values: { FAT: 4 } },
      { name: 'Erbsen', share: 30, group: 'legume', values: { FAT: 1.5 } },
    ],
  },
  {
    what: 'one name twice, which is one food',
    text: 'Food,Share %,Crude fat %\nOats,30,7\nPeas,40,1.5\noats,30,7',
    answers: { ...FED, same: 'add' },
    rows: [
      { name: 'Oats', share: 60, values: { FAT: 7 } },
      { name: 'Peas', share: 40, values: { FAT: 1.5 } },
    ],
  },
  {
    what: 'shares that do not come to 100',
    text: 'Food,Share %,Crude fat %\nOats,30,7\nPeas,40,1.5',
    answers: FED,
    offHundred: 70,
    rows: [
      { name: 'Oats', share: 30, values: { FAT: 7 } },
      { name: 'Peas', share: 40, values: { FAT: 1.5 } },
    ],
  },
  {
    what: 'a sum under a name of its own',
    text: 'Food,Grams,Crude fat %\nOats,60,7\nPeas,30,1.5\nMillet,10,4\nBowl,100,',
    answers: { ...FED, sum: 'total' },
    rows: [
      { name: 'Oats', share: 60, values: { FAT: 7 } },
      { name: 'Peas', share: 30, values: { FAT: 1.5 } },
      { name: 'Millet', share: 10, values: { FAT: 4 } },
    ],
  },
  {
    what: 'dry matter instead of moisture, salt, carbohydrate without fibre',
    text: 'Food;Dry matter (%);Salt (g/100 g);Carbohydrate (g/100 g);Dietary fibre (g/100 g)\nOats;89;0,02;58,7;10,6\nPeas;88;;42;16',
    answers: { ...FED, 'column 3': 'net-carbohydrate' },
    rows: [
      { name: 'Oats', values: { WATER: 11, NA: 8, CHOCDF: 69.3, FIBTG: 10.6 } },
      { name: 'Peas', values: { WATER: 12, CHOCDF: 58, FIBTG: 16 } },
    ],
  },
  {
    what: 'columns that are parted by spaces, empty cells at the end, kilograms',
    text: 'Food          Weight     Crude fat %\nOats          0.6 kg     7\nPeas          0.4 kg     1.5\nMillet        1.5 kg',
    answers: FED,
    rows: [
      { name: 'Oats', share: 24, values: { FAT: 7 } },
      { name: 'Peas', share: 16, values: { FAT: 1.5 } },
      { name: 'Millet', share: 60 },
    ],
  },
  {
    what: 'a note column and an unknown one, which is left out when asked',
    text: 'Nr;Food;Share %;Crude fat %;Crunch;Notes\n1;Oats;60;7;loud;=SUM(A1)\n2;Peas;40;1.5;soft;',
    answers: { ...FED, 'column 4': 'none' },
    rows: [
      { name: 'Oats', share: 60, values: { FAT: 7 } },
      { name: 'Peas', share: 40, values: { FAT: 1.5 } },
    ],
  },
  {
    what: 'a dry-matter table without moisture, which is asked',
    text: 'Analysis on a dry matter basis\nFood;Crude protein %\nOats;12.5\nPeas;25',
    answers: { moisture: '10' },
    rows: [
      { name: 'Oats', values: { PROCNT: 11.25 } },
      { name: 'Peas', values: { PROCNT: 22.5 } },
    ],
  },
  {
    what: 'protein as a food table prints it: known within a range',
    text: 'Food,Protein %\nOats,12\nPeas,24',
    answers: { ...FED, protein: 'unsaid' },
    rows: [
      { name: 'Oats', low: { PROCNT: 11.75548589 }, high: { PROCNT: 14.47876448 } },
      { name: 'Peas', low: { PROCNT: 23.51097179 }, high: { PROCNT: 28.95752896 } },
    ],
  },
  {
    what: 'weights in kilograms with amounts in the row, and a total in brackets',
    text: 'Ingredient;Weight (kg);Crude protein (g)\nOats;0,6;72\nPeas;0,4;96\nTotal (kg);1;',
    answers: { ...FED, per: 'row' },
    rows: [
      { name: 'Oats', share: 60, values: { PROCNT: 12 } },
      { name: 'Peas', share: 40, values: { PROCNT: 24 } },
    ],
  },
  {
    what: 'weights of several units under a heading that says shares',
    text: 'Food,Part,Crude fat %\nOats,60 g,7\nPeas,40 g,1.5',
    answers: { ...FED, 'share-means': 'parts' },
    rows: [
      { name: 'Oats', share: 60, values: { FAT: 7 } },
      { name: 'Peas', share: 40, values: { FAT: 1.5 } },
    ],
  },
  {
    what: 'two columns of protein, of which one counts, and the tag of a food table',
    text: 'Food;PROCNT (g/100 g);Crude protein (%);Moisture (%);Dry matter (%)\nOats;11;11,5;11;89\nPeas;23;24;12;88',
    answers: { ...FED, twice: '2', protein: 'crude' },
    rows: [
      { name: 'Oats', values: { PROCNT: 11.5, WATER: 11 } },
      { name: 'Peas', values: { PROCNT: 24, WATER: 12 } },
    ],
  },
  {
    what: 'a weight in the heading that may be one gram or a thousand',
    text: 'Food;Crude protein (g per 1.000 g)\nOats;115\nPeas;240',
    answers: { ...FED, per: '1000' },
    rows: [
      { name: 'Oats', values: { PROCNT: 11.5 } },
      { name: 'Peas', values: { PROCNT: 24 } },
    ],
  },
];
