import type { Trials } from '../en/trials.ts';
import type { Figures } from '../figures.ts';

export const trials = (f: Figures): Trials => ({
  title: 'Neues Futter',
  intro: (animal) =>
    `Gib ${animal} immer nur eine neue Zutat auf einmal, wenig davon neben bekanntem Futter, und notiere, was du gesehen hast.`,
  gone: (animal) => `${animal} lebt nicht mehr hier. Was versucht wurde, bleibt festgehalten.`,
  choose: {
    open: 'Neue Zutat versuchen',
    heading: 'Welche Zutat ist neu?',
    search: 'Zutaten suchen',
    placeholder: 'Leinsamen, Mehlwürmer, Löwenzahn…',
    searching: 'Sucht…',
    own: 'eigene Zutat',
    pellet: 'eigene Pellets',
    inMix: 'in einer Mischung',
    never: 'Was nicht gefüttert werden darf, steht nicht in dieser Liste.',
    neverFound: (food) => `Darf nicht gefüttert werden: ${food}.`,
    pick: (food) => `${food} auswählen`,
    take: 'Auswählen',
    cancel: 'Jetzt nicht',
  },
  plan: {
    heading: (food) => `Versuch: ${food}`,
    other: 'Andere Zutat',
    cautions: 'Vorher zu wissen',
    amount: 'Jedes Mal',
    amountHint: (per, body) =>
      `Etwa ${f.grams(per)} je ${f.grams(100)} Körpergewicht, gerechnet mit ${f.grams(body)}; das ist ungefähr ein Zehntel des Futters eines Tages (übliche Praxis, keine Quelle).`,
    amountUnknown: 'Ein sehr kleines Stück. Ist ein Körpergewicht notiert, steht hier eine Menge.',
    offers: 'Wie oft',
    times: (n) => f.count(n, { one: 'Mal', other: 'Mal' }),
    from: 'Ab',
    beside: 'Neben',
    noBeside: 'dem gewohnten Futter',
    days: (days) => `Tage: ${f.list(days)}`,
    apart:
      'Zwischen zwei Malen liegt ein Tag, damit du siehst, wie jedes Mal verlief (übliche Praxis, keine Quelle). Für ein Urteil müssen drei Male übereinstimmen.',
    begin: 'Beginnen',
    noDay: 'Wähle den ersten Tag.',
  },
  running: {
    heading: (food) => `Läuft gerade: ${food}`,
    beside: (grams, food) => `Jedes Mal ${grams}, daneben: ${food}.`,
    alone: (grams) => `Jedes Mal ${grams} neben dem gewohnten Futter.`,
    little: (food) => `Jedes Mal ein sehr kleines Stück, daneben: ${food}.`,
    littleAlone: 'Jedes Mal ein sehr kleines Stück neben dem gewohnten Futter.',
    today: 'Heute ist wieder Zeit zum Anbieten.',
    late: (day, days) =>
      `Geplant war der ${day}, das ist ${f.count(days, { one: 'Tag', other: 'Tage' })} her. Es geht auch heute.`,
    next: (day) => `Nächstes Mal: ${day}.`,
    done: 'Alle geplanten Male sind notiert.',
    other: (food) =>
      `Gerade wird versucht: ${food}. Eine weitere neue Zutat geht erst, wenn dieser Versuch beendet ist: Sind zwei auf einmal neu, weiß niemand, welche nicht vertragen wurde.`,
    end: 'Diesen Versuch beenden',
    ended: (food) => `Der Versuch ist beendet: ${food}.`,
    more: 'Noch zwei Male',
  },
  note: {
    heading: 'Was hast du gesehen?',
    offered: 'Angeboten am',
    today: 'heute',
    yesterday: 'gestern',
    seen: {
      first: 'Zuerst gefressen',
      eaten: 'Gefressen',
      hoarded: 'Weggetragen',
      left: 'Liegen gelassen',
      upset: 'Nicht vertragen',
    },
    help: {
      first: 'vor dem gewohnten Futter',
      eaten: 'früher oder später',
      hoarded: 'in die Backentaschen oder ins Versteck',
      left: 'es lag noch da',
      upset: 'weicher Kot, aufgeblähter Bauch, unwohl',
    },
    noted: (seen, day) => `Notiert für ${day}: ${seen}. Stimmt das nicht, drücke etwas anderes.`,
    hoarding: 'Weggetragen heißt weder gefressen noch verweigert: Das kann niemand sehen.',
    weigh: 'Ich habe den Rest gewogen',
    offeredGrams: 'Angeboten',
    leftGrams: 'Noch da',
    saveWeights: 'Gewichte notieren',
    weighed: (left, grams) => `${left} von ${grams} blieben übrig`,
    takeBack: 'Zurücknehmen',
    takenBack: (day) => `Zurückgenommen: ${day}.`,
    sofar: 'Was notiert ist',
    takeBackOf: (day) => `Zurücknehmen, was für ${day} notiert ist`,
  },
  upset: {
    heading: (food, animal) => `${food}: ${animal} verträgt das nicht`,
    stop: (animal) =>
      `Nicht mehr füttern. Nimm weg, was davon noch da ist, auch aus dem Versteck; ${animal} behält das gewohnte Futter und frisches Wasser.`,
    vet: 'Geh noch am selben Tag in die Tierarztpraxis, wenn der Kot wässrig, das Hinterteil nass oder verschmiert, der Bauch aufgebläht ist, wenn das Tier nichts frisst oder matt ist: Einem kleinen Tier kann es binnen eines Tages sehr schlecht gehen. Halten leichtere Zeichen bis morgen an, ebenfalls.',
    out: (food) => `Jetzt aus jeder Mischung heraus, unter jedem Namen und in jeder Form: ${food}.`,
    others: (day, note) => `Den anderen Tieren gibst du es seit dem ${day} trotzdem: „${note}“.`,
    goAhead: 'Den anderen geben, mit Begründung …',
    why: 'Warum die anderen es trotzdem bekommen (etwa weil sie es schon lange fressen)',
    yes: 'Den anderen geben',
    no: 'Weglassen',
    keepOut: 'Für alle weglassen',
    wrong: 'Lag es an etwas anderem, nimm unten diese Notiz zurück; dann ist die Zutat wieder dabei.',
  },
  verdict: {
    liked: (animal, food) => `${animal} mag das: ${food}.`,
    refused: (animal, food) => `${animal} will das nicht: ${food}.`,
    upset: (animal, food) => `${animal} hat das nicht vertragen: ${food}.`,
    undecided: 'Noch nicht entschieden.',
    stillRefused: (animal, food) =>
      `${animal} hat das früher verweigert: ${food}. Es bleibt aus den Mischungen heraus, bis neue Male etwas anderes sagen.`,
    stillLiked: (animal, food) =>
      `${animal} mochte das früher: ${food}. Die neuen Male haben es noch nicht entschieden.`,
    chance: (percent) =>
      `Mit ${f.percent(percent, 0)} Wahrscheinlichkeit frisst es das mindestens jedes zweite Mal.`,
    chanceBetween: (low, high) =>
      `Dass es das mindestens jedes zweite Mal frisst, hat eine Wahrscheinlichkeit zwischen ${f.percent(low, 0)} und ${f.percent(high, 0)}: Bei Weggetragenem weiß niemand, ob es gefressen wurde.`,
    span: (low, high) =>
      `Es frisst davon ${f.number(low, 0)} bis ${f.percent(high, 0)} aller Male (zu 95 % sicher).`,
    more: (eaten, left) =>
      `Frühestens entschieden, wenn es ${f.count(eaten, { one: 'weiteres Mal', other: 'weitere Male' })} gefressen wird oder ${f.count(left, { one: 'weiteres Mal', other: 'weitere Male' })} liegen bleibt.`,
    looks: (n) => f.count(n, { one: 'Mal notiert', other: 'Male notiert' }),
    noLooks: 'Noch ist kein Mal notiert.',
    how: 'Wie das gerechnet wird',
    why: 'Jedes Mal zählt als ein Blick. Vor dem ersten gilt jede Antwort als gleich wahrscheinlich (Gleichverteilung). Nach e Blicken, bei denen gefressen, und l, bei denen liegen gelassen wurde, folgt die Häufigkeit einer Verteilung Beta(1 + e, 1 + l). Ein Urteil fällt, sobald es nach einer Seite zu 90 % sicher ist; dazu müssen drei Blicke übereinstimmen (übliche Praxis, keine Quelle). Gewogenes zählt nach Gewicht. Weggetragenes wird einmal als gefressen und einmal als liegen gelassen gerechnet, und das Urteil muss beide Male gelten.',
    older:
      'Geschmack ändert sich: In einem neuen Versuch zählt jeder Blick des vorigen halb, des vorvorigen ein Viertel (übliche Praxis, keine Quelle).',
    picture: (low, high, from, to) =>
      `Wie oft es davon frisst: am ehesten ${from === to ? f.percent(from, 0) : `${f.number(from, 0)} bis ${f.percent(to, 0)}`}, zu 95 % sicher ${f.number(low, 0)} bis ${f.percent(high, 0)}.`,
    never: 'nie',
    half: 'jedes zweite Mal',
    always: 'immer',
  },
  follows: {
    liked: 'Es darf in die Mischungen.',
    refused: (mixes) =>
      mixes.length === 0
        ? 'Es bleibt aus jeder Mischung für dieses Tier heraus, auch unter anderem Namen.'
        : `Heraus aus ${f.list(mixes)} und aus jeder Mischung für dieses Tier, auch unter anderem Namen.`,
    listed:
      'Es steht auch auf der Liste des Verweigerten, die du selbst geschrieben hast: Es bleibt draußen, bis du es dort streichst.',
    undecided: 'Die Mischungen bleiben, wie sie sind.',
  },
  lists: {
    upset: 'Nicht vertragen',
    refused: 'Verweigert',
    liked: 'Gemocht',
    undecided: 'Versucht, nicht entschieden',
    untried: 'In den Mischungen, noch nie versucht',
    untriedHint: (animal) =>
      `Hake ab, was ${animal} von früher kennt. Was in einer fertigen Charge war, gilt als bekannt.`,
    noneUntried: 'Alle Zutaten der Mischungen sind bekannt.',
    noMix: 'Für dieses Tier gibt es noch keine Mischung.',
    knows: 'Das ist bekannt',
    knowsOf: (food) => `Bekannt: ${food}`,
    said: 'Bekannt, wie du sagst',
    known: 'bekannt',
    tryIt: 'Versuchen',
    tryItOf: (food) => `${food} versuchen`,
    again: 'Wieder anbieten',
    againOf: (food) => `Wieder anbieten: ${food}`,
    nothing: 'Noch wurde nichts versucht.',
    trialFrom: (day) => `Versuch ab ${day}`,
    trialEnded: (day, end) => `Versuch ab ${day}, beendet am ${end}`,
    noDays: 'Versuch',
    remove: 'Versuch löschen',
    removeOf: (food, day) => `Versuch löschen: ${food}, ${day}`,
    removed: (food) => `Der Versuch wurde gelöscht: ${food}.`,
    back: (food) => `Der Versuch ist wieder da: ${food}.`,
  },
  mix: {
    isOut: (food, animal) =>
      `Nicht dabei: ${food}. ${animal} hat es in <trial>einem Versuch</trial> liegen gelassen.`,
    upset: (food, animal) =>
      `Aus jeder Mischung heraus: ${food}. ${animal} hat es in <trial>einem Versuch</trial> nicht vertragen.`,
    upsetOwn: (food, animal) =>
      `Nicht dabei: ${food}. ${animal} hat es in <trial>einem Versuch</trial> nicht vertragen. Es bleibt aus dieser Mischung heraus, solange das gilt.`,
    upsetBeside: (food, animal) =>
      `Neben der Mischung gefüttert, jetzt nicht mehr: ${food}. ${animal} hat es in <trial>einem Versuch</trial> nicht vertragen. Die Ration wird ohne das gerechnet; wähle ein anderes Alleinfutter.`,
    refusedBeside: (food, animal) =>
      `Neben der Mischung gefüttert, jetzt nicht mehr: ${food}. ${animal} verweigert es. Die Ration wird ohne das gerechnet; wähle ein anderes Alleinfutter.`,
    lifted: (food, animal, day, note) =>
      `Dabei, weil du es am ${day} so entschieden hast („${note}“): ${food}. ${animal} hat es in <trial>einem Versuch</trial> nicht vertragen.`,
    goAheadWith: (food) => `Den anderen geben, mit Begründung … (${food})`,
    all: 'Nach einem Versuch nicht dabei',
    outShort: (animal) => `von ${animal} verweigert`,
    upsetShort: (animal) => `nicht vertragen: ${animal}`,
    newTo: (animal, n) =>
      `Noch nie versucht hat ${animal} ${f.count(n, { one: 'Zutat', other: 'Zutaten' })} dieser Mischung.`,
    newHint:
      'Versuche neue Zutaten eine nach der anderen, bevor sie in eine Charge kommen; oder hake ab, was bekannt ist.',
    trying: 'wird gerade versucht',
    knowsAll: (animal) => `${animal} kennt das alles`,
  },
  about: {
    refused: (food) => `Auch nicht dabei: ${food}, in <trial>einem Versuch</trial> liegen gelassen.`,
    upset: (food) => `Aus jeder Mischung heraus: ${food}, in <trial>einem Versuch</trial> nicht vertragen.`,
  },
  today: {
    look: (animal, food) =>
      `${animal} hat das nicht vertragen: ${food}. Schau nach. Hält es an, geh in die Tierarztpraxis, noch am selben Tag, wenn das Tier matt ist oder nichts frisst.`,
    trial: 'Zum Versuch',
  },
  batch: {
    heading: 'Nicht füttern',
    notFor: (food, animal) => `Nicht für ${animal}: enthält ${food}, von ${animal} nicht vertragen.`,
    own: (food, animal) =>
      `Enthält ${food}. ${animal} hat das in <trial>einem Versuch</trial> nicht vertragen: ${animal} nicht damit füttern. Hält es an, geh in die Tierarztpraxis.`,
    other: (food, animal) =>
      `Enthält ${food}. ${animal} hat das in <trial>einem Versuch</trial> nicht vertragen. Nicht füttern, oder entscheide dort anders für die anderen Tiere.`,
  },
});
