import type { Lifeline } from '../en/lifeline.ts';
import type { Figures } from '../figures.ts';

export const lifeline = (_f: Figures): Lifeline => ({
  title: 'Seine Tage',
  time: {
    span: 'Wie viel Zeit zu sehen ist',
    spans: { day: 'Tag', month: 'Monat', quarter: 'Quartal', year: 'Jahr' },
    fromTo: (from, to) => `${from} bis ${to}`,
    oneDay: (weekday, day) => `${weekday}, ${day}`,
    earlier: 'Früher',
    later: 'Später',
    toToday: 'Zu heute',
  },
});
