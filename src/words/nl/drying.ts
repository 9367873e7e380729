import type { Drying } from '../en/drying.ts';
import type { Figures } from '../figures.ts';
import { trimParts } from './trim-parts.ts';

export const drying = (f: Figures): Drying => {
  const hours = (n: number) => `${f.number(n)} uur`;
  return {
    title: 'Drogen',
    goneFood: 'Ingrediënt van een pak dat er niet meer is',
    load: (name, n, of) => `${name}, lading ${f.number(n)} van ${f.number(of)}`,
    halfDried: (food) => `${food}, half gedroogd`,
    food: 'Ingrediënt',
    weighedAndDriedOn: 'gewogen en verder gedroogd',
    thrownAwayNote: 'weggegooid',
    asDried: (source, water, day) => `${source}; met ${f.percent(water, 1)} water zoals gedroogd op ${day}`,

    holds: {
      damp: (water, most) =>
        `Het bevat ongeveer ${f.percent(water, 1)} water, meer dan de ${f.percent(most)} waarbij het goed blijft: niet droog genoeg om te bewaren. Droog het verder en weeg opnieuw, of vries het in.`,
      dry: (water, most) =>
        `Het bevat ongeveer ${f.percent(water, 1)} water: droog genoeg om te bewaren (hoogstens ${f.percent(most)}).`,
      unsure: (water, most) =>
        `Het bevat ongeveer ${f.percent(water, 1)} water, maar het kan meer zijn dan de ${f.percent(most)} waarbij het goed blijft. Droog verder tot een afgekoeld stuk breekt, bewaar het een week in een glazen pot en let op vocht, of droog een klein monster tot het niet lichter meer wordt.`,
    },
    waterWithRange: (water, low, high) =>
      `${f.percent(water, 1)} (${f.number(low, 1)} tot ${f.percent(high, 1)})`,
    fault: {
      sayFreshFirst: 'Zeg eerst welk vers ingrediënt het is: het water ervan is nodig.',
      waterNotKnown: (food) =>
        `Hoeveel water het bevat is niet bekend (${food}). Droog een klein monster tot het niet lichter meer wordt, en vul de twee gewichten in.`,
      noLighter: (after, before) =>
        `Het gewicht erna (${f.grams(after)}) is niet lager dan het gewicht ervoor (${f.grams(before)}): drogen haalt water weg. Zijn ze verwisseld, of is er een plaat meegewogen?`,
      tooLight: (after, least, before, water) =>
        `Het gewicht erna (${f.grams(after)}) is minder dan de droge stof van het verse (${f.grams(least, 1)} van ${f.grams(before)} bij ${f.percent(water)} vocht). Weeg opnieuw, tel mee wat erdoor viel of opgegeten is, of geef het vocht van het verse op; het moet vochtiger geweest zijn.`,
      sampleHeavier: (dry, fresh) =>
        `Het droge monster (${f.grams(dry)}) is zwaarder dan het verse (${f.grams(fresh)}); weeg opnieuw.`,
      sampleAfterStart: (of, before) =>
        `De lading woog ${f.grams(of)} toen het monster genomen werd, meer dan de ${f.grams(before)} aan het begin; verbeter een van de twee.`,
    },
    lighterThanTable:
      'Het weegt iets minder dan de tabel van de droge stof zegt. Het verse was dus vochtiger dan in de tabel, of er ging iets verloren. Gerekend wordt met 0 % vocht.',
    trim: {
      source: 'USDA SR28, bestand van voedingsmiddelen, Refuse',
      own: (percent) => `${f.percent(percent)} wordt weggesneden (door jou gewogen).`,
      parts: (percent, parts, source) => `${f.percent(percent)} wordt weggesneden: ${parts} (${source}).`,
      unknown: (food) =>
        `Wat er weggesneden wordt is niet bekend (${food}): weeg wat ervoor en erna, en vul het verlies in.`,
      nothing: (food, source) =>
        `De tabel rekent niets als weggesneden en noemt geen delen (${food}; ${source}): koop iets meer.`,
      noParts: (percent, source) =>
        `${f.percent(percent)} wordt weggesneden (${source}; welke delen staat er niet bij).`,
    },
    trimParts: trimParts(),
    dryWhen: {
      'vegetable-oven': 'niets meer zacht of plakkerig is',
      vegetable: 'het hard en bros is, grote stukken taai en leerachtig; ongeveer 10 % vocht',
      leaf: 'het bros is; ongeveer 10 % vocht',
      herb: 'bladeren verkruimelen en stelen breken; ongeveer 10 % vocht',
      fruit: 'het leerachtig is en er geen vocht meer uit te knijpen is',
    },
    layer: {
      vegetable:
        'gangbare praktijk, geen bron: één laag stukken van ongeveer 5 mm dik met ruimte voor de lucht',
      leaf: 'gangbare praktijk, geen bron: één losse laag',
      herb: 'gangbare praktijk, geen bron: één laag, bladeren raken elkaar niet',
      fruit: 'gangbare praktijk, geen bron: één laag schijven die elkaar niet raken',
    },
    known: { 'common practice': 'gangbare praktijk', published: 'gepubliceerd' },
    caution: {
      stay: 'Blijf thuis en wakker terwijl het droogt en kijk om de 2 uur; laat het nooit alleen of ’s nachts aanstaan. Wat bijna droog is schroeit snel en kan vlam vatten.',
      oven: 'Droog alleen in de oven waar geen kleine kinderen en geen dieren zijn. Zonder ventilator staat de deur 5 tot 15 cm open om het vocht eruit te laten, en die is urenlang heet.',
      'no-break':
        'Droog zonder onderbreking en tot het eind: half droog voer dat blijft staan schimmelt, en wat schimmel toont gaat weg en wordt niet verder gedroogd.',
      thermometer: (celsius) =>
        `Controleer met een oventhermometer op de plek waar het komt te liggen of de oven een lage warmte houdt; veel ovens gaan niet onder ${f.degrees(celsius)}, en kruiden en bladeren drogen dan beter in een droogapparaat of in warme lucht.`,
      crust:
        'Te heet aan het begin, en de buitenkant wordt hard terwijl de binnenkant vochtig blijft en later schimmelt.',
      'last-hours': 'Zet de warmte de laatste uren lager: wat bijna droog is heeft minder nodig.',
      cool: 'Laat stukken afkoelen voordat je ze test: warm voelt zachter en vochtiger dan het is.',
    },

    screen: {
      runs: 'Droogbeurten',
      run: 'Droogbeurt',
      dryer: 'Apparaat',
      yourDryer: 'Jouw apparaat',
      dryerIs: (device, trays, area, celsius) =>
        `${device}, ${f.number(trays)} × ${f.number(area, 1)} dm², ${f.degrees(celsius)}`,
      dryerNotSaid: 'Nog niet opgegeven: oven of droogapparaat, en de platen',
      notHere: 'Staat hier niet',
      notHereWhy: 'Er is geen droogbeurt of vers pak meer met deze naam. Misschien is het op, of verwijderd.',
      back: '‹ Alles van drogen',
      thisDrying: 'Dit drogen',
      thisRun: 'Deze droogbeurt',
    },
    list: {
      now: 'Droogt nu',
      toDry: 'Te drogen',
      finished: 'Klaar',
      nothingFresh: 'Er is niets vers in voorraad. <add>Voeg een nieuw pak toe</add>, soort “Vers”.',
      leftOf: (left, all) => `${left} over van ${all}`,
      inFreezer: (what) => `${what}, in de vriezer`,
      bought: (what, day) => `${what} · gekocht ${day}`,
      halfDried: (what, day) => `${what} · half gedroogd ${day}`,
      thrownAway: (when) => `Weggegooid, ${when}`,
      became: (before, after, when) => `${before} werd ${after} · ${when}`,
      becameWith: (before, after, water, when) => `${before} werd ${after}, ${water} water · ${when}`,
    },
    state: {
      drying: 'Droogt',
      weighed: 'Gewogen: zeg wat ermee gebeurt',
      done: 'Klaar',
      lost: 'Weggegooid',
    },
    check: {
      dueSince: (at) => `Nu kijken en keren: het moest om ${at}`,
      next: (at, left) => `Om ${at} kijken en keren, over ${left}`,
      due: (name) => `Nu kijken en keren: ${name}`,
      section: 'Volgende controle',
      weight: 'Gewicht bij deze controle, als je weegt',
      weightShort: 'Gewicht bij deze controle',
      waterNow: (water) => `Ongeveer ${water} water tot nu toe.`,
      noTrays: 'Zonder platen.',
      note: 'Notitie, als je wilt',
      noteExample: 'in het midden nog zacht',
      done: 'Gekeken en gekeerd',
      soFar: 'Controles tot nu toe',
      atGrams: (when, grams) => `${when}: ${grams}`,
      atWater: (when, grams, water) => `${when}: ${grams}, ongeveer ${water} water`,
      withNote: (line, note) => `${line} · ${note}`,
      asFile: 'Controles als agendabestand',
      fileName: 'drogen-controleren.ics',
      notify: 'Meld het als er een controle moet',
      notified: 'Meldingen komen zolang deze pagina open is.',
      notNotified: 'Meldingen staan voor deze pagina uit in de browser.',
      fileFailed: (why) => `Het agendabestand kon niet gemaakt worden: ${why}`,
    },
    page: {
      began: 'Begonnen',
      ended: 'Beëindigd',
      oven: 'Oven',
      dehydrator: 'Droogapparaat',
      trays: (n) => f.count(n, { one: 'plaat', other: 'platen' }),
      set: (celsius, trays) => `${f.degrees(celsius)}, ${trays}`,
      setFor: (celsius, trays, h) => `${f.degrees(celsius)}, ${trays}, ongeveer ${hours(h)}`,
      onTrays: 'Op de platen',
      ofTaken: (weight, taken) => `${weight} van ${taken} die eruit gehaald zijn`,
      pack: 'Pak',
      wasLost: (name) => `Is ${name} weggegooid?`,
      deleteRun: (name) => `De droogbeurt van ${name} verwijderen?`,
      goBack: 'Nee, terug',
      lost: 'Het is weggegooid',
      delete: 'De droogbeurt verwijderen',
      lostMeans:
        'De droogbeurt eindigt en er komt niets van in voorraad. Wat uit het pak gehaald is, blijft verbruikt.',
      deleteMeans: 'Voor een droogbeurt per ongeluk: wat eruit gehaald is, zit weer in het pak.',
      askLost: 'Weggegooid…',
      askDelete: 'Deze droogbeurt verwijderen…',
    },
    facts: {
      yield: 'Opbrengst',
      yieldIs: (after, before, percent) => `${after} van ${before}: ${f.percent(percent, 1)}`,
      water: 'Water, en hoe ver het ernaast kan zitten (95 van de 100 keer)',
      keepsAt: 'Blijft goed bij',
      orLess: (most) => `${f.percent(most)} water of minder`,
      limit: (source) => `Grens: ${source}`,
    },
    verdict: {
      section: 'Oordeel',
      dry: 'Droog genoeg om te bewaren',
      unsure: 'Misschien niet droog genoeg',
      damp: 'Te vochtig om te bewaren',
      notEnded: 'Nog niet beëindigd',
      keptNotEnded: (name) => `${name} is bewaard, maar het einde van deze droogbeurt is niet bewaard.`,
      end: 'De droogbeurt beëindigen',
      notKnown: 'Nog niet bekend',
      dryOn: 'Verder drogen',
      toStock: 'In voorraad leggen',
      toFreezer: 'In de vriezer leggen',
      dampMeans: (h) =>
        `Het komt niet in voorraad. Droogt het verder, dan is de volgende controle over ${hours(h)}. Uit de vriezer kun je het een andere dag drogen; tot dan wordt het niet afgewogen.`,
      sampleToBeSure: 'Een klein monster drogen om zeker te zijn',
      keepAnyway: 'Toch bewaren',
      whyKeep: 'Waarom je het bewaart, en hoe je erop let',
      whyExample: 'elk stuk breekt; een week in een glazen pot',
      sayWhy: 'Schrijf op waarom; het blijft bij de droogbeurt.',
      keepUnderNote: 'Met deze notitie bewaren',
      dryOnAnyway: 'Toch verder drogen',
    },
    end: {
      section: 'Klaar met drogen',
      title: 'Klaar?',
      how: 'Laat het afkoelen en weeg dan alles zonder de platen.',
      weight: 'Gewicht erna',
      weigh: 'Wegen',
      sampleDone: 'Er is een monster gedroogd',
      sample: 'Een monster van het verse drogen',
    },
    sample: {
      putBack: 'Leg het daarna terug bij de rest.',
      before: 'Monster ervoor',
      dry: 'Monster gedroogd',
      held: (water) => `Het bevatte ${f.percent(water, 1)} water.`,
      step: 'De weegschaal toont stappen van',
      count: 'Met het monster rekenen',
      leaveOut: 'Het monster weglaten',
      counts: 'Het monster telt in plaats van de tabel; onzeker is alleen nog de weegschaal.',
    },
    result: {
      section: 'Resultaat',
      inStock: 'In voorraad als <pack></pack>.',
      inFreezer: 'In de vriezer als <pack></pack>.',
      halfDried:
        'In de vriezer als <pack></pack>, half gedroogd: het wordt niet afgewogen tot het verder gedroogd is.',
      keptThough: (day, note) => `Bewaard op ${day} hoewel het te vochtig kan zijn: “${note}”`,
      startLoad: (n, of) => `Lading ${f.number(n)} van ${f.number(of)} beginnen`,
    },
    inMix: {
      section: 'In het mengsel',
      notNamed: 'Het gekozen mengsel noemt dit ingrediënt niet.',
      noFigures: 'De cijfers van dit ingrediënt zijn niet bij de hand.',
      working: 'Bezig…',
      title: (grams) => `Wat ${f.grams(grams)} ervan bevat`,
      caption: (grams) => `Per ${f.grams(grams)} zoals gewogen.`,
      content: 'Gehalte',
      counts: (mix) => `“${mix}” rekent met`,
      sameAt: (water) => `Hetzelfde met ${f.percent(water, 1)} water`,
      fromFresh: 'Uit het verse',
      about:
        'Afgezien van water scheelt een andere oogst meer dan een ander apparaat: de laatste kolom, berekend uit het verse, is een tweede mening.',
      countsWith: (water) => `Het mengsel rekent met ${f.percent(water, 1)} water.`,
      use: 'In het mengsel gebruiken',
      used: 'Het mengsel heeft het; kijk daar of het nog binnen bereik is.',
      batches: 'Batches rekenen al met het water van hun pakken; dit is voor wat je plant.',
      notKnown: 'niet bekend',
      undoName: 'vocht zoals gedroogd',
    },
    dryer: {
      with: 'Waarmee je droogt',
      oven: 'Oven',
      dehydrator: 'Droogapparaat',
      trays: 'Platen',
      usual: 'Gebruikelijke temperatuur',
      size: 'Grootte van één plaat',
      byWidth: 'Breedte en lengte',
      byArea: 'Oppervlak',
      width: 'Breedte',
      length: 'Lengte',
      area: 'Oppervlak',
      cm: 'cm',
      dm2: 'dm²',
      areaIs: (dm2) => `${f.number(dm2)} dm²`,
      areaHint: 'Een plaat van 40 × 30 cm heeft 12 dm² (vierkante decimeter: elk 10 × 10 cm).',
      keep: 'Het apparaat onthouden',
      kept: 'Onthouden.',
    },
    heed: { section: 'Let op tijdens het drogen', more: 'Meer om op te letten tijdens het drogen' },
    fresh: {
      title: 'Welk vers ingrediënt is het?',
      why: 'Hoe droog het is volgt uit het water van het verse ingrediënt.',
      planned: (water) => `Gepland op ${f.percent(water)} water als het droog is`,
    },
    number: {
      empty: (label) => `${label} is leeg: vul een getal in.`,
      none: (label, typed, one, other) =>
        `${label}: “${typed}” is geen getal; schrijf bijvoorbeeld ${f.number(one)} of ${f.number(other)}.`,
      tooLow: (label, typed) => `${label}: ${typed} is te laag; het moet boven 0 zijn.`,
      tooHigh: (label, typed, most) =>
        `${label}: ${typed} is te hoog; het mag hoogstens ${f.number(most)} zijn.`,
      notWhole: (label, typed) => `${label}: ${typed} is geen heel getal.`,
    },
    plan: {
      title: (name) => `${name} drogen`,
      inFreezer: (weight) => `${weight} in de vriezer.`,
      inStock: (weight) => `${weight} in voorraad.`,
      halfDried: (water) => `Half gedroogd: ${f.percent(water, 1)} water.`,
      freshFood: (food) => `Vers ingrediënt: ${food}.`,
      freshFoodWith: (food, water, source) =>
        `Vers ingrediënt: ${food}, ${f.percent(water, 1)} water (${source}).`,
      loadsFollow: 'Hoeveel ladingen het zijn volgt uit de platen.',
      restOf: (done, rest) =>
        `${f.count(done, { one: 'lading is', other: 'ladingen zijn' })} klaar. Van wat gepland was blijft ${rest} over.`,
      howMuch: 'Hoeveel',
      taken: 'Uit het pak gehaald',
      ready: 'Schoongemaakt en klaar',
      about: (weight) => `ongeveer ${weight}`,
      readyHint: 'Zoals je weegschaal zegt: daaruit wordt berekend hoe droog het wordt.',
      kind: 'Soort',
      kinds: {
        vegetable: 'Groente, in stukken',
        leaf: 'Bladgroente',
        herb: 'Kruid of bloem',
        fruit: 'Fruit',
      },
      estimate: (note) => `Schatting: ${note}`,
      leaves: (weight) => `Daar blijft ongeveer ${weight} van over.`,
      perArea: 'Gewicht op 1 dm²',
      onTrays: 'Nu op de platen',
      firstOf: (loads) =>
        `De eerste van ${f.number(loads)} ladingen; houd de rest koel. De volgende begint als deze klaar is.`,
      temperature: 'Temperatuur',
      time: 'Tijd',
      mayTake: (most, every) =>
        `Het kan tot ${hours(most)} duren; om de ${hours(every)} een controle tot je het droog weegt.`,
      checkEvery: (every) => `Om de ${hours(every)} een controle.`,
      startLoad: 'Deze lading beginnen',
      start: 'Beginnen met drogen',
      takenTooMuch: (typed, has) => `Uit het pak gehaald: ${typed} is meer dan de ${has} die er nog is.`,
      readyTooMuch: (typed, taken) => `Schoongemaakt en klaar: ${typed} is meer dan de ${taken} uit het pak.`,
      eachTooMuch: (typed, ready) => `Nu op de platen: ${typed} is meer dan de ${ready} die klaar is.`,
      howThick: (trays, area) =>
        `Hoe dik, op ${f.count(trays, { one: 'plaat', other: 'platen' })} van ${f.number(area, 1)} dm²`,
      onArea: (grams, loads) => `${f.grams(grams)} op 1 dm²: ${loads}`,
      loads: (n) => (n === 1 ? 'één lading' : `${f.number(n)} ladingen`),
      loadsOf: (n, weight) =>
        n === 1 ? `één lading van ${weight}` : `${f.number(n)} ladingen van ${weight}`,
      asILoad: 'Zoals ik ze vul',
      asILoadThem: (loads) => `Zoals ik ze vul: ${loads}`,
      howHot: 'Hoe heet en hoe lang',
      way: (celsius, h) => `${celsius}, ${h}`,
      hours: (low, high) => (low === high ? hours(low) : `${f.number(low)} tot ${hours(high)}`),
      degrees: (low, high) =>
        low === high
          ? f.degrees(low)
          : `${f.number(f.heat(low), 0)} tot ${f.number(f.heat(high), 0)} ${f.heatUnit}`,
      doneWhen: (sign) => `Klaar als ${sign}.`,
    },
  };
};
