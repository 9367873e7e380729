import type { Shared } from '../en/shared.ts';
import type { Figures } from '../figures.ts';

export const shared = (f: Figures): Shared => ({
  number: {
    needed: (label) => `${label}: Hier fehlt eine Zahl.`,
    none: (label, typed) => `${label}: „${typed}“ ist keine Zahl. Schreib zum Beispiel 6,25 oder 6.25.`,
    tooLow: (label, typed, least) => `${label}: ${typed} ist zu wenig. Erlaubt ist ${least} oder mehr.`,
    tooHigh: (label, typed, most) => `${label}: ${typed} ist zu viel. Erlaubt ist höchstens ${most}.`,
  },
  meanwhile: {
    changed: (label, now, typed) =>
      `${label} wurde anderswo auf ${now} geändert, während du tipptest. Mit der Eingabetaste steht dort trotzdem ${typed || 'nichts'}, Escape lässt es so.`,
    emptied: (label, typed) =>
      `${label} wurde anderswo geleert, während du tipptest. Mit der Eingabetaste steht dort trotzdem ${typed || 'nichts'}, Escape lässt es so.`,
  },
  caution: {
    never: (title) => `Nie füttern: ${title}.`,
    limit: (title) => `Nur wenig: ${title}.`,
    prepare: (title) => `Erst vorbereiten: ${title}.`,
    neverUpTo: (title, most) => `Nie mehr als ${f.percent(most)} der Mischung füttern: ${title}.`,
    limitUpTo: (title, most) => `Nur wenig, höchstens ${f.percent(most)} der Mischung: ${title}.`,
    prepareUpTo: (title, most) => `Erst vorbereiten, höchstens ${f.percent(most)} der Mischung: ${title}.`,
    source: (source) => `Quelle: ${source}`,
  },
  choice: {
    narrow: (label) => `${label}: nur anzeigen mit`,
    part: 'ein Teil des Namens',
    many: (listed, all) =>
      `${f.number(listed)} von ${f.number(all)} stehen hier: Tippe einen Teil des Namens`,
    listed: (n) => f.form(n, { one: `${f.number(n)} steht hier`, other: `${f.number(n)} stehen hier` }),
  },
  fresh: {
    which: 'Aus welcher frischen Zutat wird das getrocknet? Diese könnten es sein:',
    dryFrom: (dried, fresh) => `${dried} trocknen aus ${fresh}`,
    another: 'Eine andere frische Zutat suchen',
    change: 'Die frische Zutat ändern',
    title: (name) => `Frische Zutat für ${name}`,
    own: (water) => `eigene Zutat · ${water}`,
    search: 'Zutaten suchen',
    example: 'Karotte roh, Löwenzahn roh…',
    searching: 'Wird gesucht…',
    choose: 'Nehmen',
    chooseOne: (name) => `${name} nehmen`,
    water: (grams) => `${f.number(grams)} g Wasser in 100 g`,
    noWater: 'Wasser nicht bekannt',
  },
  whatIs: (word) => `Was heißt „${word}“?`,
  done: 'Fertig',
  working: 'Wird ausgerechnet…',
  parts: {
    first: (end, all) => `${f.number(end)} von ${f.number(all)}`,
    later: (start, end, all) => `${f.number(start)} bis ${f.number(end)} von ${f.number(all)}`,
    all: (all) => `Alle ${f.number(all)} stehen hier`,
    more: (n) => `${f.number(n)} weitere zeigen`,
    back: (n) => `Zurück zu den ersten ${f.number(n)}`,
  },
  limits: {
    between: (min, max) => `${f.number(min, 3)} bis ${f.number(max, 3)}`,
    least: (min) => `mindestens ${f.number(min, 3)}`,
    most: (max) => `höchstens ${f.number(max, 3)}`,
    none: 'keine Grenzen',
    per100: (unit) => `${unit} in 100 g`,
    per100Dry: (unit) => `${unit} in 100 g Trockenmasse`,
    toOne: 'zu 1',
    ratio: (over, under) => `${over} zu ${under}`,
  },
  clock: {
    on: (time, day) => `${time} Uhr am ${day}`,
    minutes: (minutes) => `${f.number(minutes)} Min.`,
    hours: (hours) => `${f.number(hours)} Std.`,
    both: (hours, minutes) => `${f.number(hours)} Std. ${f.number(minutes)} Min.`,
  },
  firstMix: {
    title: 'Noch keine Mischung',
    text: 'Eine Mischung beginnt mit einem Tier und ein paar Zutaten. Anteile und Gramm werden daraus ausgerechnet.',
    start: 'Eine Mischung anfangen',
    name: 'Meine Mischung',
    choice: 'Mischung',
  },
  contained: (what, why) =>
    `${what}: lässt sich nicht anzeigen (${why}). Was zuletzt daran geändert wurde, steht im <changes>Verlauf</changes>.`,
});
