import type { Beside } from '../en/beside.ts';
import type { Figures } from '../figures.ts';

export const beside = (f: Figures): Beside => ({
  title: 'Die ganze Ration',
  parts: 'Teile der ganzen Ration',
  thisMix: 'Diese Mischung',
  aDay: (grams) => `${f.grams(grams, 1)} am Tag`,
  mixOnly: 'nur Mischung',
  share: (percent, food) => `${f.percent(percent, 1).replace(' ', '\u00a0')} ${food}`,
  mixShare: (percent) => `${f.percent(percent, 1).replace(' ', '\u00a0')} Mischung`,
  two: (food, mix) => `${food} und ${mix}`,
  many: (foods, mix) => `${foods}; und ${mix}`,
  gone: (food) => `„${food}“ wird nicht mehr neben der Mischung gefüttert.`,
  come: (food) => `„${food}“ wird jetzt neben der Mischung gefüttert.`,
  day: {
    label: 'Ganze Ration eines Tages',
    notSaid: 'nicht gesagt',
    needs: (grams) => `Mindestens ${f.grams(grams)}, für das, was unten in Gramm steht.`,
    without: 'Ohne die ganze Ration eines Tages bleibt das, was in Gramm stand, als Anteil an ihr erhalten.',
    fed: (names, grams) =>
      f.form(names.length, {
        one: `${f.list(names)} bekommt ${f.grams(grams, 1)} am Tag.`,
        other: `${f.list(names)} bekommen ${f.grams(grams, 1)} am Tag.`,
      }),
    use: (grams) => `${f.grams(grams, 1)} nehmen`,
    useAll: (grams) => `${f.grams(grams, 1)} für alle zusammen nehmen`,
    useEach: (grams) => `${f.grams(grams, 1)} im Schnitt für jedes nehmen`,
  },
  picker: {
    label: 'Dazufüttern…',
    title: 'Neben der Mischung gefüttert',
    fed: 'Gefüttert',
    inMix: 'In der Mischung',
    own: 'eigene Zutat',
    pellet: 'Pellets',
    invented: (kind) => `${kind}, erfunden`,
    fresh: 'frisch',
    placeholder: 'Gurke, Löwenzahn, Pellets…',
  },
  row: {
    invented: 'erfunden',
    givenAs: 'Angegeben als',
    asShare: 'Anteil',
    asGrams: 'Gramm am Tag',
    share: 'Anteil an der ganzen Ration',
    grams: 'Gramm am Tag',
    isShare: (percent) => `Das sind ${f.percent(percent)} der ganzen Ration.`,
    isShareDry: (percent) => `Trocken gezählt sind das ${f.percent(percent)} der ganzen Ration.`,
    from: 'Darf von',
    to: 'bis',
    fixed: 'fest',
    needsDay:
      'Gramm am Tag brauchen die ganze Ration eines Tages. Trag sie zuerst oben ein; wähle dann noch einmal Gramm.',
    fresh: 'Frisch: ohne das Wasser zählen',
    whyDry: (water) =>
      `Die Bereiche sind für trockenes Futter gedacht; eine Scheibe Gurke senkt also nicht das Protein, das das Tier bekommt: Ihr Wasser zählt nur bis ${f.percent(water)}, die Feuchte, bei der Futtertabellen ihre Werte angeben (NRC 1995).`,
    remove: (food) => `„${food}“ aus der Ration nehmen`,
    working: 'Wird berechnet…',
    noShare: (percent) =>
      `Mit keinem Anteil in diesen Grenzen hält eine Mischung jede Regel ein; es zählen ${f.percent(percent)}.`,
    chosen: (percent, from, to) =>
      `Gewählt: ${f.percent(percent)}. Eine Mischung hält jede Regel von ${f.number(from)} bis ${f.percent(to)} ein.`,
    onlyShare: (percent) =>
      `Gewählt: ${f.percent(percent)}. Mit keinem anderen Anteil hält eine Mischung jede Regel ein.`,
    atLeast: (percent) => `Mindestens ${f.percent(percent)}: die eigene Grenze.`,
    atMost: (percent) => `Höchstens ${f.percent(percent)}: die eigene Grenze.`,
    room: (percent) => `Höchstens ${f.percent(percent)}: Was sonst gefüttert wird, lässt nicht mehr übrig.`,
  },
});
