/** The life of one animal on one time axis. */
import type { Figures } from '../figures.ts';

export const lifeline = (_f: Figures) => ({
  title: 'Its days',
  time: {
    span: 'How much time is shown',
    spans: { day: 'Day', month: 'Month', quarter: 'Quarter', year: 'Year' },
    fromTo: (from: string, to: string) => `${from} to ${to}`,
    oneDay: (weekday: string, day: string) => `${weekday}, ${day}`,
    earlier: 'Earlier',
    later: 'Later',
    toToday: 'To today',
  },
});

export type Lifeline = ReturnType<typeof lifeline>;
