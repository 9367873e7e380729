import type { Exchange } from '../en/exchange.ts';
import type { Figures } from '../figures.ts';

export const exchange = (f: Figures): Exchange => ({
  refused: 'Het bestand is niet binnengekomen. Er is niets veranderd:',
  failed: 'Dat is niet gelukt:',
  pageFailed: 'Er ging iets mis op deze pagina. Laad de pagina opnieuw en probeer het nog eens.',
  moment: 'Een ogenblik…',
  bringIn: {
    title: 'Binnenhalen',
    text: 'Een bestand uit Pouchful: een heel huishouden, of één mengsel of ingrediënt van iemand anders. Het wordt eerst bekeken. Er wordt niets geschreven voordat je hebt gezien wat er zou veranderen.',
    file: 'Bestand',
    tooBig: (name, megabytes) =>
      `${name} heeft meer dan ${f.number(megabytes)} MB, meer wordt niet aangenomen. Is het het goede bestand?`,
    notRead: 'Het bestand kon niet worden gelezen. Kies het opnieuw.',
    press: 'Binnenhalen',
    replace: 'Alles vervangen',
    how: 'Hoe moet het binnenkomen?',
    ways: {
      add: 'Toevoegen wat hier niet is; alles wat hier is blijft zoals het is',
      update: 'Toevoegen wat hier niet is, en wat verschilt maken zoals in het bestand',
      replace: 'Alles vervangen: in het huishouden staat wat in het bestand staat, en verder niets',
    },
    done: (name, counts) =>
      `Binnengehaald uit ${name}: ${counts}. Het staat onder “Wijzigingen” en kan daar ongedaan worden gemaakt.`,
    counts: {
      new: (n) => `${f.number(n)} nieuw`,
      different: (n) => `${f.number(n)} gewijzigd`,
      gone: (n) => `${f.number(n)} weg`,
      kept: (n) => `${f.number(n)} anders en zo gelaten`,
      same: (n) => `${f.number(n)} hetzelfde`,
    },
    changes: 'Wat er zou veranderen',
    changesAre: (counts) => `<head>Wat er zou veranderen:</head> ${counts}.`,
    leftOut: (n) =>
      f.form(n, {
        one: 'Eén onderdeel van het bestand was al niet leesbaar waar het werd gemaakt. Het blijft in het bestand en komt niet binnen.',
        other: `${f.number(n)} onderdelen van het bestand waren al niet leesbaar waar het werd gemaakt. Ze blijven in het bestand en komen niet binnen.`,
      }),
    what: { new: 'Nieuw', different: 'Verandert', gone: 'Gaat weg', kept: 'Blijft zoals het hier is' },
    allOfIt: 'alles ervan',
    nothing: 'niets',
    moreFields: (n) => f.form(n, { one: 'en nog één veld', other: `en nog ${f.number(n)} velden` }),
    moreChanges: (n) =>
      f.form(n, {
        one: 'Nog één wijziging staat hier niet.',
        other: `Nog ${f.number(n)} wijzigingen staan hier niet.`,
      }),
  },
  part: {
    done: (names) => `Binnengehaald: ${names}.`,
    doneNothing: 'Binnengehaald: niets, alles was er al.',
    comes: (list) => `<head>Komt binnen:</head> ${list}.`,
    comesNothing: '<head>Komt binnen:</head> niets wat er niet al is.',
    same: (names) => `Precies zo al hier: ${names}.`,
    choices: 'Keuzes van de afzender: wat je niet aanvinkt, wordt niet overgenomen',
    notTicked: (instead) => `Niet aangevinkt: ${instead}.`,
    kinds: { foods: 'ingrediënt', profiles: 'behoefte', mixes: 'mengsel' },
  },
  takeOut: {
    title: 'Meenemen',
    text: 'Alles in één open bestand dat elk programma kan lezen, en dat Pouchful weer precies zo binnenhaalt. De geschiedenis en de back-ups blijven hier.',
    all: 'Alles in één bestand bewaren',
    tables: 'Tabellen voor een spreadsheet',
    decimal: 'Decimaalteken',
    point: '6.25, met komma’s tussen de kolommen',
    comma: '6,25, met puntkomma’s tussen de kolommen',
    names: {
      foods: 'Eigen ingrediënten',
      mixes: 'Aandelen van mengsels',
      lots: 'Pakken',
      batches: 'Batches',
      pours: 'Afgewogen',
      animals: 'Dieren',
    },
    forAnother: 'Eén mengsel of ingrediënt voor iemand anders',
    forAnotherText:
      'Met de eigen ingrediënten en de eigen behoefte die een mengsel noemt; zonder dieren, voorraad, prijzen en wat je dier weigert.',
    mixOrFood: 'Mengsel of ingrediënt',
    mix: (name) => `Mengsel: ${name}`,
    food: (name) => `Ingrediënt: ${name}`,
    save: 'Als bestand bewaren',
  },
  ownTable: {
    title: 'Een eigen tabel',
    text: 'Ingrediënten en aandelen uit je spreadsheet komen erin als eigen ingrediënten en een mengsel.',
    press: 'Een tabel overnemen',
  },
  reading: {
    finished: 'een afgemaakte batch wordt niet gewijzigd',
    theKitchen: 'de keuken',
    noRecords: 'de lijst van onderdelen ontbreekt; misschien is het bestand afgekapt',
    goneList: 'het moet een lijst zijn; laat die weg als er niets weg is',
    twice: (id, kind, at) => `“${id}” staat twee keer onder ${kind}, eerst bij ${at}; laat er één weg`,
    needsKindAndId: 'het moet een object met kind en id zijn',
    namesFood: (id) =>
      `het noemt het ingrediënt “${id}”, dat niet in het bestand staat; voeg het toe, of noem het onder "gone"`,
    names: (kind, id) =>
      `het noemt “${id}” van ${kind}, dat niet in het bestand staat; voeg het toe, of noem het onder "gone"`,
    empty: 'het bestand is leeg; kies het bestand dat is bewaard',
    deep: 'de haken zitten dieper in elkaar dan in enig bestand van Pouchful; het is beschadigd of van een andere soort',
    noJson: (why) =>
      `het is geen JSON (${why}); misschien is het bestand afgekapt of door een ander programma veranderd. Bewaar het opnieuw, of neem een back-up`,
    noExport: 'het is JSON, maar geen bestand van Pouchful',
    otherFormat: (format, needed) => `het formaat is "${format}", en hier is "${needed}" nodig`,
    noFormat: (needed) => `het noemt geen formaat, en hier is "${needed}" nodig`,
    noVersion: 'de versie van het formaat moet een heel getal vanaf 1 zijn',
    tooNew: (version, most) =>
      `het bestand heeft versie ${version} en dit programma leest tot ${most}; vernieuw Pouchful en haal het dan binnen`,
    needsKindIdBody: 'het moet een object met kind, id en body zijn',
    noKind: (kind, kinds) => `${kind} is geen soort onderdeel; neem er een van ${kinds}`,
    noId: (id) => `${id} is geen id; schrijf een tekst`,
    otherId: (inside, outside) => `binnenin staat “${inside}” en erbuiten “${outside}”; maak ze gelijk`,
  },
  readingPart: {
    noFoods: 'de lijst van ingrediënten ontbreekt; misschien is het bestand afgekapt',
    twice: (id) => `“${id}” staat er twee keer; laat er één weg`,
    nothing: 'in het bestand staat geen mengsel en geen ingrediënt',
    leaveOut: (why) => `${why}; laat het weg`,
    noTarget: (id) => `de behoefte “${id}” is er niet bij Pouchful en niet in het bestand`,
    theirTarget: (name) =>
      `De behoefte “${name}” is van de afzender: bekijk elke grens en de bron ervan voordat je ernaar voert.`,
    theirChoices:
      'Behoefte, grenzen en waarschuwingen van het mengsel zijn keuzes van de afzender, voor andere dieren. Kies in het mengsel je eigen dieren, en kijk of het bij ze past.',
    noMargin: 'Hoe ver het van zijn grenzen blijft: helemaal niet.',
    margin: (percent) => `Hoe ver het van zijn grenzen blijft: ${f.percent(percent)}.`,
    usualMargin: (percent) => `de gebruikelijke ${f.percent(percent)}`,
    sure: (percent) => `Hoe zeker de grenzen moeten gelden: ${f.percent(percent)}.`,
    notSure: 'geen eis',
    cautions:
      'Ingrediënten op de waarschuwingslijst worden alleen genoemd; er wordt niets geweigerd of klein gehouden.',
    cautionsCount: 'de waarschuwingen tellen',
    limits: (name, list) => `Grenzen die niet die van de behoefte “${name}” zijn: ${list}.`,
    limitsOf: 'de grenzen van de behoefte',
    override: (food, caution, note) =>
      `${food} is toegelaten ondanks een waarschuwing (${caution}): “${note}”`,
    cautionCounts: 'de waarschuwing telt',
    without: (rule) => `zonder ${rule}`,
    rule: (what, limits) => `${what} ${limits}`,
    ratio: (over, under) => `${over} tot ${under}`,
    aLimit: 'een grens',
    least: (min) => `minstens ${f.number(min, 6)}`,
    most: (max) => `hoogstens ${f.number(max, 6)}`,
    both: (min, max) => `minstens ${f.number(min, 6)} en hoogstens ${f.number(max, 6)}`,
    none: 'zonder grenzen',
  },
});
