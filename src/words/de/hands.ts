import type { Hands } from '../en/hands.ts';
import type { Figures } from '../figures.ts';

export const hands = (f: Figures): Hands => ({
  title: 'Gesundheit und Hände',
  why: 'Warum?',
  source: (source) => `Quelle: ${source}.`,
  wash: {
    insects: 'Wasch dir die Hände, wenn du Insekten angefasst hast, und halte sie von deinem Essen fern.',
    egg: 'Wasch dir die Hände, wenn du Eipulver angefasst hast, und halte es von deinem Essen fern.',
    why: 'Futter vom Tier kann Keime tragen, die Menschen krank machen, zum Beispiel Salmonellen.',
  },
  dust: {
    text: 'Beim Sieben, Schütten und Mischen staubt es. Geh langsam vor, öffne ein Fenster und trag eine Maske, wenn du bei Staub husten musst.',
    why: 'Staub von Getreide und Hülsenfrüchten reizt die Lunge und kann Asthma auslösen.',
  },
  feed: {
    water: 'Immer frisches Wasser: trockenes Futter macht durstig.',
    waterShort: 'Immer frisches Wasser.',
    pieces: 'Zerkleinere, was für ein kleines Maul zu groß oder zu hart ist.',
  },
  pieces: {
    large: 'Ganz ist das groß und hart. Zerkleinere es oder nimm Flocken.',
    teeth: (animals) => `Probleme mit den Zähnen: ${f.list(animals)}. Gib das gemahlen oder eingeweicht.`,
  },
  allergens: {
    nuts: 'Nüsse',
    peanut: 'Erdnuss',
    sesame: 'Sesam',
    insects: 'Insekten',
    egg: 'Ei',
    milk: 'Milch',
    fish: 'Fisch',
    gluten: 'Gluten',
    soya: 'Soja',
  },
  allergy: {
    holds: (allergens) => `Dagegen bist du allergisch: ${f.list(allergens)}.`,
    traces: (allergens) => `Kann Spuren enthalten: ${f.list(allergens)}.`,
    unknown: (allergens) =>
      `Ob es ${f.either(allergens)} enthält, ist nicht bekannt: Dazu ist keine Zutatenliste gespeichert.`,
    way: 'Trag Handschuhe, wirble keinen Staub auf oder lass es jemand anderen machen.',
    insects: 'Wer gegen Garnelen oder Hausstaubmilben allergisch ist, kann auch auf Insekten reagieren.',
    short: (allergens) => `Allergie: ${f.list(allergens)}`,
    shortTraces: (allergens) => `kann Spuren enthalten: ${f.list(allergens)}`,
    shortUnknown: (allergens) => `nicht bekannt, ob ${f.either(allergens)} enthalten ist`,
  },
  card: {
    part: 'Tierarzt, Allergien',
    title: 'Tierarztpraxis und Allergien',
    lead: 'Für die Karte der Betreuung, die Seite für die Tierarztpraxis und Hinweise bei den Zutaten. Es bleibt in deinem Haushalt.',
    name: 'Name der Tierarztpraxis',
    phone: 'Telefon der Tierarztpraxis',
    emergency: 'Nummer für nachts und am Wochenende',
    noPhone: 'Schreib eine Telefonnummer, nur mit Ziffern, Leerzeichen und + ( ) / -.',
    allergies: 'Wogegen bist du allergisch?',
    allergiesHint: 'Zutaten, die das enthalten, sind markiert, wo du sie auswählst, kaufst und abwiegst.',
    south: 'Ich lebe südlich des Äquators',
    southHint: 'Dann werden die Tage von März bis Juni kürzer. Dsungaren nehmen in kurzen Tagen ab.',
    forSitter: 'Was die Betreuung wissen soll',
    save: 'Speichern',
    saved: 'Gespeichert.',
  },
});
