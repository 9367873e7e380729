import type { Advice } from '../en/advice.ts';
import type { Figures } from '../figures.ts';

export const advice = (f: Figures): Advice => {
  const amount = (value: number, unit: string) =>
    unit === '' ? f.number(value, 6) : `${f.number(value, 6)} ${unit}`;
  return {
    most: (subject, to, from, unit) => `${subject} höchstens ${amount(to, unit)} statt ${amount(from, unit)}`,
    least: (subject, to, from, unit) =>
      `${subject} mindestens ${amount(to, unit)} statt ${amount(from, unit)}`,
    allow: (parts) => `Erlauben: ${f.list(parts)}.`,
    count: {
      some: (subject, to, from) => `Weniger verlangen: ${subject} ${f.number(to)} statt ${f.number(from)}.`,
      few: (subject, to, from) => `Mehr erlauben: ${subject} ${f.number(to)} statt ${f.number(from)}.`,
      used: (subject, to, from, unit) =>
        `Erlauben: ${subject.replace(/,$/, '')} ${amount(to, unit)} oder mehr statt ${amount(from, unit)}.`,
    },
    dropOne: 'Die Mischung darf aus dem Bereich geraten, wenn eine ihrer Zutaten liegen bleibt.',
    add: (food, ref, share) => `${food} (${ref}) dazunehmen: ${f.percent(share)} der Mischung reichen.`,
    addPriced: (food, ref, share, price) =>
      `${food} (${ref}) dazunehmen: ${f.percent(share)} der Mischung reichen. Als Preis gilt ${f.number(price)} je kg wie bei der teuersten Zutat; trag den richtigen ein.`,
    /** Kept as the source of a limit that was changed. */
    ownLimit: {
      ownChoice: (day, limits, source) => `eigene Wahl seit ${day}; im Bedarf steht ${limits} (${source})`,
      noSource: 'keine Quelle',
      least: (value) => `mindestens ${f.number(value, 6)}`,
      most: (value) => `höchstens ${f.number(value, 6)}`,
    },
    swap: {
      mustStay: (food, least) =>
        `${food} muss mindestens ${f.figure(least)} % der Mischung sein, darum gibt es dafür keinen Ersatz.`,
      can: (food, share, others) => `Ersatz für ${food} (${f.figure(share)} %): ${f.either(others)}.`,
      none: (food) =>
        `Für ${food} gibt es keinen Ersatz, mit dem alle Regeln gelten. Mach die Mischung ohne diese Zutat passend, dann siehst du, warum.`,
      only: '(und kein anderer Anteil)',
      upTo: (high) => `(bis ${f.number(high, 4)} %)`,
      from: (low, high) => `(${f.number(low, 4)} bis ${f.number(high, 4)} %)`,
      by: (out, taken, name, share, span) =>
        `Ersatz für ${out} (${f.figure(taken)} %): ${name}, ${f.number(share, 4)} % ${span}.`,
      byMore: (out, taken, name, share, had, span) =>
        `Ersatz für ${out} (${f.figure(taken)} %): noch mehr ${name}, ${f.number(share, 4)} % zusätzlich zu den ${f.figure(had)} %, die schon da sind ${span}.`,
      unsure: (sentence, what) => `${sentence} Nicht bekannt ist davon: ${f.list(what)}.`,
    },
  };
};
