import type { Targets } from '../en/targets.ts';
import type { Figures } from '../figures.ts';

const PRACTICE = 'Eiwit 17-19 %, vet 4-7 %, vezel 6-15 % van het hele rantsoen, zoals gevoerd.';
const NO_FIGURES = 'Hoeveel calcium en suiker het hoogstens mag zijn: daarvoor zijn er geen cijfers.';

export const targets = (f: Figures): Targets => ({
  title: 'Behoefte',
  list: 'Behoefte om uit te kiezen',
  one: 'Behoefte van een dier',
  inThisMix: 'in dit mengsel',
  own: 'eigen',
  fromMemory: 'uit het hoofd',
  kind: (parts) => parts.join(', '),
  use: 'In het mengsel gebruiken',
  used: 'In het mengsel gebruikt',
  copy: 'Kopiëren en wijzigen',
  copyName: (name) => `${name} (eigen)`,
  usedIn: (names) => `Wordt nog gebruikt door ${f.list(names)} en kan daarom niet weg.`,
  askDelete: (name) => `“${name}” voorgoed verwijderen?`,
  keep: 'Houden',
  lose: 'Verwijderen',
  whatGoes: 'De cijfers en hun bronnen zijn dan weg. Gepubliceerde behoeften blijven.',
  profiles: {
    'hamster-adult-crude': {
      name: 'Volwassen hamster',
      about: `${PRACTICE} Met vezel is ruwe celstof bedoeld, de maat op etiketten en in de diergeneeskunde; voedingstabellen geven die zelden, dus wordt veel ervan geschat uit de voedingsvezel.`,
    },
    'hamster-adult': {
      name: 'Volwassen hamster, voedingsvezel',
      about: `${PRACTICE} Met vezel is alle voedingsvezel bedoeld, zoals voedingstabellen die geven; op het etiket staat ruwe celstof, die nooit meer en vaak minder dan de helft ervan is.`,
    },
    'hamster-adult-limits': {
      name: 'Volwassen hamster, met grenzen',
      about: `${PRACTICE} Met vezel is ruwe celstof bedoeld. Calcium is aan fosfor gebonden, en retinol, vitamine D en seleen hebben een bovengrens. ${NO_FIGURES}`,
    },
    'hamster-nrc': {
      name: 'Hamster, behoefte volgens NRC',
      about: `Minimale hoeveelheden van de National Research Council voor laboratoriumhamsters, uit het hoofd naar de uitgave van 1978; over linolzuur en energie is hier niets bekend. ${NO_FIGURES}`,
    },
    'mouse-nrc': {
      name: 'Muis, behoefte volgens NRC',
      about: `Minimale hoeveelheden van de National Research Council voor groeiende laboratoriummuizen (1995, tabel 3-3), voor voer met ${f.number(3.8)} tot ${f.number(4.1)} kcal per g. Chloride en molybdeen staan in geen voedingstabel. ${NO_FIGURES}`,
    },
    'mouse-nrc-breeding': {
      name: 'Muis, behoefte volgens NRC, drachtig of zogend',
      about: `Minimale hoeveelheden van de National Research Council voor laboratoriummuizen (1995, tabel 3-3), met wat de noten voor drachtige en zogende muizen vragen aan magnesium, koper, zink en pantotheenzuur. ${NO_FIGURES}`,
    },
    gerbil: {
      name: 'Gerbil',
      about: `${PRACTICE} Dat zijn bereiken voor hamsters, genomen omdat er voor gerbils geen getallen zijn. Het getal voor magnesium is van de gerbil zelf: die heeft meer nodig dan een hamster, voor de vacht en tegen toevallen (National Research Council 1995). ${NO_FIGURES}`,
    },
    rat: {
      name: 'Rat',
      about: `Minste hoeveelheden eiwit, vet, linolzuur en thiamine, opgezocht voor ratten; voor al het andere zijn er hier geen getallen. De hele lijst staat onder “Rat, behoefte volgens NRC”, uit het hoofd. ${NO_FIGURES}`,
    },
    'rat-nrc': {
      name: 'Rat, behoefte volgens NRC',
      about: `Minste hoeveelheden van de National Research Council voor groeiende laboratoriumratten, uit het hoofd opgeschreven naar de uitgave van 1995. ${NO_FIGURES}`,
    },
  },
  stages: {
    adult: 'volwassen',
    growth: 'groei',
    'growth and adult': 'groei en volwassen',
    'pregnant or nursing': 'drachtig of zogend',
  },
  startNotes: {
    dwarf:
      'Voor dwerghamsters staan er geen cijfers in het programma: de gepubliceerde behoefte is gevonden bij goudhamsters. Vraag een dierenarts wat er voor dit dier anders moet.',
    mouse:
      'De gepubliceerde behoefte van muizen geeft minimale hoeveelheden voor groeiende laboratoriummuizen; een bovengrens voor eiwit of vet geeft ze niet.',
    mouseBreeding:
      'De gepubliceerde behoefte van muizen, met het extra magnesium, koper, zink en pantotheenzuur dat de noten vragen zolang een muis drachtig is of zoogt. Vraag een dierenarts voordat je het voer verandert.',
    gerbil:
      'Alleen magnesium is een getal van de gerbil zelf: meer dan een hamster nodig heeft. Voor al het andere zijn er geen getallen voor gerbils, en staan de bereiken van hamsters ervoor. Geef naast droog voer altijd vers water of sappig voer. Vraag een dierenarts wat je moet veranderen.',
    rat: 'Voor ratten is weinig opgezocht: eiwit, vet, linolzuur en thiamine. Getallen voor mineralen en de meeste vitamines ontbreken hier; “Rat, behoefte volgens NRC” heeft ze uit het hoofd, en een mengsel kan die volgen zodra je ze hebt bevestigd. Vraag een dierenarts wat ze verder nodig heeft.',
    growingOther: 'Voor de groei van dit dier heeft het programma geen getallen; vraag een dierenarts.',
    growing:
      'Voor de groei is één cijfer bekend: goudhamsters hadden tussen 15 en 20 % eiwit uit gewoon voer nodig (Banta en anderen 1975, J. Nutr. 105:38-45), en het bereik voor volwassen dieren ligt daarbinnen. Voor al het andere in de groei zijn er geen cijfers; vraag een dierenarts.',
    breeding:
      'Voor drachtige of zogende dieren staan er geen cijfers in het programma; vraag een dierenarts voordat je het voer verandert.',
    old: 'Voor oude dieren staan er geen cijfers in het programma; vraag een dierenarts of het bereik voor volwassen dieren bij dit dier past.',
    otherSpecies: (species) =>
      `Voor deze diersoort (${species}) staat geen behoefte in het programma. Deze hamsterbehoefte is alleen een begin; kopieer die onder “Behoefte” en verander die op advies van een dierenarts.`,
    noSpecies:
      'Voor dit dier staat geen behoefte in het programma. Deze hamsterbehoefte is alleen een begin; kopieer die onder “Behoefte” en verander die op advies van een dierenarts.',
  },
  fibre: {
    FIBTG:
      'Het vezelbereik betekent alle voedingsvezel; de ruwe celstof van een etiket telt als het minste dat het kan zijn.',
    FIBC: 'Het vezelbereik betekent ruwe celstof, zoals die op voeretiketten staat.',
    none: 'Voor vezel is geen grens gesteld.',
  },
  basis: {
    'as fed': 'per 100 g zoals gevoerd',
    DM: 'per 100 g droge stof',
    'per 1000 kcal': 'per 1000 kcal',
  },
  table: {
    nutrient: 'Voedingsstof',
    range: 'Bereik',
    source: 'Bron',
    nothing: 'Niets',
    each: 'op elke 1',
    checked: (against, day) => `op ${day} door jou vergeleken met ${against}`,
  },
  editor: {
    least: (what) => `${what}, minstens`,
    most: (what) => `${what}, hoogstens`,
    counted: (what) => `${what}, geteld`,
    sourceOf: (what) => `Bron van ${what}`,
    remove: (what) => `${what} weghalen`,
    none: 'geen',
    add: 'Voedingsstof toevoegen',
    choose: 'Kies…',
    nameless: 'De naam ontbreekt; geef deze behoefte een naam.',
    save: 'Behoefte bewaren',
    saved: 'Bewaard',
    notYet: 'Nog niet bewaard',
    ownChoice: 'eigen keuze',
  },
  confirm: {
    title: 'Uit het hoofd',
    compare: 'Vergelijk elk cijfer dat uit het hoofd is met de publicatie die als bron genoemd staat.',
    against: 'Ik heb deze cijfers vergeleken met',
    example: 'titel, uitgave, bladzijde',
    on: 'op',
    day: 'Zeg op welke dag.',
    empty:
      'Zeg waarmee je ze vergeleken hebt; cijfers die niemand heeft nagekeken, blijven buiten elk mengsel.',
    confirm: 'Cijfers bevestigen',
    saveFirst: 'Bewaar eerst de behoefte.',
  },
  unconfirmed: {
    option: (name) => `${name} (uit het hoofd, niet bevestigd)`,
    look: 'Bekijken',
    here: (n, name) =>
      f.form(n, {
        one: `Eén cijfer van “${name}” is uit het hoofd. Een mengsel kan zich ernaar richten zodra je het hieronder hebt bevestigd.`,
        other: `${f.number(n)} cijfers van “${name}” zijn uit het hoofd. Een mengsel kan zich ernaar richten zodra je ze hieronder hebt bevestigd.`,
      }),
    there: (n, name) =>
      f.form(n, {
        one: `Eén cijfer van “${name}” is uit het hoofd. Een mengsel kan zich ernaar richten zodra je het onder “Behoefte” hebt bevestigd.`,
        other: `${f.number(n)} cijfers van “${name}” zijn uit het hoofd. Een mengsel kan zich ernaar richten zodra je ze onder “Behoefte” hebt bevestigd.`,
      }),
  },
});
