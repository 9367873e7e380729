import type { Common } from '../en/common.ts';
import type { Figures } from '../figures.ts';

export const common = (f: Figures): Common => ({
  save: 'Bewaren',
  cancel: 'Annuleren',
  close: 'Sluiten',
  undo: 'Ongedaan maken',
  delete: 'Verwijderen',
  remove: 'Weghalen',
  add: 'Toevoegen',
  change: 'Wijzigen',
  name: 'Naam',
  note: 'Notitie',
  back: 'Terug',
  print: 'Afdrukken',
  tryAgain: 'Opnieuw proberen',
  yes: 'Ja',
  no: 'Nee',
  more: 'Meer',
  unknown: 'onbekend',
  mix: 'mengsel',
  ration: 'hele rantsoen',
  pellet: 'brokjes',
  days: (n) => f.count(n, { one: 'dag', other: 'dagen' }),
  hours: (n) => `${f.number(n)} uur`,
  foods: (n) => f.count(n, { one: 'ingrediënt', other: 'ingrediënten' }),
  andMore: (first, more) => `${first} en nog ${f.number(more)}`,
});
