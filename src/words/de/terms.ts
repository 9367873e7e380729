import type { Terms } from '../en/terms.ts';
import type { Figures } from '../figures.ts';

export const terms = (_f: Figures): Terms => ({
  fibre: {
    word: 'Rohfaser',
    help: 'Was von Pflanzenfasern nach dem Kochen in Säure und Lauge übrig bleibt. Etiketten und Bereiche für Hamster meinen diesen Wert.',
  },
  dietaryFibre: {
    word: 'Ballaststoffe',
    help: 'Alle Fasern einer Zutat, wie Tabellen für Menschen sie zählen. Es ist immer mehr als die Rohfaser, oft doppelt so viel; beide werden nie vermischt.',
  },
  asFed: {
    word: 'wie gefüttert',
    help: 'Das Futter, wie es im Napf liegt, samt dem Wasser darin.',
  },
  dryMatter: {
    word: 'Trockenmasse',
    help: 'Was von einer Zutat ohne ihr Wasser übrig bliebe. So lassen sich Frisches und Getrocknetes vergleichen.',
  },
  ash: {
    word: 'Rohasche',
    help: 'Die Mineralstoffe: was übrig bleibt, wenn man eine Zutat verbrennt.',
  },
  protein: {
    word: 'Rohprotein',
    help: 'Protein, wie Etiketten es zählen: Stickstoff mal 6,25.',
  },
  ration: {
    word: 'ganze Ration',
    help: 'Alles, was dein Tier am Tag bekommt: Mischung, Pellets und was sonst dazukommt, nach Gewicht.',
  },
  share: {
    word: 'Anteil',
    help: 'Wie viel eine Zutat von der Mischung ausmacht, nach Gewicht: 5 % von 300 g sind 15 g.',
  },
  sure: {
    word: 'wie sicher es sein soll',
    help: 'Packungen fallen verschieden aus. Je sicherer das Futter im Bereich liegen soll, desto weiter bleibt die Mischung von den Grenzen weg.',
  },
  mayBeLeft: {
    word: 'jede Zutat darf liegen bleiben',
    help: 'Prüft, ob das Gefressene im Bereich bleibt, wenn dein Tier eine beliebige Zutat liegen lässt.',
  },
  pack: {
    word: 'Packung',
    help: 'Eine Packung, wie du sie gekauft hast, mit ihrem eigenen Datum. So weißt du, was in welcher Charge war.',
  },
  batch: {
    word: 'Charge',
    help: 'Was du in einem Zug abwiegst und mischst.',
  },
  freezing: {
    word: 'Einfrieren',
    help: 'Ein paar Tage im Gefrierfach töten Insekten und ihre Eier in Getreide und Saaten.',
  },
});
