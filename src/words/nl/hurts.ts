import type { Hurts } from '../en/hurts.ts';
import type { Figures } from '../figures.ts';

export const hurts = (f: Figures): Hurts => ({
  all: 'Wat kan schaden',
  fresh: (foods) => `Vers, dat zou in het mengsel beschimmelen: ${f.list(foods)}. Eerst drogen.`,
  dry: () => 'Gedroogd erin doen',
  dried: (food) => `${food}, gedroogd`,
  isDried:
    'In het mengsel staat het nu gedroogd, met hetzelfde aandeel. Wat vers was, wordt thuis gedroogd voor het afwegen.',
  never: (foods) => `Mag niet worden gevoerd en blijft op 0 %: ${f.list(foods)}.`,
  listed: (food, found) =>
    `${food} blijft op 0 %: op de eigen ingrediëntenlijst staat ${found}, dat mag niet worden gevoerd.`,
  beside: (food, found) =>
    `${food}, gevoerd naast het mengsel: op de eigen ingrediëntenlijst staat ${found}, dat mag niet worden gevoerd.`,
  goAhead: 'Toch doen, zeg waarom…',
  goAheadWith: (food) => `Toch doen, zeg waarom … (${food})`,
  gone: (food, found, day, note) =>
    `${food} zit erin omdat je dat op ${day} zo koos (“${note}”), hoewel ${found} op de lijst staat.`,
  keepOut: 'Toch weglaten',
  why: 'Waarom het toch wordt gevoerd (bijvoorbeeld op advies van de dierenarts); dit blijft bij het mengsel',
  yes: 'Toch voeren',
  no: 'Weglaten',
});
