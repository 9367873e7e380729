/** Hygiene, dust, allergies, water and the size of pieces; the keeper's own card. */
import type { Figures } from '../figures.ts';

export const hands = (f: Figures) => ({
  title: 'Health and hands',
  why: 'Why?',
  source: (source: string) => `Source: ${source}.`,
  wash: {
    insects: 'Wash your hands after touching insects, and keep them away from your own food.',
    egg: 'Wash your hands after touching egg powder, and keep it away from your own food.',
    why: 'Food from animals can carry germs that make people ill, salmonella for one.',
  },
  dust: {
    text: 'Sieving, pouring and mixing raise dust. Go slowly, open a window, and wear a mask if dust makes you cough.',
    why: 'Dust of grain and pulses irritates the lungs and can bring on asthma.',
  },
  feed: {
    water: 'Fresh water always: dry food makes thirsty.',
    waterShort: 'Fresh water always.',
    pieces: 'Break up what is too large or too hard for a small mouth.',
  },
  pieces: {
    large: 'Whole, this is large and hard. Break it up or have it in flakes.',
    teeth: (animals: readonly string[]) =>
      `Trouble with teeth: ${f.list(animals)}. Give this ground or soaked.`,
  },
  allergens: {
    nuts: 'nuts',
    peanut: 'peanut',
    sesame: 'sesame',
    insects: 'insects',
    egg: 'egg',
    milk: 'milk',
    fish: 'fish',
    gluten: 'gluten',
    soya: 'soya',
  },
  allergy: {
    holds: (allergens: readonly string[]) => `You are allergic to this: ${f.list(allergens)}.`,
    traces: (allergens: readonly string[]) => `May hold traces of ${f.list(allergens)}.`,
    unknown: (allergens: readonly string[]) =>
      `Whether it holds ${f.either(allergens)} is not known: no list of ingredients is kept of it.`,
    way: 'Wear gloves, raise no dust, or let someone else handle it.',
    insects: 'People who are allergic to shrimp or dust mites may react to insects too.',
    short: (allergens: readonly string[]) => `allergy: ${f.list(allergens)}`,
    shortTraces: (allergens: readonly string[]) => `may hold traces: ${f.list(allergens)}`,
    shortUnknown: (allergens: readonly string[]) => `not known whether it holds ${f.either(allergens)}`,
  },
  card: {
    part: 'Vet, allergies',
    title: 'Your vet and your allergies',
    lead: 'For the sitter’s card, the page for the vet, and warnings beside foods. It stays in your household.',
    name: 'Name of the vet',
    phone: 'Phone of the vet',
    emergency: 'Number for nights and weekends',
    noPhone: 'Write a phone number with digits, spaces and + ( ) / - only.',
    allergies: 'What are you allergic to?',
    allergiesHint: 'Foods that hold it are marked where you pick, buy and pour them.',
    south: 'I live south of the equator',
    southHint: 'Then days grow short from March to June. Winter whites lose weight in short days.',
    forSitter: 'What a sitter should know',
    save: 'Save',
    saved: 'Saved.',
  },
});

export type Hands = ReturnType<typeof hands>;
