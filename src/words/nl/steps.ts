import type { Steps } from '../en/steps.ts';
import type { Figures } from '../figures.ts';

export const steps = (f: Figures): Steps => {
  const days = (n: number) => f.count(n, { one: 'dag', other: 'dagen' });
  return {
    step: {
      buy: 'kopen',
      freeze: 'invriezen',
      thaw: 'ontdooien',
      dry: 'drogen',
      weigh: 'afwegen',
      'change-over': 'overstappen',
    },
    numbered: (step, n) => `${step} ${f.number(n)}`,
    numberedOf: (step, n, of) => `${step} (${f.number(n)} van ${f.number(of)})`,
    lasting: (step, n) => `${step} (${f.number(n)})`,
    with: (step, goods) => `${step}: ${goods}`,
    namedAndMore: (names, more) => `${names} en nog ${f.number(more)}`,

    todo: {
      buy: (what) => `${what} kopen`,
      freeze: (what) => `${what} invriezen`,
      thaw: (what) => `${what} uit de vriezer halen`,
      dry: (what) => `${what} drogen`,
      weigh: (made) => `${made} afwegen`,
      'change-over': (made) => `beginnen met overstappen op ${made}`,
    },
    buyAnd: {
      freeze: (what) => `${what} kopen en invriezen`,
      dry: (what) => `${what} kopen en drogen`,
    },
    foods: (n) => f.count(n, { one: 'ingrediënt', other: 'ingrediënten' }),
    todoToday: (todo) => `vandaag ${todo}.`,
    todoBy: (todo, day) => `uiterlijk ${day} ${todo}.`,
    todoLate: (todo, day, made, late) =>
      `nu ${todo}: dat had uiterlijk ${day} gemoeten, dus ${made} komt ${days(late)} later.`,
    ready: (made) => `${made} is klaar.`,
    goesOn: (step, day) => `${step} duurt nog tot ${day}.`,
    goesOnToday: (step) => `${step} duurt nog tot vandaag.`,
    runsOutToday: (name, then) => `${name} is vandaag op; ${then}`,
    runsOut: (name, day, then) => `${name} is op ${day} op; ${then}`,
    ranOut: (name, day, then) => `${name} was op ${day} op; ${then}`,

    pace: (n, chain) => `Het duurt ${days(n)}. Dit bepaalt het tempo: ${chain}.`,
    allDone: (made) => `Voor ${made} is alles gedaan.`,
    first: (todo, day) => `Eerst: uiterlijk ${day} ${todo}.`,
    usedOn: (made, day) => `Op ${day} zijn de dieren gewend aan ${made}.`,
    weighedOn: (made, day) => `Op ${day} is ${made} afgewogen.`,
    usedBy: (made, day) => `Dan zijn de dieren uiterlijk ${day} gewend aan ${made}.`,
    weighedBy: (made, day) => `Dan is ${made} uiterlijk ${day} afgewogen.`,
    justFits: 'Het past net: er blijft geen dag over.',
    fits: (spare) => `Het past, met ${days(spare)} over.`,
    usedTooLate: (made, day, late, due) =>
      `Het past niet: pas op ${day} zijn de dieren gewend aan ${made}, ${days(late)} na ${due}.`,
    weighedTooLate: (made, day, late, due) =>
      `Het past niet: pas op ${day} is ${made} afgewogen, ${days(late)} na ${due}.`,
    moveEarlier: (spare) => `Zet stappen op eerdere dagen: dan blijft er ${days(spare)} over.`,
    bridge: (name) =>
      `Voer op de dagen zonder ${name ?? 'het mengsel'} alleen de brokjes die een compleet voer zijn (gangbare praktijk, geen bron), of maak een kleine batch van wat klaar is.`,
    shortestFits: (day) =>
      `Met de kortste tijden die gebruikelijk zijn (gangbare praktijk, geen bron) zou het op ${day} klaar zijn en passen: geef de stappen minder dagen.`,
    shortestLate: (day) =>
      `Zelfs met de kortste tijden die gebruikelijk zijn (gangbare praktijk, geen bron) is het pas op ${day} klaar.`,
  };
};
