import type { Supply } from '../en/supply.ts';
import type { Figures } from '../figures.ts';

export const supply = (f: Figures): Supply => ({
  passed: {
    stopped: (day, why) => `Nicht mehr verwendet seit ${day}: ${why}.`,
    fresh: 'Es ist frisch.',
    dryFirst: 'Trockne es, bevor es in eine Mischung kommt.',
  },
  reasons: {
    recalled: 'zurückgerufen',
    infested: 'Insekten darin',
    spoiled: 'verdorben oder schimmelig',
  },
  withNote: (reason, note) => `${reason}: ${note}`,
  nobodyEats: (food) => `Kein Tier bekommt jetzt ${food}, also geht nichts davon aus.`,
  lastsLong: (food) => `${food} reicht länger, als irgendjemand planen kann.`,
  numbered: (n) => `Charge ${f.number(n)}`,
  goneFood: 'Zutat einer Packung, die es nicht mehr gibt',
  load: (name, n, of) => `${name}, Ladung ${f.number(n)} von ${f.number(of)}`,
  check: {
    dueSince: (at) => `Jetzt nachsehen und wenden: Es war um ${at} dran`,
    next: (at, left) => `Um ${at} nachsehen und wenden, in ${left}`,
    due: (name) => `Jetzt nachsehen und wenden: ${name}`,
  },
});
