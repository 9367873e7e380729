import type { Leftovers } from '../en/leftovers.ts';
import type { Figures } from '../figures.ts';

export const leftovers = (f: Figures): Leftovers => {
  const range = (low: number, high: number) =>
    f.grams(low, 1) === f.grams(high, 1) ? f.grams(low, 1) : `${f.grams(low, 1)} bis ${f.grams(high, 1)}`;
  return {
    title: 'Reste',
    unknownMix: 'Mischung, welche ist nicht bekannt',
    range,

    ask: {
      title: (name) => `Was hat ${name} übrig gelassen?`,
      night: 'Vom Futter von',
      lastNight: (day) => `gestern (${f.shortDay(day)})`,
      tonight: (day) => `heute (${f.shortDay(day)})`,
      day: (day) => f.shortDay(day),
      noted: (day) => `${day}, notiert`,
      nothing: 'Nichts übrig',
      weight: 'Alles, was übrig war',
      pad: 'Ziffern',
      wipe: 'Letzte Ziffer zurücknehmen',
      dot: 'Komma',
      keep: 'Merken',
      mostly: 'Das war meist noch da',
      mostlyHint: 'Mit dem Auge: Die Hälfte oder mehr davon ist noch da. Mit oder ohne Gewicht oben.',
      byFood: 'Zutat für Zutat wiegen',
      together: 'Alles zusammen wiegen',
      sorted: 'Gramm, die von jeder Zutat übrig waren',
      sortedHint: 'Ein leeres Feld heißt: Davon ist nichts übrig.',
      someHint: 'Ein leeres Feld heißt: Es liegt im Rest.',
      rest: 'Der ganze Rest zusammen',
      some: 'Ich habe nur einige Zutaten aussortiert',
      since: 'Futter von wie vielen Nächten lag da',
      oneNight: 'eine Nacht',
      sinceDay: (day, nights) =>
        `${f.count(nights, { one: 'Nacht', other: 'Nächte' })}, seit ${f.shortDay(day)}`,
      more: 'Mehr: mehrere Nächte, oder nur ein Versteck',
      missing: 'Sag zuerst, wie viel du angeboten hast.',
      none: 'Tippe ein, was übrig war, oder wähle eine Zutat, die meist noch da war.',
      notNumber: (text) => `„${text}“ ist kein Gewicht.`,
    },
    offered: {
      line: (foods, grams) => `Angeboten: ${f.list(foods)}, zusammen ${f.grams(grams, 1)}.`,
      mix: (grams, name) => `${f.grams(grams, 1)} ${name}`,
      food: (grams, name) => `${f.grams(grams, 1)} ${name}`,
      usual: 'Niemand hat das abgehakt, also zählt die übliche Mahlzeit.',
      nobody: 'Niemand hat gesagt, was angeboten wurde.',
      change: 'Ändern',
      done: 'Fertig',
      mixUnknown: 'Mischung',
      planned: 'Welche Charge es war, ist nicht bekannt: Die Mischung zählt, wie sie geplant ist.',
      unknown: 'Welche Mischung es war, ist nicht bekannt. Darum zählt sie als eine Zutat.',
      theMix: 'Mischung',
    },
    kept: {
      nothing: 'Gemerkt: nichts übrig.',
      grams: (grams) => `Gemerkt: ${f.grams(grams, 1)} übrig.`,
      some: 'Gemerkt.',
      gone: 'Gelöscht.',
      undo: 'Rückgängig',
      undone: 'Zurückgenommen.',
    },
    hoard: {
      title: 'Hast du nach einem Vorrat im Versteck gesucht?',
      hint: 'Was im Versteck liegt, ist nicht gefressen. Lass es weg, wenn du nicht nachgesehen hast.',
      none: 'Nichts da',
      found: 'Etwas gefunden',
      taken: 'Herausgenommen und gewogen',
      keepSome:
        'Wenn du einen Vorrat herausnimmst, lass etwas vom trockenen Futter liegen: Alles zu verlieren, setzt dem Tier zu.',
      correct: 'Vorrat im Versteck berichtigen',
    },
    result: {
      title: 'Was gefressen wurde',
      period: 'Ansehen',
      night: 'die letzte notierte Nacht',
      weeks: 'die letzten 2 Wochen',
      months: 'die letzten 3 Monate',
      none: 'In diesen Tagen wurden keine Reste notiert.',
      nights: (noted, fed) =>
        `${f.count(noted, { one: 'Nacht', other: 'Nächte' })} notiert, von ${f.count(fed, { one: 'Tag', other: 'Tagen' })} mit Futter.`,
      taken: (offered, low, high) =>
        `Von ${f.grams(offered, 1)}, die angeboten wurden, sind ${range(low, high)} weg.`,
      eatenExactly: (low, high) => `Gefressen, mit dem Vorrat im Versteck gezählt: ${range(low, high)}.`,
      eatenInPart: (low, high) =>
        `Gefressen: ${range(low, high)}. Nicht alle Verstecke dieser Nächte wurden gezählt, oder der Fund kann auch aus anderen Nächten sein.`,
      eatenUnknown: (high) =>
        `Gefressen: höchstens ${f.grams(high, 1)}. Niemand hat nach Verstecken gesucht, also kann einiges versteckt liegen.`,
      older:
        'Vorher hatte niemand nach Verstecken gesucht. Ist manches vom Fund älter, wurde mehr gefressen, als hier steht.',
      unticked: (days) =>
        f.form(days, {
          one: 'Für einen der Tage hat niemand gesagt, was angeboten wurde; er zählt als nichts.',
          other: `Für ${f.number(days)} der Tage hat niemand gesagt, was angeboten wurde; sie zählen als nichts.`,
        }),
      doubt: {
        more: 'Es war mehr übrig, als angeboten wurde: Es ist nass, aus anderen Nächten, oder ein Gewicht stimmt nicht. Das Gewicht dieser Nacht sagt nichts darüber, was gefressen wurde.',
        older:
          'Im Versteck liegt mehr, als seit dem letzten Nachsehen weg ist, also ist manches älter. Wie viel gefressen wurde, sagt es nicht.',
        scale:
          'Es war ein wenig mehr übrig, als angeboten wurde, wie es bei Küchenwaagen vorkommt. Es zählt als alles.',
        mostly:
          'Es sollen mehr Zutaten meist noch da gewesen sein, als das Gewicht zulässt. Das Gewicht zählt.',
        sum: 'Die Zutaten und das ganze Gewicht passen nicht zusammen. Die Zutaten zählen.',
        'not-offered': (foods) => `Da lag auch: ${f.list(foods)}. Das wurde nicht angeboten und zählt nicht.`,
        dried: (percent) =>
          `Frisches trocknet, während es liegt: Was davon übrig ist, zählt als bis zu ${f.percent(percent)} leichter, als es war (übliche Praxis, ohne Quelle). Trockenes kann etwas Feuchte ziehen; das ist nicht eingerechnet.`,
      },
    },
    picture: {
      title: 'Zutat für Zutat',
      hint: 'Jeder Balken ist, was angeboten wurde. Voll: sicher weg. Gestreift: vielleicht weg, vielleicht übrig, denn es wurde nicht sortiert. Leer: übrig. Der Strich quer: wie viel von allem zusammen weg ist.',
      hintEaten:
        'Jeder Balken ist, was angeboten wurde. Voll: sicher gefressen. Gestreift: vielleicht gefressen. Leer: nicht gefressen. Der Strich quer: wie viel von allem zusammen weg ist.',
      food: 'Zutat',
      takenHead: 'Weg',
      eatenHead: 'Gefressen',
      index: 'Herausgesucht?',
      of: (low, high, offered) => `${range(low, high)} von ${f.grams(offered, 1)}`,
      percent: (low, high) =>
        f.percent(low, 0) === f.percent(high, 0)
          ? f.percent(low, 0)
          : `${f.number(low, 0)} bis ${f.percent(high, 0)}`,
      more: (n) => `${f.count(n, { one: 'weitere Zutat', other: 'weitere Zutaten' })} zeigen`,
    },
    index: {
      title: 'Was herausgesucht wird',
      help: '100: gefressen, wie es angeboten wurde. Über 100: vor anderem herausgesucht. Unter 100: liegen gelassen. Es ist 100 mal das, was von einer Zutat weg ist, geteilt durch ihren Teil vom Ganzen (Leonardi und Armentano 2003, J. Dairy Sci.).',
      spanHelp:
        'Die Zahlen in Klammern: zwischen welchen die Kennzahl für solche Nächte liegt, 95 von 100 Mal. Sie folgen daraus, wie verschieden die Nächte sind (Verhältnisschätzung, Student-t), und daraus, was nicht sortiert wurde.',
      byTaken: 'Es zählt, was aus dem Napf weg ist, denn nicht alle Verstecke wurden gezählt.',
      byEaten: 'Es zählt, was gefressen wurde: Verstecke sind mitgezählt.',
      value: (value) => f.number(value, 0),
      limits: (low, high) => `${f.number(low, 0)} bis ${f.number(high, 0)}`,
      leaning: {
        picked: 'herausgesucht',
        left: 'liegen gelassen',
        even: 'wie angeboten',
        unclear: 'noch nicht zu sagen',
      },
      nights: (n) => f.count(n, { one: 'Nacht', other: 'Nächte' }),
    },
    nutrients: {
      title: 'Was das für das Futter heißt',
      hintTaken:
        'In 100 g, wie angeboten, und in 100 g, die aus dem Napf weg sind. Ein Bereich, wo nicht alles sortiert oder nicht alles bekannt ist.',
      hintEaten:
        'In 100 g, wie angeboten, und in 100 g, wie gefressen. Ein Bereich, wo nicht alles sortiert oder nicht alles bekannt ist.',
      offered: 'angeboten',
      taken: 'weg',
      eaten: 'gefressen',
      amount: (low, high, unit) =>
        f.figure(low) === f.figure(high)
          ? `${f.figure(low)} ${unit}`
          : `${f.figure(low)} bis ${f.figure(high)} ${unit}`,
      coverage: (percent) => `bekannt für ${f.percent(percent, 0)} des Gewichts`,
      more: 'Mehr Nährstoffe',
      fewer: 'Weniger Nährstoffe',
      none: 'Von diesen Zutaten ist nichts bekannt.',
    },
    advice: {
      title: 'Was hilft',
      vetToday: (taken, usual) =>
        `Höchstens ${f.grams(taken, 1)} sind weg, üblich sind ${f.grams(usual, 1)}. Ein kleines Tier, das einen Tag lang kaum frisst, ist in Gefahr: Sieh jetzt nach ihm, wiege es und geh heute in die Tierarztpraxis, sofort, wenn es krank wirkt.`,
      vetTodayNothing:
        'Nichts ist weg. Ein kleines Tier, das einen Tag lang nicht frisst, ist in Gefahr: Sieh jetzt nach ihm, wiege es und geh heute in die Tierarztpraxis, sofort, wenn es krank wirkt.',
      vetTomorrow: (taken, usual) =>
        `Höchstens ${f.grams(taken, 1)} sind weg, üblich sind ${f.grams(usual, 1)}. Wiege es und biete an, was es mag. Ist in der nächsten Nacht wieder so wenig weg oder wirkt es vorher krank, geh am selben Tag in die Tierarztpraxis.`,
      vetHoard:
        'Es kann von seinem Vorrat im Versteck leben. Das ist kein Grund zu warten, wenn es krank aussieht, abnimmt oder seltener aus dem Nest kommt.',
      vetRule:
        'Die Regel: weniger als die Hälfte des Üblichen (die Mitte seiner letzten Nächte) eine Nacht lang; weniger als ein Viertel: sofort. Übliche Praxis, ohne Quelle.',
      less: (foods) =>
        `Herausgesucht wird: ${f.list(foods)}. Biete davon auf einmal etwas weniger an, dann wird auch der Rest gefressen. Verringere es über ein bis zwei Wochen, nicht auf einmal.`,
      change: (foods) =>
        `Oft liegen bleibt: ${f.list(foods)}. Versuche es in anderer Form (ganz, zerdrückt, in kleineren Stücken), oder gib dem einen kleineren Anteil an der nächsten Mischung und an seiner Stelle etwas, das gefressen wird.`,
      mix: 'Zur Mischung',
      scatter:
        'Streue kleinere Portionen, wenn es geht zweimal am Tag. Was einzeln gefunden werden muss, wird weniger herausgesucht.',
      starve:
        'Halte nie Futter zurück, bis gefressen wird, was liegen blieb: Ein kleines Tier hungert schon nach Stunden, nicht erst nach Tagen.',
      bowl: 'Ein leerer Napf beweist nicht, dass gefressen wurde: Hamster und viele andere tragen Futter weg. Such ab und zu nach dem Versteck, wiege den Vorrat und trag ihn hier ein.',
    },
    nights: {
      title: 'Notierte Nächte',
      none: 'Noch keine.',
      nothing: 'nichts übrig',
      left: (grams) => `${f.grams(grams, 1)} übrig`,
      leftOf: (grams, offered) => `${f.grams(grams, 1)} übrig von ${f.grams(offered, 1)}`,
      mostly: (foods) => `meist noch da: ${f.list(foods)}`,
      hoard: (grams) => `${f.grams(grams, 1)} im Versteck`,
      noHoard: 'nichts im Versteck',
      hoardSeen: 'Vorrat gefunden',
      since: (day) => `Futter seit ${f.shortDay(day)}`,
      notWeighed: 'nicht gewogen',
      onlyHoard: 'Reste nicht angesehen',
      correct: 'Berichtigen',
      correctOf: (day) => `${f.shortDay(day)} berichtigen`,
      remove: 'Löschen',
      removeOf: (day) => `Löschen, was von ${f.shortDay(day)} notiert ist`,
    },
    gone: (name) => `${name} ist nicht mehr hier. Was notiert wurde, bleibt.`,
  };
};
