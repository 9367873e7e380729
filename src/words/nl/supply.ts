import type { Supply } from '../en/supply.ts';
import type { Figures } from '../figures.ts';

export const supply = (f: Figures): Supply => ({
  passed: {
    stopped: (day, why) => `Niet meer gebruikt sinds ${day}: ${why}.`,
    fresh: 'Het is vers.',
    dryFirst: 'Droog het voor het in een mengsel gaat.',
  },
  reasons: { recalled: 'teruggeroepen', infested: 'insecten erin', spoiled: 'bedorven of beschimmeld' },
  withNote: (reason, note) => `${reason}: ${note}`,
  nobodyEats: (food) => `Geen dier krijgt nu ${food}, dus het raakt niet op.`,
  lastsLong: (food) => `Van ${food} is meer dan iemand kan plannen.`,
  numbered: (n) => `batch ${f.number(n)}`,
  goneFood: 'Ingrediënt van een pak dat er niet meer is',
  load: (name, n, of) => `${name}, lading ${f.number(n)} van ${f.number(of)}`,
  check: {
    dueSince: (at) => `Nu kijken en keren: het moest om ${at}`,
    next: (at, left) => `Om ${at} kijken en keren, over ${left}`,
    due: (name) => `Nu kijken en keren: ${name}`,
  },
});
