import type { Freezing } from '../en/freezing.ts';
import type { Figures } from '../figures.ts';

export const freezing = (f: Figures): Freezing => {
  const days = (n: number) => f.count(Math.round(n * 10) / 10, { one: 'Tag', other: 'Tage' });
  /** Nach "von" und "nach". */
  const inDays = (n: number) => f.count(Math.round(n * 10) / 10, { one: 'Tag', other: 'Tagen' });
  return {
    step: { freeze: 'Einfrieren', thaw: 'Auftauen' },
    why: {
      pellet:
        'Pellets: heiß gepresst oder gebacken und in geschlossener Packung verkauft. Sie müssen nicht eingefroren werden (übliche Praxis, ohne Quelle).',
      fresh: 'Frisch gekauft: Vorratsinsekten leben in trockener Ware.',
      dried: (low, high) =>
        `Selbst getrocknet: Getreideinsekten sterben bei ${f.degrees(low)} bis ${f.degrees(high)} in etwa 15 Minuten. Frier es ein, wenn es kühler getrocknet wurde.`,
      animal:
        'Getrocknetes tierisches Futter: Einfrieren ist bei pflanzlicher Ware üblich. Frier es ein, wenn du Insekten siehst.',
      dry: 'Trocken gekauft: Insekten können als Eier oder Larven darin liegen, manche in den Körnern.',
      dryOfNoGroup:
        'Trocken gekauft, von keiner bekannten Gruppe: Insekten können darin liegen, also kommt es ins Gefrierfach.',
    },
    before: (pack, n, kind, before, beforeKind) =>
      `${pack}: Schritt ${f.number(n)} (${kind}) lässt sich nicht vor Schritt ${f.number(before)} (${beforeKind}) abhaken. Hak zuerst Schritt ${f.number(before)} ab, oder mach trotzdem weiter und sag, warum.`,
    tooSoon: (pack, n, kind, lasted, needed, day, due) =>
      `${pack}: Schritt ${f.number(n)} (${kind}) hat am ${day} erst ${f.number(lasted)} von ${inDays(needed)} gedauert. Hak ihn am ${due} oder später ab, oder mach trotzdem weiter und sag, warum.`,
    overlaps: (pack, n, kind, day, before, beforeKind, due) =>
      `${pack}: Schritt ${f.number(n)} (${kind}) kann nicht am ${day} beginnen: Schritt ${f.number(before)} (${beforeKind}) endet am ${due}. Fang dann oder später an.`,
    noStep: (pack, n, of) =>
      `${pack} hat keinen Schritt ${f.number(n)} beim Einfrieren, sondern ${f.number(of)}. Plan zuerst das Einfrieren.`,
    tickedAlready: (pack, n, kind, day) =>
      `${pack}: Schritt ${f.number(n)} (${kind}) wurde am ${day} abgehakt und wird nicht mehr geändert.`,
    sayWhy: (pack) => `${pack}: Schreib auf, warum du es abwiegst, bevor das Einfrieren fertig ist.`,
    stopped: (pack, day, why) => `${pack} wird seit ${day} nicht mehr verwendet: ${why}.`,
    stoppedWayOut: 'Nimm eine andere Packung, oder lass die Zutat in dieser Charge weg.',
    wentAhead: (day, note) =>
      `Das Einfrieren ist nicht fertig; du hast am ${day} trotzdem weitergemacht: ${note}`,
    pastBestBefore: (day) => `Mindestens haltbar bis ${day}: Schau und riech daran, bevor du es verwendest.`,
    notFrozen: (pack) => `${pack} wurde trocken gekauft und noch nicht eingefroren und aufgetaut.`,
    planIt: 'Plan das Einfrieren, oder mach trotzdem weiter und sag, warum.',
    notYet: (pack, ready, day) => `${pack} ist am ${ready} mit dem Einfrieren fertig, am ${day} noch nicht.`,
    weighLater: (ready) => `Wieg es am ${ready} oder später ab, oder mach trotzdem weiter und sag, warum.`,
    notTicked: (pack, open) =>
      `${pack} ist mit dem Einfrieren nicht fertig: ${f.count(open, { one: 'Schritt ist', other: 'Schritte sind' })} nicht abgehakt.`,
    tickOff: {
      freeze: (due, ready) =>
        `Hak das Einfrieren ab, das am ${due} endet; bereit ist es am ${ready}. Oder mach trotzdem weiter und sag, warum.`,
      thaw: (due, ready) =>
        `Hak das Auftauen ab, das am ${due} endet; bereit ist es am ${ready}. Oder mach trotzdem weiter und sag, warum.`,
    },
    notUsed: (why) => `Wird nicht mehr verwendet: ${why}.`,
    late: (pack, needed, ready) =>
      `${pack} wird am ${needed} gebraucht, ist aber frühestens am ${ready} mit dem Einfrieren fertig.`,
    tooBig: (pack, size, room) =>
      `${pack} braucht Platz für ${f.grams(size, 0)}, und das Gefrierfach hat Platz für ${f.grams(room, 0)}.`,
    tooBigInLitres: (pack, size, room) =>
      `${pack} braucht ${f.figure(size)} Liter, und das Gefrierfach hat ${f.figure(room)} Liter.`,
    splitIt: (packs) => `Teil es in ${f.number(packs)} Packungen auf, oder schaff mehr Platz.`,
    tooWarm: (celsius, set) =>
      `Luft von ${f.degrees(celsius)} ist zu warm, um Insekten in bekannter Zeit zu töten: Stell das Gefriergerät auf ${f.degrees(set)} oder kälter.`,
    longer: (n, mid, most, core, hold) =>
      `${days(n)}: Der Kern dieses Beutels braucht ${days(mid)} (höchstens ${days(most)}) bis ${f.degrees(core)}. Die zähesten geprüften Insekten starben bei dieser oder tieferer Temperatur nach ${inDays(hold)}.`,
    usual: (n, most, core, hold) =>
      `${days(n)}, wie üblich; der Kern braucht höchstens ${days(most)} bis ${f.degrees(core)}. Die zähesten geprüften Insekten starben bei dieser oder tieferer Temperatur nach ${inDays(hold)}.`,
    source: (lethal, goods) => `Wärmeleitung; ${lethal}. ${goods}`,
    lethal: {
      laboratory:
        'Collins, Conyers, Cardwell: alle Larven von Ephestia elutella in Diapause tot nach 22 Tagen bei -10 °C, 3 bei -15 °C, 1 bei -20 °C',
      bins: 'Canadian Grain Commission: Getreide bei -5 °C 12 Wochen, -10 °C 8, -15 °C 4, -20 °C 1 Woche',
    },
  };
};
