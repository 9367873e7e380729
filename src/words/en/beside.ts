/** What is fed beside the mix, and the whole ration of a day. */
import type { Figures } from '../figures.ts';

export const beside = (f: Figures) => ({
  title: 'The whole ration',
  parts: 'Parts of the whole ration',
  thisMix: 'This mix',
  aDay: (grams: number) => `${f.grams(grams, 1)} a day`,
  mixOnly: 'mix only',
  share: (percent: number, food: string) => `${f.percent(percent, 1).replace(' ', '\u00a0')} ${food}`,
  mixShare: (percent: number) => `${f.percent(percent, 1).replace(' ', '\u00a0')} mix`,
  two: (food: string, mix: string) => `${food} and ${mix}`,
  many: (foods: string, mix: string) => `${foods}; and ${mix}`,
  gone: (food: string) => `${food} is no longer fed beside the mix.`,
  come: (food: string) => `${food} is fed beside the mix now.`,
  day: {
    label: 'Whole ration of a day',
    notSaid: 'not said',
    needs: (grams: number) => `At least ${f.grams(grams)}, for what is given in grams below.`,
    without:
      'Without the whole ration of a day, what was given in grams is kept as its share of the whole ration.',
    fed: (names: readonly string[], grams: number) =>
      f.form(names.length, {
        one: `${f.list(names)} is fed ${f.grams(grams, 1)} a day.`,
        other: `${f.list(names)} are fed ${f.grams(grams, 1)} a day.`,
      }),
    use: (grams: number) => `Use ${f.grams(grams, 1)}`,
    useAll: (grams: number) => `Use ${f.grams(grams, 1)} for all together`,
    useEach: (grams: number) => `Use ${f.grams(grams, 1)} for each, on average`,
  },
  picker: {
    label: 'Add what is fed beside',
    title: 'Fed beside the mix',
    fed: 'Fed',
    inMix: 'In the mix',
    own: 'own food',
    pellet: 'pellet',
    invented: (kind: string) => `${kind}, invented`,
    fresh: 'fresh',
    placeholder: 'cucumber, dandelion, a pellet…',
  },
  row: {
    invented: 'invented',
    givenAs: 'Given as',
    asShare: 'share',
    asGrams: 'grams a day',
    share: 'Share of the whole ration',
    grams: 'Grams a day',
    isShare: (percent: number) => `That is ${f.percent(percent)} of the whole ration.`,
    isShareDry: (percent: number) => `Counted dry, that is ${f.percent(percent)} of the whole ration.`,
    from: 'May be from',
    to: 'to',
    fixed: 'fixed',
    needsDay: 'Grams a day need the whole ration of a day. Write that first, above; then choose grams again.',
    fresh: 'Fresh: count it without its water',
    whyDry: (water: number) =>
      `The ranges are meant for dry food, so a slice of cucumber does not lower the protein that the animal gets: its water counts only up to ${f.percent(water)}, the moisture at which feed tables state their figures (NRC 1995).`,
    remove: (food: string) => `Remove ${food} from the ration`,
    working: 'Working it out…',
    noShare: (percent: number) =>
      `No share within these limits lets a mix keep every rule; ${f.percent(percent)} counts.`,
    chosen: (percent: number, from: number, to: number) =>
      `Chosen: ${f.percent(percent)}. A mix keeps every rule from ${f.number(from)} to ${f.percent(to)}.`,
    onlyShare: (percent: number) =>
      `Chosen: ${f.percent(percent)}. No other share lets a mix keep every rule.`,
    atLeast: (percent: number) => `At least ${f.percent(percent)}: its own limit.`,
    atMost: (percent: number) => `At most ${f.percent(percent)}: its own limit.`,
    room: (percent: number) => `At most ${f.percent(percent)}: what else is fed leaves no more.`,
  },
});

export type Beside = ReturnType<typeof beside>;
