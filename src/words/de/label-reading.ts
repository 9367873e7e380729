import type { LabelReading } from '../en/label-reading.ts';
import type { Figures } from '../figures.ts';

export const labelReading = (f: Figures): LabelReading => {
  const short = (n: number) => f.number(Number(n.toPrecision(3)), 12);
  const columns = (n: number) => f.count(n, { one: 'Spalte', other: 'Spalten' });
  return {
    short,
    told: (amount, unit, what) => `${short(amount)} ${unit} ${what}`,
    line: {
      amountsAre: (quantities) => `Werte gelten ${quantities}`,
      left: {
        daily: 'Anteile am Tagesbedarf weggelassen',
        energy: 'Anteile an der Energie weggelassen',
        prepared: 'Zahlen der zubereiteten Ware weggelassen',
      },
      notRead: (part, why) => `nicht gelesen: „${part}“: ${why}`,
      blank: 'leer',
      together: 'zusammen mit den Zeilen daneben gelesen',
      noFigure: 'ein Nährstoff ohne Zahl; schreib beides in eine Zeile',
      counts: 'kein Wert: eine Zahl von Portionen oder ein Anteil am Tagesbedarf',
      nothing: 'keine Zahl darin',
      range: (low, high) => `${f.number(low, 6)} bis ${f.number(high, 6)}`,
      least: (low) => `mindestens ${f.number(low, 6)}`,
      most: (high) => `höchstens ${f.number(high, 6)}`,
      aFigure: 'eine Zahl',
      per: (amount, grams) => `${amount} je ${f.number(grams)} g`,
      inDry: (amount) => `${amount} in der Trockenmasse`,
      open: (amount) => `${amount} (eine Frage ist offen)`,
      noted: (amount, note) => `${amount} (${note})`,
      dailyShare: 'Anteil am Tagesbedarf',
      energyShare: 'Anteil an der Energie',
      salt: 'Salz',
      available: 'verwertbare Kohlenhydrate',
    },
    why: {
      noName: 'eine Zahl ohne Nährstoff davor; schreib Namen und Zahl in eine Zeile',
      traces:
        '„Spuren“ ist keine Zahl; lass es weg, oder schreib das Meiste, was es sein kann, etwa „<0,1 g“',
      shared: (first, second, end) => `„${first}“ und „${second}“ ${end}`,
      sharedEnd: 'teilen sich eine Zahl; gib jedem eine eigene',
      advice: 'Hinweis zur Verwendung oder Gewicht der Packung, keine Analyse',
      cut: 'nach der Zahl folgt ein Name ohne eigene Zahl; setz ein Komma dazwischen, oder jedes in eine Zeile',
      notKnown: (said) => `„${said}“ ist hier nicht bekannt; schreib nur den Nährstoff und seine Zahl`,
      twoBases: 'eine Zahl hat zwei Bezüge; gib ihr einen',
      twoQuantities: 'eine Zahl hat zwei Mengen; gib ihr eine',
      twoBoundsBeside: 'Minimum und Maximum stehen beide neben einer Zahl; nimm eines',
      twoBoundsBefore: 'Minimum und Maximum stehen beide vor einer Zahl; nimm eines',
      listShare: 'ein Anteil in der Zutatenliste, nicht, was enthalten ist',
      noLineSays: (figures) =>
        `${f.number(figures)} Zahlen, aber keine Zeile sagt, worauf sich jede bezieht; gib für jede eine an`,
      someColumns: (figures, n) =>
        `${f.number(figures)} Zahlen, aber ${columns(n)}, die sagen, worauf sich jede bezieht; gib für jede eine an`,
      figuresForColumns: (figures, n) =>
        `${f.number(figures)} Zahlen für ${columns(n)}; gib für jede eine an`,
      minus: 'ein Minus vor einer Zahl; ein Wert ist 0 oder mehr',
      plusMinus: 'ein Plus oder Minus vor einer Zahl; ein Wert ist 0 oder mehr',
      halfRange: 'ein Bereich mit nur einem Ende; schreib beide',
      twoUnits: 'ein Bereich mit zwei Einheiten; nimm eine',
      falling: 'ein fallender Bereich; schreib die kleinere Zahl zuerst',
      noUnit: (figure) =>
        `${figure} hat keine Einheit, die hier bekannt ist; schreib sie hinter die Zahl, etwa „g“ oder „%“`,
      betweenUnits: (figure) =>
        `${figure} steht zwischen zwei Einheiten; schreib jede Zahl mit ihrer Einheit dahinter`,
      oneOrTwo: (figure) => `${figure} kann eine Zahl sein oder zwei; schreib sie ohne Leerzeichen`,
      rangeAndBound: 'ein Bereich und zugleich ein Minimum oder Maximum; nimm eines',
      shareOfDaily: 'ein Anteil am Tagesbedarf steht in %; ein Wert steht ohne dieses Wort',
      shareOfEnergy: 'ein Anteil an der Energie steht in %; ein Wert steht ohne dieses Wort',
      boundBeforeName: 'Minimum oder Maximum steht vor einem Namen statt vor seiner Zahl',
      unitTooMany: (unit) =>
        `„${unit}“ ist eine Einheit zu viel; schreib jede Zahl mit ihrer Einheit dahinter`,
      plusOrMinus: '± ist hier nicht bekannt; schreib den Bereich, etwa „16-18 %“',
      noFigureFor: (what) => `„${what}“ hat keine Zahl`,
      nameOrFigure: (text) =>
        `${text} kann zum Namen gehören oder die Zahl beginnen; schreib es zusammen („D3“)`,
      runsTogether: (text) => `in ${text} laufen Buchstaben und Ziffern zusammen; trenne sie`,
      tooLong: (text) => `${text}... ist zu lang für einen Wert`,
      noNumber: (text) => `${text} ist keine lesbare Zahl; schreib sie mit Dezimalzeichen`,
      oneMark: (text) => `${text} ist keine lesbare Zahl; schreib sie mit einem Dezimalzeichen`,
      mixed: (text) => `${text} mischt Buchstaben und Ziffern, wie beim Scannen; tippe die Zahl`,
      headless: (text) =>
        `${text} beginnt mit einem Dezimalzeichen; schreib eine Null davor oder ein Leerzeichen dahinter`,
      raised: 'eine hochgestellte Zahl; schreib sie normal',
      otherScript: (text) => `${text} ist eine Ziffer einer anderen Schrift; schreib sie normal`,
      daily: 'ein Anteil am Tagesbedarf ist kein Wert',
      traceInPercent: (what) =>
        `${what} in % ist ein Anteil am Tagesbedarf und kein Wert; schreib es in mg, µg oder IE`,
      noWeight: (what, per) => `${what} steht ${per}, und das ist kein Gewicht; schreib es je 100 g`,
      notSold: (what, how) => `${what} steht für „${how}“, nicht für die Ware, wie sie verkauft wird`,
      basisUnsaid: (what) => `ob ${what} für die Ware gilt, wie sie verkauft wird, steht nicht da`,
      tooMuch: (what, amount, unit) =>
        `${what}: ${f.number(amount, 6)} ${unit} sind mehr, als eine Zutat enthalten kann`,
      tooMuchPer: (what, amount, unit, grams) =>
        `${what}: ${f.number(amount, 6)} ${unit} je ${f.number(grams)} g sind mehr, als eine Zutat enthalten kann`,
      vitaminForm: (what) => `${what} in IE hängt von der Form des Vitamins ab; schreib es in mg`,
      wrongUnit: (what, unit) => `${what} wird nicht in ${unit} gemessen; prüfe die Einheit`,
    },
    asPrepared: 'zubereitet',
    energyShares: '... Anteile an der Energie',
    notes: {
      about: 'als ungefähr gedruckt',
      onlyReading: (printed, value) =>
        `${printed} als ${f.number(value, 6)} gelesen, anders kann es bei keiner Zutat sein`,
      byMark: (printed, value, mark) =>
        `${printed} als ${f.number(value, 6)} gelesen, weil das Etikett Dezimalen mit „${mark}“ schreibt`,
      fromSalt: 'Natrium aus dem Salz errechnet, das das 2,5-Fache des Natriums ist',
      fromDry: (moisture) =>
        `Werte der Trockenmasse umgerechnet auf die Ware mit ${f.number(moisture)} % Feuchte`,
      withFibre: 'Kohlenhydrate errechnet aus den gedruckten verwertbaren und den Ballaststoffen zusammen',
      leastOnly: 'Kohlenhydrate sind nur als „mindestens“ bekannt: Das Etikett lässt die Ballaststoffe weg',
    },
    ask: {
      which: (heard, names) => `„${heard}“ kann ${f.either(names)} heißen; was ist gemeint?`,
      serving: (grams) => `eine Portion von ${f.number(grams)} g`,
      perWhat: 'Keine Zeile sagt, worauf sich diese Werte beziehen; auf wie viele Gramm?',
      servingGrams: (text) => `Wie viele Gramm sind eine Portion („${text}“)?`,
      volume: (text) => `Wie viele Gramm wiegt „${text}“?`,
      other: (text) => `Die Werte gelten „${text}“; wie viele Gramm sind das?`,
      number: (printed, unit, what, answers) => `${what}: Heißt ${printed} ${unit} ${f.either(answers)}?`,
      percent: (what) => `${what}: Ist das ein Anteil am Gewicht, oder am Tagesbedarf oder an der Energie?`,
      ofWeight: 'Anteil am Gewicht',
      ofDaily: 'Anteil am Tagesbedarf oder an der Energie (dann ist es kein Wert)',
      list: 'Ist diese Zeile eine Analyse, oder eine Liste der Zutaten?',
      content: 'Eine Analyse: was enthalten ist',
      ingredient: 'Zutaten und ihre Anteile (dann sind es keine Werte)',
      basis: (said) => `Das Etikett sagt „${said}“; worauf beziehen sich diese Werte?`,
      sold: 'Auf die Ware, wie sie verkauft wird',
      dry: 'Auf ihre Trockenmasse',
      none: 'Auf etwas anderes, etwa gekocht oder angerührt; weglassen',
      column: (what, n) =>
        `Die Zeile nennt ${what} einmal, für ${f.number(n)} Spalten; welche Spalte ist es?`,
      differ: (what, said) =>
        `${what} steht da als ${said.join(' und als ')}, das ist mehr als Rundung; was stimmt?`,
      neither: 'Keines davon; weglassen',
      carbohydrate:
        'Sind in den Kohlenhydraten dieses Etiketts die Ballaststoffe enthalten (wie in den USA) oder nicht (wie in Europa)?',
      holds: 'Sie sind enthalten',
      leavesOut:
        'Sie sind nicht enthalten; sie zählen daneben, oder als „mindestens“, wenn keine gedruckt sind',
      moisture:
        'Die Werte gelten für die Trockenmasse, und die Feuchte ist nicht gedruckt; wie viel Prozent der Ware sind Wasser?',
      notOne: (message, answer, wanted) => `${message} „${answer}“ passt nicht; gefragt ist ${wanted}.`,
      oneOf: (answers) => answers.join(', '),
      aboveNought: 'eine Zahl über 0',
      belowHundred: 'eine Zahl von 0 bis unter 100',
    },
    faults: {
      needsMoisture:
        'Werte der Trockenmasse brauchen die Feuchte, genau und nicht als Grenze; gib sie an, oder wähle „wie gefüttert“.',
      moisture: (water) => `Die Feuchte ist ${f.number(water)} %; sie muss unter 100 % liegen.`,
      checkFed: (grams) =>
        `Prüfe den getippten Wert, die Menge (${f.number(grams)} g) und ob er „wie gefüttert“ gilt.`,
      checkDry: (grams) =>
        `Prüfe den getippten Wert, die Menge (${f.number(grams)} g) und ob er für die Trockenmasse gilt.`,
      tooHeavy: (what, amount, unit, wayOut) =>
        `${what} kommt auf ${amount} ${unit} in 100 g, mehr als das Gewicht selbst. ${wayOut}`,
      crossed: (what, said, wayOut) => `${what}: ${said}; beides zugleich geht nicht. ${wayOut}`,
      part: (what, amount) => `${what} ${amount}`,
      carbohydrate: (amount) => `Kohlenhydrate mit Ballaststoffen ${amount}`,
      sum: (sum, parts, wayOut) => `Die Teile ergeben ${sum} g in 100 g: ${parts.join(', ')}. ${wayOut}`,
      fibre: (crude, dietary) =>
        `Die Rohfaser (${crude}) liegt über den Ballaststoffen (${dietary}), von denen sie ein Teil ist; prüfe, welches von beiden das Etikett nennt.`,
    },
    checks: {
      bounds: (what, low, high) =>
        `${what} ist mindestens ${short(low)} und höchstens ${short(high)}, beides zugleich geht nicht; prüfe Minimum und Maximum.`,
      belowLeast: (what, value, low) =>
        `${what} ist ${short(value)}, weniger als das eigene Minimum von ${short(low)}.`,
      aboveMost: (what, value, high) =>
        `${what} ist ${short(value)}, mehr als das eigene Maximum von ${short(high)}.`,
      sum: (sum, parts) =>
        `100 g können nicht ${short(sum)} g enthalten: ${parts.join(' + ')}. Ein Wert gilt vielleicht für ein anderes Gewicht.`,
      part: (part, whole) => `${part} sind mehr als ${whole}, wovon es ein Teil ist.`,
      fibre: (crude, dietary) =>
        `Rohfaser ${short(crude)} g liegt über Ballaststoffen ${short(dietary)} g, ist aber immer das Kleinere; vielleicht sind beide vertauscht.`,
      energy: (energy, general, modified) =>
        `Die Energie ist ${short(energy)} kcal je 100 g, aber Protein, Fett und Kohlenhydrate ergeben etwa ${short(general)} (4/9/4) oder ${short(modified)} (3,5/8,5/3,5, ohne Faser). Steht die Energie in kJ, oder für ein anderes Gewicht?`,
      damp: (most, water) =>
        `Getrocknetes hält sich unter etwa ${f.number(most)} % Feuchte, und hier sind es ${short(water)} %; die Zahlen gelten vielleicht für die frische Ware.`,
      thin: (solids) =>
        `Protein, Fett und Kohlenhydrate ergeben nur ${short(solids)} g von 100 g, über ein Drittel wäre also Wasser; Getrocknetes hat weniger. Die Zahlen gelten vielleicht für die frische Ware.`,
      nearlyFresh: (food, water, own, its) =>
        `Das sind fast die Zahlen von ${food} mit ${short(water)} % Wasser (${own} gegen ${short(its)}); getrocknet wäre jede um ein Mehrfaches höher.`,
      beside: (own, its, food) => `${own} neben ${short(its)} in ${food}`,
      besideDry: (own, its, food) => `${own} neben ${short(its)} in ${food}, bei gleicher Feuchte,`,
      tenHigh: (beside) => `${beside} sieht zehnmal zu hoch aus; such ein verrutschtes Komma.`,
      tenLow: (beside) => `${beside} sieht zehnmal zu niedrig aus; such ein verrutschtes Komma.`,
      thousandHigh: (beside) =>
        `${beside} sieht tausendmal zu hoch aus; prüfe, ob g, mg und µg verwechselt sind.`,
      thousandLow: (beside) =>
        `${beside} sieht tausendmal zu niedrig aus; prüfe, ob g, mg und µg verwechselt sind.`,
      per250: (food) =>
        `Alle Hauptwerte sind etwa zweieinhalbmal so hoch wie die von ${food}; sie gelten vielleicht für 250 g statt 100 g.`,
      per40: (food) =>
        `Alle Hauptwerte sind etwa zwei Fünftel von denen von ${food}; sie gelten vielleicht für 40 g statt 100 g.`,
    },
    impossible: {
      correctOne: (said) => `${said}; berichtige einen der Werte oder lass ihn weg`,
      weighs: (told, grams, unit) =>
        `${told} wiegen ${short(grams)} g, mehr als die 100 g, in denen sie stecken; prüfe die Einheit, sie ist ${unit} je 100 g`,
      energy: (kcal) =>
        `${short(kcal)} kcal in 100 g sind mehr, als reines Fett hat (902); sind es kJ? Dann durch 4,184 teilen`,
      together: (sum, parts) =>
        `100 g können nicht ${short(sum)} g enthalten: ${parts.join(' + ')}; Werte gelten je 100 g wie gefüttert, einer gilt vielleicht für ein anderes Gewicht`,
      grams: (grams, what) => `${short(grams)} g ${what}`,
      minerals: 'Mineralstoffe',
    },
  };
};
