import type { Label } from '../en/label.ts';
import type { Figures } from '../figures.ts';
import { labelReading } from './label-reading.ts';

export const label = (f: Figures): Label => ({
  reading: labelReading(f),
  amount: {
    least: (least) => `mindestens ${least}`,
    most: (most) => `höchstens ${most}`,
    both: (least, most) => `mindestens ${least} und höchstens ${most}`,
  },
  paste: {
    label: 'Das Etikett, wie gedruckt',
    hint: 'Zum Beispiel Zeile für Zeile: „Rohprotein min. 14 %“, „Rohfett 4,2 %“, „Ballaststoffe 3,1 g je Portion (40 g)“. Auf Englisch, Deutsch, Französisch, Niederländisch oder Spanisch.',
    asSaved:
      'Diese Zahlen sind so, wie du sie gespeichert hast; sie stützen sich auf Antworten oder Änderungen, die der Text allein nicht hergibt. Ändere den Text oder beantworte eine Frage, dann wird das Etikett neu gelesen.',
  },
  lines: {
    title: 'Zeile für Zeile',
    read: 'Gelesen',
    partly: 'Teilweise gelesen',
    waits: 'Wartet auf eine Antwort',
    per: 'Menge',
    ignored: 'Weggelassen',
    unread: 'Nicht verstanden',
    counted: {
      read: (n) => `${f.number(n)} gelesen`,
      waits: (n) => f.form(n, { one: 'eine wartet auf Antwort', other: `${f.number(n)} warten auf Antwort` }),
      partly: (n) => `${f.number(n)} teilweise gelesen`,
      without: (n) => `${f.number(n)} ohne Wert`,
      unread: (n) => `${f.number(n)} nicht verstanden`,
    },
  },
  questions: {
    section: 'Fragen zum Etikett',
    title: (open) =>
      open === 0
        ? 'Fragen, alle beantwortet'
        : f.form(open, { one: 'Eine Frage ist offen', other: `${f.number(open)} Fragen sind offen` }),
    unknown: 'Ein Wert, der auf Antwort wartet, bleibt bis dahin unbekannt.',
    open: '? Offen',
    answered: '✓ Beantwortet',
    otherWeight: 'Oder ein anderes Gewicht',
    otherPercent: 'Oder ein anderer Prozentwert',
  },
  comesTo: {
    title: 'Was dabei herauskommt',
    none: 'Noch kein Wert; jeder Nährstoff ist unbekannt.',
    known: (known, unknown) =>
      `${f.number(known)} bekannt, ${f.number(unknown)} unbekannt; unbekannt gilt nie als null`,
    nutrient: 'Nährstoff',
    fed: 'In 100 g wie gefüttert',
    printed: 'Wie gedruckt',
    waits: '(wartet auf Antwort)',
    noMoisture:
      'Die Feuchte ist unbekannt, darum lässt sich nichts für die Trockenmasse zeigen. Steht sie auf der Packung, füge eine Zeile hinzu wie „Feuchte 10 %“.',
    min: (amount) => `min. ${amount}`,
    max: (amount) => `max. ${amount}`,
    range: (low, high) => `${low} bis ${high}`,
    in: (amount, grams) => `${amount} in ${f.number(grams)} g`,
    ofDry: (amount) => `${amount} der Trockenmasse`,
    ofSalt: (amount) => `${amount} Salz`,
  },
  ingredients: {
    section: 'Zutatenliste',
    label: 'Zutatenliste, wie gedruckt (freiwillig)',
    hint: 'Zum Beispiel „Haferflocken, Erbsen, Karotte getrocknet, Mineralstoffe“. Sie bleibt bei der Zutat und wird darauf gelesen, was zu meiden ist.',
    tooLong: (length, most) =>
      `Die Liste hat ${f.number(length)} Zeichen, ${f.number(most)} passen; lass weg, was keine Zutat ist.`,
    avoid: (what) => `Meiden: ${what}`,
    mind: (what) => `Gut zu wissen: ${what}`,
    kinds: {
      'added sugar': 'zugesetzter Zucker',
      dye: 'Farbstoff',
      preservative: 'Konservierungsstoff',
      filler: 'Füllstoff',
      unspecified: 'sagt zu wenig',
      caution: 'Warnhinweis',
    },
    none: 'Nichts von unseren Listen gefunden; eine Garantie ist das nicht.',
    found: (n) => `${f.number(n)} von unseren Listen gefunden:`,
    list: 'In den Zutaten gefunden',
    source: (source) => `Quelle: ${source}`,
    unread: (parts) => `Nicht verstanden, darum nicht nachgeschlagen: ${parts.join(', ')}.`,
  },
});
