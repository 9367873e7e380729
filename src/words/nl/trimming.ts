import type { Trimming } from '../en/trimming.ts';
import type { Figures } from '../figures.ts';
import { trimParts } from './trim-parts.ts';

export const trimming = (f: Figures): Trimming => ({
  source: 'USDA SR28, bestand van voedingsmiddelen, Refuse',
  own: (percent) => `${f.percent(percent)} wordt weggesneden (door jou gewogen).`,
  parts: (percent, parts, source) => `${f.percent(percent)} wordt weggesneden: ${parts} (${source}).`,
  unknown: (food) =>
    `Wat er weggesneden wordt is niet bekend (${food}): weeg wat ervoor en erna, en vul het verlies in.`,
  nothing: (food, source) =>
    `De tabel rekent niets als weggesneden en noemt geen delen (${food}; ${source}): koop iets meer.`,
  noParts: (percent, source) =>
    `${f.percent(percent)} wordt weggesneden (${source}; welke delen staat er niet bij).`,
  partNames: trimParts(),
  table: {
    unknown: (food) =>
      `Hoeveel afval ${food} heeft is onbekend: weeg het schoongemaakt, of koop meer dan dit.`,
    none: 'Er gaat niets af (USDA SR28, afval 0 %).',
    some: (percent) => `${f.number(percent)} % van het gekochte gewicht gaat eraf (USDA SR28, afval).`,
  },
});
