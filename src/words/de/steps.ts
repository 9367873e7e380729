import type { Steps } from '../en/steps.ts';
import type { Figures } from '../figures.ts';

export const steps = (f: Figures): Steps => {
  const days = (n: number) => f.count(n, { one: 'Tag', other: 'Tage' });
  /** Nach "mit" und "von". */
  const withDays = (n: number) => f.count(n, { one: 'Tag', other: 'Tagen' });
  return {
    step: {
      buy: 'Einkaufen',
      freeze: 'Einfrieren',
      thaw: 'Auftauen',
      dry: 'Trocknen',
      weigh: 'Abwiegen',
      'change-over': 'Umstellen',
    },
    numbered: (step, n) => `${step} ${f.number(n)}`,
    numberedOf: (step, n, of) => `${step} (${f.number(n)} von ${f.number(of)})`,
    lasting: (step, n) => `${step} (${f.number(n)})`,
    with: (step, goods) => `${step}: ${goods}`,
    namedAndMore: (names, more) => `${names} und ${f.number(more)} weitere`,

    todo: {
      buy: (what) => `${what} kaufen`,
      freeze: (what) => `${what} einfrieren`,
      thaw: (what) => `${what} aus dem Gefrierfach nehmen`,
      dry: (what) => `${what} trocknen`,
      weigh: (made) => `${made} abwiegen`,
      'change-over': (made) => `mit der Umstellung auf ${made} beginnen`,
    },
    buyAnd: {
      freeze: (what) => `${what} kaufen und einfrieren`,
      dry: (what) => `${what} kaufen und trocknen`,
    },
    foods: (n) => f.count(n, { one: 'Zutat', other: 'Zutaten' }),
    todoToday: (todo) => `heute ${todo}.`,
    todoBy: (todo, day) => `bis ${day} ${todo}.`,
    todoLate: (todo, day, made, late) =>
      `jetzt ${todo}: Das war bis ${day} fällig, ${made} wird also ${days(late)} später fertig.`,
    ready: (made) => `${made} ist fertig.`,
    goesOn: (step, day) => `${step} dauert noch bis ${day}.`,
    goesOnToday: (step) => `${step} dauert noch bis heute.`,
    runsOutToday: (name, then) => `${name} reicht bis heute; ${then}`,
    runsOut: (name, day, then) => `${name} reicht bis ${day}; ${then}`,
    ranOut: (name, day, then) => `${name} hat bis ${day} gereicht; ${then}`,

    pace: (n, chain) => `Es dauert ${days(n)}. Das bestimmt das Tempo: ${chain}.`,
    allDone: (made) => `Für ${made} ist alles getan.`,
    first: (todo, day) => `Als Erstes: bis ${day} ${todo}.`,
    usedOn: (made, day) => `Am ${day} sind die Tiere auf ${made} umgestellt.`,
    weighedOn: (made, day) => `Am ${day} ist ${made} abgewogen.`,
    usedBy: (made, day) => `Dann sind die Tiere bis ${day} auf ${made} umgestellt.`,
    weighedBy: (made, day) => `Dann ist ${made} bis ${day} abgewogen.`,
    justFits: 'Die Zeit reicht gerade: Kein Tag bleibt übrig.',
    fits: (spare) => `Die Zeit reicht, mit ${withDays(spare)} Luft.`,
    usedTooLate: (made, day, late, due) =>
      `Die Zeit reicht nicht: Erst am ${day} sind die Tiere auf ${made} umgestellt, ${days(late)} nach dem ${due}.`,
    weighedTooLate: (made, day, late, due) =>
      `Die Zeit reicht nicht: Erst am ${day} ist ${made} abgewogen, ${days(late)} nach dem ${due}.`,
    moveEarlier: (spare) => `Leg Schritte auf frühere Tage: Dann hast du noch ${days(spare)} Luft.`,
    bridge: (name) =>
      `Füttere an den Tagen ohne ${name ?? 'die Mischung'} nur die Pellets, die ein Alleinfutter sind (übliche Praxis, ohne Quelle), oder mach eine kleine Charge aus dem, was fertig ist.`,
    shortestFits: (day) =>
      `Mit den kürzesten Zeiten, die üblich sind (übliche Praxis, ohne Quelle), wäre es am ${day} fertig, und die Zeit würde reichen: Gib den Schritten weniger Tage.`,
    shortestLate: (day) =>
      `Selbst mit den kürzesten Zeiten, die üblich sind (übliche Praxis, ohne Quelle), ist es erst am ${day} fertig.`,
  };
};
