import type { Weighing } from '../en/weighing.ts';
import type { Figures } from '../figures.ts';

export const weighing = (f: Figures): Weighing => ({
  title: (mix) => `Afwegen: ${mix}`,
  allBatches: 'Alle batches',
  backToMix: 'Terug naar het mengsel',
  noMix: 'Er is nog geen mengsel',
  notKept: 'Deze batch is hier niet bewaard',
  toMix: '<mix>Ga naar het mengsel</mix> en weeg van daaruit af.',
  at: (day, time) => `${day} om ${time}`,
  working: 'Wat nu komt wordt uitgerekend…',
  notWorkedOut: (why) => `De batch kon niet worden uitgerekend: ${why}`,
  notDeleted: (why) => `Niet verwijderd: ${why}`,

  total: {
    region: 'Tot nu toe in de kom',
    inBowl: (total, of) => `<b>${f.grams(total)}</b> van ${f.grams(of)} in de kom`,
    bar: 'Tot nu toe afgewogen',
  },
  status: {
    'as planned': 'Zoals gepland',
    corrected: 'Aangepast: andere hoeveelheden dan gepland',
    grown: (total) => `Vergroot tot ${f.grams(total)}: andere hoeveelheden dan gepland`,
    changedSize: (total) => `Veranderd in ${f.grams(total)}: andere hoeveelheden dan gepland`,
    asked: 'Nu kies jij',
  },

  step: {
    now: 'Nu',
    more: 'Nog meer',
    instead: (food) => (food === undefined ? 'In plaats van te stoppen' : `In plaats van ${food}`),
    ofIt: (target) => `op de weegschaal, waarvan ${f.grams(target)} van dit ingrediënt`,
    insteadHelp:
      'Neem zoveel je wilt; de andere passen zich aan. Zit het er al in? Schrijf op wat erin ging.',
    outHelp: 'Dichterbij kan niet; de batch blijft buiten bereik.',
    reading: `De weegschaal wijst aan, in ${f.massUnit}`,
    right: (grams) => `${f.grams(grams)}, klopt`,
    poured: 'Erbij gedaan',
    pouredGrams: (grams) => `Erbij gedaan: ${f.grams(grams)}`,
    oneMore: (step) => `${f.grams(step)} meer`,
    oneLess: (step) => `${f.grams(step)} minder`,
    noMore: 'Hier is niets meer van',
    leaveOut: 'Weglaten',
    leaveOutSure: (food) => `Ja, zonder ${food}`,
    leaveOutMoreSure: (food) => `Ja, niet nog meer ${food}`,
    leaveOutHelp: 'De andere vangen dat op, zover het gaat.',
    backTo: (food) => (food === undefined ? 'Terug naar het einde' : `Terug naar ${food}`),
    other: 'Er ging iets anders in, of dat komt eerst',
    choose: 'Kies het hier',
    stranger: 'Iets dat niet in dit mengsel zit',
    strangerHelp:
      'Haal het er weer helemaal uit en ga verder. Wat het mengsel niet kent, kan niet worden uitgerekend: blijft er iets van in zitten, geef deze batch dan onderaan op en begin opnieuw.',
    reads: 'Wat de weegschaal aanwijst',
    readsFood: 'alleen dit ingrediënt (eerst op nul zetten)',
    readsBowl: 'alles in de kom',
  },
  reading: {
    missing: `Schrijf wat de weegschaal aanwijst, in ${f.massUnit}.`,
    missingNoMore: `Schrijf eerst wat de weegschaal ervan aanwijst, in ${f.massUnit}. Helemaal niets? Druk op “Weglaten”.`,
    noNumber: `Dat is geen getal; schrijf bijvoorbeeld 15 of 15,5, in ${f.massUnit}.`,
    belowZero: (grams) => `${f.grams(grams)} is minder dan 0. Zet de lege weegschaal op nul en weeg opnieuw.`,
    lessThanBowl: (grams, inBowl) =>
      `${f.grams(grams)} is minder dan de ${f.grams(inBowl)} die al in de kom lag. Stond de weegschaal op nul, kies dan “alleen dit ingrediënt”.`,
    nothing: 'Er ging niets in. Moet het zonder, druk dan op “Weglaten”.',
  },
  tolerance: {
    none: 'Geen enkele hoeveelheid ervan brengt het hele rantsoen binnen bereik; dit komt het dichtst in de buurt.',
    only: (g, onScale) =>
      `Alleen ${f.grams(g)}${onScale ? ' op de weegschaal' : ''} houdt het hele rantsoen binnen bereik.`,
    upTo: (g, onScale) =>
      `Alles tot ${f.grams(g)}${onScale ? ' op de weegschaal' : ''} houdt het hele rantsoen binnen bereik.`,
    between: (low, high, onScale) =>
      `Alles van ${f.number(f.mass(low))} tot ${f.grams(high)}${onScale ? ' op de weegschaal' : ''} houdt het hele rantsoen binnen bereik.`,
    grows: (total) => `De batch groeit dan tot ${f.grams(total)}.`,
    comesTo: (total) => `De batch komt dan op ${f.grams(total)}.`,
    orWider: (low, high, total) =>
      low === 0
        ? `Tot ${f.grams(high)} als de batch op ${f.grams(total)} komt.`
        : `Van ${f.number(f.mass(low))} tot ${f.grams(high)} als de batch op ${f.grams(total)} komt.`,
  },

  changed: {
    more: (food, g) => `Doe nog ${f.grams(g)} ${food} erbij.`,
    leftOut: (food, from) => `Laat ${food} weg, tot nu toe ${f.grams(from)}.`,
    instead: (food, to, from) => `${food}: ${f.grams(to)} in plaats van ${f.grams(from)}.`,
  },
  after: {
    region: 'Na het laatste afwegen',
    poured: (food, g) => `${f.grams(g)} ${food}`,
    takenOut: (food, g) => `${f.grams(g)} ${food} eruit gehaald`,
    leftOut: (food) => `${food} weggelaten`,
    lost: (what) => `${what}: de batch is buiten bereik.`,
    asked: (what) => `${what}: de batch kan niet blijven zoals gepland.`,
    done: (what, total) => `${what}: alles zit erin, ${f.grams(total)} binnen bereik.`,
    grown: (what, others, again, total, planned) =>
      `${what}: ${othersChange(others, again)}; de batch komt op ${f.grams(total)} in plaats van ${f.grams(planned)}.`,
    goesOn: (what, others, again) =>
      `${what}: ${othersChange(others, again)}, en de batch blijft binnen bereik.`,
    changes: (n) => `Wat er verandert (${f.number(n)})`,
  },
  spoonBack: (food, out) =>
    `Of haal ${f.grams(out)} ${food} er weer uit: dan blijft de batch zo groot als gepland.`,
  takenOut: (out) => `${f.grams(out)} eruit gehaald`,

  ask: {
    heading: (planned) => `Met ${f.grams(planned)} komt dit niet meer binnen bereik`,
    grow: (total, planned) =>
      `Een batch van ${f.grams(total)} in plaats van ${f.grams(planned)} zou binnen bereik zijn.`,
    without: (foods) => `Zonder ${f.list(foods)} zou hij binnen bereik zijn.`,
    growWithout: (total, planned, foods) =>
      `Een batch van ${f.grams(total)} in plaats van ${f.grams(planned)}, zonder ${f.list(foods)}, zou binnen bereik zijn.`,
    doGrow: (total) => `Vergroten tot ${f.grams(total)}`,
    doWithout: (foods) => `${f.list(foods)} weglaten`,
    doGrowWithout: (total, foods) => `Vergroten tot ${f.grams(total)} en ${f.list(foods)} weglaten`,
    doTakeOut: (out, food) => `${f.grams(out)} ${food} er weer uit halen`,
    takeOutHelp: (out, food) => `Haal nu ${f.grams(out)} ${food} uit de kom en druk dan.`,
    takeOutDone: (out) => `${f.grams(out)} eruit gehaald`,
    takeOutNotYet: 'Terug naar de keuzes',
    doKeep: (planned) => `${f.grams(planned)} houden, buiten bereik`,
    missed: 'Als hij zo blijft:',
  },

  lost: {
    region: 'Buiten bereik',
    heading: 'Dit is niet meer binnen bereik te brengen',
    noSteps: 'In hele stappen van de weegschaal komt deze batch niet binnen bereik.',
    sentence: 'Met wat er is komt deze batch niet meer binnen bereik. Dichterbij kan niet:',
    larger: (total) => `Een batch van ${f.grams(total)} zou binnen bereik zijn.`,
    largerWith: (total, needed) =>
      `Een batch van ${f.grams(total)} zou binnen bereik zijn; daarvoor is ${f.list(needed.map((n) => `${f.grams(n.grams)} ${n.name}`))} meer nodig dan er in de pakken zit.`,
    grow: (total) => `Toch vergroten tot ${f.grams(total)}`,
    growWithMore: 'De batch vergroten; ik heb er meer van',
    goOn: 'Of ga hieronder verder: de volgende hoeveelheden komen het dichtst in de buurt.',
    why: 'De kom zo aannemen, omdat',
    whyMissing: 'Schrijf de reden op; die blijft bij de batch.',
    accept: 'Zo aannemen en afsluiten',
    again: 'Opnieuw beginnen',
    againSure: 'Ja, de kom legen en opnieuw beginnen',
    againHelp:
      'Deze batch wordt dan gesloten en gemerkt als niet te voeren; een nieuwe volgens hetzelfde plan begint.',
    againFailed: (why) => `Er is geen nieuwe batch begonnen: ${why}`,
    startedAgain: 'opnieuw begonnen met een lege kom',
  },

  finish: {
    region: 'Alles zit erin',
    heading: (total) => `Alles zit erin: ${f.grams(total)}`,
    press: 'Batch afsluiten',
    madeBy: 'Gemaakt door (als je wilt)',
  },
  giveUp: {
    press: 'Deze batch opgeven',
    emptyHelp: 'Er zit nog niets in, dus er gaat niets verloren.',
    help: 'Wat erin ging blijft genoteerd en is uit de pakken af; de batch wordt gesloten en niet gevoerd.',
    why: 'Waarom (als je wilt; het blijft bij de batch)',
    noReason: 'zonder opgave van reden',
    yesDelete: 'Ja, verwijderen',
    yes: 'Ja, opgeven',
    no: 'Nee, verdergaan',
  },
  takeBack: (food, g) => `Laatste invoer terugnemen (${f.grams(g)} ${food}), die was verkeerd geschreven`,
  usedUp: (food) => `Er is geen ${food} meer: er wordt niet meer naar gevraagd.`,
  moreAfterAll: (food) => `Er is toch nog ${food}`,

  list: {
    region: 'Alle ingrediënten van de batch',
    heading: 'Alle ingrediënten',
    done: (done, all) => `${f.number(done)} van ${f.number(all)} klaar`,
    state: { poured: 'erin', 'left out': 'weggelaten', now: 'nu', 'to come': 'komt nog' },
    planned: (g) => `gepland ${f.grams(g)}`,
    otherToCome: (food, g) => `${food}, ${f.grams(g)} komt nog`,
    otherMore: (food, g) => `meer ${food}, ${f.grams(g)} in de kom`,
    otherLeftOut: (food) => `${food}, nu weggelaten`,
    otherNotPlanned: (food) => `${food}, niet gepland`,
  },

  save: {
    saving: (g, food) => `${f.grams(g)} ${food} wordt bewaard…`,
    savingChange: 'Je laatste wijziging wordt bewaard…',
    savingEnd: 'Het einde van de batch wordt bewaard…',
    waits: (pours) =>
      `${f.count(pours, { one: 'invoer wacht', other: 'invoeren wachten' })} op verzenden. Ga gerust verder; er gaat niets verloren.`,
    changeWaits: 'Je laatste wijziging wacht op verzenden. Ga gerust verder; er gaat niets verloren.',
    endWaits: 'Het einde van de batch wacht op verzenden; er gaat niets verloren.',
    tryNow: 'Nu proberen',
    refused: (g, food, why) =>
      `<b>Niet genoteerd:</b> ${f.grams(g)} ${food}. ${why} Hier staat de batch zoals die bewaard is; kijk in de kom voordat je verdergaat.`,
    refusedChange: (why) =>
      `<b>Niet genoteerd:</b> je laatste wijziging. ${why} Hier staat de batch zoals die bewaard is; kijk in de kom voordat je verdergaat.`,
    refusedEnd: (why) =>
      `<b>Niet genoteerd:</b> het einde van de batch. ${why} Hier staat de batch zoals die bewaard is; kijk in de kom voordat je verdergaat.`,
    asked:
      'Een ander apparaat heeft intussen hetzelfde aan deze batch veranderd: kies hierboven wat moet gelden.',
  },

  lots: {
    from: (packs) => `Uit ${packs.join(', dan ')}.`,
    bought: (pack, day) => `${pack}, ${day}`,
    grams: (pack, g) => `${pack} (${f.grams(g)})`,
    rest: (g) => `Voor de overige ${f.grams(g)} is geen pak klaar.`,
    none: 'Er is geen pak van klaar om af te wegen.',
    passed: 'Pakken die niet klaar zijn',
    why: (grams, why, wayOut) => `(${f.grams(grams)}): ${why} ${wayOut}`,
    goAhead: (pack) => `${pack} afwegen zonder invriezen…`,
  },

  scaleSteps: 'De weegschaal wijst aan in stappen van',
  scaleStep: (g) => f.grams(g),
  order: {
    why: 'Waarom in deze volgorde',
    free: (food) => `${food}: hier staat geen regel in de weg, het kan er altijd in.`,
    early: (food, on) =>
      `${food} komt vroeg, want het werkt het sterkst (${on}); wat daarna komt kan dat nog opvangen.`,
    between: (food, on) => `${food} komt in het midden, want het werkt een beetje (${on}).`,
    late: (food, on) =>
      `${food} komt laat: een beetje ernaast doet weinig (${on}), en daarna komt er weinig meer om het op te vangen.`,
  },

  begin: {
    running: 'Wordt nu afgewogen',
    goOn: (name) => `Verder afwegen: ${name}`,
    finished: 'Klaar',
    record: (name) => `Verslag: ${name}`,
    region: 'Een nieuwe batch',
    weight: 'Gewicht van de batch',
    working: 'Wordt uitgerekend…',
    fitFirst: 'Maak het mengsel eerst passend; dan kun je het afwegen.',
    press: (g) => `Met ${f.grams(g)} beginnen`,
    busy: 'Wordt uitgerekend…',
    failed: (why) => `De batch is niet begonnen: ${why}`,
    notReady: 'Pakken die niet klaar zijn',
    notReadyHeading: 'Nog niet klaar om af te wegen',
    notReadyHelp: 'Deze pakken tellen niet mee, en zonder die pakken is er niet genoeg.',
    withoutCounting: 'Wat ontbreekt heb ik: beginnen zonder de pakken te tellen',
    thisBatch: 'Deze batch',
    batches: 'batches',
    made: (when, g) => `${when}, ${f.grams(g)}`,
    madeOf: (when, g, of) => `${when}, ${f.grams(g)} van ${f.grams(of)}`,
  },

  sheet: {
    print: 'Weegbriefje afdrukken',
    heading: (grams, step, batch, day) =>
      `Af te wegen: ${f.grams(grams)} in stappen van ${f.grams(step)}. Batch ${batch}, begonnen op ${day}.`,
    weighed: 'Afgewogen op <day></day> door <name></name>',
    food: 'ingrediënt en het pak',
    pour: `erbij, ${f.massUnit}`,
    range: 'van–tot',
    total: `samen, ${f.massUnit}`,
    weighedColumn: `gewogen, ${f.massUnit}`,
    span: (low, high) => `${low} tot ${high}`,
    rangeHelp:
      'Van–tot: de batch blijft binnen bereik zolang dit ingrediënt ertussen ligt en alle andere zijn zoals gedrukt. Ligt er een buiten, of wijken er meer af, vul het dan in op de pagina: de andere veranderen dan.',
    short: (food, g) => `${food}: ${f.grams(g)} te weinig.`,
    caution: (foods, way) => `<b>${f.list(foods)}:</b> ${way}`,
    notComplete: 'Geen diergeneeskundig advies. Een eigen mengsel vervangt nooit een compleet voer.',
  },
});

function othersChange(n: number, again: boolean): string {
  if (n === 0) return 'er verandert verder niets';
  const amounts = n === 1 ? 'één andere hoeveelheid verandert' : `${n} andere hoeveelheden veranderen`;
  return again ? `${amounts}, en er is meer nodig van wat al is afgewogen` : amounts;
}
