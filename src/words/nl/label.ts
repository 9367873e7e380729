import type { Label } from '../en/label.ts';
import type { Figures } from '../figures.ts';
import { labelReading } from './label-reading.ts';

export const label = (f: Figures): Label => ({
  reading: labelReading(f),
  amount: {
    least: (least) => `minstens ${least}`,
    most: (most) => `hoogstens ${most}`,
    both: (least, most) => `minstens ${least} en hoogstens ${most}`,
  },
  paste: {
    label: 'Het etiket, zoals gedrukt',
    hint: 'Bijvoorbeeld regel voor regel: “Ruw eiwit min. 14 %”, “Ruw vet 4,2 %”, “Vezel 3,1 g per portie van 40 g”. In het Engels, Duits, Frans, Nederlands of Spaans.',
    asSaved:
      'Deze cijfers staan zoals je ze hebt bewaard; ze rusten op antwoorden of wijzigingen die de tekst alleen niet geeft. Wijzig de tekst of beantwoord een vraag om het etiket opnieuw te lezen.',
  },
  lines: {
    title: 'Regel voor regel',
    read: 'Gelezen',
    partly: 'Deels gelezen',
    waits: 'Wacht op een antwoord',
    per: 'Hoeveelheid',
    ignored: 'Weggelaten',
    unread: 'Niet begrepen',
    counted: {
      read: (n) => `${f.number(n)} gelezen`,
      waits: (n) => f.form(n, { one: 'één wacht op antwoord', other: `${f.number(n)} wachten op antwoord` }),
      partly: (n) => `${f.number(n)} deels gelezen`,
      without: (n) => `${f.number(n)} zonder waarde`,
      unread: (n) => `${f.number(n)} niet begrepen`,
    },
  },
  questions: {
    section: 'Vragen over het etiket',
    title: (open) =>
      open === 0
        ? 'Vragen, alle beantwoord'
        : f.form(open, { one: 'Eén vraag staat open', other: `${f.number(open)} vragen staan open` }),
    unknown: 'Een waarde die op antwoord wacht, blijft tot dan onbekend.',
    open: '? Open',
    answered: '✓ Beantwoord',
    otherWeight: 'Of een ander gewicht',
    otherPercent: 'Of een ander percentage',
  },
  comesTo: {
    title: 'Wat daaruit komt',
    none: 'Nog geen waarde; elke voedingsstof is onbekend.',
    known: (known, unknown) =>
      `${f.number(known)} bekend, ${f.number(unknown)} onbekend; onbekend geldt nooit als nul`,
    nutrient: 'Voedingsstof',
    fed: 'In 100 g zoals gevoerd',
    printed: 'Zoals gedrukt',
    waits: '(wacht op antwoord)',
    noMoisture:
      'Het vocht is onbekend, dus is niets in droge stof te tonen. Staat het op het pak, voeg dan een regel toe zoals “vocht 10 %”.',
    min: (amount) => `min. ${amount}`,
    max: (amount) => `max. ${amount}`,
    range: (low, high) => `${low} tot ${high}`,
    in: (amount, grams) => `${amount} in ${f.number(grams)} g`,
    ofDry: (amount) => `${amount} van de droge stof`,
    ofSalt: (amount) => `${amount} zout`,
  },
  ingredients: {
    section: 'Ingrediëntenlijst',
    label: 'Ingrediëntenlijst, zoals gedrukt (mag leeg blijven)',
    hint: 'Bijvoorbeeld “havervlokken, erwten, gedroogde wortel, mineralen”. Ze blijft bij het ingrediënt en wordt gelezen op wat je moet mijden.',
    tooLong: (length, most) =>
      `De lijst heeft ${f.number(length)} tekens, er passen er ${f.number(most)}; laat weg wat geen ingrediënt is.`,
    avoid: (what) => `Mijden: ${what}`,
    mind: (what) => `Goed om te weten: ${what}`,
    kinds: {
      'added sugar': 'toegevoegde suiker',
      dye: 'kleurstof',
      preservative: 'conserveermiddel',
      filler: 'vulstof',
      unspecified: 'zegt te weinig',
      caution: 'waarschuwing',
    },
    none: 'Niets van onze lijsten gevonden; dat is geen garantie.',
    found: (n) => `${f.number(n)} van onze lijsten gevonden:`,
    list: 'In de ingrediënten gevonden',
    source: (source) => `Bron: ${source}`,
    unread: (parts) => `Niet begrepen, dus niet opgezocht: ${parts.join(', ')}.`,
  },
});
