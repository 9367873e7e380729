import type { Wishes } from '../en/wishes.ts';
import type { Figures } from '../figures.ts';

export const wishes = (f: Figures): Wishes => {
  const foods = (n: number) => f.count(n, { one: 'Zutat', other: 'Zutaten' });
  return {
    within: (name) => name,
    heading: 'Wünsche',
    intro:
      'Regeln gelten immer. Unter den Mischungen, die sie einhalten, werden die Wünsche der Reihe nach erfüllt, der erste zuerst.',
    none: 'Über die Regeln hinaus ist noch nichts gewünscht.',
    working: 'Wird berechnet…',
    lastAfter: 'Und unter den Mischungen, die dann noch bleiben, die',
    last: 'Unter den Mischungen, die alle Regeln einhalten, die',
    objectives: {
      nearest: 'meinen Wünschen am nächsten kommt',
      cheapest: 'am wenigsten kostet',
      varied: 'am abwechslungsreichsten ist',
    },
    fit: 'Nach diesen Wünschen passend machen',
    simple: {
      liked: 'So viel wie möglich von dem, was beliebt ist',
      cupboard: 'Verbrauchen, was zu Hause ist',
      few: 'Wenige Zutaten',
      fewToBuy: 'Wenige Zutaten einkaufen',
      cheap: 'Günstig',
    },
    lessOf: 'Weniger von …',
    moreOf: 'Mehr von …',
    less: {
      mix: (what) => `Weniger ${what} in der Mischung`,
      ration: (what) => `Weniger ${what} in der ganzen Ration`,
    },
    more: {
      mix: (what) => `Mehr ${what} in der Mischung`,
      ration: (what) => `Mehr ${what} in der ganzen Ration`,
    },
    smaller: (what) => `Kleinerer Anteil: ${what}`,
    greater: (what) => `Größerer Anteil: ${what}`,
    units: { foods: 'Zutaten', perKg: 'je kg', per100: (unit) => `${unit} in 100 g` },
    value: {
      foods,
      toBuy: (n) => `${foods(n)} einzukaufen`,
      price: (n) => `${f.money(n)} je kg`,
      share: (n) => `${f.figure(n)} % der Mischung`,
      mix: (n, unit) => `${f.figure(n)} ${unit} in 100 g der Mischung`,
      ration: (n, unit) => `${f.figure(n)} ${unit} in 100 g der ganzen Ration`,
    },
    lacks: {
      liked:
        'Noch ist keine Zutat als beliebt vermerkt. Setz in den Einzelheiten einer Zutat das Häkchen bei „Beliebt“.',
      home: 'Was zu Hause ist, steht noch nirgends. Trag es in den Einzelheiten einer Zutat ein.',
      price: (names) =>
        `Für „Günstig“ braucht jede Zutat einen Preis. Es fehlt: ${f.list(names)}. Der Preis steht in den Einzelheiten einer Zutat.`,
      priceMany: (names, more) =>
        `Für „Günstig“ braucht jede Zutat einen Preis. Es fehlt: ${names.join(', ')} und ${f.number(more)} weitere. Der Preis steht in den Einzelheiten einer Zutat.`,
    },
    fault: {
      already: (wish) => `„${wish}“ ist schon gewünscht; rück den Wunsch nach oben oder unten.`,
      opposite: (wish) => `„${wish}“ ist gewünscht und das Gegenteil davon; nimm das zuerst heraus.`,
      most: (n) => `Mehr als ${f.number(n)} Wünsche gehen nicht; nimm zuerst einen heraus.`,
    },
    gap: {
      nearest: (percent) =>
        `Die Suche wurde abgebrochen: Diese Mischung kann noch bis zu ${f.figure(percent)} % von der entfernt sein, die deinen Wünschen am nächsten kommt.`,
      cheapest: (price) =>
        `Die Suche wurde abgebrochen: Die günstigste Mischung könnte noch bis zu ${f.money(price)} je kg weniger kosten.`,
      varied: (percent) =>
        `Die Suche wurde abgebrochen: Eine Mischung könnte noch bis zu ${f.figure(percent)} % abwechslungsreicher sein.`,
    },
    form: {
      kind: 'Noch ein Wunsch',
      what: 'Wovon',
      ruled: 'Nährstoffe mit einer Regel',
      other: 'Andere Nährstoffe',
      groups: 'Gruppen',
      foods: 'Zutaten',
      on: 'Gemessen in',
      ration: 'der ganzen Ration',
      mix: 'der Mischung',
      add: 'Wunsch hinzufügen',
      added: (wish, rank) => `„${wish}“ ist Wunsch ${f.number(rank)}.`,
    },
    list: {
      moved: (wish, rank, of) => `„${wish}“ ist jetzt Wunsch ${f.number(rank)} von ${f.number(of)}.`,
      removed: (wish) => `„${wish}“ ist nicht mehr gewünscht.`,
      hint: '„Darf nachgeben um“ sagt, wie weit ein Wunsch hinter seinem Besten bleiben darf, damit die nächsten mehr bekommen.',
      came: (value) => `In der besten Mischung: ${value}`,
      noMix: 'Es gibt keine Mischung, in der es sich messen ließe',
      rank: (rank) => `${f.number(rank)}.`,
      give: 'Darf nachgeben um',
      up: (wish) => `Nach oben: ${wish}`,
      down: (wish) => `Nach unten: ${wish}`,
      remove: (wish) => `Entfernen: ${wish}`,
    },
    counts: {
      heading: 'Wie viele Zutaten',
      hint: 'Das sind Regeln: Sie gelten in jeder Mischung und sind nicht nur Wünsche.',
      gone: (rule) => `Die Regel „${rule}“ gilt nicht mehr.`,
      added: (rule) => `Die Regel „${rule}“ gilt ab jetzt.`,
      leastGrams: 'Keine Zutat unter',
      any: 'beliebig',
      scaleStep: (grams) => `Schritt der Waage nehmen, ${f.grams(grams)}`,
      leastHint: (batch) =>
        `Eine Zutat bleibt dann ganz weg oder wiegt in der Charge von ${f.grams(batch)} mindestens so viel. Weniger als ein Schritt der Waage lässt sich nicht abwiegen (übliche Praxis, ohne Quelle).`,
      dropOne: 'Im Bereich bleiben, auch wenn eine Zutat liegen bleibt',
      dropOneHint:
        'Jede Nährstoffregel gilt dann auch für das, was gefressen wird, wenn das Tier eine beliebige Zutat ganz liegen lässt.',
      broken: 'noch nicht eingehalten',
      kept: 'eingehalten',
      notTaken: (why) => `Nicht übernommen: ${why}`,
      noFewer: 'Zutaten, mindestens',
      withEach: 'Davon jede mit',
      noMore: 'Zutaten, höchstens',
      another: 'Noch eine Regel',
      atLeast: 'Mindestens so viele Zutaten',
      atMost: 'Höchstens so viele Zutaten',
      howMany: 'Wie viele',
      shareOfEach: 'Anteil von jeder',
      among: 'Gezählt unter',
      allFoods: 'allen Zutaten',
      add: 'Regel hinzufügen',
      remove: (rule) => `Entfernen: ${rule}`,
      rule: {
        least: (n, share) => `Mindestens ${foods(n)} mit je ${f.percent(share)}`,
        leastOf: (n, group, share) => `Mindestens ${f.number(n)} mit je ${f.percent(share)} aus: ${group}`,
        most: (n) => `Höchstens ${foods(n)}`,
        mostOf: (n, group) => `Höchstens ${f.number(n)} aus: ${group}`,
        both: (least, most) => `${least}; ${most.charAt(0).toLowerCase()}${most.slice(1)}`,
        any: 'Beliebig viele Zutaten',
      },
      fault: {
        howMany: 'Schreib, wie viele Zutaten.',
        share: 'Schreib, ab welchem Anteil über 0 % eine Zutat zählt.',
        tooMuch: (n, share, all) =>
          `${foods(n)} mit je ${f.percent(share)} ergeben ${f.percent(all)}, mehr als die ganze Mischung; senk eines von beiden.`,
        tooFew: (open, wanted) =>
          `In der Mischung dürfen ${foods(open)} verwendet werden, weniger als ${f.number(wanted)}; verlang weniger oder nimm erst Zutaten dazu.`,
        tooFewOf: (open, group, wanted) =>
          `${group}: In der Mischung gibt es ${foods(open)} davon, weniger als ${f.number(wanted)}; verlang weniger oder nimm erst Zutaten dazu.`,
        crossed: (min, max) =>
          `Mindestens ${f.number(min)} und höchstens ${f.number(max)} geht nicht zusammen; ändere eines von beiden.`,
        none: 'Eine Mischung hat mindestens eine Zutat; erlaub 1 oder mehr.',
      },
    },
  };
};
