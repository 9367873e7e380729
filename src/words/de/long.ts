import type { Long } from '../en/long.ts';
import type { Figures } from '../figures.ts';

export const long = (f: Figures): Long => ({
  doing: {
    aims: 'Die Mischung, die deine Wünsche erfüllt, wird gesucht…',
    best: 'Die beste Mischung wird gesucht…',
    spans: 'Die Mischung ist gefunden. Wie weit sich jeder Anteil ändern darf, wird ausgerechnet…',
    conflict: 'Keine Mischung hält alle diese Grenzen ein. Gesucht wird, was sich im Weg steht…',
    remedies: 'Keine Mischung hält alle diese Grenzen ein. Ausprobiert wird, was hilft…',
    points: 'Mischungen zwischen beiden werden gesucht…',
    alone: 'Die beste Mischung für jedes Tier wird gesucht…',
    together: 'Eine Mischung, die für alle passt, wird gesucht…',
    fewest: 'So wenige Zugaben wie möglich werden gesucht…',
    lightest: 'So leichte Zugaben wie möglich werden gesucht…',
  },
  steps: (done, of) => `Schritt ${f.number(done)} von höchstens ${f.number(of)}.`,
  found: {
    some: 'Bisher am besten: eine Mischung, die alle Grenzen einhält. Wie viel besser es noch geht, ist noch nicht bekannt.',
    nearest: (percent) =>
      `Bisher am besten: eine Mischung, die alle Grenzen einhält. Sie kann deinen Wünschen noch um höchstens ${f.percent(percent, 0)} näher kommen.`,
    cheapest: (price, less) =>
      `Bisher am besten: ${f.money(price)} je kg. Es kann noch um höchstens ${f.money(less)} je kg günstiger werden.`,
    varied: (percent) =>
      `Bisher am besten: eine Mischung, die alle Grenzen einhält. Sie kann noch um höchstens ${f.percent(percent, 0)} abwechslungsreicher werden.`,
    fewest: (n, least) =>
      `Bisher gefunden: ${f.count(n, { one: 'Zugabe', other: 'Zugaben' })} für alle Tiere zusammen. Weniger als ${f.number(least)} reichen nicht.`,
    lightest: (grams, least) =>
      `Bisher gefunden: ${f.grams(grams, 1)} Zugaben auf 100 g Grundmischung. Weniger als ${f.grams(least, 1)} reicht nicht.`,
  },
  stopHere: 'Hier anhalten',
  goOn: 'Weitersuchen',
  stopped: {
    nothing: 'Angehalten, bevor etwas gefunden war.',
    found:
      'Angehalten. Das ist das Beste, was bis dahin gefunden war; ob es nichts Besseres gibt, ist nicht bewiesen.',
    points: 'Angehalten. Zwischen beiden kann es noch mehr Mischungen geben.',
    notSure: 'Angehalten. Was im Weg steht, ist gefunden; vielleicht hilft noch mehr.',
  },
  whyLater: 'Was die beste Mischung zurückhält, wird ausgerechnet, sobald sie gefunden ist.',
  took: 'Es passt: Alle Grenzen sind eingehalten. Es ist das Beste, was bis zum Anhalten gefunden war; vielleicht gibt es etwas Besseres.',
});
