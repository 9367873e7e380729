/** What is said of an additive, by its id in Dutch. Sources stand beside the list itself. */
import type { AdditiveTexts } from '../en/additive-texts.ts';

const SUGAR =
  'Toegevoegde suiker voorziet in geen behoefte van een hamster; goudhamsters met 60 % vruchtensuiker in het voer verdroegen suiker daarna slecht. Wat een paar procent doet is niet onderzocht.';
const DYE =
  'Een kleurstof dient alleen het oog van de koper. Schade aan hamsters bij gewone hoeveelheden is niet aangetoond. In een goed mengsel zit ze niet.';
const ANTIOXIDANT =
  'Een kunstmatige antioxidant; schade aan hamsters bij gewone hoeveelheden is niet aangetoond.';
const BULK = 'Brengt vulling en vezel en verder weinig; je betaalt er de prijs van graan voor.';
const GROUP = 'Een groepsnaam: wat erachter zit kan per pak verschillen.';

export const ADDITIVE_TEXTS: AdditiveTexts = {
  sugar: {
    name: 'suiker',
    why: SUGAR,
  },
  glucose: {
    name: 'glucose, dextrose of glucosestroop',
    why: SUGAR,
  },
  fructose: {
    name: 'vruchtensuiker',
    why: SUGAR,
  },
  molasses: {
    name: 'melasse',
    why: SUGAR,
  },
  honey: {
    name: 'honing',
    why: SUGAR,
  },
  syrup: {
    name: 'stroop',
    why: SUGAR,
  },
  'cane-juice': {
    name: 'rietsap of panela',
    why: SUGAR,
  },
  caramel: {
    name: 'karamel',
    why: 'Karamel is gekookte suiker; als kleurstof (E 150) gaat er maar een spoortje in. In een goed mengsel zit het niet.',
  },
  maltodextrin: {
    name: 'maltodextrine',
    why: 'Maltodextrine is in stukjes geknipt zetmeel en werkt op de bloedsuiker bijna als suiker.',
  },
  'juice-concentrate': {
    name: 'vruchtensapconcentraat',
    why: 'Ingekookt sap is vooral suiker, van welk fruit ook.',
  },
  tartrazine: {
    name: 'tartrazine (geel)',
    why: 'De Europese Unie staat tartrazine toe voor kleine knaagdieren; het dient alleen het oog van de koper. In een goed mengsel zit het niet.',
  },
  'quinoline-yellow': {
    name: 'chinolinegeel',
    why: DYE,
  },
  'sunset-yellow': {
    name: 'zonnegeel',
    why: 'De Europese Unie staat zonnegeel toe voor kleine knaagdieren, en tot 750 mg per kilogram voer gold voor hen als veilig; het dient alleen het oog van de koper. In een goed mengsel zit het niet.',
  },
  azorubine: {
    name: 'azorubine (rood)',
    why: DYE,
  },
  'amaranth-dye': {
    name: 'amarant (rode kleurstof, niet het graan)',
    why: DYE,
  },
  ponceau: {
    name: 'ponceau 4R (rood)',
    why: DYE,
  },
  erythrosine: {
    name: 'erytrosine (rood)',
    why: 'Meer dan de helft van erytrosine is jodium. Voor katten gold de gevraagde hoeveelheid als niet veilig; naar hamsters is niet gekeken. In een goed mengsel zit het niet.',
  },
  'allura-red': {
    name: 'allurarood',
    why: 'Beoordeeld voor kleine huisdieren; het dient alleen het oog van de koper. In een goed mengsel zit het niet.',
  },
  'patent-blue': {
    name: 'patentblauw',
    why: DYE,
  },
  indigotine: {
    name: 'indigotine (blauw)',
    why: DYE,
  },
  'brilliant-blue': {
    name: 'briljantblauw',
    why: DYE,
  },
  'green-s': {
    name: 'groen S',
    why: DYE,
  },
  'brilliant-black': {
    name: 'briljantzwart',
    why: DYE,
  },
  'brown-ht': {
    name: 'bruin HT',
    why: DYE,
  },
  'titanium-dioxide': {
    name: 'titaandioxide (wit)',
    why: 'De Europese Unie staat het in voedsel en voer niet meer toe. In een goed mengsel zit het niet.',
  },
  'artificial-colours': {
    name: 'kunstmatige kleurstoffen',
    why: 'Welke kleurstoffen staat er niet. In een goed mengsel zitten ze niet.',
  },
  colourants: {
    name: 'kleurstoffen, niet genoemd',
    why: 'Een Europees voeretiket mag alleen de groep noemen, dus er kan een kleurstof achter zitten; vraag de maker welke.',
  },
  bha: {
    name: 'BHA (butylhydroxyanisol)',
    why: 'Bij 1 % van het voer liet BHA het slijmvlies van de voormaag van goudhamsters woekeren; voer bevat hoogstens 150 mg per kilogram, wat toen voor alle soorten behalve katten als veilig gold. In een goed mengsel zit het niet.',
  },
  bht: {
    name: 'BHT (butylhydroxytolueen)',
    why: 'BHT gold voor kippen en varkens bij 150 mg per kilogram voer als veilig; voor andere soorten ontbraken gegevens. In een goed mengsel zit het niet.',
  },
  ethoxyquin: {
    name: 'ethoxyquine',
    why: 'De Europese Unie schortte ethoxyquine in voer in 2017 op en wees het in 2022 af: de veiligheid was niet aan te tonen, en een afbraakproduct kan het erfelijk materiaal schaden. In een goed mengsel zit het niet.',
  },
  'propyl-gallate': {
    name: 'propylgallaat',
    why: ANTIOXIDANT,
  },
  tbhq: {
    name: 'TBHQ',
    why: ANTIOXIDANT,
  },
  sorbate: {
    name: 'sorbinezuur of kaliumsorbaat',
    why: 'Geldt voor alle diersoorten tot 3400 mg kaliumsorbaat per kilogram voer als veilig; een droog mengsel heeft het nauwelijks nodig.',
  },
  benzoate: {
    name: 'benzoëzuur of benzoaten',
    why: 'Een conserveermiddel voor vochtig voer; een droog mengsel heeft het nauwelijks nodig.',
  },
  sulphite: {
    name: 'sulfieten',
    why: 'Sulfieten houden gedroogd fruit helder en breken thiamine (vitamine B1) af.',
  },
  nitrite: {
    name: 'natrium- of kaliumnitriet',
    why: 'Nitriet bindt de zuurstofdrager in het bloed en hoort niet in een droog mengsel.',
  },
  propionate: {
    name: 'propionzuur of propionaten',
    why: 'Een schimmelremmer, veilig voor zover bekend; het kan op vochtige opslag wijzen.',
  },
  'propylene-glycol': {
    name: 'propyleenglycol',
    why: 'Het houdt zacht voer vochtig en remt schimmel. Bij katten schaadt het de rode bloedcellen, en in hun voer is het in de Verenigde Staten niet toegestaan; over hamsters is niets gevonden, en ze hebben het niet nodig.',
  },
  'permitted-additives': {
    name: 'toegelaten toevoegingen, niet genoemd',
    why: 'Achter de groepsnaam kan BHA, BHT of een kleurstof zitten; vraag de maker welke.',
  },
  preservatives: {
    name: 'conserveermiddelen, niet genoemd',
    why: 'Achter de groepsnaam kan BHA of BHT zitten; vraag de maker welke.',
  },
  hulls: {
    name: 'doppen, vliezen of schillen',
    why: BULK,
  },
  straw: {
    name: 'stro of stromeel',
    why: BULK,
  },
  middlings: {
    name: 'maalresten',
    why: 'Wat overblijft bij het malen van meel: tussen zemelen en meel, eetbaar maar goedkoop.',
  },
  'cereal-by-products': {
    name: 'graanbijproducten',
    why: 'Welke staat er niet: zemelen, vliezen, maalresten of draf.',
  },
  'bakery-by-products': {
    name: 'bakkerijbijproducten',
    why: 'Oud brood en koekjes, met hun zout, suiker en vet.',
  },
  cellulose: {
    name: 'cellulosepoeder',
    why: 'Gezuiverde plantenvezel: onschadelijke vulling.',
  },
  'cob-meal': {
    name: 'maïsspilmeel',
    why: BULK,
  },
  'beet-pulp': {
    name: 'suikerbietenpulp',
    why: 'Wat van de biet overblijft als de suiker eruit is: vooral vezel, met een paar procent suiker. Pulp zonder melasse bevat geen toegevoegde suiker.',
  },
  'vegetable-derivatives': {
    name: 'plantaardige bijproducten',
    why: GROUP,
  },
  'animal-derivatives': {
    name: 'vlees en dierlijke bijproducten',
    why: GROUP,
  },
  'by-products': {
    name: 'bijproducten',
    why: GROUP,
  },
  flavourings: {
    name: 'aroma’s, niet genoemd',
    why: 'Toegevoegd voor de smaak; welke staat er niet.',
  },
};
