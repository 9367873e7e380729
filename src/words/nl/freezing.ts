import type { Freezing } from '../en/freezing.ts';
import type { Figures } from '../figures.ts';

export const freezing = (f: Figures): Freezing => {
  const days = (n: number) => f.count(Math.round(n * 10) / 10, { one: 'dag', other: 'dagen' });
  return {
    step: { freeze: 'invriezen', thaw: 'ontdooien' },
    why: {
      pellet:
        'Brokjes: heet geperst of gebakken en in een gesloten pak verkocht. Ze hoeven niet ingevroren te worden (gangbare praktijk, geen bron).',
      fresh: 'Vers gekocht: voorraadinsecten leven in droge waren.',
      dried: (low, high) =>
        `Thuis gedroogd: graaninsecten sterven bij ${f.degrees(low)} tot ${f.degrees(high)} binnen ongeveer 15 minuten. Vries het in als het koeler gedroogd is.`,
      animal:
        'Gedroogd dierlijk voer: invriezen is gebruikelijk voor plantaardige waren. Vries het in als je insecten ziet.',
      dry: 'Droog gekocht: er kunnen insecten in zitten als eitjes of larven, soms in de korrels.',
      dryOfNoGroup:
        'Droog gekocht, van geen bekende groep: er kunnen insecten in zitten, dus het gaat de vriezer in.',
    },
    before: (pack, n, kind, before, beforeKind) =>
      `${pack}: stap ${f.number(n)} (${kind}) kan niet afgevinkt worden vóór stap ${f.number(before)} (${beforeKind}). Vink eerst stap ${f.number(before)} af, of ga toch door en zeg waarom.`,
    tooSoon: (pack, n, kind, lasted, needed, day, due) =>
      `${pack}: stap ${f.number(n)} (${kind}) heeft op ${day} pas ${f.number(lasted)} van ${days(needed)} geduurd. Vink hem af op ${due} of later, of ga toch door en zeg waarom.`,
    overlaps: (pack, n, kind, day, before, beforeKind, due) =>
      `${pack}: stap ${f.number(n)} (${kind}) kan niet op ${day} beginnen: stap ${f.number(before)} (${beforeKind}) eindigt op ${due}. Begin dan of later.`,
    noStep: (pack, n, of) =>
      `${pack} heeft geen stap ${f.number(n)} van het invriezen; het heeft er ${f.number(of)}. Plan eerst het invriezen.`,
    tickedAlready: (pack, n, kind, day) =>
      `${pack}: stap ${f.number(n)} (${kind}) is op ${day} afgevinkt en wordt niet meer gewijzigd.`,
    sayWhy: (pack) => `${pack}: schrijf op waarom je het afweegt voordat het invriezen klaar is.`,
    stopped: (pack, day, why) => `${pack} wordt sinds ${day} niet meer gebruikt: ${why}.`,
    stoppedWayOut: 'Neem een ander pak, of laat het ingrediënt weg uit deze batch.',
    wentAhead: (day, note) => `Het invriezen is niet klaar; je bent op ${day} toch doorgegaan: ${note}`,
    pastBestBefore: (day) => `Ten minste houdbaar tot ${day}: bekijk en ruik het voordat je het gebruikt.`,
    notFrozen: (pack) => `${pack} is droog gekocht en nog niet ingevroren en ontdooid.`,
    planIt: 'Plan het invriezen, of ga toch door en zeg waarom.',
    notYet: (pack, ready, day) => `${pack} is op ${ready} klaar met invriezen, op ${day} nog niet.`,
    weighLater: (ready) => `Weeg het af op ${ready} of later, of ga toch door en zeg waarom.`,
    notTicked: (pack, open) =>
      `${pack} is niet klaar met invriezen: ${f.count(open, { one: 'stap is', other: 'stappen zijn' })} niet afgevinkt.`,
    tickOff: {
      freeze: (due, ready) =>
        `Vink het invriezen af dat op ${due} eindigt; het is klaar op ${ready}. Of ga toch door en zeg waarom.`,
      thaw: (due, ready) =>
        `Vink het ontdooien af dat op ${due} eindigt; het is klaar op ${ready}. Of ga toch door en zeg waarom.`,
    },
    notUsed: (why) => `Wordt niet meer gebruikt: ${why}.`,
    late: (pack, needed, ready) =>
      `${pack} is nodig op ${needed}, maar is op zijn vroegst op ${ready} klaar met invriezen.`,
    tooBig: (pack, size, room) =>
      `${pack} neemt plaats voor ${f.grams(size, 0)} in, en de vriezer heeft plaats voor ${f.grams(room, 0)}.`,
    tooBigInLitres: (pack, size, room) =>
      `${pack} neemt ${f.figure(size)} liter in, en de vriezer heeft ${f.figure(room)} liter.`,
    splitIt: (packs) => `Verdeel het over ${f.number(packs)} pakken, of maak meer plaats.`,
    tooWarm: (celsius, set) =>
      `Lucht van ${f.degrees(celsius)} is te warm om insecten in bekende tijd te doden: zet de vriezer op ${f.degrees(set)} of kouder.`,
    longer: (n, mid, most, core, hold) =>
      `${days(n)}: de kern van deze zak doet er ${days(mid)} over (hoogstens ${days(most)}) om ${f.degrees(core)} te worden. De taaiste onderzochte insecten stierven bij die temperatuur of kouder binnen ${days(hold)}.`,
    usual: (n, most, core, hold) =>
      `${days(n)}, zoals gebruikelijk; de kern doet er hoogstens ${days(most)} over om ${f.degrees(core)} te worden. De taaiste onderzochte insecten stierven bij die temperatuur of kouder binnen ${days(hold)}.`,
    source: (lethal, goods) => `Warmtegeleiding; ${lethal}. ${goods}`,
    lethal: {
      laboratory:
        'Collins, Conyers, Cardwell: alle larven van Ephestia elutella in diapauze dood na 22 dagen bij -10 °C, 3 bij -15 °C, 1 bij -20 °C',
      bins: 'Canadian Grain Commission: graan bij -5 °C 12 weken, -10 °C 8, -15 °C 4, -20 °C 1 week',
    },
  };
};
