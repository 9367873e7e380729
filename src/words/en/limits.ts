/** Limits of the animal's needs: before they give way, and what the keeper changed. */
import type { Figures } from '../figures.ts';

export const limits = (f: Figures) => ({
  /** What a step is about, by how many limits. */
  heading: (many: boolean, whose: string) => (many ? `Limits of ${whose}` : `A limit of ${whose}`),
  youAsked: 'You asked for this.',
  source: (source: string) => `Source of the limit: ${source}`,
  noSource: 'no source given',
  needsHave: (source: string, range: string) => `${source}; the needs say ${range}`,
  about: (many: boolean, animals: readonly string[]) => {
    const who = animals.length > 0 ? f.list(animals) : 'the animal';
    return many
      ? `These limits are there for ${who}. If you go on, they become your own limits for this mix: kept with today’s date, shown above the foods, and set back by one press.`
      : `This limit is there for ${who}. If you go on, it becomes your own limit for this mix: kept with today’s date, shown above the foods, and set back by one press.`;
  },
  keep: (many: boolean): string => (many ? 'Keep the limits' : 'Keep the limit'),
  makeOwn: (many: boolean): string => (many ? 'Make them my own limits' : 'Make it my own limit'),
  changed: 'Limits that you changed',
  setBack: 'Set back',
  setBackOf: (limit: string) => `Set back: ${limit}`,
  isBack: 'The limit is as the needs have it again.',
  otherNeeds: (animal: string, needs: string) =>
    `${animal}’s own needs are ${needs}; this mix follows others.`,
  follow: (animal: string) => `Follow ${animal}’s needs`,
  fromMemory: 'This mix was made with needs from memory, and keeps their rules.',
  needs: 'the needs',
  needsCalled: (needs: string) => `the needs “${needs}”`,
  needsOf: (animals: readonly string[]) => `${f.list(animals)}’s needs`,
  needsOfCalled: (animals: readonly string[], needs: string) => `${f.list(animals)}’s needs “${needs}”`,
  rule: 'rule',
  range: (subject: string, range: string) => `${subject}, ${range}`,
  leftOut: (limit: string) => `${limit}: left out.`,
  ownLeftOut: (limit: string, day: string) => `${limit}: left out by you on ${day}`,
  raised: (from: number, to: string) => `raised from ${f.number(from, 4)} to ${to}`,
  lowered: (from: number, to: string) => `lowered from ${f.number(from, 4)} to ${to}`,
  changedTo: (range: string) => `changed to ${range}`,
  own: (subject: string, ends: readonly string[], day: string) =>
    `${subject} limit ${f.list(ends)} by you on ${day}`,
  amount: (value: number, unit: string) => (unit ? `${f.number(value, 4)} ${unit}` : f.number(value, 4)),
});

export type Limits = ReturnType<typeof limits>;
