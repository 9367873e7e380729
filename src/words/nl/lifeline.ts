import type { Lifeline } from '../en/lifeline.ts';
import type { Figures } from '../figures.ts';

export const lifeline = (_f: Figures): Lifeline => ({
  title: 'Zijn dagen',
  time: {
    span: 'Hoeveel tijd te zien is',
    spans: { day: 'Dag', month: 'Maand', quarter: 'Kwartaal', year: 'Jaar' },
    fromTo: (from, to) => `${from} tot ${to}`,
    oneDay: (weekday, day) => `${weekday}, ${day}`,
    earlier: 'Eerder',
    later: 'Later',
    toToday: 'Naar vandaag',
  },
});
