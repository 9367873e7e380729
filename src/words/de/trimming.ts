import type { Trimming } from '../en/trimming.ts';
import type { Figures } from '../figures.ts';
import { trimParts } from './trim-parts.ts';

export const trimming = (f: Figures): Trimming => ({
  source: 'USDA SR28, Datei der Lebensmittel, Refuse',
  own: (percent) => `${f.percent(percent)} wird weggeschnitten (von dir gewogen).`,
  parts: (percent, parts, source) => `${f.percent(percent)} wird weggeschnitten: ${parts} (${source}).`,
  unknown: (food) =>
    `Was weggeschnitten wird, ist nicht bekannt (${food}): Wieg etwas davor und danach, und trag den Verlust ein.`,
  nothing: (food, source) =>
    `Die Tabelle rechnet nichts als weggeschnitten und nennt keine Teile (${food}; ${source}): Kauf etwas mehr.`,
  noParts: (percent, source) =>
    `${f.percent(percent)} wird weggeschnitten (${source}; welche Teile, steht dort nicht).`,
  partNames: trimParts(),
  table: {
    unknown: (food) => `Wie viel Abfall ${food} hat, ist unbekannt: Wiege geputzt, oder kauf mehr als das.`,
    none: 'Nichts wird weggeputzt (USDA SR28, Abfall 0 %).',
    some: (percent) => `${f.number(percent)} % des Kaufgewichts werden weggeputzt (USDA SR28, Abfall).`,
  },
});
