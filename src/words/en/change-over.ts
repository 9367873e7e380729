/** From the present food to a mix, a little more each day. */
import type { Figures } from '../figures.ts';

export const changeOver = (f: Figures) => ({
  heading: 'Change-over',
  intro: 'From the present food to this mix, a little more each day.',
  introBeside: 'From the present food to this mix and what is fed beside it, a little more each day.',
  fresh: (foods: readonly string[]) =>
    f.form(foods.length, {
      one: `Fresh food goes on as before: ${f.list(foods)} is in neither the grams nor the ranges of these days.`,
      other: `Fresh food goes on as before: ${f.list(foods)} are in neither the grams nor the ranges of these days.`,
    }),
  first: {
    none: 'No mix keeps these rules. What collides, and what mends it, is listed near the top; the plan is made after that.',
    out: 'The mix is not in range as it stands. Make it fit first; the plan is made after that.',
  },
  choose: 'Choose what is fed now.',
  sayDaily: 'Say how much is fed in a day.',
  title: (from: string, to: string) => `${from} to ${to}`,
  partly: (food: string, what: readonly string[]) =>
    `Of some foods in ${food} it is not known how much they hold of ${f.list(what)}. What is known counts as the least it can be.`,
  partlyMore: (food: string, what: readonly string[], more: number) =>
    `Of some foods in ${food} it is not known how much they hold of ${what.join(', ')} and ${f.number(more)} more. What is known counts as the least it can be.`,
  fromMix: 'as this mix says',
  fromAnimal: (animal: string) => `what ${animal} is fed`,
  fields: {
    present: 'Present food',
    choose: 'Choose…',
    table: 'A food of the tables…',
    days: 'Days',
    daysHint: '10 to 14 are usual (common practice, no source)',
    first: 'First day',
    daily: 'Fed in a day',
    step: 'Weighed in steps of',
    search: 'Search the tables for the present food',
    example: 'oats, lentils, maize…',
    searching: 'Searching…',
    found: (n: number) => f.count(n, { one: 'food', other: 'foods' }),
    nowFed: (food: string) => `Now fed: ${food}`,
    pick: 'Choose',
    withPellet: (mix: string, beside: readonly string[]) => `${mix} with ${beside.join(', ')}, as fed`,
    alone: (mix: string) => `${mix} alone`,
  },
  daily: (grams: number, step: number, near: readonly number[]) =>
    `${f.grams(grams)} is no whole number of ${f.grams(step)} steps: take ${f.either(near.map((g) => f.grams(g)))}, or a finer scale step.`,
  standing: {
    fine: { brief: 'in', words: 'in range' },
    near: { brief: 'just out', words: 'just out, by rounding' },
    breaks: { brief: 'out', words: 'out of range' },
  },
  picture: {
    bars: (days: number, parts: readonly string[], inRange: number) =>
      `${f.count(days, { one: 'bar', other: 'bars' })}, one for each day: ${parts.join(', ')}; ${f.count(inRange, { one: 'day is', other: 'days are' })} in range. The table below has all figures.`,
    percent: (part: number) => f.percent(part),
  },
  plan: {
    done: (day: string) => `The change is done on ${f.day(day)}.`,
    finer: 'A scale with a finer step keeps to the plan more closely.',
    both: (food: string) =>
      `${food} is the present food and is fed beside the mix as well; it is weighed as one.`,
    why: 'Why days are out of range',
    unchecked: 'Not checked',
    print: 'Print the plan',
    caption: (daily: number) => `Grams to weigh out each day, ${f.grams(daily)} in all`,
    day: 'Day',
    range: 'Range',
    fed: 'Fed',
    watch: 'What to watch',
  },
});

export type ChangeOver = ReturnType<typeof changeOver>;
