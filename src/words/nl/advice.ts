import type { Advice } from '../en/advice.ts';
import type { Figures } from '../figures.ts';

export const advice = (f: Figures): Advice => {
  const amount = (value: number, unit: string) =>
    unit === '' ? f.number(value, 6) : `${f.number(value, 6)} ${unit}`;
  return {
    most: (subject, to, from, unit) =>
      `${subject} hoogstens ${amount(to, unit)} in plaats van ${amount(from, unit)}`,
    least: (subject, to, from, unit) =>
      `${subject} minstens ${amount(to, unit)} in plaats van ${amount(from, unit)}`,
    allow: (parts) => `Toestaan: ${f.list(parts)}.`,
    count: {
      some: (subject, to, from) =>
        `Minder vragen: ${subject} ${f.number(to)} in plaats van ${f.number(from)}.`,
      few: (subject, to, from) =>
        `Meer toestaan: ${subject} ${f.number(to)} in plaats van ${f.number(from)}.`,
      used: (subject, to, from, unit) =>
        `Toestaan: ${subject.replace(/,$/, '')} ${amount(to, unit)} of meer in plaats van ${amount(from, unit)}.`,
    },
    dropOne: 'Het mengsel mag buiten bereik raken als een van de ingrediënten blijft liggen.',
    add: (food, ref, share) => `${food} (${ref}) toevoegen: ${f.percent(share)} van het mengsel is genoeg.`,
    addPriced: (food, ref, share, price) =>
      `${food} (${ref}) toevoegen: ${f.percent(share)} van het mengsel is genoeg. Als prijs telt ${f.number(price)} per kg, zoals bij het duurste ingrediënt; vul de echte in.`,
    /** Kept as the source of a limit that was changed. */
    ownLimit: {
      ownChoice: (day, limits, source) =>
        `eigen keuze sinds ${day}; in de behoefte staat ${limits} (${source})`,
      noSource: 'geen bron',
      least: (value) => `minstens ${f.number(value, 6)}`,
      most: (value) => `hoogstens ${f.number(value, 6)}`,
    },
    swap: {
      mustStay: (food, least) =>
        `${food} moet minstens ${f.figure(least)} % van het mengsel zijn, dus er kan niets voor in de plaats komen.`,
      can: (food, share, others) =>
        `In plaats van ${food} (${f.figure(share)} %) kan ook: ${f.either(others)}.`,
      none: (food) =>
        `Niets anders kan in de plaats van ${food} komen als alle regels gelden. Maak het mengsel zonder dit ingrediënt passend om te zien waarom.`,
      only: '(en geen ander aandeel)',
      upTo: (high) => `(tot ${f.number(high, 4)} %)`,
      from: (low, high) => `(${f.number(low, 4)} tot ${f.number(high, 4)} %)`,
      by: (out, taken, name, share, span) =>
        `In plaats van ${out} (${f.figure(taken)} %) kan ook: ${name}, ${f.number(share, 4)} % ${span}.`,
      byMore: (out, taken, name, share, had, span) =>
        `In plaats van ${out} (${f.figure(taken)} %) kan ook meer ${name}: ${f.number(share, 4)} % boven op de ${f.figure(had)} % ${span}.`,
      unsure: (sentence, what) => `${sentence} Niet bekend is daarvan: ${f.list(what)}.`,
    },
  };
};
