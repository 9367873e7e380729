import type { Drying } from '../en/drying.ts';
import type { Figures } from '../figures.ts';

export const drying = (f: Figures): Drying => {
  const hours = (n: number) => `${f.number(n)} h`;
  return {
    title: 'Trocknen',
    halfDried: (food) => `${food}, halb getrocknet`,
    food: 'Zutat',
    weighedAndDriedOn: 'gewogen und weitergetrocknet',
    thrownAwayNote: 'weggeworfen',
    asDried: (source, water, day) => `${source}; mit ${f.percent(water, 1)} Wasser, wie am ${day} getrocknet`,

    holds: {
      damp: (water, most) =>
        `Es enthält etwa ${f.percent(water, 1)} Wasser, mehr als die ${f.percent(most)}, bei denen es sich hält: nicht trocken genug zum Aufheben. Trockne weiter und wieg noch einmal, oder frier es ein.`,
      dry: (water, most) =>
        `Es enthält etwa ${f.percent(water, 1)} Wasser: trocken genug zum Aufheben (höchstens ${f.percent(most)}).`,
      unsure: (water, most) =>
        `Es enthält etwa ${f.percent(water, 1)} Wasser, vielleicht aber mehr als die ${f.percent(most)}, bei denen es sich hält. Trockne weiter, bis ein abgekühltes Stück bricht, heb es eine Woche in einem Glas auf und achte auf Feuchte, oder trockne eine kleine Probe, bis sie nicht mehr leichter wird.`,
    },
    waterWithRange: (water, low, high) =>
      `${f.percent(water, 1)} (${f.number(low, 1)} bis ${f.percent(high, 1)})`,
    fault: {
      sayFreshFirst: 'Sag zuerst, welche frische Zutat es ist: Ihr Wasser wird gebraucht.',
      waterNotKnown: (food) =>
        `Wie viel Wasser enthalten ist, ist nicht bekannt (${food}). Trockne eine kleine Probe, bis sie nicht mehr leichter wird, und trag ihre beiden Gewichte ein.`,
      noLighter: (after, before) =>
        `Das Gewicht danach (${f.grams(after)}) ist nicht kleiner als das Gewicht davor (${f.grams(before)}): Trocknen nimmt Wasser heraus. Sind beide vertauscht, oder wurde ein Blech mitgewogen?`,
      tooLight: (after, least, before, water) =>
        `Das Gewicht danach (${f.grams(after)}) ist kleiner als die Trockenmasse des Frischen (${f.grams(least, 1)} von ${f.grams(before)} bei ${f.percent(water)} Feuchte). Wieg noch einmal, zähl mit, was durchfiel oder gegessen wurde, oder gib die Feuchte des Frischen an; es muss feuchter gewesen sein.`,
      sampleHeavier: (dry, fresh) =>
        `Die trockene Probe (${f.grams(dry)}) ist schwerer als die frische (${f.grams(fresh)}); wieg noch einmal.`,
      sampleAfterStart: (of, before) =>
        `Die Ladung wog ${f.grams(of)}, als die Probe genommen wurde, mehr als die ${f.grams(before)} am Anfang; berichtige eins von beiden.`,
    },
    lighterThanTable:
      'Es wiegt etwas weniger, als die Tabelle von seiner Trockenmasse sagt. Das Frische war also feuchter als in der Tabelle, oder etwas ging verloren. Gerechnet wird mit 0 % Feuchte.',
    dryWhen: {
      'vegetable-oven': 'nichts mehr weich oder klebrig ist',
      vegetable: 'es hart und spröde ist, große Stücke zäh und ledrig; etwa 10 % Feuchte',
      leaf: 'es spröde ist; etwa 10 % Feuchte',
      herb: 'Blätter zerbröseln und Stängel brechen; etwa 10 % Feuchte',
      fruit: 'es ledrig ist und sich keine Feuchte mehr herausdrücken lässt',
    },
    layer: {
      vegetable: 'übliche Praxis, ohne Quelle: eine Lage Stücke von etwa 5 mm Dicke mit Lücken für die Luft',
      leaf: 'übliche Praxis, ohne Quelle: eine lockere Lage',
      herb: 'übliche Praxis, ohne Quelle: eine Lage, die Blätter berühren sich nicht',
      fruit: 'übliche Praxis, ohne Quelle: eine Lage Scheiben, die sich nicht berühren',
    },
    known: { 'common practice': 'gängige Praxis', published: 'veröffentlicht' },
    caution: {
      stay: 'Bleib zu Hause und wach, solange es trocknet, und schau alle 2 Stunden nach; lass es nie allein oder über Nacht laufen. Was fast trocken ist, versengt schnell und kann Feuer fangen.',
      oven: 'Trockne im Ofen nur, wo keine kleinen Kinder und keine Tiere sind. Ohne Umluft steht die Tür 5 bis 15 cm offen, damit die Feuchte entweicht, und sie ist stundenlang heiß.',
      'no-break':
        'Trockne ohne Pause und bis zum Ende: Halb Trockenes, das stehen bleibt, schimmelt, und was Schimmel zeigt, wird weggeworfen, nicht weitergetrocknet.',
      thermometer: (celsius) =>
        `Prüf mit einem Ofenthermometer dort, wo das Trockengut liegen wird, ob der Ofen niedrige Hitze hält; viele gehen nicht unter ${f.degrees(celsius)}, und Kräuter und Blätter trocknen dann besser im Dörrgerät oder an warmer Luft.`,
      crust:
        'Zu heiß am Anfang, und außen wird es hart, während es innen feucht bleibt und später schimmelt.',
      'last-hours': 'Stell die Hitze für die letzten Stunden kleiner: Was fast trocken ist, braucht weniger.',
      cool: 'Lass Stücke abkühlen, bevor du sie prüfst: Warmes fühlt sich weicher und feuchter an, als es ist.',
    },

    screen: {
      runs: 'Trockengänge',
      run: 'Trockengang',
      dryer: 'Gerät',
      yourDryer: 'Dein Gerät',
      dryerIs: (device, trays, area, celsius) =>
        `${device}, ${f.number(trays)} × ${f.number(area, 1)} dm², ${f.degrees(celsius)}`,
      dryerNotSaid: 'Noch nicht angegeben: Ofen oder Dörrgerät, und die Bleche',
      notHere: 'Gibt es hier nicht',
      notHereWhy:
        'Einen Trockengang oder eine frische Packung dieses Namens gibt es nicht mehr. Vielleicht ist sie aufgebraucht oder gelöscht.',
      back: '‹ Alles vom Trocknen',
      thisDrying: 'Dieses Trocknen',
      thisRun: 'Dieser Trockengang',
    },
    list: {
      now: 'Trocknet gerade',
      toDry: 'Zu trocknen',
      finished: 'Fertig',
      nothingFresh: 'Nichts Frisches ist im Vorrat. <add>Eine neue Packung hinzufügen</add>, Art „Frisch“.',
      leftOf: (left, all) => `${left} übrig von ${all}`,
      inFreezer: (what) => `${what}, im Gefrierfach`,
      bought: (what, day) => `${what} · gekauft ${day}`,
      halfDried: (what, day) => `${what} · halb getrocknet ${day}`,
      thrownAway: (when) => `Weggeworfen, ${when}`,
      became: (before, after, when) => `Aus ${before} wurden ${after} · ${when}`,
      becameWith: (before, after, water, when) => `Aus ${before} wurden ${after}, ${water} Wasser · ${when}`,
    },
    state: {
      drying: 'Trocknet',
      weighed: 'Gewogen: Sag, was daraus wird',
      done: 'Fertig',
      lost: 'Weggeworfen',
    },
    check: {
      section: 'Nächste Prüfung',
      weight: 'Gewicht bei dieser Prüfung, falls du wiegst',
      weightShort: 'Gewicht bei dieser Prüfung',
      waterNow: (water) => `Etwa ${water} Wasser bisher.`,
      noTrays: 'Ohne Bleche.',
      note: 'Notiz, wenn du magst',
      noteExample: 'in der Mitte noch weich',
      done: 'Nachgesehen und gewendet',
      soFar: 'Bisherige Prüfungen',
      atGrams: (when, grams) => `${when}: ${grams}`,
      atWater: (when, grams, water) => `${when}: ${grams}, etwa ${water} Wasser`,
      withNote: (line, note) => `${line} · ${note}`,
      asFile: 'Prüfungen als Kalenderdatei',
      fileName: 'trocknen-pruefen.ics',
      notify: 'Melde mir, wenn eine Prüfung dran ist',
      notified: 'Meldungen kommen, solange diese Seite offen ist.',
      notNotified: 'Meldungen sind für diese Seite im Browser abgeschaltet.',
      fileFailed: (why) => `Die Kalenderdatei ließ sich nicht schreiben: ${why}`,
    },
    page: {
      began: 'Begonnen',
      ended: 'Beendet',
      oven: 'Ofen',
      dehydrator: 'Dörrgerät',
      trays: (n) => f.count(n, { one: 'Blech', other: 'Bleche' }),
      set: (celsius, trays) => `${f.degrees(celsius)}, ${trays}`,
      setFor: (celsius, trays, h) => `${f.degrees(celsius)}, ${trays}, etwa ${hours(h)}`,
      onTrays: 'Auf den Blechen',
      ofTaken: (weight, taken) => `${weight} von ${taken}, die genommen wurden`,
      pack: 'Packung',
      wasLost: (name) => `Wurde das weggeworfen: ${name}?`,
      deleteRun: (name) => `Den Trockengang löschen: ${name}?`,
      goBack: 'Nein, zurück',
      lost: 'Es wurde weggeworfen',
      delete: 'Den Trockengang löschen',
      lostMeans:
        'Der Trockengang endet, und nichts davon kommt in den Vorrat. Was aus der Packung genommen wurde, bleibt verbraucht.',
      deleteMeans: 'Für einen Trockengang aus Versehen: Was genommen wurde, ist wieder in der Packung.',
      askLost: 'Weggeworfen…',
      askDelete: 'Diesen Trockengang löschen…',
    },
    facts: {
      yield: 'Ausbeute',
      yieldIs: (after, before, percent) => `${after} von ${before}: ${f.percent(percent, 1)}`,
      water: 'Wasser, und wie weit es daneben liegen kann (95 von 100 Malen)',
      keepsAt: 'Hält sich bei',
      orLess: (most) => `${f.percent(most)} Wasser oder weniger`,
      limit: (source) => `Grenze: ${source}`,
    },
    verdict: {
      section: 'Ergebnis',
      dry: 'Trocken genug zum Aufheben',
      unsure: 'Vielleicht nicht trocken genug',
      damp: 'Zu feucht zum Aufheben',
      notEnded: 'Noch nicht beendet',
      keptNotEnded: (name) =>
        `Im Vorrat: ${name}. Das Ende dieses Trockengangs wurde aber nicht gespeichert.`,
      end: 'Den Trockengang beenden',
      notKnown: 'Noch nicht bekannt',
      dryOn: 'Weitertrocknen',
      toStock: 'In den Vorrat legen',
      toFreezer: 'Ins Gefrierfach legen',
      dampMeans: (h) =>
        `Es kommt nicht in den Vorrat. Trocknet es weiter, ist die nächste Prüfung in ${hours(h)}. Aus dem Gefrierfach kannst du es an einem anderen Tag trocknen; bis dahin wird es nicht abgewogen.`,
      sampleToBeSure: 'Eine kleine Probe trocknen, um sicher zu sein',
      keepAnyway: 'Trotzdem aufheben',
      whyKeep: 'Warum du es aufhebst, und wie du darauf achtest',
      whyExample: 'jedes Stück bricht; eine Woche im Glas',
      sayWhy: 'Schreib auf, warum; es bleibt beim Trockengang.',
      keepUnderNote: 'Mit dieser Notiz aufheben',
      dryOnAnyway: 'Trotzdem weitertrocknen',
    },
    end: {
      section: 'Fertig getrocknet',
      title: 'Fertig?',
      how: 'Lass es abkühlen und wieg dann alles ohne die Bleche.',
      weight: 'Gewicht danach',
      weigh: 'Wiegen',
      sampleDone: 'Eine Probe wurde getrocknet',
      sample: 'Eine Probe des Frischen trocknen',
    },
    sample: {
      putBack: 'Leg sie dann zum Rest zurück.',
      before: 'Probe davor',
      dry: 'Probe getrocknet',
      held: (water) => `Sie enthielt ${f.percent(water, 1)} Wasser.`,
      step: 'Die Waage zeigt Schritte von',
      count: 'Mit der Probe rechnen',
      leaveOut: 'Die Probe weglassen',
      counts: 'Die Probe zählt statt der Tabelle; unsicher ist nur noch die Waage.',
    },
    result: {
      section: 'Was herauskam',
      inStock: 'Im Vorrat als <pack></pack>.',
      inFreezer: 'Im Gefrierfach als <pack></pack>.',
      halfDried:
        'Im Gefrierfach als <pack></pack>, halb getrocknet: Es wird nicht abgewogen, bis es fertig getrocknet ist.',
      keptThough: (day, note) => `Am ${day} aufgehoben, obwohl es zu feucht sein kann: „${note}“`,
      startLoad: (n, of) => `Ladung ${f.number(n)} von ${f.number(of)} beginnen`,
    },
    inMix: {
      section: 'In der Mischung',
      notNamed: 'Die gewählte Mischung nennt diese Zutat nicht.',
      noFigures: 'Die Werte dieser Zutat sind nicht zur Hand.',
      working: 'Rechnet…',
      title: (grams) => `Was ${f.grams(grams)} davon enthalten`,
      caption: (grams) => `Je ${f.grams(grams)}, wie gewogen.`,
      content: 'Gehalt',
      counts: (mix) => `„${mix}“ rechnet mit`,
      sameAt: (water) => `Dasselbe mit ${f.percent(water, 1)} Wasser`,
      fromFresh: 'Aus dem Frischen',
      about:
        'Vom Wasser abgesehen macht eine andere Ernte mehr aus als ein anderes Gerät: Die letzte Spalte, aus dem Frischen errechnet, ist eine zweite Meinung.',
      countsWith: (water) => `Die Mischung rechnet mit ${f.percent(water, 1)} Wasser.`,
      use: 'In der Mischung verwenden',
      used: 'Die Mischung hat es; sieh dort nach, ob sie noch im Bereich ist.',
      batches: 'Chargen rechnen schon mit dem Wasser ihrer Packungen; dies ist für das, was du planst.',
      notKnown: 'nicht bekannt',
      undoName: 'Feuchte wie getrocknet',
    },
    dryer: {
      with: 'Womit du trocknest',
      oven: 'Ofen',
      dehydrator: 'Dörrgerät',
      trays: 'Bleche',
      usual: 'Übliche Temperatur',
      size: 'Größe eines Blechs',
      byWidth: 'Breite und Länge',
      byArea: 'Fläche',
      width: 'Breite',
      length: 'Länge',
      area: 'Fläche',
      cm: 'cm',
      dm2: 'dm²',
      areaIs: (dm2) => `${f.number(dm2)} dm²`,
      areaHint: 'Ein Blech von 40 × 30 cm hat 12 dm² (Quadratdezimeter: je 10 × 10 cm).',
      keep: 'Das Gerät merken',
      kept: 'Gemerkt.',
    },
    heed: { section: 'Beim Trocknen beachten', more: 'Mehr, was beim Trocknen zu beachten ist' },
    fresh: {
      title: 'Welche frische Zutat ist es?',
      why: 'Wie trocken es ist, folgt aus dem Wasser der frischen Zutat.',
      planned: (water) => `Geplant auf ${f.percent(water)} Wasser, wenn es trocken ist`,
    },
    number: {
      empty: (label) => `${label} ist leer: Trag eine Zahl ein.`,
      none: (label, typed, one, other) =>
        `${label}: „${typed}“ ist keine Zahl; schreib zum Beispiel ${f.number(one)} oder ${f.number(other)}.`,
      tooLow: (label, typed) => `${label}: ${typed} ist zu niedrig; es muss über 0 sein.`,
      tooHigh: (label, typed, most) => `${label}: ${typed} ist zu hoch; höchstens ${f.number(most)}.`,
      notWhole: (label, typed) => `${label}: ${typed} ist keine ganze Zahl.`,
    },
    plan: {
      title: (name) => `${name} trocknen`,
      inFreezer: (weight) => `${weight} im Gefrierfach.`,
      inStock: (weight) => `${weight} im Vorrat.`,
      halfDried: (water) => `Halb getrocknet: ${f.percent(water, 1)} Wasser.`,
      freshFood: (food) => `Frische Zutat: ${food}.`,
      freshFoodWith: (food, water, source) =>
        `Frische Zutat: ${food}, ${f.percent(water, 1)} Wasser (${source}).`,
      loadsFollow: 'Wie viele Ladungen es braucht, folgt aus den Blechen.',
      restOf: (done, rest) =>
        `${f.count(done, { one: 'Ladung ist', other: 'Ladungen sind' })} fertig. Vom Geplanten bleiben ${rest}.`,
      howMuch: 'Wie viel',
      taken: 'Aus der Packung genommen',
      ready: 'Geputzt und bereit',
      about: (weight) => `etwa ${weight}`,
      readyHint: 'Wie deine Waage sagt: Daraus wird errechnet, wie trocken es wird.',
      kind: 'Art',
      kinds: {
        vegetable: 'Gemüse, in Stücken',
        leaf: 'Blattgemüse',
        herb: 'Kraut oder Blüte',
        fruit: 'Obst',
      },
      estimate: (note) => `Schätzung: ${note}`,
      leaves: (weight) => `Das lässt etwa ${weight} übrig.`,
      perArea: 'Gewicht auf 1 dm²',
      onTrays: 'Jetzt auf den Blechen',
      firstOf: (loads) =>
        `Die erste von ${f.number(loads)} Ladungen; halt den Rest kühl. Die nächste beginnt, wenn diese endet.`,
      temperature: 'Temperatur',
      time: 'Zeit',
      mayTake: (most, every) =>
        `Es kann bis zu ${hours(most)} dauern; alle ${hours(every)} wird geprüft, bis du es trocken wiegst.`,
      checkEvery: (every) => `Alle ${hours(every)} wird geprüft.`,
      startLoad: 'Diese Ladung beginnen',
      start: 'Trocknen beginnen',
      takenTooMuch: (typed, has) =>
        `Aus der Packung genommen: ${typed} sind mehr als die ${has}, die übrig sind.`,
      readyTooMuch: (typed, taken) =>
        `Geputzt und bereit: ${typed} sind mehr als die ${taken} aus der Packung.`,
      eachTooMuch: (typed, ready) =>
        `Jetzt auf den Blechen: ${typed} sind mehr als die ${ready}, die bereit sind.`,
      howThick: (trays, area) =>
        `Wie dick, auf ${f.count(trays, { one: 'Blech', other: 'Blechen' })} von ${f.number(area, 1)} dm²`,
      onArea: (grams, loads) => `${f.grams(grams)} auf 1 dm²: ${loads}`,
      loads: (n) => (n === 1 ? 'eine Ladung' : `${f.number(n)} Ladungen`),
      loadsOf: (n, weight) =>
        n === 1 ? `eine Ladung von ${weight}` : `${f.number(n)} Ladungen von ${weight}`,
      asILoad: 'Wie ich sie belege',
      asILoadThem: (loads) => `Wie ich sie belege: ${loads}`,
      howHot: 'Wie heiß und wie lange',
      way: (celsius, h) => `${celsius}, ${h}`,
      hours: (low, high) => (low === high ? hours(low) : `${f.number(low)} bis ${hours(high)}`),
      degrees: (low, high) =>
        low === high
          ? f.degrees(low)
          : `${f.number(f.heat(low), 0)} bis ${f.number(f.heat(high), 0)} ${f.heatUnit}`,
      doneWhen: (sign) => `Fertig, wenn ${sign}.`,
    },
  };
};
