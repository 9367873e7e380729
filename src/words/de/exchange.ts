import type { Exchange } from '../en/exchange.ts';
import type { Figures } from '../figures.ts';

export const exchange = (f: Figures): Exchange => ({
  refused: 'Die Datei wurde nicht übernommen. Es wurde nichts geändert:',
  failed: 'Das hat nicht geklappt:',
  pageFailed: 'Auf dieser Seite ging etwas schief. Lade sie neu und versuche es noch einmal.',
  moment: 'Einen Moment…',
  bringIn: 'Übernehmen',
  intro:
    'Eine Datei aus Pouchful: ein ganzer Haushalt, oder eine Mischung oder Zutat von jemand anderem. Sie wird zuerst angesehen; geschrieben wird erst, wenn du gesehen hast, was sich ändern würde.',
  file: 'Datei',
  tooLarge: (name, megabytes) =>
    `${name} hat mehr als ${megabytes} MB, mehr geht nicht. Ist es die richtige Datei?`,
  notRead: 'Die Datei war nicht lesbar. Wähle sie noch einmal.',
  how: 'Wie soll sie hereinkommen?',
  add: 'Hinzufügen, was hier fehlt. Alles hier bleibt, wie es ist',
  update: 'Hinzufügen, was hier fehlt, und ändern, was in der Datei anders ist',
  replace: 'Alles ersetzen: Nur was in der Datei steht, bleibt',
  replaceNow: 'Alles ersetzen',
  done: (name, counts) =>
    `Übernommen aus ${name}: ${counts}. Es steht unter „Änderungen“, dort kannst du es rückgängig machen.`,
  counts: (new_, changed, gone, kept, same) =>
    `${[`${new_} neu`, `${changed} geändert`, `${gone} weg`, ...(kept > 0 ? [`${kept} anders, aber unverändert gelassen`] : []), `${same} gleich`].join(', ')}`,
  changesTitle: 'Was sich ändern würde',
  changes: (counts) => `<b>Was sich ändern würde:</b> ${counts}.`,
  leftOut: (n) =>
    `${f.count(n, { one: 'Eintrag der Datei war', other: 'Einträge der Datei waren' })} schon dort nicht lesbar, wo sie gemacht wurde. Sie bleiben in der Datei.`,
  new: (thing) => `Neu: ${thing}`,
  different: (thing) => `Ändert sich: ${thing}`,
  gone: (thing) => `Verschwindet: ${thing}`,
  kept: (thing) => `Bleibt, wie es hier ist: ${thing}`,
  because: (thing, why) => `${thing} (${why})`,
  allOfIt: 'alles',
  nothing: 'nichts',
  moreFields: (n) => `und ${f.count(n, { one: 'weiteres Feld', other: 'weitere Felder' })}`,
  moreChanges: (n) =>
    `${f.count(n, { one: 'weitere Änderung steht', other: 'weitere Änderungen stehen' })} hier nicht.`,
  partDone: (names) => `Übernommen: ${names}.`,
  partNothing: 'Es wurde nichts übernommen: Alles war schon da.',
  coming: (things) => `Kommt herein: ${things}.`,
  comingNothing: 'Kommt herein: nichts, was nicht schon da ist.',
  same: (names) => `Schon da, genau so: ${names}.`,
  choices: 'Entscheidungen der anderen Person. Was du nicht ankreuzt, wird nicht übernommen',
  notTicked: (instead) => `Nicht angekreuzt: ${instead}.`,
  takeOut: 'Herausnehmen',
  takeOutIntro:
    'Alles in einer offenen Datei, die jedes Programm lesen und Pouchful so wieder übernehmen kann. Verlauf und Sicherungen bleiben hier.',
  saveAll: 'Alles als eine Datei speichern',
  tables: 'Tabellen für eine Tabellenkalkulation',
  decimal: 'Dezimalzeichen',
  point: '6.25, Spalten durch Kommas getrennt',
  comma: '6,25, Spalten durch Semikolons getrennt',
  ofFoods: 'Eigene Zutaten',
  ofMixes: 'Anteile der Mischungen',
  ofLots: 'Packungen',
  ofBatches: 'Chargen',
  ofPours: 'Was abgewogen wurde',
  ofAnimals: 'Tiere',
  oneForAnother: 'Eine Mischung oder Zutat für jemand anderen',
  oneForAnotherHint:
    'Eigene Zutaten und eigener Bedarf der Mischung kommen mit. Tiere, Vorrat, Preise und was dein Tier verweigert nicht.',
  mixOrFood: 'Mischung oder Zutat',
  mixNamed: (name) => `Mischung: ${name}`,
  foodNamed: (name) => `Zutat: ${name}`,
  saveFile: 'Als Datei speichern',
  ownTable: 'Eine eigene Tabelle',
  ownTableHint:
    'Zutaten und Anteile aus deiner Tabellenkalkulation kommen als eigene Zutaten und als Mischung herein.',
  bringTable: 'Eine Tabelle übernehmen',
  theKitchen: 'die Küche',
  finishedKept: 'eine fertige Charge wird nicht geändert',
  reading: {
    noRecords: 'die Liste der Einträge fehlt; vielleicht ist die Datei abgeschnitten',
    goneList: 'es muss eine Liste sein; lass sie weg, wo nichts fehlt',
    twiceAmong: (id, kind, before) =>
      `„${id}“ steht zweimal bei ${kind}, zuerst bei /records/${before}; lass eines weg`,
    goneEntry: 'es muss ein Objekt mit kind und id sein',
    namesFood: (id) =>
      `es nennt die Zutat „${id}“, die nicht in der Datei ist; füge sie hinzu oder nenne sie unter „gone“`,
    namesOther: (kind, id) =>
      `es nennt bei ${kind} „${id}“, das nicht in der Datei ist; füge es hinzu oder nenne es unter „gone“`,
    empty: 'die Datei ist leer; wähle die Datei, die aus Pouchful gespeichert wurde',
    tooDeep:
      'ihre Klammern sind tiefer verschachtelt als in jedem Export; sie ist beschädigt oder von anderer Art',
    noJson: (why) =>
      `das ist kein JSON (${why}); vielleicht ist die Datei abgeschnitten oder von einem anderen Programm geändert. Speichere sie noch einmal, oder nimm eine Sicherung`,
    noExport: 'das ist JSON, aber kein Export von Pouchful',
    formatIs: (format, needed) => `das Format ist „${format}“, hier wird „${needed}“ gebraucht`,
    formatNone: (needed) => `das Format fehlt, hier wird „${needed}“ gebraucht`,
    versionNumber: 'die Version des Formats muss eine ganze Zahl ab 1 sein',
    newer: (version, most) =>
      `die Datei hat Version ${version}, dieses Programm liest bis ${most}; bringe zuerst Pouchful auf den neuesten Stand`,
    recordShape: 'es muss ein Objekt mit kind, id und body sein',
    noKind: (kind, kinds) => `${kind} ist keine Art von Eintrag; nimm eine von ${kinds}`,
    noId: (id) => `${id} ist keine Kennung; schreibe einen Text`,
    within: (kind, id, why) => `${kind} „${id}“: ${why}`,
    otherId: (says, id) => `darin steht „${says}“, beim Eintrag „${id}“; mache beide gleich`,
    noFoods: 'die Liste der Zutaten fehlt; vielleicht ist die Datei abgeschnitten',
    twice: (id) => `„${id}“ steht zweimal; lass eines weg`,
    neither: 'die Datei enthält weder eine Mischung noch eine Zutat',
    leaveOut: (why) => `${why}; lass es weg`,
    noTarget: (id) => `den Bedarf „${id}“ gibt es weder in Pouchful noch in der Datei`,
    cannot: 'das lässt sich nicht übernehmen',
    another:
      'Datei oder Haushalt sind nicht mehr wie beim Ansehen; sieh noch einmal nach, was sich ändern würde',
    tooLargeFile: (megabytes) =>
      `die Datei ist größer als ${megabytes} MB, mehr geht nicht; gehe stattdessen auf eine Sicherung zurück, oder lösche Altes vor dem Speichern`,
  },
  sent: {
    ownTarget: (name) =>
      `Der Bedarf „${name}“ stammt von der anderen Person: Sieh dir jede Grenze und ihre Quelle an, bevor du danach fütterst.`,
    theirs:
      'Bedarf, Grenzen und Warnungen der Mischung hat die andere Person für ihre Tiere gewählt. Wähle in der Mischung deine Tiere und sieh nach, ob sie ihnen passt.',
    noMargin: 'Sie hält keinen Abstand zu ihren Grenzen.',
    margin: (percent) => `Sie hält ${f.percent(percent)} Abstand zu ihren Grenzen.`,
    usualMargin: (percent) => `der übliche Abstand von ${f.percent(percent)}`,
    sure: (percent) => `Wie sicher ihre Grenzen halten müssen: ${f.percent(percent)}.`,
    notAsked: 'das wird nicht verlangt',
    cautionsNamed: 'Zutaten mit Warnung werden nur genannt, weder gesperrt noch begrenzt.',
    cautionsCount: 'Warnungen gelten',
    limits: (target, limits) => `Grenzen, die nicht die des Bedarfs „${target}“ sind: ${limits}.`,
    limitsOfTarget: 'die Grenzen des Bedarfs',
    override: (food, caution, note) => `${food} ist trotz einer Warnung dabei (${caution}): „${note}“`,
    cautionCounts: 'die Warnung gilt',
    without: (rule) => `ohne ${rule}`,
    ratio: (over, under) => `${over} zu ${under}`,
    aLimit: 'eine Grenze',
    between: (what, least, most) => `${what} mindestens ${f.number(least)} und höchstens ${f.number(most)}`,
    least: (what, least) => `${what} mindestens ${f.number(least)}`,
    most: (what, most) => `${what} höchstens ${f.number(most)}`,
    noBounds: (what) => `${what} ohne Grenzen`,
  },
});
