/** What is trimmed off fresh foods: by the keeper’s own weighing, by the list of parts, and by the row of a table. */
import type { Figures } from '../figures.ts';
import { trimParts } from './trim-parts.ts';

export const trimming = (f: Figures) => ({
  source: 'USDA SR28, food description file, Refuse',
  own: (percent: number) => `${f.percent(percent)} is trimmed off (weighed by you).`,
  parts: (percent: number, parts: string, source: string) =>
    `${f.percent(percent)} is trimmed off: ${parts} (${source}).`,
  unknown: (food: string) =>
    `What is trimmed off ${food} is unknown: weigh some before and after, and enter the loss.`,
  nothing: (food: string, source: string) =>
    `The table counts nothing of ${food} as trimmed off and names no parts (${source}): buy a little more.`,
  noParts: (percent: number, source: string) =>
    `${f.percent(percent)} is trimmed off (${source}; it does not say which parts here).`,
  partNames: trimParts(),
  table: {
    unknown: (food: string) =>
      `Trim loss of ${food} is unknown: weigh it ready to dry, or buy more than this.`,
    none: 'Nothing is trimmed off (USDA SR28, refuse 0 %).',
    some: (percent: number) =>
      `${f.number(percent)} % of the purchased weight is trimmed off (USDA SR28, refuse).`,
  },
});

export type Trimming = ReturnType<typeof trimming>;
