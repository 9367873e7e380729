import type { Frame } from '../en/frame.ts';
import type { Figures } from '../figures.ts';

export const frame = (_f: Figures): Frame => ({
  places: {
    today: { long: 'Jetzt', short: 'Jetzt' },
    foods: { long: 'Was drin ist', short: 'Inhalt' },
    targets: { long: 'Bedarf', short: 'Bedarf' },
    mix: { long: 'Mischungen', short: 'Mischen' },
    calendar: { long: 'Küche', short: 'Küche' },
    animals: { long: 'Tiere', short: 'Tiere' },
    household: { long: 'Haushalt', short: 'Haus' },
  },
  kitchen: {
    calendar: 'Tage',
    shopping: 'Einkauf',
    cupboard: 'Vorrat',
    drying: 'Trocknen',
    weigh: 'Waage',
  },
  mainNav: 'Orte',
  kitchenNav: 'Küche',
  skip: 'Zum Inhalt springen',
  opening: 'Der Haushalt wird geöffnet…',
  notOpened: 'Der Haushalt ließ sich nicht öffnen',
  unsentPart: 'Was noch nicht gesendet ist',
  worker: {
    title: 'Das Ausrechnen von Mischungen klemmt',
    stopAndTry: 'Anhalten und noch einmal versuchen',
    gone: (why) =>
      `Der Teil dieser Seite, der Mischungen ausrechnet und Zutaten findet, hat aufgehört (${why}). Was gespeichert ist, ist sicher. Neues wird erst wieder ausgerechnet, wenn er läuft.`,
    lacking: (why) => `${why} Ohne das wird nichts ausgerechnet.`,
    slow: 'Das Ausrechnen dauert länger, als es sollte.',
  },
  newer: {
    title: 'Ein neueres Pouchful',
    text: 'Pouchful wurde erneuert: Auf dem Server läuft ein anderes als auf dieser Seite. Lade es, sobald nichts mehr zu speichern ist.',
    load: 'Neu laden',
  },
  storage:
    'Dieser Browser merkt sich nichts mehr für diese Seite: Sein Speicher ist ausgeschaltet, voll oder kaputt. Was auf dem Server ist, ist sicher. Lass die Seite offen, bis dort steht, dass alles gespeichert ist.',
  typed: {
    title: 'Eingetippt, bevor die Seite neu geladen wurde',
    text: 'Bevor diese Seite neu geladen wurde, war das eingetippt und ist vielleicht nicht gespeichert:',
    done: 'Das brauche ich nicht mehr',
    field: 'Ein Feld',
    here: 'Was hier eingetippt war',
  },
  failed: {
    page: 'Pouchful ließ sich nicht anzeigen',
    screen: 'Diese Seite ließ sich nicht anzeigen',
    inPage: (why) =>
      `Etwas ist schiefgegangen: ${why}. Was auf dem Server gespeichert ist, bleibt davon unberührt.`,
    inScreen: (why) =>
      `Auf dieser Seite ist etwas schiefgegangen: ${why}. Was gespeichert ist, bleibt davon unberührt, und alles andere geht weiter.`,
    openAnew: 'Pouchful neu öffnen',
    reload: 'Seite neu laden',
    copied: 'Der Bericht ist kopiert.',
    notCopied: 'Er ließ sich nicht kopieren: Markiere ihn unten.',
    copy: 'Bericht kopieren',
    lately:
      'Wenn es mit etwas anfing, das vor Kurzem geändert wurde: <changes>Sieh nach, was geändert wurde, und nimm es zurück</changes>.',
    others: 'Andere Seiten',
    report: 'Der Bericht',
  },
});
