import type { DailyFood } from '../en/daily-food.ts';
import type { Figures } from '../figures.ts';

export const dailyFood = (f: Figures): DailyFood => {
  const grams = (g: number) => f.grams(g, 1);
  const span = (low: number, high: number) =>
    grams(low) === grams(high) ? `etwa ${grams(low)}` : `${grams(low)} bis ${grams(high)}`;
  return {
    title: 'Wie viel am Tag',
    fed: (name, g) => `${name} bekommt ${grams(g)} am Tag, Mischung und Pellets zusammen.`,
    nobodySaid: (name) =>
      `Noch hat niemand gesagt, wie viel ${name} am Tag bekommt. Wieg es ab, bevor du es verstreust, oder nimm unten einen Wert.`,
    standing: {
      within: 'Das liegt im Bereich nach Energie.',
      under: (name) =>
        `Das ist weniger als der Bereich nach Energie. Wieg ${name} jede Woche; bei Gewichtsverlust biete mehr an und geh in die Tierarztpraxis.`,
      over: 'Das ist mehr als der Bereich nach Energie. Das ist kein Grund, weniger zu füttern: Futter wird weggetragen und gehortet. Such den Vorrat im Versteck und wieg das Tier jede Woche.',
    },
    falling: {
      today: (name) =>
        `${name} bekommt weniger als den Bereich und nimmt ab. Biete mehr an und geh heute noch in die Tierarztpraxis.`,
      days: (name) =>
        `${name} bekommt weniger als den Bereich und nimmt ab. Biete mehr an und geh in den nächsten Tagen in die Tierarztpraxis.`,
      'next visit': (name) =>
        `${name} bekommt weniger als den Bereich und nimmt ab. Biete mehr an und sag es beim nächsten Besuch in der Tierarztpraxis.`,
    },
    picture: 'Gramm am Tag, nebeneinander',
    span,
    rows: {
      equation: 'Nach der Energie, die es braucht',
      intake: 'Was solche Tiere gefressen haben',
      handouts: 'Merkblätter aus Tierarztpraxen',
      practice: 'Was Halterinnen und Halter geben',
      memory: 'Was Halterinnen und Halter geben',
      fed: 'Was es jetzt bekommt',
    },
    notes: {
      equation: (weight, low, high) =>
        `Bei ${f.bodyGrams(weight)} Körpergewicht. ${span(low, high)} davon sind Trockenmasse.`,
      estimate:
        'Für diese Tierart gibt es keinen Wert: Er ist von Goldhamstern, Ratten und Mäusen nach dem Körpergewicht übertragen. Eine Schätzung, und deshalb weit.',
      intake: (dry) => `Im Mittel ${grams(dry)} Trockenmasse am Tag.`,
      intakeFood: 'Im Mittel, von trockenen Pellets.',
      noWater: 'Wie viel Futter das ist, hängt von seinem Wasser ab, und das ist nicht bekannt.',
      handouts: 'Steht oft in Merkblättern; eine Untersuchung dazu wird nicht genannt.',
      practice: 'Gängige Praxis, ohne Quelle.',
      memory: 'Gängige Praxis, aus dem Gedächtnis; ohne Quelle.',
      upTo: (g) => `Mit dem, was den Bedarf erhöht: bis ${grams(g)}.`,
    },
    take: (g) => `${grams(g)} nehmen`,
    taken: (name, g) => `${name} bekommt jetzt ${grams(g)} am Tag.`,
    takenLess:
      'Das ist weniger als bisher. Wieg das Tier zwei Wochen lang alle paar Tage; nimmt es ab, geh zurück und geh in die Tierarztpraxis.',
    back: (g) => `Zurück zu ${grams(g)}`,
    backToNone: 'Zurück zu „nicht bekannt“',
    stage: {
      growing:
        'Es wächst noch: Der Bereich ist größer als bei einem erwachsenen Tier. Lass es fressen, so viel es mag.',
      pregnant: 'Es ist trächtig: Der Bereich ist größer. Lass es fressen, so viel es mag.',
      nursing: 'Es säugt: Der Bereich ist viel größer. Lass es fressen, so viel es mag.',
      breeding:
        'Es ist trächtig oder säugt: Der Bereich ist größer, beim Säugen bis zum Vierfachen. Lass es fressen, so viel es mag.',
    },
    weighAgain: (day) => `Das beruht auf der Wiegung vom ${day}. Wieg wieder, um sicher zu sein.`,
    vetFirst: 'Was die Tierarztpraxis zu seinem Futter gesagt hat, geht jedem Wert hier vor.',
    missing: {
      title: 'Noch kein Bereich nach Energie',
      weight: (name) => `Das Körpergewicht von ${name} fehlt. <weigh>${name} wiegen</weigh>`,
      noFood:
        'Was in seinem Futter ist, ist nicht bekannt: Es bekommt keine Charge, und für das Tier ist keine Mischung fertig.',
      parts: (amounts) =>
        `Von seinem Futter ${f.form(amounts.length, { one: 'ist', other: 'sind' })} ${f.list(amounts)} nicht genau genug bekannt. Vielleicht steht es auf dem Etikett, oder der Hersteller der Pellets sagt es.`,
      working: 'Die Energie des Futters wird ausgerechnet…',
    },
    raises: {
      title: 'Was den Bedarf erhöht',
      wheel: 'Ein Laufrad: Goldhamster fraßen damit kaum mehr bis fast doppelt so viel.',
      cold: (celsius) =>
        `Ein kalter Raum (${f.degrees(celsius)}): Es braucht mehr, um warm zu bleiben. Wie viel mehr, ist für diese Tierart nicht bekannt.`,
      coldNursing: (celsius, percent) =>
        `Ein kalter Raum (${f.degrees(celsius)}): Säugende Streifenhamster fraßen bei ${f.degrees(5)} ${f.percent(percent, 0)} mehr als bei ${f.degrees(30)}.`,
      coldWinterWhite: (celsius, low, high) =>
        `Ein kalter Raum (${f.degrees(celsius)}): Dsungarische Zwerghamster nahmen bei ${f.degrees(-2)} ${f.number(low, 0)} bis ${f.number(high, 0)} kJ am Tag auf, und die mit dem wenigsten nahmen ab.`,
      growing: (low, high) =>
        `Wachstum: das ${f.number(low, 1)}- bis ${f.number(high, 1)}fache eines erwachsenen Tiers von gleichem Gewicht, gefunden bei Ratten und Mäusen.`,
      pregnant: (low, high) =>
        `Trächtig: das ${f.number(low, 1)}- bis ${f.number(high, 1)}fache, gefunden bei Ratten und Mäusen.`,
      nursing: (low, high) =>
        `Säugend: das ${f.number(low, 1)}- bis ${f.number(high, 1)}fache, mehr, je größer die Jungen werden, gefunden bei Ratten und Mäusen.`,
      young: (n) =>
        `Mehr Junge brauchen mehr (hier ${f.number(n)}), aber einen Wert für jedes gibt es nicht.`,
    },
    why: {
      title: 'Woher diese Werte kommen',
      need: (low, high, kcalLow, kcalHigh) =>
        `Es braucht etwa ${f.number(low, 0)} bis ${f.number(high, 0)} kJ am Tag. Ein Gramm seines Futters gibt ${f.number(kcalLow, 2) === f.number(kcalHigh, 2) ? f.number(kcalLow, 2) : `${f.number(kcalLow, 2)} bis ${f.number(kcalHigh, 2)}`} kcal, und 1 kcal sind ${f.number(4.184, 3)} kJ.`,
      perKg: (low, high) =>
        `Für ein erwachsenes Tier wird mit ${f.number(low, 0)} bis ${f.number(high, 0)} kJ je Kilogramm Körpergewicht hoch ${f.number(0.75)} gerechnet.`,
      atwater:
        'Die Energie des Futters wird wie für Heimtierfutter gerechnet (modifizierter Atwater: 3,5 kcal je Gramm Protein und Kohlenhydrate, 8,5 je Gramm Fett). Goldhamster holten aus einem Getreidefutter mehr heraus, der Bereich liegt also vielleicht etwas hoch.',
      start: 'All das ist ein Anfang. Es zählt, wie sich das Gewicht des Tiers selbst entwickelt.',
      sources: 'Quellen',
    },
    portions: {
      title: 'Portionen für heute',
      none: 'Es bekommt gerade keine Charge, also gibt es noch nichts aufzuteilen.',
      times: 'Wie oft verstreust du Futter?',
      options: { '1': 'Einmal, am Abend', '2': 'Zweimal', '3': 'Dreimal' },
      portion: 'Portion',
      together: 'Zusammen',
      of: (n) => `Portion ${f.number(n)}`,
      unknown: 'nicht bekannt',
      steps: (step) => `In ganzen Schritten von ${f.grams(step)}, wie die Waage sie zeigt.`,
      coarse:
        'Der Schritt der Waage ist grob für so wenig. Wieg das Futter einer Woche auf einmal ab und teil es nach Augenmaß auf.',
      scatter:
        'Verstreu es weit: Futter suchen ist das, was es die ganze Nacht tut. Kleine Portionen werden weniger gehortet.',
      changing: (day, of) =>
        `Sein Futter wird umgestellt: Tag ${f.number(day)} von ${f.number(of)}. Ein Teil kommt noch aus der Charge davor.`,
      changingNoOld: (day, of) =>
        `Sein Futter wird umgestellt: Tag ${f.number(day)} von ${f.number(of)}. Misch etwas vom bisherigen Futter darunter, wenn noch etwas da ist.`,
      olderBatch: (name) => `${name} (bisher)`,
    },
    stop: {
      pack: (pack, why) => `${pack} nicht füttern: nicht mehr zu verwenden (${why}).`,
      besideUpset: (foods, name) =>
        `${f.list(foods)}: Das hat ${name} nicht vertragen. Gib ${name} nichts davon.`,
      besideRefused: (foods, name) =>
        `${f.list(foods)}: Das verweigert ${name}. Was davon liegen bleibt, wurde nicht gefressen: Sieh danach.`,
      recalled: (batch, pack, why) =>
        `„${batch}“ nicht füttern: Darin ist ${pack}, und das ist nicht mehr zu verwenden (${why}).`,
      'maybe recalled': (batch, pack, why) =>
        `„${batch}“ nicht füttern, bevor du sicher bist: Darin kann ${pack} sein, und das ist nicht mehr zu verwenden (${why}).`,
      upset: (batch, foods, name) =>
        `In „${batch}“ ist ${f.list(foods)}; das hat ${name} nicht vertragen. Gib ${name} nichts davon.`,
      refused: (batch, foods, name) =>
        `In „${batch}“ ist ${f.list(foods)}; das verweigert ${name}. Was davon liegen bleibt, wurde nicht gefressen: Sieh danach.`,
    },
    lasts: {
      title: 'Wie lange es reicht',
      batch: (name, days, day) =>
        `„${name}“ reicht noch ${f.count(days, { one: 'Tag', other: 'Tage' })}, bis ${day}.`,
      over: (name) => `„${name}“ müsste inzwischen aufgebraucht sein. Wieg, was davon übrig ist.`,
      unknown: (name) =>
        `Wie lange „${name}“ reicht, ist nicht bekannt: Über die Tiere, die davon fressen, ist noch nicht alles gesagt.`,
      perDay: (g, names) => `${f.list(names)} fressen davon ${grams(g)} am Tag.`,
      perDayOne: (g, name) => `${name} frisst davon ${grams(g)} am Tag.`,
      pellet: (food, g, week) =>
        `${food}: ${grams(g)} am Tag für alle, die davon fressen, ${f.weight(week)} in 30 Tagen.`,
      none: 'Es bekommt gerade keine Charge.',
    },
    cautions: {
      title: 'Immer',
      water: 'Jeden Tag frisches Wasser: Trockenes Futter macht durstig.',
      slowly: 'Stell Futter langsam um, über zehn Tage bis zwei Wochen, und behalte etwas vom alten.',
      bowl: 'Ein leerer Napf heißt nicht, dass gefressen wurde: Futter wird weggetragen und gehortet.',
      weigh:
        'Wieg es jede Woche. Ein kleines Nagetier, das weniger frisst oder abnimmt, muss bald in die Tierarztpraxis; lass es nie hungern, damit es etwas frisst.',
    },
  };
};
