/** What is said of an additive, by its id in German. Sources stand beside the list itself. */
import type { AdditiveTexts } from '../en/additive-texts.ts';

const SUGAR =
  'Zugesetzter Zucker deckt keinen Bedarf eines Hamsters; Goldhamster mit 60 % Fruchtzucker im Futter vertrugen Zucker danach schlecht. Was ein paar Prozent tun, wurde nicht geprüft.';
const DYE =
  'Ein Farbstoff dient nur dem Auge des Käufers. Ein Schaden für Hamster bei üblichen Mengen ist nicht gezeigt. In einer guten Mischung fehlt er.';
const ANTIOXIDANT =
  'Ein künstliches Antioxidans; ein Schaden für Hamster bei üblichen Mengen ist nicht gezeigt.';
const BULK = 'Bringt Masse und Faser und sonst wenig; bezahlt wird es wie Getreide.';
const GROUP = 'Ein Gruppenname: Was dahintersteht, kann von Packung zu Packung wechseln.';

export const ADDITIVE_TEXTS: AdditiveTexts = {
  sugar: {
    name: 'Zucker',
    why: SUGAR,
  },
  glucose: {
    name: 'Glukose, Dextrose oder Glukosesirup',
    why: SUGAR,
  },
  fructose: {
    name: 'Fruchtzucker',
    why: SUGAR,
  },
  molasses: {
    name: 'Melasse',
    why: SUGAR,
  },
  honey: {
    name: 'Honig',
    why: SUGAR,
  },
  syrup: {
    name: 'Sirup',
    why: SUGAR,
  },
  'cane-juice': {
    name: 'Zuckerrohrsaft oder Vollrohrzucker',
    why: SUGAR,
  },
  caramel: {
    name: 'Karamell',
    why: 'Karamell ist gekochter Zucker; als Farbstoff (E 150) wird nur eine Spur zugesetzt. In einer guten Mischung fehlt er.',
  },
  maltodextrin: {
    name: 'Maltodextrin',
    why: 'Maltodextrin ist zerkleinerte Stärke und wirkt auf den Blutzucker fast wie Zucker.',
  },
  'juice-concentrate': {
    name: 'Fruchtsaftkonzentrat',
    why: 'Eingekochter Saft ist vor allem Zucker, aus welchem Obst auch immer.',
  },
  tartrazine: {
    name: 'Tartrazin (gelb)',
    why: 'Die Europäische Union erlaubt Tartrazin für kleine Nager; es dient nur dem Auge des Käufers. In einer guten Mischung fehlt es.',
  },
  'quinoline-yellow': {
    name: 'Chinolingelb',
    why: DYE,
  },
  'sunset-yellow': {
    name: 'Gelborange S',
    why: 'Die Europäische Union erlaubt Gelborange S für kleine Nager, und bis 750 mg je Kilogramm Futter galten für sie als sicher; es dient nur dem Auge des Käufers. In einer guten Mischung fehlt es.',
  },
  azorubine: {
    name: 'Azorubin (rot)',
    why: DYE,
  },
  'amaranth-dye': {
    name: 'Amaranth (roter Farbstoff, nicht das Korn)',
    why: DYE,
  },
  ponceau: {
    name: 'Ponceau 4R (rot)',
    why: DYE,
  },
  erythrosine: {
    name: 'Erythrosin (rot)',
    why: 'Mehr als die Hälfte von Erythrosin ist Jod. Für Katzen galt die beantragte Menge als nicht sicher; Hamster wurden nicht betrachtet. In einer guten Mischung fehlt es.',
  },
  'allura-red': {
    name: 'Allurarot',
    why: 'Für kleine Heimtiere bewertet; es dient nur dem Auge des Käufers. In einer guten Mischung fehlt es.',
  },
  'patent-blue': {
    name: 'Patentblau',
    why: DYE,
  },
  indigotine: {
    name: 'Indigotin (blau)',
    why: DYE,
  },
  'brilliant-blue': {
    name: 'Brillantblau',
    why: DYE,
  },
  'green-s': {
    name: 'Grün S',
    why: DYE,
  },
  'brilliant-black': {
    name: 'Brillantschwarz',
    why: DYE,
  },
  'brown-ht': {
    name: 'Braun HT',
    why: DYE,
  },
  'titanium-dioxide': {
    name: 'Titandioxid (weiß)',
    why: 'Die Europäische Union erlaubt es in Lebens- und Futtermitteln nicht mehr. In einer guten Mischung fehlt es.',
  },
  'artificial-colours': {
    name: 'künstliche Farbstoffe',
    why: 'Welche Farbstoffe, wird nicht gesagt. In einer guten Mischung fehlen sie.',
  },
  colourants: {
    name: 'Farbstoffe, nicht genannt',
    why: 'Ein europäisches Futteretikett darf nur die Gruppe nennen, es kann also ein Farbstoff dahinterstehen; frag den Hersteller, welcher.',
  },
  bha: {
    name: 'BHA (Butylhydroxyanisol)',
    why: 'Bei 1 % im Futter ließ BHA die Vormagenschleimhaut von Goldhamstern wuchern; Futter enthält höchstens 150 mg je Kilogramm, was damals für alle Arten außer Katzen als sicher galt. In einer guten Mischung fehlt es.',
  },
  bht: {
    name: 'BHT (Butylhydroxytoluol)',
    why: 'BHT galt für Hühner und Schweine bei 150 mg je Kilogramm Futter als sicher; für andere Arten fehlten Daten. In einer guten Mischung fehlt es.',
  },
  ethoxyquin: {
    name: 'Ethoxyquin',
    why: 'Die Europäische Union setzte Ethoxyquin im Futter 2017 aus und lehnte es 2022 ab: Die Sicherheit war nicht zu zeigen, und ein Abbauprodukt kann das Erbgut schädigen. In einer guten Mischung fehlt es.',
  },
  'propyl-gallate': {
    name: 'Propylgallat',
    why: ANTIOXIDANT,
  },
  tbhq: {
    name: 'TBHQ',
    why: ANTIOXIDANT,
  },
  sorbate: {
    name: 'Sorbinsäure oder Kaliumsorbat',
    why: 'Gilt für alle Tierarten bis 3400 mg Kaliumsorbat je Kilogramm Futter als sicher; eine trockene Mischung braucht es kaum.',
  },
  benzoate: {
    name: 'Benzoesäure oder Benzoate',
    why: 'Ein Konservierungsstoff für feuchtes Futter; eine trockene Mischung braucht ihn kaum.',
  },
  sulphite: {
    name: 'Sulfite',
    why: 'Sulfite halten Trockenobst hell und zerstören Thiamin (Vitamin B1).',
  },
  nitrite: {
    name: 'Natrium- oder Kaliumnitrit',
    why: 'Nitrit bindet den Sauerstoffträger im Blut und hat in einer trockenen Mischung nichts zu suchen.',
  },
  propionate: {
    name: 'Propionsäure oder Propionate',
    why: 'Ein Schimmelhemmer, nach allem, was bekannt ist, unbedenklich; er kann auf feuchte Lagerung hindeuten.',
  },
  'propylene-glycol': {
    name: 'Propylenglykol',
    why: 'Es hält weiches Futter feucht und hemmt Schimmel. Bei Katzen schadet es den roten Blutkörperchen, und in ihrem Futter ist es in den USA nicht erlaubt; zu Hamstern wurde nichts gefunden, und sie brauchen es nicht.',
  },
  'permitted-additives': {
    name: 'zugelassene Zusatzstoffe, nicht genannt',
    why: 'Hinter dem Gruppennamen können BHA, BHT oder ein Farbstoff stehen; frag den Hersteller, welche.',
  },
  preservatives: {
    name: 'Konservierungsstoffe, nicht genannt',
    why: 'Hinter dem Gruppennamen können BHA oder BHT stehen; frag den Hersteller, welche.',
  },
  hulls: {
    name: 'Hülsen, Spelzen oder Schalen',
    why: BULK,
  },
  straw: {
    name: 'Stroh oder Strohmehl',
    why: BULK,
  },
  middlings: {
    name: 'Nachmehl',
    why: 'Was beim Mahlen von Mehl übrig bleibt: zwischen Kleie und Mehl, genießbar, aber billig.',
  },
  'cereal-by-products': {
    name: 'Getreidenebenerzeugnisse',
    why: 'Welche, wird nicht gesagt: Kleie, Spelzen, Nachmehl oder Schlempe.',
  },
  'bakery-by-products': {
    name: 'Bäckereinebenerzeugnisse',
    why: 'Altes Brot und Kekse, mit ihrem Salz, Zucker und Fett.',
  },
  cellulose: {
    name: 'Cellulosepulver',
    why: 'Gereinigte Pflanzenfaser: harmloser Füllstoff.',
  },
  'cob-meal': {
    name: 'Maiskolbenmehl',
    why: BULK,
  },
  'beet-pulp': {
    name: 'Zuckerrübenschnitzel',
    why: 'Was von der Rübe bleibt, wenn der Zucker heraus ist: vor allem Faser, mit ein paar Prozent Zucker. Unmelassierte Schnitzel enthalten keinen zugesetzten Zucker.',
  },
  'vegetable-derivatives': {
    name: 'pflanzliche Nebenerzeugnisse',
    why: GROUP,
  },
  'animal-derivatives': {
    name: 'Fleisch und tierische Nebenerzeugnisse',
    why: GROUP,
  },
  'by-products': {
    name: 'Nebenerzeugnisse',
    why: GROUP,
  },
  flavourings: {
    name: 'Aromastoffe, nicht genannt',
    why: 'Für den Geschmack zugesetzt; welche, wird nicht gesagt.',
  },
};
