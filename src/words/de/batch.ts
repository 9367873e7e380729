import type { Batch } from '../en/batch.ts';
import type { Figures } from '../figures.ts';

export const batch = (f: Figures): Batch => {
  const months = (n: number) => f.count(n, { one: 'Monat', other: 'Monate' });
  return {
    title: (name) => `Charge: ${name}`,
    working: 'Die Aufzeichnung wird ausgerechnet…',
    record: {
      region: 'Urteil',
      givenUp: 'Aufgegeben: nicht verfüttern',
      finished: (grams, when) => `${f.grams(grams)}, fertig am ${when}.`,
      finishedBy: (grams, when, by) => `${f.grams(grams)}, fertig am ${when}, gemacht von ${by}.`,
      closed: (grams, when) => `${f.grams(grams)}, geschlossen am ${when}.`,
      closedBy: (grams, when, by) => `${f.grams(grams)}, geschlossen am ${when}, gemacht von ${by}.`,
      givenUpHelp:
        'Sie zählt nicht als Futter und geht an kein Tier. Was hineinkam, fehlt in seinen Packungen und wird gefunden, wenn man einer Packung nachgeht.',
      givenUpWhy: (note) => `Aufgegeben; nicht verfüttern: ${note}`,
      acceptedWhy: (note) => `Außerhalb des Bereichs angenommen: ${note}`,
      forbidden: (percent) =>
        `${f.percent(percent)} der Charge steht auf der Liste dessen, was nie gefüttert wird: nicht verfüttern.`,
      why: 'Worauf das beruht',
      cautions: 'Warnhinweise',
      caution: (foods, title, reason, way) => `<b>${foods}</b>: ${title}. ${reason} ${way}`,
    },
    foods: {
      title: 'Was drin ist',
      food: 'Zutat',
      planned: 'geplant %',
      from: (grams) => `aus <pack></pack>, ${f.grams(grams)}`,
    },
    contents: {
      title: 'Was sie enthält',
      help: 'In 100 g wie gewogen. ± sagt, wie sehr es von Packung zu Packung schwanken kann (95 von 100 liegen dazwischen), wo das bekannt ist. „Mindestens“ steht, wo eine Zutat nichts angibt.',
      notKnown: 'nicht bekannt',
      amount: (value, unit) => `${value} ${unit}`,
      atLeast: (amount) => `mindestens ${amount}`,
      spread: (amount, spread) => `${amount} ± ${spread}`,
    },
    keeping: {
      title: 'Aufbewahren und füttern',
      useBy: 'Verbrauchen bis <b></b>',
      dry: 'Trocken genug zum Aufbewahren',
      unsure: 'Vielleicht zu feucht zum Aufbewahren',
      damp: 'Zu feucht zum Aufbewahren',
      sources: 'Woher das kommt',
      useByTerm: 'Verbrauchen bis',
      moistureTerm: 'Feuchte',
    },
    moisture: {
      damp: (water, most) =>
        `Die Mischung enthält etwa ${f.number(water, 1)} % Wasser, mehr als die ${f.number(most)} %, bei denen sie sich hält: Trockne die feuchtesten Zutaten weiter, nimm weniger davon oder bewahre sie im Gefrierfach auf.`,
      dampAtLeast: (water, most) =>
        `Die Mischung enthält mindestens ${f.number(water, 1)} % Wasser, mehr als die ${f.number(most)} %, bei denen sie sich hält: Trockne die feuchtesten Zutaten weiter, nimm weniger davon oder bewahre sie im Gefrierfach auf.`,
      unknown: (percent) =>
        `Die Feuchte ist nur von ${f.number(percent)} % der Mischung bekannt, also kann niemand sagen, ob sie sich hält.`,
      unsure: (water, most) =>
        `Die Mischung enthält etwa ${f.number(water, 1)} % Wasser; es können mehr als die ${f.number(most)} % sein, bei denen sie sich hält. Bewahre sie im Glas auf und achte auf Feuchtigkeit.`,
      dry: (water, most) =>
        `Die Mischung enthält etwa ${f.number(water, 1)} % Wasser und hält sich (höchstens ${f.number(most)} %).`,
    },
    keep: {
      jar: 'In einem geschlossenen Glas oder einer Dose aufbewahren, kühl, dunkel und trocken.',
      look: 'Nimm Glas oder schau oft hinein: Feuchte innen heißt, jetzt nachtrocknen; Schimmel heißt, alles wegwerfen.',
      small: 'Kleine Mengen abpacken: Jedes Öffnen lässt feuchte Luft hinein.',
      rancid:
        'Fette Samen und Nüsse werden durch Wärme, Licht und Luft ranzig: Was nicht in einem Monat verbraucht ist, liegt besser im Gefrierfach.',
      smell: 'Riech daran, bevor du fütterst; riecht es nach altem Öl oder Farbe, wirf es weg.',
      thaw: 'Ein gefrorenes Glas erst zimmerwarm werden lassen, bevor du es öffnest, sonst setzt sich Wasser aufs Futter.',
    },
    kinds: {
      nut: 'Nusskerne',
      'nut in shell': 'Nüsse in der Schale',
      'oil seed': 'ganze Ölsaaten',
      'crushed oil seed': 'zerkleinerte Ölsaaten und Nüsse',
      grain: 'ganze Getreidekörner',
      'crushed grain': 'Flocken, Schrot und Mehl aus vollem Korn',
      legume: 'getrocknete Erbsen, Bohnen und Linsen',
      vegetable: 'getrocknetes Gemüse',
      fruit: 'getrocknetes Obst',
      herb: 'getrocknete Kräuter und Blüten',
      animal: 'getrocknete Insekten und anderes Tierisches',
      other: 'anderes Trockenes',
    },
    useBy: {
      pack: (food, pack) => `${food} (Packung „${pack}“)`,
      bestBefore: (pack, day) => `Mindestens haltbar bis ${day}: ${pack}.`,
      printed: 'auf die Packung gedruckt',
      bought: (pack, day, n, kind) => `${pack}, gekauft am ${day}: haltbar etwa ${months(n)} (${kind}).`,
      mixed: (food, n, kind) => `${food}: ab dem Mischen haltbar etwa ${months(n)} (${kind}).`,
      damp: (food, water, most, days) =>
        `${food}: ${f.number(water, 1)} % Wasser, mehr als die ${f.number(most)} % zum Aufbewahren; etwa ${f.count(days, { one: 'Tag', other: 'Tage' })}.`,
      beforeMade: (day, food) =>
        `Das liegt vor dem Tag, an dem sie gemacht wurde (${day}): Riech daran und schau sie dir an, bevor du etwas fütterst (${food}).`,
      noWater: (foods) => `Die Feuchte ist nicht bekannt und zählt nicht mit: ${foods.join(', ')}.`,
      noFat: (foods) => `Der Fettgehalt ist nicht bekannt: ${foods.join(', ')}.`,
    },
    label: {
      printJar: 'Etikett fürs Glas drucken',
      print: 'Großes Etikett drucken',
      homeMix: (grams, batch) => `Eigene Mischung, ${f.grams(grams)}. Charge ${batch}`,
      madeOn: 'Gemacht am',
      by: (name) => `von ${name}`,
      useBy: 'Verbrauchen bis',
      feed: 'Füttern',
      keep: 'Aufbewahren',
      mind: 'Beachten',
      in100g: 'In 100 g',
      foods: 'Zutaten, nach Gewicht',
      share: (food, percent) => `${food} ${f.fixed(percent, 1)}\u00a0%`,
      caution: (foods, title, reason, way) => `${f.list(foods)}: ${title}. ${reason} ${way}`,
      why: (title, reason, way) => `${title}. ${reason} ${way}`,
      most: (percent) => `Höchstens ${f.number(percent)} % der Mischung.`,
      mostTogether: (percent) => `Zusammen höchstens ${f.number(percent)} % der Mischung.`,
      notComplete: 'Kein tierärztlicher Rat. Eine eigene Mischung ersetzt nie ein Alleinfutter.',
      notCompleteAlone: 'Kein Alleinfutter.',
      notCompleteBeside: (foods) => `Kein Alleinfutter: nur zusammen mit ${f.list(foods)} füttern.`,
      andMore: (n) => `${f.count(n, { one: 'weiteres Tier', other: 'weitere Tiere' })}: siehe Aufzeichnung.`,
    },
    ownMoisture: 'von dir so angegeben',
    dampTable: { cereal: 'Getreide', soybean: 'Sojabohne; mangels einer eigenen Tabelle' },
  };
};
