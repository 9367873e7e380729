import type { Calendar } from '../en/calendar.ts';
import type { Figures } from '../figures.ts';

export const calendar = (f: Figures): Calendar => {
  const days = (n: number) => f.count(n, { one: 'dag', other: 'dagen' });
  return {
    title: 'Dagen',
    move: {
      isDone: (step) => `${step} is gedaan en blijft staan; verzet wat erna komt.`,
      hasBegun: (step) => `${step} is begonnen en blijft staan; verzet wat erna komt.`,
      withItsPack: (step) => `${step} heeft zijn dag bij de pakken: verzet het daar.`,
      stillFreezing: (step, day, first) =>
        `${step} kan niet op ${day} beginnen: wat in de vriezer ligt, is dan nog niet klaar. De eerste dag die kan is ${first}.`,
      beforePlan: (step, day, begin, first) =>
        `${step} kan niet op ${day} beginnen: dat is vóór ${begin}, de eerste dag van het plan. De eerste dag die kan is ${first}.`,
      fixedUntil: (step, day, other, until, first) =>
        `${step} kan niet op ${day} beginnen: ${other} duurt tot ${until}. De eerste dag die kan is ${first}, of verzet eerst die stap.`,
      goesOnUntil: (step, day, other, until, first) =>
        `${step} kan niet op ${day} beginnen: ${other} duurt tot ${until}. De eerste dag die kan is ${first}, of geef die stap minder dagen.`,
      tooEarlyFor: (step, day, other, needed, begin, first) =>
        `${step} kan niet op ${day} beginnen: ${other} zou op ${needed} moeten beginnen, vóór ${begin}. De eerste dag die kan is ${first}, of geef de stappen ertussen minder dagen.`,
      beforeLasts: (step, day, before, until) =>
        `${step} kan niet op ${day} beginnen: ${before} ervoor duurt tot ${until}. Dat is de eerste dag die kan, tenzij je eerst die stap verzet.`,
      firstDay: (step, day, first) =>
        `${step} kan niet op ${day} beginnen: de eerste dag die kan is ${first}.`,
      noRoom: (step, day, full, grams, room) =>
        `${step} kan niet op ${day} beginnen: op ${full} zou er ${f.weight(grams)} in de vriezer liggen, en er is plaats voor ${f.weight(room)}.`,
      nextRoom: (day) => `De eerste dag daarna met plaats is ${day}.`,
      nowBegins: (step, day) => `${step} begint nu op ${day}.`,
      stays: (step, day) => `${step} blijft op ${day}.`,
      nothingElse: 'Verder verschuift er niets.',
      to: (step, day) => `${step} naar ${day}`,
      withIt: (moves) => `Schuift mee: ${f.list(moves)}.`,
      nowLate: (end, due) => `Het plan eindigt nu op ${end}, na ${due}.`,
      stepGone: (day) =>
        `Een stap die je op ${day} hebt gezet, staat niet meer in het plan; jouw dag ervoor vervalt.`,
      dropped: (why) => `Jouw dag voor een stap vervalt. ${why}`,
      begins: (day) => `Begint op ${day}`,
      take: (day) => `Neem ${day}`,
      seeFreezer: 'Bekijk alles wat de vriezer in gaat',
      anotherDay: 'Een andere dag',
      put: 'Daarheen verzetten',
      earlier: 'Een dag eerder',
      later: 'Een dag later',
      done: 'Klaar',
      from: (day) => `Vanaf ${day}.`,
      by: (day) => `Uiterlijk ${day}.`,
      with: (foods) => `Met ${foods}.`,
    },

    screen: {
      noShares: (mix) =>
        `${mix} heeft nog geen ingrediënt met een aandeel: <mix>geef het er een paar bij Mengsels</mix>, dan valt er iets te plannen.`,
      for: (batch, mix) => `Voor ${batch} van ${mix}.`,
      forGrams: (batch, mix, grams) => `Voor ${batch} van ${mix}, ${f.grams(grams)}.`,
      toBuy: 'Hoeveel, en wat te kopen',
      inShort: 'Het plan in het kort',
      beginPassed: 'De eerste dag die je opgaf is voorbij, dus het plan begint vandaag.',
      overdue: (foods, step, day) =>
        `${foods}: ${step} was op ${day} voorbij en is niet afgevinkt; wat volgt wordt later. <tick>Vink het af</tick>`,
      packWithoutDays: (pack) =>
        `${pack} heeft nog geen dagen in de vriezer; de dagen hieronder weten niet hoeveel plaats er is. <plan>Plan het invriezen voor de plaats die er is</plan>`,
      packsWithoutDays: (n) =>
        `${f.number(n)} pakken hebben nog geen dagen in de vriezer; de dagen hieronder weten niet hoeveel plaats er is. <plan>Plan het invriezen voor de plaats die er is</plan>`,
      whenRunsOut: '<animals>Naar de dieren</animals> of <now>weeg wat er over is</now>.',
      takeBack: 'Jouw gekozen dagen terugnemen',
      ready: 'Klaar',
      readyToWeigh: 'Klaar om af te wegen',
      readyFoods: (foods) => `${f.list(foods)}.`,
    },
    goBy: {
      section: 'Waar de dagen zich naar richten',
      question: 'Waar richt je je naar?',
      today: 'Ik begin vandaag',
      from: 'Ik begin op een andere dag',
      runsOut: (name, day) => `Klaar als ${name} op is, ${day}`,
      until: 'Klaar uiterlijk op een dag die ik kies',
      beginning: 'Elke stap komt zo vroeg als kan.',
      end: 'Elke stap komt zo laat als kan.',
      firstDay: 'Eerste dag',
      fromPassed: 'Die is voorbij: vandaag telt.',
      doneBy: 'Alles klaar uiterlijk op',
      untilPassed: 'Die is voorbij: kies een latere dag, of begin vandaag.',
    },
    list: {
      section: 'Stappen per dag',
      title: 'Stap voor stap',
      onDay: (weekday, day) => `${weekday} ${day}`,
      today: (day) => `${day} (vandaag)`,
      deadline: (day) => `${day}: dan moet alles klaar zijn.`,
      doneSoFar: (n) => `Tot nu toe gedaan (${f.number(n)})`,
      on: (day) => `op ${day}`,
      span: (from, to) => `${from} tot ${to}`,
      begun: (when) => `${when}, is begonnen`,
      done: (when) => `${when}, gedaan`,
      setsPace: 'bepaalt het tempo',
      withPack: 'de dag staat bij het pak',
      yourDay: 'jouw dag',
      change: 'Wijzigen',
      close: 'Sluiten',
      changeDay: (step) => `De dag wijzigen: ${step}`,
      closeDay: (step) => `Sluiten: ${step}`,
    },
    picture: {
      bowl: 'In de kom',
      freeze: 'vriezer',
      thaw: 'ontdooit',
      dry: 'droogt',
      weigh: 'afwegen',
      change: 'van oud voer naar nieuw',
      buy: 'kopen',
      setsPace: 'dikke lijn: bepaalt het tempo, een dag die hier verloren gaat, gaat voor alles verloren',
      waits: 'gestippeld: wacht',
      done: 'gedaan',
      today: 'vandaag',
      due: (day) => `${day}: alles moet klaar zijn`,
    },
    lengths: {
      title: 'Hoe lang elke stap duurt',
      about:
        'Voor wat nog geen dagen heeft. Een pak met dagen in de vriezer houdt die tot het invriezen opnieuw gepland wordt; een grote zak krijgt er meer.',
      unit: 'dagen',
      buy: 'Kopen',
      freeze: 'Invriezen, elke keer',
      thaw: 'Ontdooien, elke keer',
      dry: 'Drogen',
      weigh: 'Afwegen',
      'change-over': 'Overstappen',
    },
    file: {
      title: 'Voor je eigen agenda',
      about:
        'Een bestand dat agendaprogramma’s lezen (.ics). Een later bestand van dezelfde batch vervangt een eerder.',
      reminder: 'Met een herinnering om 9 uur ’s ochtends op elke eerste dag',
      save: 'Agendabestand bewaren',
      saved: (name) => `Bewaard als ${name}: open het met je agenda.`,
      failed: (why) => `Het bestand kon niet gemaakt worden: ${why}`,
      fileName: (batch) => `pouchful-${batch}`,
      entryOf: (step, made) => `${step}: ${made}`,
      check: (food) => `Keren en controleren: ${food}`,
      checkText: (n, of) =>
        `Controle ${f.number(n)} van ${f.number(of)}. Klaar als niets meer zacht of plakkerig is (gangbare praktijk, geen bron).`,
      forBatch: (made, foods) => `Voor ${made}: ${foods}.`,
      beginBy: (day) => `Begin uiterlijk ${day}.`,
      setsPace: 'Bepaalt het tempo: een dag die hier verloren gaat, gaat voor alles verloren.',
      room: (n) => `${days(n)} tussen de vroegste en de laatste dag.`,
      category: {
        buy: 'Inkoop',
        freeze: 'Invriezen',
        thaw: 'Invriezen',
        dry: 'Drogen',
        weigh: 'Afwegen',
        'change-over': 'Overstap',
      },
    },
  };
};
