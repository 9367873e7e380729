import type { Hurts } from '../en/hurts.ts';
import type { Figures } from '../figures.ts';

export const hurts = (f: Figures): Hurts => ({
  all: 'Was schaden kann',
  fresh: (foods) => `Frisch, das würde in der Mischung schimmeln: ${f.list(foods)}. Erst trocknen.`,
  dry: () => 'Getrocknet hineinnehmen',
  dried: (food) => `${food}, getrocknet`,
  isDried:
    'In der Mischung steht es jetzt getrocknet, mit demselben Anteil. Was frisch war, wird vor dem Abwiegen zu Hause getrocknet.',
  never: (foods) => `Darf nicht gefüttert werden und bleibt bei 0 %: ${f.list(foods)}.`,
  listed: (food, found) =>
    `${food} bleibt bei 0 %: Auf der eigenen Zutatenliste steht ${found}, das darf nicht gefüttert werden.`,
  beside: (food, found) =>
    `${food}, neben der Mischung gefüttert: Auf der eigenen Zutatenliste steht ${found}, das darf nicht gefüttert werden.`,
  goAhead: 'Trotzdem, mit Begründung…',
  goAheadWith: (food) => `Trotzdem, mit Begründung … (${food})`,
  gone: (food, found, day, note) =>
    `${food} ist dabei, weil du es am ${day} so entschieden hast („${note}“), obwohl ${found} auf der Liste steht.`,
  keepOut: 'Doch weglassen',
  why: 'Warum es trotzdem gefüttert wird (etwa auf tierärztlichen Rat); das bleibt bei der Mischung',
  yes: 'Trotzdem füttern',
  no: 'Weglassen',
});
