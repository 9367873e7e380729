import type { Start } from '../en/start.ts';
import type { Figures } from '../figures.ts';

export const start = (f: Figures): Start => ({
  title: 'Zelf beginnen',
  lead: 'In drie stappen naar je eerste mengsel. Je kunt later alles veranderen.',
  isDone: '(klaar)',
  doThisNow: 'Nu doen',
  changeStep: (step) => `Veranderen: ${step}`,
  mixName: 'Mijn mengsel',
  mixFor: (animal) => `Mengsel voor ${animal}`,
  animal: {
    title: 'Je dier',
    done: (names, grams) =>
      grams === undefined ? f.list(names) : `${f.list(names)}, ${f.grams(grams, 1)} voer per dag`,
    name: 'Naam',
    nameless: 'Geef het dier een naam.',
    species: 'Wat voor dier?',
    lifeStage: 'Hoe oud?',
    daily: 'Droogvoer per dag',
    notKnown: 'niet bekend',
    suggested: {
      handouts: (low, high) =>
        `Mengsel en brokjes samen. Folders van dierenartsen noemen voor een volwassen dier meestal ${f.grams(low)} tot ${f.grams(high)}.`,
      memory: (low, high) =>
        `Mengsel en brokjes samen. Ongeveer ${f.grams(low)} tot ${f.grams(high)} voor een volwassen dier (gangbare praktijk, uit het hoofd; geen bron). Weeg wat het jouwe eet.`,
    },
    noSuggestion: 'Mengsel en brokjes samen. Laat het leeg als je het niet weet: weeg wat er gegeten wordt.',
    keep: 'Dier bewaren',
  },
  pellet: {
    title: 'Je brokjes',
    why: 'De helft van het voer zijn complete brokjes uit de winkel; het mengsel is de andere helft. Wat er in de brokjes zit, bepaalt wat het mengsel moet brengen.',
    name: 'Hoe noem je ze?',
    usualName: 'Mijn brokjes',
    nameless: 'Geef een naam.',
    noFigures: 'Plak het etiket, of schrijf minstens een van de cijfers.',
    keep: 'Brokjes bewaren',
    done: (names) => f.list(names),
  },
  label: {
    pellet: 'Het etiket van je brokjes',
    food: 'Het etiket van dit ingrediënt',
    hint: 'Plak of typ wat er op de verpakking staat, bijvoorbeeld “ruw eiwit min. 16 %, ruw vet min. 4 %, ruwe celstof max. 9 %”.',
    source: 'etiket',
    read: (amounts) => `Gelezen, in 100 g: ${amounts.join('; ')}.`,
    nothingRead: 'Er is nog niets begrepen. Schrijf bijvoorbeeld “eiwit 16 %”.',
    unread: (lines) =>
      f.form(lines, {
        one: 'Eén regel is niet begrepen.',
        other: `${f.number(lines)} regels zijn niet begrepen.`,
      }),
    lineByLine: 'Regel voor regel',
    recheck: 'Kijk die regel van het etiket na.',
    tooLong: (letters, most) =>
      `Het etiket heeft ${f.number(letters)} tekens en er passen er ${f.number(most)}; laat de regels zonder cijfers weg.`,
    orType: 'Geen etiket om te plakken? Schrijf wat er op de verpakking staat:',
    missing: 'Dit laat je etiket open. Schrijf wat je weet; de maker kan het je vertellen.',
    fatAtLeast: (least) =>
      `Op je etiket staat minstens ${f.percent(least)}. Blijft het leeg, dan kan het mengsel niet zeker binnen bereik zijn.`,
    saysAtLeast: (least) => `Op je etiket staat minstens ${f.percent(least)}.`,
    saysAtMost: (most) =>
      `Op je etiket staat hoogstens ${f.percent(most)}. Blijft het leeg, dan telt het als niets en moet het mengsel alles brengen.`,
    least: { PROCNT: 'Eiwit minstens', FAT: 'Vet minstens', FIBC: 'Ruwe celstof minstens' },
    most: { PROCNT: 'Eiwit hoogstens', FAT: 'Vet hoogstens', FIBC: 'Ruwe celstof hoogstens' },
    amount: { PROCNT: 'Eiwit', FAT: 'Vet', FIBC: 'Ruwe celstof' },
    notKnown: 'niet bekend',
  },
  foods: {
    title: 'Je ingrediënten',
    box: 'Welke ingrediënten heb je?',
    hint: 'Eén per regel, bijvoorbeeld “havermout, 5 %”, “gierst 15 g” of gewoon “linzen”. Enter voegt toe. Je kunt ook een lijst of tabel plakken. Met 20 tot 30 ingrediënten krijg je een goed mengsel (gangbare praktijk, geen bron).',
    add: 'Toevoegen',
    makeFit: 'Passend maken',
    working: 'Wordt uitgerekend…',
    lookingUp: 'Ze worden opgezocht…',
    told: (added, there) =>
      [
        added === 0
          ? ''
          : f.form(added, {
              one: 'Er is één ingrediënt bijgekomen.',
              other: `Er zijn ${f.number(added)} ingrediënten bijgekomen.`,
            }),
        there.length === 0 ? '' : `Al in het mengsel: ${f.list(there)}.`,
      ]
        .filter(Boolean)
        .join(' '),
    count: (n) =>
      f.form(n, {
        one: 'Eén ingrediënt in het mengsel.',
        other: `${f.number(n)} ingrediënten in het mengsel.`,
      }),
    left: (line, why) => `“${line}”: ${why}`,
    faults: {
      nameless: 'hier staat geen ingrediënt; schrijf de naam bij het cijfer.',
      unitless: 'is dat procent of gram? Schrijf “5 %” of “5 g”.',
      range: 'schrijf één cijfer, niet meer.',
      over: 'meer dan 100 % van het mengsel kan niet.',
      nothing: 'daarvan zou niets in het mengsel zitten; laat de regel weg, of het cijfer.',
      long: 'de naam is te lang.',
    },
    tableName: 'mijn eigen tabel',
    unsure: 'Welk ingrediënt is het?',
    unsureHint: 'Deze zitten nog niet in het mengsel.',
    noFood: 'In de tabellen heet geen ingrediënt zo.',
    takeFor: (food, typed) => `${food} voor “${typed}”`,
    leaveOut: 'Weglaten',
    leaveOutFood: (typed) => `“${typed}” weglaten`,
    or: 'of:',
    makeOwn: 'Eigen',
    makeOwnOf: (food) => `Van ${food} een eigen ingrediënt maken, naar het etiket`,
    keepOwn: 'Ingrediënt bewaren',
    rows: 'Ingrediënten in het mengsel',
    wanted: (share) => `ongeveer ${f.percent(share)}`,
    typed: (typed) => `voor “${typed}”`,
    fresh: 'vers: eerst drogen, dan in het mengsel',
    instead: (other, food) => `${other} in plaats van ${food}`,
    removeFood: (food) => `${food} verwijderen`,
    removed: (food) => `Eruit gehaald: ${food}.`,
  },
  table: {
    title: 'Over je tabel',
    hint: (n) =>
      f.form(n, {
        one: 'Eén vraag voordat je tabel erin komt.',
        other: `${f.number(n)} vragen voordat je tabel erin komt.`,
      }),
    other: 'Of een ander cijfer',
  },
});
