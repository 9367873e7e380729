import type { Shopping } from '../en/shopping.ts';
import type { Figures } from '../figures.ts';

export const shopping = (f: Figures): Shopping => {
  const packs = { one: 'Packung', other: 'Packungen' };
  return {
    title: 'Einkauf',
    mix: 'Mischung',
    forMix: (mix) => `für ${mix}`,
    sizeOf: (batch, lasts) =>
      lasts === undefined ? `Für ${batch} der Mischung.` : `Für ${batch} der Mischung: ${lasts}.`,
    changeSize: 'Menge ändern',
    sharesNotWhole: (total) =>
      `Die Anteile dieser Mischung ergeben ${f.percent(total)} statt 100 %. So kann niemand sagen, wie viel zu kaufen ist. <fit>Mach die Mischung zuerst passend</fit>.`,
    notInRange: '<verdict></verdict> <fit>Mach die Mischung passend</fit>, bevor du dafür einkaufst.',
    list: {
      label: 'Einkaufsliste',
      count: (n) => `${f.count(n, { one: 'Zutat', other: 'Zutaten' })} zu besorgen`,
      nothing: 'Nichts zu kaufen: Es ist alles in deinem Vorrat.',
      hint: 'So viel Gramm braucht die Charge, aufgerundet. Häkchen bleiben und erscheinen auch auf deinen anderen Geräten.',
      groups: {
        seed: 'Saaten, Getreide und Nüsse',
        legume: 'Bohnen, Erbsen und Linsen',
        vegetable: 'Kräuter und Gemüse',
        fruit: 'Obst',
        animal: 'Tierisches Protein',
        other: 'Andere Zutaten',
        beside: 'Neben der Mischung gefüttert',
      },
      got: (food, amount) => `${food}, ${amount}`,
      fresh: (amount) => `${amount} frisch`,
      freshAtLeast: (amount) => `über ${amount} frisch`,
      dried: (grams) => `${grams} getrocknet`,
      how: (food) => `Woher es kommt: ${food}`,
      bought: 'Gekauft',
      home: 'Zu Hause',
      dry: 'Trockne ich',
      more: (food) => `Mehr zu ${food}`,
      gives: (grams) => `ergibt ${grams} getrocknet`,
      partly: (grams) => `weitere ${grams} im Vorrat`,
      freshUnknown: 'Frischgewicht nicht bekannt',
      trimUnknown: 'Abfall beim Putzen nicht bekannt',
      notCounted: (n) => `${f.count(n, packs)} nicht mitgezählt`,
      weight: 'Dein Gewicht, wenn es ein anderes ist',
      weightHint: 'So kommt es in den Vorrat.',
    },
    stocked: { summary: (n) => `Schon im Vorrat (${f.number(n)})` },
    bar: {
      label: 'In den Vorrat',
      ticked: (n, all) => `${f.number(n)} von ${f.number(all)} abgehakt`,
      all: 'Alles heute gekauft',
      only: (n) => `Nur das Abgehakte (${f.number(n)})`,
      ask: (n) =>
        f.form(n, {
          one: 'Eine Zutat kommt in den Vorrat. War sie schon gegen Insekten eingefroren?',
          other: `${f.number(n)} Zutaten kommen in den Vorrat. War das Trockene schon gegen Insekten eingefroren?`,
        }),
      askHint:
        'Trockenware kann Insekten mitbringen. Eine Antwort gilt für den ganzen Korb; bei jeder Packung kannst du sie später ändern.',
      no: 'Nein, oder unsicher: Ich friere es zuerst ein',
      seller: 'Ja, beim Verkäufer',
      self: 'Ja, bei mir zu Hause',
      frozenBySeller: 'schon beim Verkäufer eingefroren',
      frozenByMe: 'schon zu Hause eingefroren',
      put: 'In den Vorrat legen',
      notYet: 'Noch nicht',
    },
    told: {
      label: 'Gerade gekauft',
      kept: (n) => `Im Vorrat: ${f.count(n, packs)}.`,
      keptNamed: (names) => `Im Vorrat: ${names}.`,
      back: (names) => `Zurückgenommen: ${names}.`,
      which: 'Welche',
      pack: (name, grams) => `${name}, ${grams}`,
      notKept: (names, why) => `Nicht gespeichert: ${names}. ${why}`,
      stillThere: (names, why) => `Noch im Vorrat: ${names}. ${why}`,
      noWeight: (names) =>
        `Nicht in den Vorrat gelegt, weil niemand weiß, wie viel es ist: ${names}. Trag das Gewicht unter „Mehr“ ein.`,
      home: 'Was zu Hause war, steht mit dem heutigen Tag im Vorrat; ändere ihn bei der Packung, wenn sie älter ist.',
      rest: 'Den Rest noch einmal versuchen',
      plan: 'Einfrieren planen',
    },
    apart: (seller) =>
      `Was sonst noch von ${seller} kommen sollte, wird neu geplant: als eigene Bestellung mit Lieferung und Mindestbestellwert.`,
    waiting: (n) =>
      f.form(n, {
        one: 'Eine Packung in deinem Vorrat muss noch gegen Insekten eingefroren werden.',
        other: `${f.number(n)} Packungen in deinem Vorrat müssen noch gegen Insekten eingefroren werden.`,
      }),
    freezer: 'Einfrieren',
    papers: {
      print: 'Liste drucken',
      copy: 'Als Text kopieren',
      copied: 'Kopiert.',
      noCopy: 'Dieser Browser lässt die Seite nicht kopieren; druck die Liste stattdessen.',
    },
    size: {
      label: 'Größe der Charge',
      next: 'Größe der nächsten Charge',
      inGrams: 'Nach Gewicht',
      inDays: 'Nach Tagen',
      days: 'Tage, die es reichen soll',
      notWhole: (days) => `Tage, die es reichen soll: ${f.number(days)} ist keine ganze Zahl.`,
      weight: 'Gewicht der Charge',
      lasts: (days, over, names, daily) => {
        const whole = f.count(days, { one: 'Tag', other: 'Tage' });
        const time = days < 1 ? 'weniger als ein Tag' : over ? `etwas über ${whole}` : whole;
        const eats = f.form(names.length, { one: 'frisst', other: 'fressen' });
        return `${time} für ${f.list(names)} (${eats} ${daily} davon am Tag)`;
      },
      noPart:
        'Was neben der Mischung gefüttert wird, macht schon die ganze Ration aus; für einen Tag braucht es nichts von der Mischung. <mix>Ration ändern</mix>.',
      noAnimal:
        'Diese Mischung ist noch für kein Tier; darum sagen Tage nichts über Gramm. <mix>Wähle ihre Tiere</mix>, oder gib das Gewicht der Charge an.',
      notKnown:
        'Wie viel <who></who> am Tag frisst, ist nicht bekannt. <page></page>: Dann sind Tage und der Preis für einen Tag bekannt.',
      notKnownNeeded:
        'Wie viel <who></who> am Tag frisst, ist nicht bekannt. <page></page>, oder gib das Gewicht der Charge an.',
      page: (animal) => `Trag es bei ${animal} ein`,
    },
    stock: {
      label: (food) => `${food} im Vorrat`,
      from: (grams) => `${grams} aus <lot></lot>`,
      fromFresh: (grams, dried) => `${grams} aus <lot></lot>, getrocknet ${dried}`,
      bought: (day) => `gekauft am ${day}`,
      freshFirst: 'frisch: erst trocknen',
      fromTrays: (grams) => `Etwa ${grams} von <run></run>`,
      onTrays: (lot) => `${lot} auf den Blechen`,
      passed: (grams) => `Nicht mitgezählt: ${grams} von <lot></lot>; <why></why>.`,
      passedTrays: (grams) => `Nicht mitgezählt: ${grams} von <lot></lot> auf den Blechen; <why></why>.`,
    },
    prices: {
      summary: 'Preise und Verkäufer',
      hint: 'Für alle, die vergleichen. Trag bei einer Zutat unter „Mehr“ ein, wer sie verkauft und für wie viel; dann werden ganze Packungen gewählt und die Charge hat einen Preis.',
      label: 'Preise',
      aim: 'Packungen wählen für',
      cost: 'Wenig Geld',
      waste: 'Wenig Reste',
      toPay: 'Jetzt zu bezahlen',
      batch: 'Preis dieser Charge',
      perKg: f.massUnit === 'g' ? 'Preis für ein Kilo' : 'Preis für ein Pfund (lb)',
      dayOf: (animal) => `Preis für einen Tag, ${animal}`,
      dayOfAll: 'Preis für einen Tag, alle',
      note: 'Die Charge kostet, was hineinkommt; der Rest einer Packung gehört weiter dir. Was neben der Mischung gefüttert wird, zählt nicht mit.',
      noteDelivery:
        'Die Charge kostet, was hineinkommt, ohne Lieferung; der Rest einer Packung gehört weiter dir. Was neben der Mischung gefüttert wird, zählt nicht mit.',
      unknown: (n) => `Preis nicht ganz bekannt (${f.number(n)})`,
      unknownFoods: (foods) =>
        `${foods}. Der Preis eines Verkäufers oder der Packung im Vorrat macht ihn bekannt.`,
      notProven: 'Die Suche endete, bevor sicher war, dass es keine bessere Auswahl an Packungen gibt.',
      atLeast: (price) => `mindestens ${price}`,
      notKnown: 'nicht bekannt',
      noOffers: 'nicht bekannt: noch keine Verkäufer',
      nothing: 'nichts',
      without: (price, foods) => `${price}, ohne ${foods}`,
      foods: (n) => f.count(n, { one: 'Zutat', other: 'Zutaten' }),
      bySeller: 'Nach Verkäufer',
      noneYet: 'Noch nichts zu bestellen: Sag, wer eine Zutat verkauft.',
      noOrder: 'Nichts zu bestellen.',
      delivery: 'Lieferung',
      inAll: 'Zusammen',
      least: (goods, seller, least) => `Waren für ${goods}; ${seller} liefert erst ab ${least}.`,
      bought: 'Gekauft',
      boughtAll: (n) => `Alle ${f.number(n)} gekauft`,
      wholeOrder: (say, seller) => `${say}: die ganze Bestellung bei ${seller}`,
      pack: (n, each) => `${f.number(n)} × ${each}`,
      packFresh: (n, each) => `${f.number(n)} × ${each} frisch`,
      packFrom: (pack, seller, price) => `${pack} von ${seller}: ${price}`,
      inBatch: (price) => `In dieser Charge: ${price}`,
      noneLeft: 'Es bleibt nichts übrig.',
      left: (grams) => `Übrig bleiben ${grams}.`,
      leftDried: (grams) => `Getrocknet bleiben ${grams} übrig.`,
    },
    sellers: {
      label: 'Verkäufer',
      summary: (n) =>
        `Lieferung und Mindestbestellwert (${f.count(n, { one: 'Verkäufer', other: 'Verkäufer' })})`,
      hint: 'Leer heißt: Der Verkäufer verlangt keines von beiden.',
      delivery: 'Lieferung',
      minimum: 'Mindestbestellwert',
      none: 'keiner',
    },
    offers: {
      title: 'Wer es verkauft',
      line: (seller, pack, price) => `${seller}, ${pack} für ${price}`,
      lineFresh: (seller, pack, price) => `${seller}, ${pack} frisch für ${price}`,
      per: (price) => (f.massUnit === 'g' ? `${price} je kg wie verkauft` : `${price} je lb wie verkauft`),
      change: (offer) => `Preis ändern: ${offer}`,
      erase: (offer) => `Preis löschen: ${offer}`,
      deleted: (offer) => `Gelöscht: ${offer}.`,
      putBack: 'Wieder eintragen',
      add: 'Verkäufer eintragen',
      addOf: (food) => `Verkäufer eintragen für ${food}`,
      form: (food) => `Preis von ${food}`,
      formNew: (food) => `Neuer Verkäufer von ${food}`,
      seller: 'Verkäufer',
      sellerEmpty: 'Verkäufer ist leer: Sag, wer es verkauft.',
      weight: 'Gewicht einer Packung',
      weightEmpty: 'Gewicht einer Packung ist leer: Schreib es wie 500 g, 1,5 kg oder 2 lb.',
      weightWrong: (why) => `Gewicht einer Packung ${why}.`,
      weightExample: '500 g, 1,5 kg, 12 x 40 g',
      price: 'Preis einer Packung',
      priceEmpty: 'Preis einer Packung ist leer: Er ist nötig, um Verkäufer zu vergleichen.',
      sold: 'Verkauft',
      dry: 'Trocken',
      fresh: 'Frisch',
      countsOnceDried: (food) =>
        `Es zählt, sobald du bei ${food} „Trockne ich“ wählst: Daraus folgt, wie viel getrocknet übrig bleibt.`,
      save: 'Preis speichern',
    },
    dryAtHome: {
      title: 'Du trocknest es',
      from: (water) => `Getrocknet aus <fresh></fresh>, ${water} <source></source>.`,
      water: (percent) => `mit ${f.percent(percent)} Wasser`,
      waterUnknown: 'dessen Wasser nicht bekannt ist',
      lost: 'Die gewählte frische Zutat ist nicht zu finden; wähle eine andere.',
      cannot:
        'Wie viel getrocknet übrig bleibt, lässt sich nicht ausrechnen. Wähle eine Zutat, deren Wasser bekannt ist, oder <food>trag es ein</food>.',
      moisture: 'Wasser nach dem Trocknen',
      moistureHint: (percent) => `${f.percent(percent)} ist übliche Praxis, ohne Quelle.`,
      trim: 'Abfall beim Putzen, wie du ihn gewogen hast',
      trimTable: (percent) => `${f.number(percent)} (Tabelle)`,
      notKnown: 'nicht bekannt',
      trimmed: (percent, parts) =>
        parts === undefined
          ? `${f.percent(percent)} sind Abfall beim Putzen`
          : `${f.percent(percent)} sind Abfall beim Putzen: ${parts}`,
      lostFresh:
        'Wie viel Frisches es braucht, ist nicht bekannt: Die frische Zutat ist nicht zu finden; wähle sie neu.',
      noWater: (fresh) =>
        `Wie viel Frisches es braucht, ist nicht bekannt, weil das Wasser von ${fresh} nicht bekannt ist.`,
      tooDry: (fresh, water, moisture) =>
        `Wie viel Frisches es braucht, ist nicht bekannt: ${fresh} hat ${f.percent(water)} Wasser, nicht mehr als die ${f.percent(moisture)} nach dem Trocknen.`,
      needs: (dried, prepared, purchased) =>
        `${dried} getrocknet brauchen ${prepared} geputzt, ${purchased} wie gekauft.`,
      needsMore: (dried, prepared) =>
        `${dried} getrocknet brauchen ${prepared} geputzt, und mehr als das wie gekauft.`,
    },
    paper: {
      title: (mix) => `Einkaufsliste: ${mix}`,
      home: 'Schon zu Hause',
      inAll: (seller, price) => `${seller}: zusammen ${price}`,
      inAllDelivery: (seller, price, delivery) =>
        `${seller}: zusammen ${price}, davon ${delivery} für die Lieferung`,
      from: (packs, seller) => `${packs}, ${seller}`,
    },
    why: {
      pastBest: (day) => `mindestens haltbar war es bis ${day}; sieh und riech daran, bevor du es behältst`,
      fresh: (why) => `es ist frisch, und ${why}`,
      barred: (why) => `nicht mehr verwenden (${why})`,
      trimUnknown: (food) =>
        `der Abfall beim Putzen von ${food} ist nicht bekannt; wieg etwas davor und danach`,
      yieldUnknown: (food) =>
        `wie viel von ${food} nach dem Trocknen bleibt, ist nicht bekannt; sag, aus welcher frischen Zutat es getrocknet wird`,
      waterUnknown: (fresh) => `das Wasser von ${fresh} ist nicht bekannt; trag es zuerst ein`,
      tooDry: (fresh, water, moisture) =>
        `${fresh} hat ${f.percent(water)} Wasser, nicht mehr als die ${f.percent(moisture)} nach dem Trocknen; wähle die frische Zutat`,
      freshYield: 'es wird frisch verkauft, und wie viel nach dem Trocknen bleibt, ist nicht bekannt',
      minimum: (seller, least) =>
        `${seller} liefert erst ab ${least}, und nichts, was du von dort brauchst, kostet etwas`,
      noSeller: (food) => `Für ${food} ist kein Verkäufer bekannt.`,
      notCounted: (food, reasons) => `${food} wird verkauft, zählt aber nicht: ${reasons.join('; ')}.`,
      noChoice: (food) => `Für ${food} wurde keine Auswahl an Packungen gefunden; lass einige Verkäufer weg.`,
      noDaily: (animal) =>
        `wie viel ${animal} am Tag frisst, ist nicht bekannt; trag es bei dem Tier ein, oder gib das Gewicht der Charge an`,
    },
    weight: {
      wrong: (text, why) => `„${text}“: ${why}`,
      examples: 'schreib es wie „500 g“, „1,5 kg“, „12 x 40 g“ oder „2 lb 4 oz“',
      empty: (examples) => `es steht kein Gewicht da; ${examples}`,
      noPacks: '0 Packungen wiegen nichts; schreib, wie viele es sind',
      noUnit: (examples) => `die Einheit fehlt; ${examples}`,
      notOne: (rest, examples) => `„${rest}“ ist kein Gewicht; ${examples}`,
      unknownUnit: (word) => `„${word}“ ist keine Einheit für Gewicht; nimm mg, g, kg, oz oder lb`,
      volume: (word) =>
        `„${word}“ ist keine Einheit für Gewicht; nimm mg, g, kg, oz oder lb (ein Raummaß sagt nichts über das Gewicht: wieg es)`,
      unitAfter: (last, unit) =>
        `nach ${last} kommt kein ${unit}; nur Pfund und Unze stehen zusammen („2 lb 4 oz“)`,
      twoWays: (text, more, less) =>
        `„${text}“ kann ${more} oder ${less} heißen; schreib es ohne das Zeichen oder in einer anderen Einheit`,
      nothing: 'eine Packung muss mehr als 0 wiegen',
      tooLarge: 'das Gewicht ist zu groß',
    },
  };
};
