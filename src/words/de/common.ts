import type { Common } from '../en/common.ts';
import type { Figures } from '../figures.ts';

export const common = (f: Figures): Common => ({
  save: 'Speichern',
  cancel: 'Abbrechen',
  close: 'Schließen',
  undo: 'Rückgängig',
  delete: 'Löschen',
  remove: 'Entfernen',
  add: 'Hinzufügen',
  change: 'Ändern',
  name: 'Name',
  note: 'Notiz',
  back: 'Zurück',
  print: 'Drucken',
  tryAgain: 'Noch einmal versuchen',
  yes: 'Ja',
  no: 'Nein',
  more: 'Mehr',
  unknown: 'unbekannt',
  mix: 'Mischung',
  ration: 'ganze Ration',
  pellet: 'Pellets',
  days: (n) => f.count(n, { one: 'Tag', other: 'Tage' }),
  hours: (n) => f.count(n, { one: 'Stunde', other: 'Stunden' }),
  foods: (n) => f.count(n, { one: 'Zutat', other: 'Zutaten' }),
  andMore: (first, more) => `${first} und ${f.number(more)} weitere`,
});
