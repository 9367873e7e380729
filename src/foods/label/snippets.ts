/**
 * Labels as keepers paste them, every brand and figure invented, each with what must be read from it.
 * `figures`: "PROCNT=17 FAT>=4 FAT<=6", per 100 g as fed in the unit of the tagname; nothing else may be read.
 * `questions`: ids, in order. `unread`: indexes of unread lines. `missed`: lines that were read but for a part.
 */
import type { Language } from './reading.ts';

interface Snippet {
  readonly name: string;
  readonly language: Language | undefined;
  readonly text: string;
  readonly figures: string;
  readonly questions?: readonly string[];
  readonly unread?: readonly number[];
  readonly missed?: readonly number[];
  readonly answers?: Readonly<Record<string, string>>;
}

const english: readonly Snippet[] = [
  {
    name: 'pellet, one line',
    language: 'en',
    text: 'Burrowell Pellets. Analytical constituents: crude protein 17 %, crude fat 5.5 %, crude fibre 8 %, crude ash 4.2 %',
    figures: 'PROCNT=17 FAT=5.5 FIBC=8 ASH=4.2',
  },
  {
    name: 'guaranteed analysis with leaders and bounds',
    language: 'en',
    text: 'GUARANTEED ANALYSIS\nCrude Protein (min.) ........ 17.0 %\nCrude Fat (min) ............. 4.5%\nCrude Fiber (max) 9.0%\nMoisture, max. 12 %',
    figures: 'PROCNT>=17 FAT>=4.5 FIBC<=9 WATER<=12',
  },
  {
    name: 'bounds in words',
    language: 'en',
    text: 'Crude Protein not less than 15 %\nCrude Fat not more than 6 %\nAsh at most 5%\nCalcium 0.6 % minimum\nPhosphorus min 0.4 % max 0.6 %',
    figures: 'PROCNT>=15 FAT<=6 ASH<=5 CA>=600 P>=400 P<=600',
  },
  {
    name: 'US panel',
    language: 'en',
    text: 'Nutrition Facts\nServings per container 8\nServing size 1/2 cup (40g)\nAmount per serving\nCalories 150\n% Daily Value*\nTotal Fat 3g 4%\nSaturated Fat 0.5g 3%\nTrans Fat 0g\nCholesterol 0mg 0%\nSodium 80mg 3%\nTotal Carbohydrate 27g 10%\nDietary Fiber 4g 14%\nTotal Sugars 1g\nProtein 5g\nIron 1.6mg 8%\nPotassium 140mg 2%',
    figures:
      'ENERC_KCAL=375 FAT=7.5 FASAT=1.25 CHOLE=0 NA=200 CHOCDF=67.5 FIBTG=10 SUGAR=2.5 PROCNT=12.5 FE=4 K=350',
    unread: [8],
  },
  {
    name: 'UK table with two columns and reference intakes',
    language: 'en',
    text: 'Typical values\tper 100g\tper 30g serving\t% RI*\nEnergy\t1580kJ/377kcal\t474kJ/113kcal\t6%\nFat\t6.5g\t2.0g\t3%\nof which saturates\t1.1g\t0.3g\t2%\nCarbohydrate\t60g\t18g\t7%\nof which sugars\t1.0g\t0.3g\t<1%\nDietary fibre\t9.0g\t2.7g\t\nProtein\t11g\t3.3g\t7%\nSalt\t0.05g\t0.02g\t<1%\n*Reference intake of an average adult',
    figures: 'ENERC_KCAL=377 FAT=6.5 FASAT=1.1 SUGAR=1 FIBTG=9 PROCNT=11 NA=20 CHOCDF=69',
  },
  {
    name: 'columns that contradict each other',
    language: 'en',
    text: 'Typical values\tper 100 g\tper 25 g serving\nProtein\t20 g\t5 g\nFat\t8 g\t6 g',
    figures: 'PROCNT=20',
    questions: ['differ:FAT:value'],
  },
  {
    name: 'columns that contradict each other, answered',
    language: 'en',
    text: 'Typical values\tper 100 g\tper 25 g serving\nProtein\t20 g\t5 g\nFat\t8 g\t6 g',
    figures: 'PROCNT=20 FAT=8',
    answers: { 'differ:FAT:value': '0' },
  },
  { name: 'inline quantity', language: undefined, text: 'protein 6.25 g per 250 g', figures: 'PROCNT=2.5' },
  {
    name: 'no quantity at all',
    language: 'en',
    text: 'Protein 12 g\nFat 4 g',
    figures: '',
    questions: ['per'],
  },
  {
    name: 'no quantity at all, answered',
    language: 'en',
    text: 'Protein 12 g\nFat 4 g',
    figures: 'PROCNT=24 FAT=8',
    answers: { per: '50' },
  },
  {
    name: 'fibre of no kind',
    language: 'en',
    text: 'Protein 17 %, fat 5 %, fibre 8 %',
    figures: 'PROCNT=17 FAT=5',
    questions: ['name:fibre'],
  },
  {
    name: 'fibre of no kind, answered',
    language: 'en',
    text: 'Protein 17 %, fat 5 %, fibre 8 %',
    figures: 'PROCNT=17 FAT=5 FIBC=8',
    answers: { 'name:fibre': 'FIBC' },
  },
  {
    name: 'serving without grams',
    language: 'en',
    text: 'Amount per serving\nProtein 5 g\nDietary fiber 3 g',
    figures: '',
    questions: ['serving'],
  },
  {
    name: 'serving without grams, answered',
    language: 'en',
    text: 'Amount per serving\nProtein 5 g\nDietary fiber 3 g',
    figures: 'PROCNT=12.5 FIBTG=7.5',
    answers: { serving: '40' },
  },
  {
    name: 'additives per kg',
    language: 'en',
    text: 'Nutritional additives per kg: vitamin A (3a672a) 12 000 IU, vitamin D3 1200 IU, vitamin E 80 mg, copper (as copper(II) sulphate pentahydrate) 8 mg, iodine (3b202) 1.5 mg',
    figures: 'VITA_IU=1200 VITD_IU=120 TOCPHA=8 CU=0.8 ID=150',
  },
  {
    name: 'dry matter with moisture printed',
    language: 'en',
    text: 'Typical analysis (dry matter basis)\nProtein 20 %\nFat 5 %\nMoisture 10 %',
    figures: 'PROCNT=18 FAT=4.5 WATER=10',
  },
  {
    name: 'dry matter without moisture',
    language: 'en',
    text: 'Protein 20 % in dry matter, fat 5 % in dry matter',
    figures: '',
    questions: ['moisture'],
  },
  {
    name: 'dry matter without moisture, answered',
    language: 'en',
    text: 'Protein 20 % in dry matter, fat 5 % in dry matter',
    figures: 'PROCNT=17.6 FAT=4.4',
    answers: { moisture: '12' },
  },
  {
    name: 'thousand or decimal',
    language: undefined,
    text: 'per 1 kg\nCalcium 1,234 mg',
    figures: '',
    questions: ['number:1:1,234'],
  },
  {
    name: 'thousand or decimal, settled by the label',
    language: 'en',
    text: 'per 1 kg\nCalcium 1,234 mg\nIron 35.5 mg',
    figures: 'CA=123.4 FE=3.55',
  },
  {
    name: 'scan errors',
    language: 'en',
    text: 'per 100 g\nProtein l2 g\nFat O.5 g\nAsh 4 g',
    figures: 'ASH=4',
    unread: [1, 2],
  },
  {
    name: 'traces, less than, about, range, fractions',
    language: 'en',
    text: 'per 100 g\nSugars traces\nSalt <0.1 g\nFat approx. 4 g\nProtein 14-16 g\nStarch 40½ g',
    figures: 'NA<=40 NA>=0 FAT=4 PROCNT>=14 PROCNT<=16 STARCH=40.5',
    unread: [1],
  },
  {
    name: 'no tagname',
    language: 'en',
    text: 'per 100 g: omega-3 2.1 g; NFE 52 g; choline 120 mg; taurine 0.1 g',
    figures: 'CHOLN=120',
    missed: [0],
  },
  {
    name: 'vitamin digit set apart',
    language: undefined,
    text: 'per kg\nVitamin D 3 200 IU\nVitamin D3 1200 IU',
    figures: 'VITD_IU=120',
    unread: [1],
  },
  {
    name: 'an ingredient list is no analysis',
    language: 'en',
    text: 'Composition: oats (30 %), pea protein 12 %, dried carrots 5 %, vegetable fat 2 %\nProtein 15 %',
    figures: 'PROCNT=15',
    unread: [0],
  },
  {
    name: 'per 100 ml',
    language: 'en',
    text: 'Typical values per 100 ml\nProtein 3 g',
    figures: '',
    questions: ['volume:per 100 ml'],
  },
  {
    name: 'carbohydrate unsettled',
    language: 'en',
    text: 'per 100 g: protein 12 g, carbohydrate 60 g, dietary fibre 9 g',
    figures: 'PROCNT=12 FIBTG=9',
    questions: ['carbohydrate'],
  },
  {
    name: 'kJ and kcal apart',
    language: 'en',
    text: 'per 100 g\nEnergy 1580 kJ / 477 kcal\nProtein 12 g',
    figures: 'PROCNT=12',
    questions: ['differ:ENERC_KCAL:value'],
  },
  {
    name: 'full-width digits and no-break spaces',
    language: 'en',
    text: 'per\u00a0１００\u00a0g\nProtein\u00a0１２．５\u2009g\nFat ４ g',
    figures: 'PROCNT=12.5 FAT=4',
  },
];

const german: readonly Snippet[] = [
  {
    name: 'zwei Abschnitte mit eigener Menge',
    language: 'de',
    text: 'Nährwerte je 100 g: Eiweiß 12 g, Fett 5,5 g\nZusatzstoffe/kg: Vitamin A (E672) 12.000 I.E., Zink (Zinkoxid) 60 mg\nErnährungsphysiologische Zusatzstoffe pro kg: Kupfer 8 mg\nCalcium 0,9 %',
    figures: 'PROCNT=12 FAT=5.5 VITA_IU=1200 ZN=6 CU=0.8 CA=900',
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
    figures: 'VITA_IU=1200 VITD_IU=120 CU=0.8 ZN=6',
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

const french: readonly Snippet[] = [
  {
    name: 'constituants analytiques',
    language: 'fr',
    text: 'Constituants analytiques : protéines brutes 17 %, matières grasses brutes 5,5 %, cellulose brute 8 %, cendres brutes 4,2 %, calcium 0,8 %',
    figures: 'PROCNT=17 FAT=5.5 FIBC=8 ASH=4.2 CA=800',
  },
  {
    name: 'tableau nutritionnel',
    language: 'fr',
    text: 'Valeurs nutritionnelles moyennes pour 100 g\nÉnergie 1 580 kJ / 377 kcal\nMatières grasses 6,5 g\ndont acides gras saturés 1,1 g\nGlucides 60 g\ndont sucres 1 g\nFibres alimentaires 9 g\nProtéines 11 g\nSel 0,05 g',
    figures: 'ENERC_KCAL=377 FAT=6.5 FASAT=1.1 CHOCDF=69 SUGAR=1 FIBTG=9 PROCNT=11 NA=20',
  },
  {
    name: 'par portion de 30 g',
    language: 'fr',
    text: 'Par portion de 30 g\nProtéines 3,3 g\nLipides 1,5 g',
    figures: 'PROCNT=11 FAT=5',
  },
  {
    name: 'sur matière sèche',
    language: 'fr',
    text: 'Analyse moyenne sur matière sèche : protéines brutes 20 % - matières grasses brutes 5 %\nHumidité 10 %',
    figures: 'PROCNT=18 FAT=4.5 WATER=10',
  },
  {
    name: 'fibres sans précision',
    language: 'fr',
    text: 'Protéines 17 % ; matières grasses 5 % ; fibres 8 %',
    figures: 'PROCNT=17 FAT=5',
    questions: ['name:fibre'],
  },
  {
    name: 'additifs par kg',
    language: 'fr',
    text: 'Additifs nutritionnels par kg : vitamine A 12 000 UI, vitamine D3 1 200 UI, vitamine E 80 mg, cuivre (sulfate de cuivre) 8 mg, fer 50 mg',
    figures: 'VITA_IU=1200 VITD_IU=120 TOCPHA=8 CU=0.8 FE=5',
  },
  {
    name: 'minimum et maximum',
    language: 'fr',
    text: 'Protéine brute (min.) 16 %\nMatière grasse brute max. 6 %\nCendres au plus 5 %\nHumidité de 8 à 11 %',
    figures: 'PROCNT>=16 FAT<=6 ASH<=5 WATER>=8 WATER<=11',
  },
  {
    name: 'traces et absence de chiffre',
    language: 'fr',
    text: 'pour 100 g\nsucres traces\nsel\nprotéines 12 g',
    figures: 'PROCNT=12',
    unread: [1, 2],
  },
  {
    name: 'oméga 3 et extrait non azoté',
    language: 'fr',
    text: 'pour 100 g\noméga 3 : 2 g\nextrait non azoté 52 g\namidon 40 g',
    figures: 'STARCH=40',
    unread: [1, 2],
  },
  {
    name: 'VNR à part',
    language: 'fr',
    text: 'Pour 100 g\nVitamine C 12 mg (15 % VNR*)\nFer 2,1 mg (15 % VNR*)\n*Valeurs nutritionnelles de référence',
    figures: 'VITC=12 FE=2.1',
  },
  {
    name: 'espace fine insécable',
    language: 'fr',
    text: 'Pour 100\u202fg\nÉnergie 1\u202f255,2\u202fkJ\nProtéines 11,5\u00a0g',
    figures: 'ENERC_KCAL=300 PROCNT=11.5',
  },
  {
    name: 'une portion sans grammes',
    language: 'fr',
    text: 'Par portion\nProtéines 3 g',
    figures: '',
    questions: ['serving'],
  },
];

const dutch: readonly Snippet[] = [
  {
    name: 'analytische bestanddelen',
    language: 'nl',
    text: 'Analytische bestanddelen: ruw eiwit 17%, ruw vet 5,5%, ruwe celstof 8%, ruwe as 4,2%, fosfor 0,5%',
    figures: 'PROCNT=17 FAT=5.5 FIBC=8 ASH=4.2 P=500',
  },
  {
    name: 'voedingswaarde per 100 g',
    language: 'nl',
    text: 'Voedingswaarde per 100 g\nEnergie 1580 kJ / 377 kcal\nVetten 6,5 g\nwaarvan verzadigde vetzuren 1,1 g\nKoolhydraten 60 g\nwaarvan suikers 1,0 g\nVoedingsvezel 9 g\nEiwitten 11 g\nZout 0,05 g',
    figures: 'ENERC_KCAL=377 FAT=6.5 FASAT=1.1 CHOCDF=69 SUGAR=1 FIBTG=9 PROCNT=11 NA=20',
  },
  {
    name: 'per portie (30 g)',
    language: 'nl',
    text: 'Per portie (30 g)\nEiwitten 3,3 g\nVetten 1,5 g',
    figures: 'PROCNT=11 FAT=5',
  },
  {
    name: 'in de droge stof',
    language: 'nl',
    text: 'In de droge stof: ruw eiwit 20 %, ruw vet 5 %\nVocht 10 %',
    figures: 'PROCNT=18 FAT=4.5 WATER=10',
  },
  {
    name: 'toevoegingsmiddelen',
    language: 'nl',
    text: 'Toevoegingsmiddelen per kg: vitamine A 12.000 IE, vitamine D3 1.200 IE, vitamine E 80,5 mg, koper 8 mg, jodium 1 mg, mangaan 60 mg',
    figures: 'VITA_IU=1200 VITD_IU=120 TOCPHA=8.05 CU=0.8 ID=100 MN=6',
  },
  {
    name: 'duizend of komma',
    language: 'nl',
    text: 'Toevoegingsmiddelen per kg: vitamine A 12.000 IE, ijzer 50 mg',
    figures: 'FE=5',
    questions: ['number:0:12.000'],
  },
  {
    name: 'duizend of komma, beantwoord',
    language: 'nl',
    text: 'Toevoegingsmiddelen per kg: vitamine A 12.000 IE, ijzer 50 mg',
    figures: 'FE=5 VITA_IU=1200',
    answers: { 'number:0:12.000': '12000' },
  },
  {
    name: 'vezels zonder soort',
    language: 'nl',
    text: 'Ruw eiwit 16 %\nVezels 9 %',
    figures: 'PROCNT=16',
    questions: ['name:fibre'],
  },
  {
    name: 'minimaal en maximaal',
    language: 'nl',
    text: 'Ruw eiwit minimaal 16 %\nRuw vet max. 6 %\nVocht 8 tot 11 %',
    figures: 'PROCNT>=16 FAT<=6 WATER>=8 WATER<=11',
  },
  {
    name: 'sporen',
    language: 'nl',
    text: 'per 100 g\nsuikers sporen\nzetmeel 41 g\nvocht 9 g',
    figures: 'STARCH=41 WATER=9',
    unread: [1],
  },
  {
    name: 'tweemaal verschillend',
    language: 'nl',
    text: 'Ruw eiwit 16 %\nRuw vet 5 %\nEiwit 18 %',
    figures: 'FAT=5',
    questions: ['differ:PROCNT:value'],
  },
  {
    name: 'referentie-inname',
    language: 'nl',
    text: 'per 100 g\nVitamine C 12 mg 15% RI\nEiwitten 12 g 24% RI',
    figures: 'VITC=12 PROCNT=12',
  },
];

const spanish: readonly Snippet[] = [
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
    figures: 'VITA_IU=1200 VITD_IU=120 CU=0.8 FE=5 ID=150',
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

export const SNIPPETS: readonly Snippet[] = [...english, ...german, ...french, ...dutch, ...spanish];
